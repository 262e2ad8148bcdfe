package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are whole or not there, whoever else writes at once. */
final class WholeFileTest {
    private static final int WRITERS = 6;
    private static final int ROUNDS = 60;

    /** Within one process too: the files beside must not be the same. */
    @Test
    void ofSeveralWhoCreateAFileAtOnce_oneSucceeds(@TempDir Path folder)
            throws IOException, InterruptedException, ExecutionException {
        ExecutorService writers = Executors.newFixedThreadPool(WRITERS);
        try {
            for (int round = 0; round < ROUNDS; round++) {
                Path file = folder.resolve(round + ".json");
                List<String> texts = created(writers, file);
                assertEquals(1, texts.size(), "round " + round);
                assertTrue(texts.get(0).equals(Files.readString(file)), "round " + round);
            }
        } finally {
            writers.shutdown();
        }
        try (Stream<Path> all = Files.list(folder)) {
            assertEquals(ROUNDS, all.count());
        }
    }

    /** A full disk names no file, and the one beside is nobody's: the one that was asked for is told. */
    @Test
    void fault_namesTheFileThatWasToBeWritten(@TempDir Path folder) {
        Path file = folder.resolve("sheet.html");
        String full = ""
                + WholeFile.naming(file, new IOException("No space left on device"))
                        .getMessage();
        assertEquals(file + ": No space left on device", full);
        Path nowhere = folder.resolve("no such folder").resolve("sheet.html");
        UncheckedIOException gone = assertThrows(UncheckedIOException.class, () -> WholeFile.write(nowhere, "text"));
        assertEquals(
                nowhere + ": there is no such folder",
                Objects.requireNonNull(gone.getCause()).getMessage());
    }

    /** What each of those wrote who were told that they had written it. */
    private static List<String> created(ExecutorService writers, Path file)
            throws InterruptedException, ExecutionException {
        CountDownLatch start = new CountDownLatch(1);
        List<Future<String>> all = new ArrayList<>();
        for (int writer = 0; writer < WRITERS; writer++) {
            String text = "writer " + writer + "\n" + ".".repeat(20_000);
            all.add(writers.submit(() -> {
                start.await();
                return WholeFile.create(file, text.getBytes(StandardCharsets.UTF_8)) ? text : "";
            }));
        }
        start.countDown();
        List<String> texts = new ArrayList<>();
        for (Future<String> each : all) {
            if (!each.get().isEmpty()) {
                texts.add(each.get());
            }
        }
        return texts;
    }
}
