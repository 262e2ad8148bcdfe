package bitterend.cli;

import bitterend.work.plans.AskLate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** What would be if rope on order came later. */
final class PlanLate {
    @Option(
            names = "--late",
            paramLabel = "ORDER=DAYS",
            converter = LateText.class,
            description = "Say what would be left undone if this order of rope came so many working days later; may be"
                    + " given again. Plans twice, keeps nothing.")
    private List<LateText.Late> late = List.of();

    boolean isAsked() {
        return !late.isEmpty();
    }

    /** By how many working days each order of rope would come later; of one named twice the last holds. */
    Map<String, Integer> days() {
        return late.stream()
                .collect(Collectors.toMap(LateText.Late::order, LateText.Late::days, (one, other) -> other));
    }

    static String refusal(AskLate.Result.NotOnOrder not) {
        return "--late: found \"" + not.number() + "\", expected the number of an order of rope that is to come: "
                + (not.numbers().isEmpty() ? "on-order.csv has none" : String.join(", ", not.numbers()));
    }
}
