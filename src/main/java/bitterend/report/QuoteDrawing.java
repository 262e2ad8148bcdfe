package bitterend.report;

import bitterend.catalogue.Termination.Kind;
import bitterend.demand.EndWork;
import bitterend.demand.HungHardware;
import bitterend.demand.Measuring;
import bitterend.demand.SpliceCard;
import bitterend.quoting.QuoteLine;
import java.util.List;
import java.util.Optional;

/**
 * A small drawing of a quoted assembly, not to scale: its two ends by their kind, and the length with its two arrows at the
 * points that it is measured between.
 */
final class QuoteDrawing {
    private static final int WIDE = 620;
    private static final int HIGH = 96;
    private static final int AXIS = 30;
    private static final int DIMENSION = 66;
    private static final int MARGIN = 10;
    /** Room for what is at an end, beyond its last piece of hardware. */
    private static final int EYE = 70;

    private static final int LINK = 26;
    private static final int ARROW = 7;
    private static final int THICK = 5;

    private final Figures figures;
    private final QuoteLine line;
    private final SpliceCard card;

    private QuoteDrawing(Figures figures, QuoteLine line, SpliceCard card) {
        this.figures = figures;
        this.line = line;
        this.card = card;
    }

    /** As SVG; nothing for a line without a card. Of lines that are drawn alike it is the same. */
    static Optional<String> of(Figures figures, QuoteLine line) {
        return line.demanded().findCard().map(card -> new QuoteDrawing(figures, line, card).svg());
    }

    private String svg() {
        String measured = QuoteWords.measured(line);
        String length = figures.written(line.assembly().make().finished());
        BuySvg svg = new BuySvg(WIDE, HIGH, "how the length is measured: " + length + ", " + measured);
        int from;
        int to;
        if (card.ends().get(0).kind() == Kind.GROMMET) {
            ring(svg);
            from = WIDE / 2 - 112;
            to = WIDE / 2 + 112;
        } else {
            from = end(svg, true);
            to = end(svg, false);
            cut(svg);
        }
        dimension(svg, from, to, length + ", " + measured);
        return svg.toString();
    }

    private Measuring measuring() {
        return line.assembly().make().measuring();
    }

    /** Draws one end with the rope as far as the middle, and says where its length is measured from. */
    private int end(BuySvg svg, boolean left) {
        SpliceCard.End end = card.ends().get(left ? 0 : 1);
        List<HungHardware> hung = hardware(left ? 0 : 1);
        int out = MARGIN + hung.size() * LINK;
        int over = out;
        for (int i = 0; i < hung.size(); i++) {
            int outer = out - (i + 1) * LINK;
            svg.ellipse(x(left, outer + LINK / 2 + 2), AXIS, LINK / 2 + 2, 8, 2);
            over = hung.get(i).inLength() ? outer : over;
        }
        int own = drawn(svg, left, end, out);
        int measured = hung.stream().anyMatch(HungHardware::inLength) ? over : own;
        svg.words(x(left, out), AXIS - 18, left ? "start" : "end", left ? "A" : "B", BuySvg.Type.BOLD);
        return x(left, measured);
    }

    /** Draws what is made at the end, and says how far from the edge its own length is measured. */
    private int drawn(BuySvg svg, boolean left, SpliceCard.End end, int out) {
        boolean outside = measuring().between() == Measuring.Between.OUTSIDE;
        int throat = out + EYE;
        if (end.hasEye()) {
            loop(svg, left, out, throat, THICK);
            if (!end.eye().lining().isEmpty()) {
                loop(svg, left, out + THICK, throat - 16, 2);
            }
            rope(svg, left, throat);
            return outside ? out - 3 : end.eye().lining().isEmpty() ? out + 3 : out + 8;
        }
        if (end.kind() == Kind.FITTING) {
            svg.box(left ? out : WIDE - out - EYE, AXIS - 8, EYE, 16, "#ffffff", BuySvg.INK);
            svg.dot(x(left, out + 10), AXIS, true);
            rope(svg, left, throat);
            return out + 10;
        }
        rope(svg, left, out);
        svg.line(x(left, out), AXIS - 8, x(left, out), AXIS + 8, BuySvg.INK);
        return out;
    }

    private List<HungHardware> hardware(int end) {
        List<EndWork> work = line.demanded().work();
        return end < work.size() ? work.get(end).hardware() : List.of();
    }

    private static int x(boolean left, int fromEdge) {
        return left ? fromEdge : WIDE - fromEdge;
    }

    private static void loop(BuySvg svg, boolean left, int out, int throat, int thick) {
        int spread = thick == THICK ? 15 : 9;
        int tip = x(left, throat);
        int crown = x(left, out);
        int bend = x(left, out + (throat - out) / 3);
        svg.path(
                "M" + tip + "," + AXIS + " C" + bend + "," + (AXIS - spread - 6) + " " + crown + "," + (AXIS - spread)
                        + " " + crown + "," + AXIS + " C" + crown + "," + (AXIS + spread) + " " + bend + ","
                        + (AXIS + spread + 6) + " " + tip + "," + AXIS,
                thick);
    }

    private static void rope(BuySvg svg, boolean left, int from) {
        svg.path("M" + x(left, from) + "," + AXIS + " L" + x(left, WIDE / 2 - 6) + "," + AXIS, THICK);
    }

    /** The rope between the ends is broken off. */
    private static void cut(BuySvg svg) {
        int middle = WIDE / 2;
        svg.line(middle - 9, AXIS + 9, middle - 3, AXIS - 9, BuySvg.INK);
        svg.line(middle + 3, AXIS + 9, middle + 9, AXIS - 9, BuySvg.INK);
    }

    private void ring(BuySvg svg) {
        svg.ellipse(WIDE / 2, AXIS, 114, 22, THICK);
        if (measuring().between() == Measuring.Between.CIRCUMFERENCE) {
            svg.ellipse(WIDE / 2, AXIS, 106, 15, 1);
        }
    }

    private static void dimension(BuySvg svg, int from, int to, String words) {
        svg.line(from, AXIS + 2, from, DIMENSION + 6, BuySvg.LINE);
        svg.line(to, AXIS + 2, to, DIMENSION + 6, BuySvg.LINE);
        svg.line(from, DIMENSION, to, DIMENSION, BuySvg.LINE);
        svg.line(from, DIMENSION, from + ARROW, DIMENSION - 4, BuySvg.LINE);
        svg.line(from, DIMENSION, from + ARROW, DIMENSION + 4, BuySvg.LINE);
        svg.line(to, DIMENSION, to - ARROW, DIMENSION - 4, BuySvg.LINE);
        svg.line(to, DIMENSION, to - ARROW, DIMENSION + 4, BuySvg.LINE);
        svg.words(WIDE / 2, DIMENSION + 20, "middle", words, BuySvg.Type.BOLD);
    }
}
