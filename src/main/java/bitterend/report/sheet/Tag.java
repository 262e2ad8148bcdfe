package bitterend.report.sheet;

import java.util.List;

/**
 * A tag for a piece or for an assembly of several pieces.
 *
 * @param title the piece or the assembly
 * @param kind {@code piece}, {@code assembly} with its serial, or {@code rest of the reel}
 * @param mark which plan it is of; empty for nothing
 * @param measure its lengths, or how many legs it has
 * @param lines what else is printed, most important first
 * @param code the QR code
 */
public record Tag(String title, String kind, String mark, String measure, List<String> lines, QrCode code) {
    /** More than so many characters do not go on the usual label in its usual type. */
    private static final int USUAL = 190;

    private static final int MOST_LINES = 6;

    public Tag {
        lines = List.copyOf(lines);
    }

    /** Whether it is set in small type. */
    public boolean isLong() {
        return lines.size() > MOST_LINES
                || lines.stream().mapToInt(String::length).sum() > USUAL;
    }
}
