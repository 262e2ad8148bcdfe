package bitterend.report;

import bitterend.buying.Aim;
import bitterend.buying.Way;
import java.util.stream.Collectors;

/** What ways to buy are called. */
final class BuyWayWords {
    private BuyWayWords() {}

    /** {@code least paid and least cost}; a way that is best for every aim is both. */
    static String name(Way way) {
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

    /** The same at the beginning of a sentence. */
    static String begun(Way way) {
        String name = name(way);
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }
}
