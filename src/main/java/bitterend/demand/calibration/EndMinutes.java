package bitterend.demand.calibration;

import bitterend.demand.DemandModel;
import bitterend.demand.EndWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How long the shop took over one end, beside what it counts on.
 *
 * @param termination id of the termination
 * @param rope id of the rope
 * @param ends how many ends minutes were booked for
 * @param mean minutes of one end, to the nearest
 * @param set minutes of one end in the splices of the shop; 0 where it has set none
 */
public record EndMinutes(String termination, String rope, int ends, int mean, int set) {
    private static final int SECONDS = 60;

    /** What one end took, in whole seconds. */
    private record Took(EndWork end, String rope, long seconds) {}

    /**
     * By termination and rope. Minutes are booked for a whole assembly: each of its ends has a share by the minutes that are set
     * for it, or as much as the other where none are set for either. An end that is left plain has none, and neither has one
     * without minutes beside one with.
     */
    public static List<EndMinutes> of(DemandModel model, List<MeasuredAssembly> measured) {
        Map<String, List<Took>> groups = new TreeMap<>();
        measured.stream()
                .filter(each -> each.minutes() > 0)
                .flatMap(each -> shares(each, model.pieces(each.assembly()).work()).stream())
                .forEach(took -> groups.computeIfAbsent(
                                took.end().termination() + "\n" + took.rope(), any -> new ArrayList<>())
                        .add(took));
        return groups.values().stream().map(EndMinutes::mean).toList();
    }

    private static List<Took> shares(MeasuredAssembly measured, List<EndWork> work) {
        List<EndWork> made =
                work.stream().filter(end -> !end.termination().equals("plain")).toList();
        boolean set = made.stream().anyMatch(end -> end.minutes() > 0);
        List<EndWork> timed =
                made.stream().filter(end -> !set || end.minutes() > 0).toList();
        long parts = timed.stream().mapToLong(end -> set ? end.minutes() : 1).sum();
        List<Took> shares = new ArrayList<>();
        long left = (long) measured.minutes() * SECONDS;
        long partsLeft = parts;
        for (EndWork end : timed) {
            long own = set ? end.minutes() : 1;
            long share = left * own / partsLeft;
            left -= share;
            partsLeft -= own;
            shares.add(new Took(end, measured.assembly().ropes().get(0), share));
        }
        return shares;
    }

    private static EndMinutes mean(List<Took> group) {
        long unit = (long) SECONDS * group.size();
        long all = group.stream().mapToLong(Took::seconds).sum();
        Took first = group.get(0);
        return new EndMinutes(
                first.end().termination(),
                first.rope(),
                group.size(),
                Math.toIntExact((2 * all + unit) / (2 * unit)),
                first.end().minutes());
    }
}
