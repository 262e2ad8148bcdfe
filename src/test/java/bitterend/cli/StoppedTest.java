package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ctrl-C, sent to the program in a process of its own. */
@EnabledOnOs(OS.LINUX)
final class StoppedTest {
    private final Path folder;
    private final Path shop;
    private final Path err;

    StoppedTest(@TempDir Path folder) throws IOException {
        this.folder = folder;
        shop = DemoShop.copy("gannet-loft", folder);
        err = folder.resolve("err.txt");
    }

    /** Held after it has read the shop, before it asks any engine. */
    @ParameterizedTest
    @CsvSource({
        "plan SHOP, a plan",
        "plan SHOP --late P-88=2, a plan",
        "plan SHOP --out SHOP/out.json, a plan",
        "quote SHOP SHOP/requests/Q-2601.csv, a price",
        "quote SHOP SHOP/requests/Q-2601.csv --keep, a price",
        "quote revise SHOP Q-2600, a price",
        "buy SHOP, an answer",
        "buy SHOP --from-history, an answer",
        "buy SHOP --share 1/2, an answer",
        "value SHOP, an answer",
        "stock short SHOP, an answer"
    })
    void beforeThereIsAnything_itSaysSo_andNothingIsWritten(String words, String what)
            throws IOException, InterruptedException {
        List<String> before = files();
        Process process = start(HeldProgram.class, words);
        stopOnceTold(process, "warnings");
        assertEquals(130, exit(process), told());
        assertTrue(
                flat().contains("stopped, by Ctrl-C or by the system, before there was " + what
                        + ": nothing was kept or written; the same command begins anew."),
                told());
        assertEquals(before, files());
        assertEquals("", Files.readString(folder.resolve("out.txt")));
    }

    /** As behind a pager that is full: the word is lost, the program ends all the same. */
    @Test
    void readerWhoTakesNoMore_keepsItFromNothing() throws IOException, InterruptedException {
        Process process = start(HeldProgram.class, "plan SHOP", "-D" + HeldProgram.READER + "=true");
        stopOnceTold(process, "warnings");
        assertEquals(130, exit(process), told());
        assertFalse(Files.exists(shop.resolve("plans")));
    }

    @Test
    void ofAnotherCommand_itSaysThatAllIsWhole() throws IOException, InterruptedException {
        Process process = start(HeldProgram.class, "lengths SHOP");
        stopOnceTold(process, "warnings");
        assertEquals(130, exit(process), told());
        assertTrue(flat().contains("stopped, by Ctrl-C or by the system, before the command was through: "), told());
    }

    /** The first one has the plan checked and kept, the second ends that wherever it is. */
    @Test
    void secondOne_endsTheProgramAtOnce_andThePlanIsWholeOrNotThere() throws IOException, InterruptedException {
        Process process = start(Main.class, "plan SHOP --time 300s");
        stopOnceTold(process, "bound");
        stop(process);
        long begun = System.nanoTime();
        assertEquals(130, exit(process), told());
        assertTrue(System.nanoTime() - begun < TimeUnit.SECONDS.toNanos(15), told());
        if (Files.exists(shop.resolve("plans/1.json"))) {
            assertEquals(0, Run.of("show", shop.toString()).code());
        } else {
            assertTrue(flat().contains("there whole, or not at all."), told());
        }
    }

    @Test
    void one_keepsThePlan() throws IOException, InterruptedException {
        Process process = start(Main.class, "plan SHOP --time 300s");
        stopOnceTold(process, "bound");
        assertEquals(130, exit(process), told());
        assertTrue(flat().contains("stopped: this is the best plan found so far"), told());
        assertFalse(flat().contains("whole, or not at all"), told());
        Run shown = Run.of("show", shop.toString());
        assertEquals(0, shown.code(), shown.err());
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(shop)) {
            return all.map(Path::toString).sorted().toList();
        }
    }

    private Process start(Class<?> program, String words, String... options) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                "env",
                // a build in the background hands down that Ctrl-C is ignored
                "--default-signal=INT",
                Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of(options));
        command.addAll(List.of(
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                program.getName()));
        Stream.of(words.split(" "))
                .map(word -> word.replace("SHOP", shop.toString()))
                .forEach(command::add);
        return new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out.txt").toFile())
                .redirectError(err.toFile())
                .start();
    }

    private void stopOnceTold(Process process, String word) throws IOException, InterruptedException {
        for (int i = 0; i < 800 && process.isAlive() && !told().contains(word); i++) {
            Thread.sleep(50);
        }
        stop(process);
    }

    private static void stop(Process process) throws IOException, InterruptedException {
        new ProcessBuilder("/bin/sh", "-c", "kill -INT " + process.pid())
                .start()
                .waitFor();
    }

    private int exit(Process process) throws IOException, InterruptedException {
        try {
            assertTrue(process.waitFor(40, TimeUnit.SECONDS), "it goes on: " + told());
            return process.exitValue();
        } finally {
            process.destroyForcibly();
        }
    }

    private String told() throws IOException {
        return Files.readString(err);
    }

    private String flat() throws IOException {
        return told().replaceAll("\\s+", " ");
    }
}
