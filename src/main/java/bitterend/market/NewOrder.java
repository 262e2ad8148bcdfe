package bitterend.market;

import java.time.LocalDate;
import java.util.List;

/**
 * Reels as they are ordered: each line with the shop's own number, an order to each supplier.
 *
 * @param day of the order
 * @param lines in the order of their numbers
 * @param bill what they come to; its offers have the numbers as ids
 */
public record NewOrder(LocalDate day, List<Line> lines, Bill bill) {
    public NewOrder {
        lines = List.copyOf(lines);
    }

    /**
     * Reels of one kind.
     *
     * @param number the shop's number for them
     * @param offer what is ordered, at the price that was agreed, the number being its id
     * @param of id of the offer as the shop has it; empty where it has none
     * @param reels how many
     * @param expected the day they are wanted
     * @param note for people
     */
    public record Line(String number, Offer offer, String of, int reels, LocalDate expected, String note) {}

    /** The lines of one supplier. */
    public List<Line> of(String supplier) {
        return lines.stream()
                .filter(line -> line.offer().supplier().equals(supplier))
                .toList();
    }
}
