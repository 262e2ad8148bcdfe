package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * A question never writes: whatever asks leaves the shop folder byte for byte as it was, and answers in every form, within
 * the width of a terminal. The commands are those that the
 * command line itself knows; one that is in neither list fails the test.
 */
final class AskingCommandsTest {

    @TempDir
    private Path folder = Path.of("");

    private final AnswersInForm answers = new AnswersInForm();
    private Path shop = Path.of("");
    private DayInTheShop day = new DayInTheShop(shop, shop, "");

    private void aDayInTheShop() throws IOException {
        day = DayInTheShop.in(folder);
        shop = day.shop();
    }

    @Test
    void everyCommand_asksOrWrites() {
        Set<String> known = new TreeSet<>(DayInTheShop.ASKS.keySet());
        known.addAll(DayInTheShop.WRITES);
        assertEquals(known, EveryCommand.byWords().keySet());
    }

    @Test
    void everyCommandThatAsks_leavesTheFolderAsItWas() throws IOException {
        aDayInTheShop();
        Map<String, String> before = digests(shop);
        int files = 0;
        for (Map.Entry<String, List<String>> asked : DayInTheShop.ASKS.entrySet()) {
            CommandLine command = Objects.requireNonNull(EveryCommand.byWords().get(asked.getKey()));
            for (String words : asked.getValue()) {
                for (String form : AnswersInForm.forms(asked.getKey())) {
                    ask(words + form, before);
                }
            }
            for (String paper : List.of("--html", "--pdf", "--svg", "--csv")) {
                if (has(command, paper)) {
                    Path file = folder.resolve("out/" + files++ + paper.replace("--", "."));
                    ask(asked.getValue().get(asked.getValue().size() - 1) + " " + paper + " " + file, before);
                    assertTrue(Files.exists(file), asked.getKey() + " " + paper);
                }
            }
        }
        assertTrue(files >= 6, files + " papers");
        answers.assertRight();
    }

    /** A page that is printed is the one file that comes. */
    @Test
    void sheets_areTheFilesThatWereAskedFor() throws IOException {
        aDayInTheShop();
        Map<String, String> before = digests(shop);
        for (String words : List.of("", "--tags", "--csv", "--pdf", "--cards")) {
            Run run = Run.of(("sheet " + shop + " " + words).strip().split(" "));
            assertEquals(0, run.code(), words + run.err());
            Path written = Path.of(run.out().strip());
            assertTrue(written.startsWith(shop), run.out());
            Files.delete(written);
            assertEquals(before, digests(shop), words);
        }
    }

    private void ask(String words, Map<String, String> before) throws IOException {
        Run run = Run.of(day.typed(words));
        answers.look(words, run, day);
        assertEquals(before, digests(shop), words);
        Files.deleteIfExists(folder.resolve("out/backup.db"));
        Files.deleteIfExists(folder.resolve("out/plan.json"));
    }

    private static boolean has(CommandLine command, String option) {
        return command.getCommandSpec().findOption(option) != null;
    }

    /** SHA-256 of every file, and every folder. */
    private static Map<String, String> digests(Path folder) throws IOException {
        Map<String, String> digests = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.toList()) {
                String name = folder.relativize(file).toString();
                digests.put(name, Files.isDirectory(file) ? "folder" : sha256(Files.readAllBytes(file)));
            }
        }
        return digests;
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
