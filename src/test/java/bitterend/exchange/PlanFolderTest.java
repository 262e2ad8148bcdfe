package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.form.InputFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plans of a shop folder, where several write at once. */
final class PlanFolderTest {
    private static final String OLDER = "{\"format\": \"bitterend/plan/1\"}";

    @TempDir
    private Path shop = Path.of("");

    @Test
    void olderPlan_getsOneNumber_howeverManyMoveItAtOnce() throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(6);
        try {
            for (int round = 1; round <= 60; round++) {
                Files.createDirectories(shop.resolve("plans"));
                Files.writeString(shop.resolve("plans/" + (3 * round) + ".json"), "another " + round);
                Path older = Files.writeString(shop.resolve("plan.json"), OLDER + " ".repeat(round));
                String text = Files.readString(older);
                List<Callable<Optional<Integer>>> tasks = new ArrayList<>();
                for (int each = 0; each < 6; each++) {
                    tasks.add(() -> new PlanFolder(shop).moveOver());
                }
                for (Future<Optional<Integer>> done : people.invokeAll(tasks)) {
                    assertEquals(3 * round + 1, done.get().orElse(3 * round + 1));
                }
                assertFalse(Files.exists(older));
                assertEquals(1, holding(text), "round " + round);
            }
        } finally {
            people.shutdownNow();
        }
    }

    @Test
    void planOnDisk_isHeldWhileItsBytesAreThoseWritten() throws IOException {
        Path file = Files.writeString(shop.resolve("1.json"), "as written");
        PlanFolder.Kept kept = new PlanFolder.Kept(
                PlanJsonTest.randomDocument(new Random(1)),
                file,
                InputFile.sha256("as written".getBytes(StandardCharsets.UTF_8)));
        assertTrue(kept.isHeld());
        Files.writeString(file, "as writter");
        assertFalse(kept.isHeld());
        Files.delete(file);
        assertFalse(kept.isHeld());
    }

    /** Power failed between giving the number and taking the older file away. */
    @Test
    void olderPlan_thatHasItsNumberAlready_isNotGivenAnother() throws IOException {
        Files.createDirectories(shop.resolve("plans"));
        Files.writeString(shop.resolve("plans/1.json"), OLDER);
        Files.writeString(shop.resolve("plan.json"), OLDER);
        PlanFolder folder = new PlanFolder(shop);
        assertEquals(List.of(1), folder.numbers());
        assertEquals(Optional.of(1), folder.moveOver());
        assertFalse(Files.exists(shop.resolve("plan.json")));
        assertEquals(List.of(1), folder.numbers());
    }

    private int holding(String text) throws IOException {
        int found = 0;
        for (int number : new PlanFolder(shop).numbers()) {
            found += Files.readString(shop.resolve("plans/" + number + ".json"), StandardCharsets.UTF_8)
                            .equals(text)
                    ? 1
                    : 0;
        }
        return found;
    }
}
