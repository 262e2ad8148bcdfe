package bitterend.cli;

import bitterend.exchange.ShopFolder;
import java.nio.file.Files;
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
        if (out == null) {
            return Optional.empty();
        }
        Path file = Path.of(out);
        if (out.isBlank()) {
            return Optional.of("--out: found nothing, expected the name of a file");
        }
        if (Files.isDirectory(file)) {
            return Optional.of("--out: found the folder " + out + ", expected the name of a file");
        }
        return ShopFolder.isOfTheShop(shop, file)
                ? Optional.of("--out: found " + out + ", which is a file of the shop; expected another")
                : Optional.empty();
    }
}
