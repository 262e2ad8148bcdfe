package bitterend.report;

import java.util.ArrayList;
import java.util.List;

/** Labels along a picture, in as many rows as it takes so that none is printed over another; each is middled on its place. */
final class BuyLabels {
    /** From one row to the next. */
    static final int ROW = 12;

    /** A letter of a label is no wider, at the size of {@link BuySvg#text}. */
    private static final int LETTER = 7;

    private final List<Label> all = new ArrayList<>();

    /**
     * A label.
     *
     * @param x its middle
     * @param row from the topmost, 0
     */
    record Label(long x, int row, String words) {
        long from() {
            return x - (long) LETTER * words.length() / 2;
        }

        long to() {
            return x + (long) LETTER * words.length() / 2;
        }

        private boolean meets(Label other) {
            return row == other.row && from() - LETTER < other.to() && other.from() - LETTER < to();
        }
    }

    /** In the topmost row that has room; once only where the same is there already. */
    void add(long x, String words) {
        if (all.stream().anyMatch(each -> each.x() == x && each.words().equals(words))) {
            return;
        }
        int row = 0;
        while (all.stream().anyMatch(new Label(x, row, words)::meets)) {
            row++;
        }
        all.add(new Label(x, row, words));
    }

    List<Label> all() {
        return List.copyOf(all);
    }

    /** Rows below the first. */
    int more() {
        return all.stream().mapToInt(Label::row).max().orElse(0);
    }
}
