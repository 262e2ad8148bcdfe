package bitterend.demand;

import bitterend.catalogue.Termination.What;
import bitterend.measure.FineLength;
import java.util.List;

/** Reads the take-up off an assembly that was cut, made and measured. */
final class TakeUpReader {
    /** The cut length, less everything in it but take-up; ends that are not spliced take nothing up. */
    TakeUp read(Leg leg, FineLength cut, Problems problems) {
        List<MadeEnd> spliced = leg.ends().stream().filter(MadeEnd::isSpliced).toList();
        if (spliced.isEmpty()) {
            problems.warning("end a", leg.ends().get(0).termination().id(), "an end that is spliced or knotted");
            return TakeUp.unknown(problems.findings());
        }
        String termination = spliced.get(0).termination().id();
        if (spliced.stream().anyMatch(end -> !end.termination().id().equals(termination))) {
            problems.warning(
                    "end b",
                    spliced.get(1).termination().id(),
                    "one spliced end, or both alike: of two kinds neither take-up is known from the sum");
            return TakeUp.unknown(problems.findings());
        }
        FineLength accounted = leg.standingPart().clear(leg.make().finished().exact());
        for (MadeEnd end : leg.ends()) {
            accounted = accounted
                    .plus(end.hasEye() ? end.eye().round() : FineLength.ZERO)
                    .plus(end.length(What.TAIL))
                    .plus(end.length(What.TRIM))
                    .plus(end.length(What.RETURN));
        }
        FineLength band =
                spliced.stream().map(end -> end.length(What.TAKE_UP_SPREAD)).reduce(FineLength.ZERO, FineLength::plus);
        return new TakeUp(
                termination, spliced.size(), spliced.get(0).spec(), cut.minus(accounted), band, problems.findings());
    }
}
