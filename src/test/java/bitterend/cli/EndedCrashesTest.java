package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.report.Tape;
import bitterend.report.page.Ink;
import com.fasterxml.jackson.annotation.JsonView;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOError;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** Whatever is in the files, on the command line or wrong with the machine: a sentence, never a stack trace. */
final class EndedCrashesTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void aShop() throws IOException {
        shop = TestShop.in(folder).path();
    }

    /** A code of 4,000 characters is read off no label: the text is shortened. Unseen characters are written out in it. */
    @ParameterizedTest
    @ValueSource(strings = {"L", "\u202E", "\uD83E\uDEA2"})
    void longLot_isShortenedInTheCodeOfATag(String character) throws IOException {
        Path reels = shop.resolve("reels.csv");
        Files.writeString(reels, Files.readString(reels).replace("P22-11", character.repeat(4_000)));
        Run check = run("check");
        assertTrue(check.code() == 0 || check.code() == 3, check.err());
        if (check.code() == 0) {
            assertEquals(0, run("plan", "--time", "200ms").code());
            Run tags = run("sheet", "--tags");
            assertEquals(0, tags.code(), tags.err());
            assertTrue(Files.readString(shop.resolve("tags.html")).contains("<svg"));
        }
    }

    /** The machine fails in the middle of a command: planted where the command prints its first word. */
    @Test
    void errorOfTheMachine_isOneSentence() {
        for (Error planted : List.of(
                new OutOfMemoryError("Java heap space"),
                new StackOverflowError(),
                new NoClassDefFoundError("org/sqlite/JDBC"),
                new AssertionError("planted"),
                new InternalError("a fault occurred in an unsafe memory access operation"),
                new IOError(new IOException("planted")))) {
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            PrintStream failing = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8) {
                @Override
                public void print(String text) {
                    throw planted;
                }
            };
            PrintStream told = new PrintStream(err, true, StandardCharsets.UTF_8);
            int code = Main.run(
                    new String[] {"check", shop.toString()},
                    new Terminal(failing, told, StandardCharsets.UTF_8, Ink.PLAIN, Tape.DRAWN));
            String text = err.toString(StandardCharsets.UTF_8);
            assertEquals(1, code, text);
            List<String> lines = text.lines()
                    .filter(line -> !line.startsWith("What is needed to see it again, without a name in it, is in "))
                    .toList();
            assertTrue(text.startsWith("error: ") && lines.size() == 1, text);
            assertFalse(text.contains("\tat "), text);
        }
    }

    /** A real one: 100,000 rows in a heap that cannot hold them, in a process of its own. */
    @Test
    void heapThatIsTooSmall_isOneSentence() throws IOException, InterruptedException {
        StringBuilder rows = new StringBuilder("reel,rope,lot,length\n");
        for (int reel = 0; reel < 100_000; reel++) {
            rows.append("K-").append(reel).append(",DB12,P22,120 m\n");
        }
        Files.writeString(shop.resolve("reels.csv"), rows);
        Path err = folder.resolve("err.txt");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx24m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        classPath(),
                        "bitterend.cli.Main",
                        "check",
                        shop.toString())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(err.toFile())
                .start();
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        String told = Files.readString(err);
        assertEquals(1, process.exitValue(), told);
        assertTrue(told.contains("error: there is not enough memory for this"), told);
        assertFalse(told.contains("\tat "), told);
    }

    /** Where the classes of this test come from, whoever runs it. */
    private static String classPath() {
        return Stream.of(
                        Main.class,
                        CommandLine.class,
                        ObjectMapper.class,
                        CsvMapper.class,
                        JsonFactory.class,
                        JsonView.class)
                .map(type -> Path.of(URI.create(type.getProtectionDomain()
                                .getCodeSource()
                                .getLocation()
                                .toString()))
                        .toString())
                .distinct()
                .collect(Collectors.joining(File.pathSeparator));
    }

    @Test
    void extremePricesAndMasses_areToldWithTheMostThatIsAllowed() throws IOException {
        Path ropes = shop.resolve("ropes.json");
        Path settings = shop.resolve("shop.json");
        String rope = Files.readString(ropes);
        String whole = Files.readString(settings);
        Files.writeString(settings, whole.replace("48 EUR/h", "99999999999999999999 EUR/h"));
        assertTold("shop.json, labour", "at most 10000000.00 EUR/h");
        Files.writeString(settings, whole);
        Files.writeString(ropes, rope.replace("2.45 EUR/m", "99999999999 EUR/m"));
        assertTold("ropes.json, /ropes/0, price", "at most 10000000000.00 EUR");
        Files.writeString(ropes, rope.replace("\"price\"", "\"mass\": \"999999999 kg/mm\", \"price\""));
        assertTold("ropes.json, /ropes/0, mass", "at most 1000 t");
    }

    private void assertTold(String place, String most) {
        Run check = run("check");
        assertEquals(3, check.code(), check.out());
        assertTrue(check.out().lines().anyMatch(line -> line.contains(place) && line.contains(most)), check.out());
    }

    @Test
    void explainOfACutPiece_saysThatItIsCut() {
        posted();
        Run explained = run("plan", "--explain", "1002/1.1");
        assertEquals(0, explained.code(), explained.err());
        assertTrue(explained.out().contains("cut already, off reel R-10"), explained.out());
        assertFalse(run("plan", "--explain", "1002/1.1", "--json").out().isEmpty());
    }

    /** In the middle of the ledger, where other rows stand on both sides. */
    @Test
    void unreadableRow_isADamagedLedgerInEveryCommand() throws IOException, SQLException {
        posted();
        assertEquals(0, run("stock", "move", "R-104", "bench").code());
        assertEquals(0, run("stock", "move", "R-105", "bench").code());
        Path ledger = shop.resolve("stock.db");
        Path sound = Files.copy(ledger, folder.resolve("sound.db"));
        for (String change : List.of(
                "UPDATE movement SET kind = 'BOUGHT' WHERE number = ?",
                "UPDATE movement SET length_mm = -4 WHERE number = ?",
                "UPDATE movement SET use_by = 'soon' WHERE number = ?",
                "UPDATE event SET at = 'yesterday' WHERE number = ?",
                "UPDATE event SET kind = 'BOUGHT' WHERE number = ?")) {
            Files.copy(sound, ledger, StandardCopyOption.REPLACE_EXISTING);
            plant(ledger, change.replace("?", "3"));
            Run verify = run("stock", "verify");
            assertEquals(3, verify.code(), change + verify.out());
            int told = toldByCommands(change);
            assertTrue(told >= 5, change + " was told by " + told + " commands");
        }
    }

    /** A fact that is to be a number or a length and is none: said with its event, never an internal error. */
    @Test
    void factThatIsNoFigure_isADamagedLedger() throws IOException, SQLException {
        posted();
        assertEquals(
                0,
                run("measure", "1002/1.1", "--came-out", "4 m", "--accepted", "Ada")
                        .code());
        Run gauge = gauged("--known", "90 m");
        assertEquals(0, gauge.code(), gauge.err());
        Path ledger = shop.resolve("stock.db");
        Path sound = Files.copy(ledger, folder.resolve("sound.db"));
        String inForce = "UPDATE fact SET value = 'x' WHERE name = 'number' AND event IN"
                + " (SELECT number FROM event WHERE kind = 'IN_FORCE')";
        for (String words : List.of("sheet", "orders", "plan --explain 1002/1.1", "stock post --all")) {
            Files.copy(sound, ledger, StandardCopyOption.REPLACE_EXISTING);
            plant(ledger, inForce);
            assertDamaged(run(words.split(" ")), "says of \"number\" \"x\", which is no number");
        }
        for (String value : List.of("x", "0 mm", "")) {
            Files.copy(sound, ledger, StandardCopyOption.REPLACE_EXISTING);
            plant(ledger, "UPDATE fact SET value = '" + value + "' WHERE name = 'piece 1002/1.1'");
            assertDamaged(run("orders"), "says of \"piece 1002/1.1\" \"" + value + "\", which is no length");
        }
        for (String[] value : new String[][] {{"x", "number"}, {"0", "length"}, {"-3", "length"}}) {
            Files.copy(sound, ledger, StandardCopyOption.REPLACE_EXISTING);
            plant(ledger, "UPDATE fact SET value = '" + value[0] + "' WHERE name = 'turns mm'");
            assertDamaged(gauged(), "\"turns mm\" \"" + value[0] + "\", which is no " + value[1]);
        }
    }

    private Run gauged(String... more) {
        List<String> words = new ArrayList<>(List.of("stock", "gauge", "R-105", "--barrel", "200 mm"));
        words.addAll(List.of("--traverse", "400 mm", "--depth", "150 mm", "--type", "ply"));
        words.addAll(List.of(more));
        return run(words.toArray(String[]::new));
    }

    private static void assertDamaged(Run run, String told) {
        assertEquals(3, run.code(), run.out() + run.err());
        assertTrue(run.err().contains("the ledger is damaged: event "), run.err());
        assertTrue(run.err().replaceAll("\\s+", " ").contains(told), run.err());
    }

    /** Ids that a ledger of before took and no file may state today: the others are exported, and read back. */
    @Test
    void export_namesTheReelsThatNoFileMayState_andPrintsTheOthers() throws IOException, SQLException {
        assertEquals(0, run("stock", "open").code());
        plant(shop.resolve("stock.db"), "UPDATE movement SET reel = 'R-104 *new*' WHERE reel = 'R-104'");
        Run export = run("stock", "export");
        assertEquals(4, export.code(), export.err());
        assertFalse(export.out().contains("new"), export.out());
        assertTrue(export.out().contains("\nR-105,DB12,"), export.out());
        String told = export.err().replaceAll("\\s+", " ");
        assertTrue(told.contains("rack, row 2 (reel R-104 *new*), reel: found \"R-104 *new*\", expected an id"), told);
        Files.writeString(shop.resolve("reels.csv"), export.out());
        Files.delete(shop.resolve("stock.db"));
        assertEquals(0, run("check").code());
        assertEquals(0, run("stock", "open").code());
        assertEquals(export.out(), run("stock", "export").out());
    }

    /** How many commands stopped at the damage; the others had nothing to do with that row. */
    private int toldByCommands(String change) {
        int told = 0;
        for (List<String> words : List.of(
                List.of("stock", "list"),
                List.of("stock", "export"),
                List.of("check"),
                List.of(
                        "plan",
                        "--time",
                        "50ms",
                        "--out",
                        folder.resolve("out.json").toString()),
                List.of("stock", "history", "R-104"),
                List.of("stock", "history", "R-105"),
                List.of("stock", "trace", "1002/1.1"),
                List.of("stock", "post", "--all"),
                List.of("orders"))) {
            Run run = run(words.toArray(String[]::new));
            assertTrue(run.code() != 1 && run.code() != 2, words + change + run.err());
            assertFalse(run.err().contains("Exception"), words + run.err());
            if (run.code() == 3) {
                assertTrue(run.err().contains("the ledger is damaged"), words + change + run.err());
                assertTrue(run.err().matches("(?s).*(movement|event) \\d+.*"), words + run.err());
                told++;
            }
        }
        return told;
    }

    private static void plant(Path ledger, String change) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + ledger);
                Statement statement = connection.createStatement()) {
            List<String> triggers = new ArrayList<>();
            List<String> again = new ArrayList<>();
            try (var rows = statement.executeQuery("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'")) {
                while (rows.next()) {
                    triggers.add(rows.getString(1));
                    again.add(rows.getString(2));
                }
            }
            for (String trigger : triggers) {
                statement.execute("DROP TRIGGER " + trigger);
            }
            statement.execute("PRAGMA ignore_check_constraints = ON");
            assertEquals(1, statement.executeUpdate(change), change);
            for (String trigger : again) {
                statement.execute(trigger);
            }
        }
    }

    /** Whatever state the folder is in, posting says what is missing. */
    @Test
    void post_inAFolderThatIsNotReady_saysWhy() throws IOException {
        assertPost(3, "stock open");
        assertEquals(0, run("stock", "open").code());
        assertPost(3, "plan");
        assertEquals(0, run("plan", "--time", "200ms").code());
        Path plan = shop.resolve("plans/1.json");
        byte[] whole = Files.readAllBytes(plan);
        Files.write(plan, new byte[0]);
        assertPost(3, "1.json");
        Files.write(plan, new byte[] {(byte) 0xff, 0, 7});
        assertPost(3, "1.json");
        Files.delete(plan);
        assertPost(3, "plan 1");
        Files.createDirectory(plan);
        assertPost(3, "1.json");
        Files.delete(plan);
        Files.write(plan, whole);
        for (String file : List.of("orders.csv", "ropes.json", "shop.json")) {
            String text = Files.readString(shop.resolve(file));
            Files.writeString(shop.resolve(file), "?");
            assertPost(3, file);
            Files.delete(shop.resolve(file));
            assertPost(3, file);
            Files.writeString(shop.resolve(file), text);
        }
        byte[] ledger = Files.readAllBytes(shop.resolve("stock.db"));
        Files.write(shop.resolve("stock.db"), new byte[0]);
        assertPost(3, "stock.db");
        Files.write(shop.resolve("stock.db"), ledger);
        Run nowhere = Run.of("stock", "post", folder.resolve("nowhere").toString(), "--all");
        assertEquals(3, nowhere.code(), nowhere.err());
        assertPost(0, "");
        assertEquals(0, run("stock", "verify").code());
    }

    private void assertPost(int code, String word) {
        Run post = run("stock", "post", "--all");
        assertEquals(code, post.code(), post.out() + post.err());
        assertTrue(post.err().contains(word), post.err());
        assertFalse(post.err().contains("Exception"), post.err());
    }

    private void posted() {
        assertEquals(0, run("stock", "open").code());
        assertEquals(0, run("plan", "--time", "200ms").code());
        Run post = run("stock", "post", "--all");
        assertEquals(0, post.code(), post.err());
    }

    /** A command of this shop: its folder comes behind the words that name the command. */
    private Run run(String... words) {
        List<String> args = new ArrayList<>(List.of(words));
        args.add(words[0].equals("stock") ? 2 : 1, shop.toString());
        return Run.of(args.toArray(String[]::new));
    }
}
