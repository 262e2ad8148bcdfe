package bitterend.report;

import bitterend.buying.Advice;
import bitterend.buying.Aim;
import bitterend.buying.Way;
import java.util.List;
import java.util.stream.Collectors;

/** What ways to buy are called. */
final class BuyWayWords {
    private BuyWayWords() {}

    /** {@code least paid and least cost}; a way that is best for every aim is both. */
    private static String name(Way way) {
        return way.aims().stream()
                .filter(aim -> aim != Aim.BETWEEN || way.aims().size() == 1)
                .map(BuyWayWords::name)
                .collect(Collectors.joining(" and "));
    }

    private static String name(Aim aim) {
        return switch (aim) {
            case LEAST_PAID -> "least paid";
            case BETWEEN -> "between both";
            case LEAST_COST -> "least cost";
        };
    }

    /** The same beside the others; the least cost that a budget has room for is called so, and one that a tie costs less than. */
    static String name(Advice advice, Way way) {
        if (advice.findAffordable().filter(way::equals).isPresent()) {
            return "within the budget";
        }
        boolean within = way.aims().equals(List.of(Aim.BETWEEN))
                && way.overBudget().millis() <= 0
                && advice.way(Aim.LEAST_COST).overBudget().millis() > 0;
        boolean tied = !advice.ties().isEmpty() && way.aims().contains(Aim.LEAST_COST);
        return within ? "least cost in the budget" : name(way) + (tied ? " (tie)" : "");
    }

    /** The same at the beginning of a sentence. */
    static String begun(Advice advice, Way way) {
        String name = name(advice, way);
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
