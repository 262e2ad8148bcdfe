package bitterend.cli;

import bitterend.exchange.ShopFolder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
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
        Optional<String> refusal = NewFile.refusal(out);
        if (refusal.isPresent()) {
            return refusal.map(why -> "--out: " + why);
        }
        Path file = Path.of(out);
        if (ShopFolder.isOfTheShop(shop, file)) {
            return Optional.of("--out: found " + out + ", which is a file of the shop; expected another");
        }
        return Files.exists(file) && !isPlan(file)
                ? Optional.of("--out: found " + out
                        + ", which is there and is no plan; expected a file that is not there yet,"
                        + " or a plan to write anew")
                : Optional.empty();
    }

    /** Whether the file begins as a plan does. */
    private static boolean isPlan(Path file) {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(200), StandardCharsets.UTF_8).contains("\"bitterend/plan/");
        } catch (IOException unreadable) {
            return false;
        }
    }
}
