package bitterend.cli;

import bitterend.buying.Study;
import bitterend.catalogue.Rope;
import bitterend.exchange.Shop;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is studied of the past, and how long. */
final class StudyOptions {
    private static final int FEWEST = 4;

    @Option(names = "--rope", paramLabel = "ROPE", description = "Study this rope only; may be given again.")
    private List<String> ropes = List.of();

    @Option(
            names = "--scenarios",
            paramLabel = "NUMBER",
            description = "How many scenarios to study. Default: ${DEFAULT-VALUE}.")
    private int scenarios;

    @Option(names = "--weeks", paramLabel = "NUMBER", description = "Weeks of a scenario. Default: ${DEFAULT-VALUE}.")
    private int weeks;

    @Mixin
    private SeedOption seed = new SeedOption();

    /** How many scenarios of how many weeks unless others are given. */
    StudyOptions(int usual, int usualWeeks) {
        scenarios = usual;
        weeks = usualWeeks;
    }

    /** Ropes to study; all that can be when it is empty. */
    List<String> ropes() {
        return ropes;
    }

    /** Why not all of them can be told of; nothing when the shop knows all. */
    Optional<String> unknown(Shop shop) {
        return ropes.stream()
                .filter(rope -> shop.catalogue().findRope(rope).isEmpty())
                .findFirst()
                .map(rope -> "--rope: found \"" + rope + "\", which ropes.json does not name; expected "
                        + shop.catalogue().ropes().stream().map(Rope::id).collect(Collectors.joining(", ")));
    }

    long seed() {
        return seed.seed;
    }

    /** How much is studied; nothing when that is too little, which is told. */
    Optional<Study.Size> size(Terminal terminal) {
        if (scenarios < FEWEST || weeks < 1) {
            terminal.err().println("error: a study takes at least " + FEWEST + " scenarios of at least 1 week");
            return Optional.empty();
        }
        return Optional.of(new Study.Size(seed(), scenarios, weeks));
    }
}
