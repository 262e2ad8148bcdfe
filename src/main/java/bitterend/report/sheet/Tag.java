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
    /** The kind of a tag for a piece. */
    static final String PIECE = "piece";

    public Tag {
        lines = List.copyOf(lines);
    }
}
