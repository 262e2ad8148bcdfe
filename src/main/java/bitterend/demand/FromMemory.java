package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Rope;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Yardstick;
import bitterend.measure.FineLength;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Marks what nobody has checked: numbers from memory are told wherever they are shown. */
final class FromMemory {
    private static final List<What> SHOWN =
            List.of(What.TAIL, What.TAKE_UP, What.MARGIN, What.TRIM, What.ROOM, What.SLIP_KNOT);

    private FromMemory() {}

    /** {@code From memory, unchecked: tail, take-up.}; empty where nothing of an end is. */
    static String sentence(MadeEnd end, Rope rope) {
        List<String> unchecked = new ArrayList<>();
        for (What what : SHOWN) {
            if (is(end.allowance(what)) && end.length(what).isPositive()) {
                unchecked.add(what.word());
            }
        }
        if (rope.layLength().equals(FineLength.ZERO) && countsLays(end.allowance(What.TAIL))) {
            unchecked.add("lay of the rope");
        }
        return unchecked.isEmpty() ? "" : "From memory, unchecked: " + String.join(", ", unchecked) + ".";
    }

    /** {@code , from memory} behind a figure that is. */
    static String mark(Allowance allowance) {
        return is(allowance) ? ", from memory" : "";
    }

    private static boolean is(Allowance allowance) {
        return allowance.provenance().grade() == Grade.MEMORY;
    }

    private static boolean countsLays(Allowance allowance) {
        return Stream.concat(
                        allowance.terms().stream(), allowance.floors().stream().flatMap(List::stream))
                .anyMatch(term -> term instanceof Term.Multiple some && some.of() == Yardstick.LAY_TURN);
    }
}
