package bitterend.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Processes that receive, post and count are killed in mid-work. {@code -Dkills=N} sets how many; {@code .ci/ledger} runs
 * the long version.
 */
final class LedgerKillTest {
    private static final int KILLS = Integer.getInteger("kills", 6);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void killedProcesses_loseNothingAndDoubleNothing() throws Exception {
        SqliteLedger.create(folder, Clock.systemUTC(), Event.Act.of(Event.Kind.OPENED, "test", ""), books -> {});
        SplittableRandom random = new SplittableRandom(20260302);
        List<String> acknowledged = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            Process process = start("w" + kill, 1_000);
            awaitFirstWord(process, "w" + kill);
            Thread.sleep(random.nextLong(0, 60));
            process.destroyForcibly();
            assertTrue(process.waitFor(20, TimeUnit.SECONDS));
            acknowledged.addAll(whole("w" + kill));
            sweepNatives();
            try (Ledger ledger = SqliteLedger.open(folder, Clock.systemUTC())) {
                if (kill % 20 == 0 || kill == KILLS - 1) {
                    assertEquals(List.of(), ledger.verify(), "after kill " + kill);
                }
            }
        }
        assertTrue(acknowledged.size() >= KILLS, "the workers did hardly anything");
        assertAllThereOnce(acknowledged);
    }

    @Test
    void eightProcesses_workSideBySide() throws Exception {
        SqliteLedger.create(folder, Clock.systemUTC(), Event.Act.of(Event.Kind.OPENED, "test", ""), books -> {});
        int rounds = Integer.getInteger("rounds", 2);
        List<Process> processes = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            processes.add(start("p" + i, rounds));
        }
        List<String> acknowledged = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            assertEquals(0, processes.get(i).waitFor());
            acknowledged.addAll(whole("p" + i));
        }
        assertEquals(8 * rounds * 5, acknowledged.size());
        assertAllThereOnce(acknowledged);
        try (Ledger ledger = SqliteLedger.open(folder, Clock.systemUTC())) {
            assertEquals(List.of(), ledger.verify());
        }
    }

    /** What a worker acknowledged; a line cut off in the middle acknowledges nothing. */
    private List<String> whole(String name) throws IOException {
        String said = Files.readString(said(name), StandardCharsets.UTF_8);
        return said.substring(0, said.lastIndexOf('\n') + 1).lines().toList();
    }

    private Path said(String name) {
        return folder.resolve(name + ".txt");
    }

    private void awaitFirstWord(Process process, String name) throws Exception {
        while (process.isAlive() && Files.size(said(name)) == 0) {
            Thread.sleep(1);
        }
        assertTrue(process.isAlive(), Files.readString(folder.resolve("errors.txt"), StandardCharsets.UTF_8));
    }

    private void assertAllThereOnce(List<String> acknowledged) {
        Map<String, Integer> there = new HashMap<>();
        try (Ledger ledger = SqliteLedger.openToRead(folder)) {
            for (Movement movement : ledger.read(Ledger.Stock::movements)) {
                switch (movement.entry().kind()) {
                    case RECEIVED -> there.merge("reel " + movement.entry().reel(), 1, Integer::sum);
                    case CUT -> there.merge("piece " + movement.entry().origin().piece(), 1, Integer::sum);
                    case COUNTED -> there.merge("count " + movement.number(), 1, Integer::sum);
                    default -> throw new AssertionError("nobody wrote " + movement);
                }
            }
        }
        for (String line : acknowledged) {
            assertEquals(1, there.getOrDefault(line, 0), line);
        }
        there.forEach((line, times) -> assertEquals(1, times, line));
    }

    /** Killed processes leave their copy of the native library behind; it goes with the folder of the test. */
    private Path natives() throws IOException {
        return Files.createDirectories(folder.resolve("natives"));
    }

    private void sweepNatives() throws IOException {
        try (Stream<Path> left = Files.list(natives())) {
            for (Path file : left.toList()) {
                Files.deleteIfExists(file);
            }
        }
    }

    private Process start(String name, int rounds) throws IOException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        return new ProcessBuilder(
                        java.toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Xshare:auto",
                        "-Dorg.sqlite.tmpdir=" + natives(),
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        LedgerWorker.class.getName(),
                        folder.toString(),
                        name,
                        "" + rounds)
                .redirectOutput(said(name).toFile())
                .redirectError(folder.resolve("errors.txt").toFile())
                .start();
    }
}
