package bitterend.report;

import java.util.List;

/** The amounts of a derivation as text, one under another with their decimal points in line. */
final class AlignedAmounts {
    private final List<String> lines;
    private final String sum;
    private final int decimals;

    private AlignedAmounts(List<String> lines, String sum) {
        decimals = Math.max(
                decimals(sum),
                lines.stream().mapToInt(AlignedAmounts::decimals).max().orElse(0));
        this.lines = lines.stream().map(this::padded).toList();
        this.sum = padded(sum);
    }

    static AlignedAmounts of(PrintedAmounts amounts) {
        return new AlignedAmounts(amounts.lines(), amounts.sum());
    }

    String line(int index) {
        return lines.get(index);
    }

    String sum() {
        return sum;
    }

    int width() {
        return Math.max(
                sum.length(), lines.stream().mapToInt(String::length).max().orElse(0));
    }

    /** Spaces that put a title of the column above the whole units. */
    String unitPadding() {
        return " ".repeat(decimals == 0 ? 0 : decimals + 1);
    }

    private String padded(String amount) {
        int missing = decimals - decimals(amount);
        boolean whole = decimals(amount) == 0;
        return amount + " ".repeat(whole && decimals > 0 ? missing + 1 : missing);
    }

    private static int decimals(String amount) {
        int point = amount.indexOf('.');
        return point < 0 ? 0 : amount.length() - point - 1;
    }
}
