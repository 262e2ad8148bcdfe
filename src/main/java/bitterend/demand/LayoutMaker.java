package bitterend.demand;

import bitterend.catalogue.LayoutMark;
import bitterend.catalogue.LayoutMark.Place;
import bitterend.catalogue.Termination.Kind;
import bitterend.catalogue.Termination.What;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.measure.FineLength;
import bitterend.measure.LengthsInWords;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lays out the marks of the ends of a leg. */
final class LayoutMaker {
    private static final String FOLLOW = "Lengths only: follow the rope maker's current instructions.";
    static final String TAIL_MARK = "tail mark";
    private static final String THROAT_MARK = "throat mark";

    private final Leg leg;
    private final FreeRope rope;

    LayoutMaker(Leg leg) {
        this.leg = leg;
        this.rope = new FreeRope(leg);
    }

    SpliceLayout layout(MadeEnd end) {
        List<Mark> marks = new ArrayList<>();
        marks.addAll(end.termination().layout().marks().isEmpty() ? usual(end) : stated(end));
        marks.addAll(new ClipMarks(end).marks());
        marks.addAll(secondThroat(end));
        String caution = end.caution(leg.rope());
        String unchecked = Unchecked.sentence(end, leg.rope());
        return new SpliceLayout(
                end.name(),
                end.termination().name(),
                marks,
                counts(end),
                Stream.of(caution.startsWith(MadeEnd.FOLLOW_THE_MAKER) ? "" : caution, FOLLOW, unchecked)
                        .filter(sentence -> !sentence.isEmpty())
                        .collect(Collectors.joining(" ")));
    }

    private List<Sentence> counts(MadeEnd end) {
        List<Sentence> counts = new ArrayList<>();
        BenchCounts.of(end, leg.rope()).forEach(count -> counts.add(LengthsInWords.sentence(count)));
        boolean knotted = end.termination().layout().marks().stream().anyMatch(LayoutMaker::isSlipKnot);
        if (knotted && SlipKnot.fromThroat(end, rope).isEmpty()) {
            counts.add(0, SlipKnot.held(end));
        }
        return counts;
    }

    /** The marks of the row. */
    private List<Mark> stated(MadeEnd end) {
        Map<String, FineLength> places = new HashMap<>();
        places.put(LayoutMark.CUT_END, FineLength.ZERO);
        List<Mark> marks = new ArrayList<>();
        for (LayoutMark mark : end.termination().layout().marks()) {
            FineLength from = places.getOrDefault(mark.from(), FineLength.ZERO);
            FineLength usual = mark.distance().length(end.yardsticks());
            if (isSlipKnot(mark) && SlipKnot.fromThroat(end, rope).isEmpty()) {
                continue;
            }
            FineLength distance = distance(mark, usual, from, end);
            FineLength place = from.plus(distance);
            places.put(mark.name(), place);
            marks.add(new Mark(
                    mark.name(),
                    mark.on(),
                    Sentence.of(mark.from()),
                    distance,
                    mark.isOnCore() ? null : place,
                    purpose(mark, distance.equals(usual), end)));
        }
        return marks;
    }

    private static Sentence purpose(LayoutMark mark, boolean usual, MadeEnd end) {
        if (usual) {
            return LengthsInWords.sentence(mark.purpose());
        }
        Sentence nearer = LengthsInWords.sentence(mark.purpose() + "; nearer than the usual ")
                .and(mark.distance().text() + ", ");
        return isSlipKnot(mark) ? nearer.and(SlipKnot.clearWords(end)) : nearer.and("the rope still free ends here");
    }

    private static boolean isSlipKnot(LayoutMark mark) {
        return mark.name().equals(LayoutMark.SLIP_KNOT);
    }

    private FineLength distance(LayoutMark mark, FineLength usual, FineLength from, MadeEnd end) {
        if (isSlipKnot(mark)) {
            FineLength last = end.toThroat().plus(SlipKnot.fromThroat(end, rope).orElse(FineLength.ZERO));
            boolean nearer = from.plus(usual).compareTo(last) > 0;
            return nearer ? last.roundedDown().fine().minus(from) : usual;
        }
        FineLength left = end.toThroat().plus(rope.free(end)).minus(from);
        return mark.place() == Place.FREE_ROPE && usual.compareTo(left) > 0 ? left : usual;
    }

    /** How far beyond the throat the last mark of an end lies that cannot lie nearer. */
    static FineLength reach(MadeEnd end) {
        Map<String, FineLength> places = new HashMap<>();
        places.put(LayoutMark.CUT_END, FineLength.ZERO);
        FineLength last = FineLength.ZERO;
        for (LayoutMark mark : end.termination().layout().marks()) {
            FineLength place =
                    mark.distance().length(end.yardsticks()).plus(places.getOrDefault(mark.from(), FineLength.ZERO));
            places.put(mark.name(), place);
            last = mark.place() == Place.FIXED && place.compareTo(last) > 0 ? place : last;
        }
        return last.minus(end.toThroat());
    }

    /** A row without a layout of its own has a tail, and a throat behind the eye. */
    private static List<Mark> usual(MadeEnd end) {
        FineLength tail = end.length(What.TRIM).plus(end.length(What.TAIL));
        List<Mark> marks = new ArrayList<>();
        if (tail.isPositive()) {
            marks.add(new Mark(TAIL_MARK, "rope", LayoutMark.CUT_END, tail, tail, "the tail ends and the eye begins"));
        }
        if (end.hasEye()) {
            FineLength round = end.eye().round();
            marks.add(new Mark(
                    THROAT_MARK,
                    "rope",
                    tail.isPositive() ? TAIL_MARK : LayoutMark.CUT_END,
                    round,
                    round.plus(tail),
                    "the eye ends: both marks meet here"));
        }
        return marks;
    }

    /**
     * The throat of the second eye, measured from the finished first end: that takes rounding, spare and margin out of the
     * finished length. From there to the bearing point of end A lie the clear rope, the first bearing and what the second
     * splice will take up.
     */
    private List<Mark> secondThroat(MadeEnd end) {
        MadeEnd first = leg.ends().get(0);
        boolean measurable =
                first.termination().kind() != Kind.JOIN && !end.name().equals(first.name());
        if (!measurable || !end.hasEye()) {
            return List.of();
        }
        FineLength fromBearing = rope.finished()
                .plus(first.throatToBearing(leg.make().measuring()))
                .plus(end.length(What.TAKE_UP));
        return List.of(
                new Mark(
                        "throat, measured",
                        "rope",
                        first.bearingWords(leg.make().measuring()),
                        fromBearing,
                        null,
                        Sentence.of(
                                "takes rounding, spare and margin out of the finished length: set this throat here, and trim only"
                                        + " what lies beyond the tail mark; if the tail comes out shorter than its mark, stop")));
    }
}
