package bitterend.report;

import bitterend.demand.SpliceLayout;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.measure.FineLength;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The marks of an end as they are set with a tape, the same on every page. Each place is rounded once, to the nearest
 * millimetre or sixteenth of an inch; the distance from one mark to the next is that between the rounded places, so that
 * who goes from mark to mark and who measures from the cut end come to the same point.
 *
 * @param end {@code end A}, {@code end B}, or where else the marks lie
 * @param name how the end is made
 * @param lines the marks in the order in which they are set
 */
public record BenchMarks(String end, String name, List<Line> lines) {
    public BenchMarks {
        lines = List.copyOf(lines);
    }

    /**
     * One mark.
     *
     * @param mark what it is, exact
     * @param place how far from where its chain of marks begins: the cut end, or the first mark on a drawn core; in steps
     *     of the tape
     * @param distance how far from the mark before, in steps of the tape
     */
    public record Line(Mark mark, long place, long distance) {
        /** Whether its place counts from the cut end. */
        public boolean isFromCutEnd() {
            return mark.findFromCutEnd().isPresent();
        }
    }

    /** The marks of a layout. */
    public static BenchMarks of(SpliceLayout layout, Figures figures) {
        Map<String, FineLength> places = new HashMap<>();
        List<Line> lines = new ArrayList<>();
        for (Mark mark : layout.marks()) {
            boolean chained = mark.findFromCutEnd().isPresent()
                    == isFromCutEnd(layout, mark.from().exact());
            FineLength before = chained ? places.getOrDefault(mark.from().exact(), FineLength.ZERO) : FineLength.ZERO;
            FineLength place = before.plus(mark.distance());
            places.put(mark.name(), place);
            long at = figures.steps(place);
            lines.add(new Line(mark, at, at - figures.steps(before)));
        }
        return new BenchMarks(layout.end(), layout.name(), lines);
    }

    /** A drawn core starts a chain of its own: nothing on it is measured from the cut end. */
    private static boolean isFromCutEnd(SpliceLayout layout, String name) {
        return layout.marks().stream()
                .filter(mark -> mark.name().equals(name))
                .findFirst()
                .map(mark -> mark.findFromCutEnd().isPresent())
                .orElse(true);
    }
}
