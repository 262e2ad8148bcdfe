package bitterend.demand;

import bitterend.catalogue.LayoutMark;
import bitterend.catalogue.Termination.What;
import bitterend.demand.Assembly.WantedMark;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.measure.FineLength;
import java.util.List;

/** Where the places to mark on the finished assembly lie on the piece before it is spliced. */
final class MarksAlong {
    private final Leg leg;
    private final MadeEnd endA;
    private final FineLength bearingA;
    private final FineLength bearingB;
    private final FineLength clear;

    MarksAlong(Leg leg) {
        this.leg = leg;
        this.endA = leg.ends().get(0);
        Measuring measuring = leg.make().measuring();
        this.bearingA = endA.throatToBearing(measuring);
        this.bearingB = leg.ends().get(1).throatToBearing(measuring);
        this.clear = leg.standingPart().clear(leg.make().finished().exact());
    }

    SpliceLayout layout() {
        List<Mark> marks = leg.make().asked().marks().stream().map(this::mark).toList();
        return new SpliceLayout("along the piece", "marks of the finished assembly", marks, List.of(), "");
    }

    /** Whether a place lies on clear rope, where it can be marked before splicing. */
    boolean isOnClearRope(WantedMark wanted) {
        FineLength place = fromBearing(wanted).minus(bearingA);
        return !place.isNegative() && place.compareTo(clear) <= 0;
    }

    /** Tail, eye and take-up of end A lie between its cut end and the clear rope. */
    private Mark mark(WantedMark wanted) {
        FineLength place = endA.toThroat()
                .plus(endA.length(What.TAKE_UP))
                .plus(fromBearing(wanted))
                .minus(bearingA);
        return new Mark(wanted.name(), "rope", LayoutMark.CUT_END + " of end A", place, place, "");
    }

    private FineLength fromBearing(WantedMark wanted) {
        FineLength between = clear.plus(bearingA).plus(bearingB);
        return between.times(wanted.part()).plus(leg.make().measuring().slack(wanted.from()));
    }
}
