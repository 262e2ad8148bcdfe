package bitterend.demand;

import bitterend.demand.Measuring.Points;
import bitterend.finding.Nearest;
import java.util.ArrayList;
import java.util.List;

/** Which hardware lies between the two points that a finished length is measured between. */
final class MeasuredPoints {
    private static final int AMBIGUOUS = -2;

    private final Points points;

    MeasuredPoints(Points points) {
        this.points = points;
    }

    /** Both ends, each measured over its hardware up to its point; a point that it has not is the end itself. */
    List<MadeEnd> over(List<MadeEnd> ends) {
        return List.of(
                ends.get(0).measuredOver(Math.max(0, count(points.a(), ends.get(0)))),
                ends.get(1).measuredOver(Math.max(0, count(points.b(), ends.get(1)))));
    }

    /** Whether an order whose ends carry hardware names the points, and those it names are there; if not, that is told. */
    boolean check(Leg leg, Problems problems) {
        int before = problems.findings().size();
        tell(leg, problems);
        return problems.findings().size() == before;
    }

    private void tell(Leg leg, Problems problems) {
        boolean hung = leg.ends().stream().anyMatch(end -> !end.hardware().isEmpty());
        if (!hung && points.equals(Points.OVER_ALL)) {
            problems.error(
                    "measured",
                    points.words(),
                    "hardware on an end, such as with SB12; without any: pin to pin, flat or outside");
        } else if (hung && points.equals(Points.NONE)) {
            problems.error(
                    "measured",
                    leg.make().measuring().words(),
                    "two points, for hardware hangs on an end: over all, "
                            + example(leg)
                            + ", or end to end for the rope alone");
        } else if (!points.equals(Points.NONE)) {
            tell(points.a(), leg.ends().get(0), problems);
            tell(points.b(), leg.ends().get(1), problems);
        }
    }

    private static String example(Leg leg) {
        return last(leg.ends().get(0)) + " to " + last(leg.ends().get(1));
    }

    private static String last(MadeEnd end) {
        List<String> names = names(end);
        return names.get(names.size() - 1);
    }

    private static void tell(String point, MadeEnd end, Problems problems) {
        int count = count(point, end);
        if (count == AMBIGUOUS) {
            problems.error("measured", point, "the id of one of them: " + end.name() + " has two of that kind");
        } else if (count < 0) {
            List<String> names = names(end);
            problems.error(
                    "measured",
                    point,
                    "a point of " + end.name() + ": " + String.join(", ", names) + Nearest.hint(point, names));
        }
    }

    /** How much of an end's hardware lies this side of a point; negative for a point that it has not. */
    private static int count(String point, MadeEnd end) {
        if (point.isEmpty() || point.equals(Points.END)) {
            return 0;
        }
        if (point.equals(Points.OUTERMOST)) {
            return end.hardware().size();
        }
        int found = -1;
        for (int n = 1; n <= end.hardware().size(); n++) {
            HungHardware each = end.hardware().get(n - 1);
            if (each.hardware().id().equalsIgnoreCase(point)) {
                return n;
            }
            if (each.hardware().kind().word().equals(point)) {
                found = found == -1 ? n : AMBIGUOUS;
            }
        }
        return found;
    }

    /** What a point of an end may be called. */
    private static List<String> names(MadeEnd end) {
        List<String> names = new ArrayList<>(List.of(Points.END));
        end.hardware().forEach(each -> {
            String id = each.hardware().id();
            names.add(id.isEmpty() ? each.hardware().kind().word() : id);
        });
        return names;
    }
}
