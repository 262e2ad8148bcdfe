package bitterend.day;

import bitterend.measure.Written;
import java.time.LocalDate;
import java.util.List;

/**
 * What goes with a delivery.
 *
 * @param order number of the order
 * @param customer who ordered it; empty when not stated
 * @param day the day it goes out
 * @param event number of the event in the ledger
 * @param lines what is in it, by line of the order
 * @param toCome pieces of the order that are still to come
 * @param note what the shop says with it; may be empty
 */
public record PackingNote(
        String order, String customer, LocalDate day, long event, List<Line> lines, List<String> toCome, String note) {
    public PackingNote {
        lines = List.copyOf(lines);
        toCome = List.copyOf(toCome);
    }

    /** Ids of the pieces that go out. */
    public List<String> pieces() {
        return lines.stream()
                .flatMap(line -> line.items().stream())
                .map(Item::piece)
                .toList();
    }

    /**
     * One line of the order, or one part of it, as the customer ordered it.
     *
     * @param line {@code ORDER/LINE}
     * @param words what the order says of it in its own words; empty for nothing
     * @param product the product, and the part of it, by name; empty when the line names none
     * @param rope name of the rope
     * @param finished finished length ordered
     * @param ends both ends in words
     * @param between the points that the finished length runs between, where hardware hangs on the ends; empty without
     * @param ordered how many assemblies were ordered
     * @param items the pieces that go out
     */
    public record Line(
            String line,
            String words,
            String product,
            String rope,
            Written finished,
            String ends,
            String between,
            int ordered,
            List<Item> items) {
        public Line {
            items = List.copyOf(items);
        }
    }

    /**
     * A piece that goes out.
     *
     * @param piece its id, as on its tag
     * @param lot lot of the reel it was cut off, as it was then; empty when not known
     * @param certificate kind and number of the certificate of that reel; both empty for none
     * @param found what it measures finished, and what was found when it was looked over
     * @param released that its set was released from matching, in words; empty usually
     */
    public record Item(String piece, String lot, Certificate certificate, LookedOver found, String released) {}

    /**
     * A paper that goes with a piece.
     *
     * @param kind such as {@code 3.1}
     * @param number its number; may be empty
     */
    public record Certificate(String kind, String number) {
        public static final Certificate NONE = new Certificate("", "");
    }
}
