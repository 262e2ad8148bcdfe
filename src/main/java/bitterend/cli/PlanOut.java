package bitterend.cli;

import bitterend.work.plans.PlanBeside;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where a plan is written that is no plan of the shop. */
final class PlanOut {
    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the plan to this file alone: it gets no number, and the plan in force stays.")
    private @Nullable String out;

    /** The file, when one was named. */
    Optional<Path> file() {
        return Optional.ofNullable(out).map(Path::of);
    }

    /** What is wrong with the file, before any work is done; nothing when it may be written. */
    Optional<String> refusal(Path shop) {
        return Optional.ofNullable(out)
                .flatMap(file -> NewFile.refusal(file).or(() -> new PlanBeside(shop, Path.of(file)).refusal()))
                .map(why -> "--out: " + why);
    }
}
