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
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Marks what nobody has checked: numbers from memory, and a thimble off a sheet, are told wherever they are shown. */
final class Unchecked {
    private static final List<What> SHOWN =
            List.of(What.TAIL, What.TAKE_UP, What.MARGIN, What.TRIM, What.ROOM, What.SLIP_KNOT);

    private Unchecked() {}

    /** {@code From memory, unchecked: tail, take-up.}; and a thimble that the shop has not typed. Empty where all is. */
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
        String memory = unchecked.isEmpty() ? "" : "From memory, unchecked: " + String.join(", ", unchecked) + ".";
        return Stream.of(thimble(end), memory)
                .filter(sentence -> !sentence.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String thimble(MadeEnd end) {
        return end.eye().source().verified()
                ? ""
                : "Its thimble is from " + end.eye().source().source() + ", unverified: measure yours and type it.";
    }

    /** {@code , from memory} behind a figure that is. */
    static String mark(Allowance allowance) {
        return is(allowance) ? ", from memory" : "";
    }

    private static boolean is(Allowance allowance) {
        return allowance.provenance().grade() == Grade.MEMORY;
    }

    /** Whether a figure counts lays of the rope. */
    static boolean countsLays(Allowance allowance) {
        return Stream.concat(
                        allowance.terms().stream(), allowance.floors().stream().flatMap(List::stream))
                .anyMatch(term -> term instanceof Term.Multiple some && some.of() == Yardstick.LAY_TURN);
    }
}
