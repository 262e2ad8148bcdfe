package bitterend.report.sheet;

import bitterend.demand.SpliceCard.How;
import bitterend.report.Fact;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The splice card of one order line, every value as it is printed, in the order of the work.
 *
 * @param title order and line
 * @param order who wants what, and when
 * @param rope what it is made of
 * @param lengths how long it is to come out, how that is measured, and what passes
 * @param cuts its pieces, each with a row of boxes to fill in
 * @param notes what is true of single pieces or of the counter
 * @param before what to do before the cut; empty for nothing
 * @param fetch thimbles, fittings, clips, twine for one piece
 * @param drawing the piece before and after
 * @param ends how each end is marked and made; at least one
 * @param ways how a finished piece can be measured
 * @param booking what becomes of a piece that does not pass, and the command that books what the boxes say
 */
public record CardSheet(
        String title,
        List<Fact> order,
        List<Fact> rope,
        List<Fact> lengths,
        List<Cut> cuts,
        List<String> notes,
        String before,
        List<Fact> fetch,
        CardDrawing drawing,
        List<EndBlock> ends,
        List<How> ways,
        String booking) {
    private static final int MOST_TOGETHER = 8;

    public CardSheet {
        order = List.copyOf(order);
        rope = List.copyOf(rope);
        lengths = List.copyOf(lengths);
        cuts = List.copyOf(cuts);
        notes = List.copyOf(notes);
        fetch = List.copyOf(fetch);
        ends = List.copyOf(ends);
        ways = List.copyOf(ways);
    }

    /** Whether its boxes are few enough to stay on one page. */
    public boolean isShort() {
        return cuts.size() <= MOST_TOGETHER;
    }

    /** Heads the boxes to tick: {@code slack / on pins}. */
    public String howMeasured() {
        return ways.stream()
                .map(how -> switch (how) {
                    case SLACK -> "slack";
                    case PINS -> "on pins";
                    case TENSION -> "under tension";
                })
                .collect(Collectors.joining(" / "));
    }

    /** Whether there is anything to see: not where both ends are only cut. */
    public boolean isDrawn() {
        return ends.stream()
                .anyMatch(end -> !end.marks().isEmpty() || !end.facts().isEmpty());
    }

    /** A piece: where it comes from and how long it is cut. */
    public record Cut(String piece, String length, String reel, String lot) {}

    /**
     * How one end is made, or both where they are alike.
     *
     * @param heading {@code End A}, {@code Both ends}, {@code Ring}, {@code Along the piece}
     * @param made name of the termination
     * @param facts its eye, its pin, its ratio, what it takes up
     * @param marks in the order in which they are set
     * @param throat the second throat, from the finished first end; empty for the first end
     * @param counts what is counted instead of measured
     * @param caution what to read before making it; empty for nothing
     */
    public record EndBlock(
            String heading,
            String made,
            List<String> facts,
            List<LayoutSheet.MarkLine> marks,
            String throat,
            List<String> counts,
            String caution) {
        /** What stands in place of counts that are those of end A. */
        private static final String AS_BEFORE = "counts and steps as at end A";

        /** Two ends alike. */
        static final String BOTH = "Both ends";

        /** A ring has no ends. */
        static final String RING = "Ring";

        public EndBlock {
            facts = List.copyOf(facts);
            marks = List.copyOf(marks);
            counts = List.copyOf(counts);
        }

        /** Whether its marks lie along the piece, not at an end of it. */
        boolean isAlong() {
            return heading.startsWith("Along");
        }

        /** Which end, in a word or two: {@code A}, {@code both}. */
        String shortly() {
            if (isAlong()) {
                return "along";
            }
            return heading.equals(BOTH)
                    ? "both"
                    : heading.equals(RING) ? "ring" : heading.substring(heading.lastIndexOf(' ') + 1);
        }

        /** The same, its counts not said twice where the end before has them all. */
        EndBlock after(EndBlock before) {
            boolean said = counts.size() > 1 && counts.equals(before.counts);
            return said ? new EndBlock(heading, made, facts, marks, throat, List.of(AS_BEFORE), caution) : this;
        }

        /** The same end by another name. */
        EndBlock named(String other) {
            return new EndBlock(other, made, facts, marks, throat, counts, caution);
        }

        /** The same without the second throat. */
        EndBlock first() {
            return new EndBlock(heading, made, facts, marks, "", counts, caution);
        }
    }
}
