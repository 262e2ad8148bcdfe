package bitterend.work.plans;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanJson;
import bitterend.exchange.ShopFiles;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A plan in a file of its own: it gets no number, and the plan in force stays. */
public final class PlanBeside {
    private static final int HEAD = 200;

    private final Path shop;
    private final Path file;

    /**
     * @param shop the shop folder
     * @param file where the plan is to be written
     */
    public PlanBeside(Path shop, Path file) {
        this.shop = shop;
        this.file = file;
    }

    /** Why nothing may be written there, seen before any work is done; nothing when it may. */
    public Optional<String> refusal() {
        if (ShopFiles.has(shop, file)) {
            return Optional.of("found " + file + ", which is a file of the shop; expected another");
        }
        return Files.exists(file) && !isPlan()
                ? Optional.of("found " + file
                        + ", which is there and is no plan; expected a file that is not there yet,"
                        + " or a plan to write anew")
                : Optional.empty();
    }

    /** Whether the file begins as a plan does. */
    private boolean isPlan() {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(HEAD), StandardCharsets.UTF_8).contains("\"bitterend/plan/");
        } catch (IOException unreadable) {
            return false;
        }
    }

    /** Writes it, whole or not at all; what went wrong, if anything did. */
    public Optional<Exception> write(PlanDocument plan) {
        try {
            PlanJson.write(file, plan);
            return Optional.empty();
        } catch (UncheckedIOException fault) {
            return Optional.of(fault);
        }
    }
}
