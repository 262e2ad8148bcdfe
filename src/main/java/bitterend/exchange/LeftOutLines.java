package bitterend.exchange;

import bitterend.demand.Assembly;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Order lines that cannot be used as they stand. One of them never stops the others: it is left out, its whole matched set
 * with it, and the reader is told. A file that cannot be read as a whole still stops.
 */
final class LeftOutLines {
    private final List<Finding> told = new ArrayList<>();
    private final Set<String> places = new HashSet<>();

    LeftOutLines(Findings ofOrders) {
        for (Finding finding : ofOrders.sorted()) {
            if (finding.isError() && !finding.place().isEmpty()) {
                told.add(finding.leavingOut());
                places.add(place(finding.file(), finding.place()));
            } else {
                told.add(finding);
            }
        }
    }

    /** The lines that stay; of a set with a line left out none does. */
    List<OrderLine> staying(List<OrderLine> orders) {
        Set<String> sets = new HashSet<>();
        for (OrderLine line : orders) {
            if (isLeftOut(line) && !set(line).isEmpty()) {
                sets.add(set(line));
            }
        }
        List<OrderLine> staying = new ArrayList<>();
        for (OrderLine line : orders) {
            if (!isLeftOut(line) && sets.contains(set(line))) {
                Assembly.Origin origin = line.assembly().origin();
                told.add(Finding.error(
                                origin.file(), origin.place(), "set", set(line), "a set of which no line is left out")
                        .leavingOut());
            } else if (!isLeftOut(line)) {
                staying.add(line);
            }
        }
        return staying;
    }

    /** What the files of orders have to say, lines that are left out among it. */
    List<Finding> findings() {
        return List.copyOf(told);
    }

    private boolean isLeftOut(OrderLine line) {
        Assembly.Origin origin = line.assembly().origin();
        return places.contains(place(origin.file(), origin.place()));
    }

    private static String set(OrderLine line) {
        return line.assembly().terms().matching().set();
    }

    private static String place(String file, String place) {
        return file + " " + place;
    }
}
