package bitterend.report;

import bitterend.packing.Horizon.Line;
import bitterend.packing.Horizon.Waiting;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Says what is not cut ahead while rope is short, until when, and what of it finds no rope at all. */
public final class WaitingWords {
    private WaitingWords() {}

    /** What waits of a rope, and the order lines it is of. */
    public static String of(Waiting waiting) {
        List<String> lines = lines(waiting);
        return sentence(waiting) + (lines.isEmpty() ? "" : " Order lines: " + String.join("; ", lines) + ".");
    }

    /** The same, where the order lines get one line of the screen. */
    static String brief(Waiting waiting) {
        List<String> lines = lines(waiting);
        return sentence(waiting) + (lines.isEmpty() ? "" : " " + Brief.list("Order lines:", lines, "more", 1));
    }

    /** What the rope in the house and on order does not hold, and what would help; empty where it holds all. */
    static List<String> undone(Waiting waiting) {
        List<String> said = new ArrayList<>();
        for (Line line : waiting.undone()) {
            int undone = line.undone().size();
            boolean all = undone == line.pieces();
            said.add(
                    "Not planned: " + (all ? "" : undone + " of ") + FindingsPage.count(line.pieces(), "piece") + " of "
                            + line.line() + due(line) + ", not cut ahead. The " + waiting.rope()
                            + " in the house and on order does not hold " + (undone == 1 ? "it" : "them")
                            + " beside the other work: receive more in time, or agree on another day.");
        }
        return said;
    }

    /** What is said of one piece that waits. */
    public static Document about(String piece, Waiting waiting) {
        Writing page = new Writing();
        page.title("Piece " + piece + ": not cut ahead");
        page.paragraph(of(waiting));
        undone(waiting).forEach(page::paragraph);
        return page.document();
    }

    private static String sentence(Waiting waiting) {
        int pieces = waiting.pieces().size();
        return FindingsPage.count(pieces, "piece") + " of " + waiting.rope() + (pieces == 1 ? " is" : " are")
                + " not cut ahead: what is in the house is kept for what comes first " + until(waiting) + ".";
    }

    private static List<String> lines(Waiting waiting) {
        return waiting.lines().stream()
                .map(line -> line.line() + " (" + FindingsPage.count(line.pieces(), "piece") + due(line) + ")")
                .toList();
    }

    private static String due(Line line) {
        return line.due().equals(LocalDate.MAX) ? "" : ", due " + line.due();
    }

    private static String until(Waiting waiting) {
        if (!waiting.order().isEmpty()) {
            return "until " + waiting.order() + ", counted on from " + waiting.until();
        }
        return "and none is on order"
                + (waiting.until().equals(LocalDate.MAX)
                        ? ""
                        : "; ordered today it is counted on from " + waiting.until());
    }
}
