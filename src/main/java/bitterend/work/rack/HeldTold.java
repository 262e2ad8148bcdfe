package bitterend.work.rack;

import bitterend.measure.Length;
import bitterend.packing.Words;
import bitterend.stock.Held;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rope that is held and is not there any more after what was booked: it is never less than nothing, and it is told. */
public final class HeldTold {
    private HeldTold() {}

    /** A sentence for each order and customer that less is there for than is held. */
    public static List<String> of(List<Movement> movements, LocalDate day) {
        Map<String, Movement> last = new LinkedHashMap<>();
        movements.forEach(movement -> last.put(movement.entry().reel(), movement));
        List<String> told = new ArrayList<>();
        last.values().forEach(movement -> told.addAll(of(movement.entry(), day)));
        return told;
    }

    private static List<String> of(Movement.Entry entry, LocalDate day) {
        Reel reel = entry.after();
        Length room = entry.gone()
                ? Length.ZERO
                : reel.contents().certainEnd().minus(reel.contents().leadTrim());
        List<String> told = new ArrayList<>();
        for (Held held : reel.custody().heldOn(day)) {
            Length there = Length.max(Length.ZERO, Length.min(held.length(), room));
            room = room.minus(there);
            if (there.isShorterThan(held.length())) {
                told.add("of the " + Words.of(held.length()) + " of reel " + reel.id() + " held for " + held.whom()
                        + " until " + held.until() + ", " + (there.isPositive() ? "only " + Words.of(there) : "nothing")
                        + " is there for certain");
            }
        }
        return told;
    }
}
