package bitterend.report;

import bitterend.catalogue.Termination.Kind;
import bitterend.demand.EndWork;
import bitterend.demand.HungHardware;
import bitterend.demand.Measuring;
import bitterend.demand.SpliceCard;
import bitterend.quoting.QuoteLine;
import bitterend.report.page.Wording;
import java.util.List;
import java.util.Optional;

/**
 * A small drawing of a quoted assembly, not to scale: its two ends by their kind, its legs where it has several, and the
 * length with its two arrows at the points that it is measured between; below that its rope and its ends in words, for an
 * eye of another size is drawn no otherwise.
 */
final class QuoteDrawing {
    private static final int WIDE = 620;
    private static final int AXIS = 30;
    private static final int BELOW = 36;
    private static final int MARGIN = 10;
    /** Room for what is at an end, beyond its last piece of hardware. */
    private static final int EYE = 70;

    private static final int LINK = 26;
    private static final int ARROW = 7;
    private static final int THICK = 5;
    /** More legs than these are said in words alone. */
    private static final int MOST_LEGS = 4;

    private static final int APART = 40;
    /** Of a line of words. */
    private static final int ROW = 18;
    /** Characters that have room in it. */
    private static final int MOST = 110;

    private final QuoteLine line;
    private final SpliceCard card;
    private final List<String> words;
    private final int legs;
    private final int drawn;

    private QuoteDrawing(QuoteLine line, SpliceCard card, List<String> made) {
        this.line = line;
        this.card = card;
        words = made.stream()
                .flatMap(each -> Wording.wrapped(each, MOST).stream())
                .toList();
        legs = line.assembly().ordered().legs();
        drawn = Math.min(legs, MOST_LEGS);
    }

    /**
     * As SVG; nothing for a line without a card. Of lines that are drawn alike it is the same.
     *
     * @param length what stands at the dimension
     * @param made its rope, and its ends in words
     */
    static Optional<String> of(QuoteLine line, String length, List<String> made) {
        return line.demanded().findCard().map(card -> new QuoteDrawing(line, card, made).svg(length));
    }

    private String svg(String length) {
        String measured = length + (legs == 1 ? "" : " each leg") + ", " + QuoteWords.measured(line);
        int dimension = y(drawn - 1) + BELOW;
        BuySvg svg = new BuySvg(
                WIDE,
                dimension + 30 + words.size() * ROW,
                "how the length is measured: " + (legs == 1 ? "" : legs + " legs, ") + measured);
        int from;
        int to;
        if (card.ends().get(0).kind() == Kind.GROMMET) {
            ring(svg);
            from = WIDE / 2 - 112;
            to = WIDE / 2 + 112;
        } else {
            from = ends(svg, true);
            to = ends(svg, false);
            legs(svg);
        }
        if (legs > 1) {
            svg.words(WIDE / 2, 14, "middle", legs + " legs", BuySvg.Type.BOLD);
        }
        dimension(svg, from, to, dimension, measured);
        for (int row = 0; row < words.size(); row++) {
            svg.words(WIDE / 2, dimension + 20 + (row + 1) * ROW, "middle", words.get(row), BuySvg.Type.SMALL);
        }
        return svg.toString();
    }

    /** Where a leg lies. */
    private int y(int leg) {
        return AXIS + leg * APART;
    }

    /** Where a leg lies at one of its ends: all together where something holds them all. */
    private int y(boolean left, int leg) {
        return gathered(left) ? AXIS + (drawn - 1) * APART / 2 : y(leg);
    }

    /** Whether all legs hang in one piece of hardware there. */
    private boolean gathered(boolean left) {
        return legs > 1
                && hardware(left ? 0 : 1).stream().anyMatch(hung -> hung.shared() || hung.countFor(legs) < legs);
    }

    private Measuring measuring() {
        return line.assembly().make().measuring();
    }

    /** Draws the ends of all legs on one side, and says where their length is measured from. */
    private int ends(BuySvg svg, boolean left) {
        int measured = 0;
        for (int leg = 0; leg < (gathered(left) ? 1 : drawn); leg++) {
            measured = end(svg, left, y(left, leg));
        }
        svg.words(x(left, out(left)), y(left, 0) - 18, left ? "start" : "end", left ? "A" : "B", BuySvg.Type.BOLD);
        return x(left, measured);
    }

    /** How far from the edge the rope begins, beyond what hangs on it. */
    private int out(boolean left) {
        return MARGIN + hardware(left ? 0 : 1).size() * LINK;
    }

    /** Draws one end, and says how far from the edge its length is measured from. */
    private int end(BuySvg svg, boolean left, int y) {
        List<HungHardware> hung = hardware(left ? 0 : 1);
        int out = out(left);
        int over = out;
        for (int i = 0; i < hung.size(); i++) {
            int outer = out - (i + 1) * LINK;
            svg.ellipse(x(left, outer + LINK / 2 + 2), y, LINK / 2 + 2, 8, 2);
            over = hung.get(i).inLength() ? outer : over;
        }
        int own = drawn(svg, left, card.ends().get(left ? 0 : 1), y);
        return hung.stream().anyMatch(HungHardware::inLength) ? over : own;
    }

    /** Draws what is made at the end, and says how far from the edge its own length is measured. */
    private int drawn(BuySvg svg, boolean left, SpliceCard.End end, int y) {
        boolean outside = measuring().between() == Measuring.Between.OUTSIDE;
        int out = out(left);
        int throat = out + EYE;
        if (end.hasEye()) {
            loop(svg, left, out, throat, y, THICK);
            if (!end.eye().lining().isEmpty()) {
                loop(svg, left, out + THICK, throat - 16, y, 2);
            }
            return outside ? out - 3 : end.eye().lining().isEmpty() ? out + 3 : out + 8;
        }
        if (end.kind() == Kind.FITTING) {
            svg.box(left ? out : WIDE - out - EYE, y - 8, EYE, 16, "#ffffff", BuySvg.INK);
            svg.dot(x(left, out + 10), y, true);
            return out + 10;
        }
        svg.line(x(left, out), y - 8, x(left, out), y + 8, BuySvg.INK);
        return out;
    }

    /** How far from the edge the plain rope begins. */
    private int throat(boolean left) {
        SpliceCard.End end = card.ends().get(left ? 0 : 1);
        return out(left) + (end.hasEye() || end.kind() == Kind.FITTING ? EYE : 0);
    }

    private List<HungHardware> hardware(int end) {
        List<EndWork> work = line.demanded().work();
        return end < work.size() ? work.get(end).hardware() : List.of();
    }

    private static int x(boolean left, int fromEdge) {
        return left ? fromEdge : WIDE - fromEdge;
    }

    private static void loop(BuySvg svg, boolean left, int out, int throat, int y, int thick) {
        int spread = thick == THICK ? 15 : 9;
        int tip = x(left, throat);
        int crown = x(left, out);
        int bend = x(left, out + (throat - out) / 3);
        svg.path(
                "M" + tip + "," + y + " C" + bend + "," + (y - spread - 6) + " " + crown + "," + (y - spread) + " "
                        + crown + "," + y + " C" + crown + "," + (y + spread) + " " + bend + "," + (y + spread + 6)
                        + " " + tip + "," + y,
                thick);
    }

    /** The rope of each leg, broken off between its ends. */
    private void legs(BuySvg svg) {
        int middle = WIDE / 2;
        for (int leg = 0; leg < drawn; leg++) {
            int y = (y(true, leg) + y(false, leg)) / 2;
            svg.path("M" + throat(true) + "," + y(true, leg) + " L" + (middle - 6) + "," + y, THICK);
            svg.path("M" + x(false, throat(false)) + "," + y(false, leg) + " L" + (middle + 6) + "," + y, THICK);
            svg.line(middle - 9, y + 9, middle - 3, y - 9, BuySvg.INK);
            svg.line(middle + 3, y + 9, middle + 9, y - 9, BuySvg.INK);
        }
    }

    private void ring(BuySvg svg) {
        svg.ellipse(WIDE / 2, AXIS, 114, 22, THICK);
        if (measuring().between() == Measuring.Between.CIRCUMFERENCE) {
            svg.ellipse(WIDE / 2, AXIS, 106, 15, 1);
        }
    }

    private void dimension(BuySvg svg, int from, int to, int y, String words) {
        svg.line(from, y(true, drawn - 1) + 2, from, y + 6, BuySvg.LINE);
        svg.line(to, y(false, drawn - 1) + 2, to, y + 6, BuySvg.LINE);
        svg.line(from, y, to, y, BuySvg.LINE);
        svg.line(from, y, from + ARROW, y - 4, BuySvg.LINE);
        svg.line(from, y, from + ARROW, y + 4, BuySvg.LINE);
        svg.line(to, y, to - ARROW, y - 4, BuySvg.LINE);
        svg.line(to, y, to - ARROW, y + 4, BuySvg.LINE);
        svg.words(WIDE / 2, y + 20, "middle", words, BuySvg.Type.BOLD);
    }
}
