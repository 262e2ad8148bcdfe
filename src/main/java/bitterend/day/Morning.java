package bitterend.day;

import bitterend.packing.PackingProblem;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What coils are worth stays all day as it was in the morning, whatever was cut since. */
public final class Morning {
    private Morning() {}

    /** The question with the curves of the first plan of its day, where an earlier plan of that day is given. */
    public static PackingProblem kept(PackingProblem now, PackingProblem earlier) {
        if (!now.day().equals(earlier.day())) {
            return now;
        }
        Map<String, StockValue> values = new TreeMap<>(now.values());
        values.replaceAll((rope, value) -> kept(value, earlier.values().get(rope)));
        return now.withValues(values);
    }

    /** The coil curve by which the plans of its day go, where an earlier plan of that day is given. */
    public static CoilValue kept(CoilValue now, String rope, LocalDate day, PackingProblem earlier) {
        return day.equals(earlier.day()) && kept(now, earlier.values().get(rope)) instanceof CoilValue morning
                ? morning
                : now;
    }

    /** The metres on the rack are those of the morning; settings that were changed since hold. */
    private static StockValue kept(StockValue now, @Nullable StockValue morning) {
        if (!(now instanceof CoilValue coils) || !(morning instanceof CoilValue before)) {
            return now;
        }
        return coils.terms().equals(before.terms()) ? before : coils.on(before.rack());
    }
}
