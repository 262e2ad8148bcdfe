package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.report.Tape;
import bitterend.report.page.Ink;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine.ParseResult;

/** A fault of the program has one file with what is needed to see it again; no name of a customer is in it. */
final class CrashFileTest {
    private static final Pattern FILE = Pattern.compile("is in (.*bitterend-fault-.*[.]txt)\\R");
    private final Path folder;

    CrashFileTest(@TempDir Path folder) {
        this.folder = folder;
    }

    /** One run whose results go where they cannot, as the fault says it; its problems are caught. */
    private static String broken(RuntimeException fault, Consumer<ParseResult> before, String... args) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(OutputStream.nullOutputStream()) {
            @Override
            public void print(String text) {
                throw fault;
            }

            @Override
            public void println(String text) {
                throw fault;
            }
        };
        Terminal terminal = new Terminal(
                out, new PrintStream(err, true, StandardCharsets.UTF_8), StandardCharsets.UTF_8, Ink.PLAIN, Tape.DRAWN);
        int code = Main.run(args, terminal, before);
        String told = err.toString(StandardCharsets.UTF_8);
        assertEquals(ExitCode.INTERNAL_ERROR.number(), code, told);
        return told;
    }

    private static String written(String told) throws IOException {
        Matcher file = FILE.matcher(told);
        assertTrue(file.find(), told);
        assertFalse(file.find(), told);
        Path report =
                Path.of(FILE.matcher(told).results().findFirst().orElseThrow().group(1));
        String text = Files.readString(report);
        Files.delete(report);
        return text;
    }

    @Test
    void faultInACommand_isOneFileWithoutAName() throws IOException {
        Path shop = TestShop.in(folder).path();
        Throwable cause = new IllegalArgumentException("no rope for Port Pilots at Northgate Loft");
        String told = broken(
                new IllegalStateException("no reel for Harbour Board", cause),
                parsed -> {},
                "plan",
                shop.toString(),
                "--seed",
                "7",
                "--effort",
                "reproducible",
                "--time",
                "1s");
        String text = written(told);
        assertTrue(text.contains("java.lang.IllegalStateException\n  at bitterend.cli."), text);
        assertTrue(text.contains("of java.lang.IllegalArgumentException\n"), text);
        assertTrue(text.contains("seed: 7\n"), text);
        assertTrue(text.contains("--seed 7") && text.contains("--effort reproducible"), text);
        assertTrue(text.contains("program: bitterend "), text);
        for (String file : List.of("shop.json", "ropes.json", "orders.csv", "reels.csv")) {
            String digest = bitterend.exchange.ShopFiles.digest(shop.resolve(file));
            assertTrue(text.contains("  " + file + " " + digest), text);
        }
        for (String name : List.of("Harbour", "Pilots", "Northgate", "northgate", folder.toString())) {
            assertFalse(text.contains(name), text);
        }
        assertFalse(everything(shop).contains("bitterend-fault"));
    }

    /** What was typed in words of one's own is not told; which option it was is. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "stock reserve %s R-104 Whimbrel --who Whimbrel;stock reserve SHOP REEL ORDER --who ...",
                "quote %s pom.xml --units metric;quote SHOP REQUEST --units metric",
                "plan %s --day 2026-03-02 --out Whimbrel.json;plan SHOP --day 2026-03-02 --out ..."
            })
    void whatWasTyped_isMasked(String command, String shown) throws IOException {
        Path shop = TestShop.in(folder).path();
        String told = broken(
                new IllegalStateException(""),
                parsed -> {
                    throw new IllegalStateException("planted for Whimbrel");
                },
                Stream.of(command.split(" "))
                        .map(word -> word.equals("%s") ? shop.toString() : word)
                        .toArray(String[]::new));
        String text = written(told);
        assertTrue(text.contains("doing: bitterend " + shown + "\n"), text);
        assertFalse(text.contains("Whimbrel"), text);
        assertEquals(command.startsWith("quote"), text.contains("  named file 1 "), text);
    }

    /** A file of the shop that cannot be read is no fault of the program. */
    @Test
    void whatIsNoFaultOfTheProgram_hasNoFile() {
        Run run = Run.of("plan", folder.resolve("nowhere").toString());
        assertFalse(FILE.matcher(run.err()).find(), run.err());
    }

    private static String everything(Path shop) throws IOException {
        try (Stream<Path> files = Files.walk(shop)) {
            return files.map(file -> String.valueOf(file.getFileName())).collect(Collectors.joining("\n"));
        }
    }
}
