package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.store.LoftServer;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Scanner;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop whose ledger is a loft on a server, through the command line. */
final class LedgerOnAServerTest {
    private static final LoftServer SERVER = LoftServer.shared();

    @TempDir
    private Path folder = Path.of("");

    private Path path = Path.of("");
    private String shop = "";

    @BeforeEach
    void copy() throws IOException {
        path = TestShop.in(folder).path();
        shop = path.toString();
    }

    private static Run run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), String.join(" ", args) + "\n" + run.err() + run.out());
        return run;
    }

    @Test
    void shopThatNamesALoft_keepsItsLedgerThere() throws IOException {
        String loft = SERVER.name(path);
        Run opened = run(0, "stock", "open", shop);
        assertTrue(opened.out().startsWith("loft " + loft + " on 127.0.0.1:"), opened.out());
        run(0, "stock", "receive", shop, "N1", "DB12", "50 m");
        assertTrue(run(0, "stock", "list", shop).out().contains("N1"));
        run(0, "plan", shop, "--time", "200ms");
        run(0, "stock", "verify", shop);
        assertFalse(Files.exists(path.resolve("stock.db")));
    }

    @Test
    void ledger_goesThereAndBackAsItIs() throws IOException {
        run(0, "stock", "open", shop);
        run(0, "stock", "receive", shop, "N1", "DB12", "50 m", "--once", "tap 1");
        run(0, "plan", shop, "--time", "200ms");
        run(0, "sheet", shop, "--issue");
        run(0, "stock", "post", shop, "--all");
        List<Event> before = events();
        String verified = run(0, "stock", "verify", shop).out();

        String loft = SERVER.name(path);
        run(0, "stock", "move-ledger", shop);
        assertEquals(before, events());
        assertEquals(verified, run(0, "stock", "verify", shop).out());
        assertEquals(1, kept("stock.db-moved-").size());
        assertFalse(Files.exists(path.resolve("stock.db")));
        run(0, "stock", "receive", shop, "N1", "DB12", "50 m", "--once", "tap 1");
        assertEquals(before, events());
        run(0, "stock", "receive", shop, "N2", "DB12", "60 m");
        List<Event> longer = events();

        Run back = run(0, "stock", "move-ledger", shop, "--to-file");
        assertTrue(back.out().contains("take \"ledger\" out of shop.json"), back.out());
        LoftServer.forget(path);
        assertEquals(longer, events());
        run(0, "stock", "receive", shop, "N3", "DB12", "70 m");
        List<Event> longest = events();

        // the loft that was left behind takes over what came since
        SERVER.name(path, loft);
        run(0, "stock", "move-ledger", shop);
        assertEquals(longest, events());
        run(0, "stock", "verify", shop);
    }

    /** What docs/stock.md says of copies: {@code pg_dump} of one loft, and {@code psql} to put it back. */
    @Test
    void copyByTheToolsOfTheServer_isPutBackAsItWas() throws Exception {
        assumeTrue(isThere("pg_dump") && isThere("psql"), "the tools of the server are not on this machine");
        assumeTrue(
                version("pg_dump") >= 15 && version("psql") >= 15,
                "the tools on this machine are older than the server of the tests");
        String loft = SERVER.name(path);
        run(0, "stock", "open", shop);
        run(0, "stock", "receive", shop, "N1", "DB12", "50 m");
        run(0, "plan", shop, "--time", "200ms");
        run(0, "stock", "post", shop, "--all");
        List<Event> before = events();
        String verified = run(0, "stock", "verify", shop).out();
        String copy = folder.resolve("copy.sql").toString();
        tool("pg_dump", "--schema=loft_" + loft, "--file=" + copy);
        SERVER.dropLoft(loft);
        assertTrue(run(3, "stock", "list", shop).err().contains(loft));
        tool("psql", "--quiet", "--set=ON_ERROR_STOP=1", "--file=" + copy);
        assertEquals(before, events());
        assertEquals(verified, run(0, "stock", "verify", shop).out());
        run(0, "stock", "receive", shop, "N2", "DB12", "60 m");
        run(0, "stock", "verify", shop);
    }

    private static boolean isThere(String tool) {
        return Arrays.stream(
                        Objects.requireNonNullElse(System.getenv("PATH"), "").split(File.pathSeparator))
                .anyMatch(place -> Files.isExecutable(Path.of(place, tool)));
    }

    private static int version(String tool) throws IOException {
        Process process = new ProcessBuilder(tool, "--version").start();
        try (Scanner words = new Scanner(process.getInputStream(), StandardCharsets.UTF_8)) {
            return Integer.parseInt(words.nextLine().replaceFirst("^\\D*([0-9]+).*", "$1"));
        }
    }

    private void tool(String... words) throws Exception {
        String[] named = SERVER.named().split("[@:/]");
        List<String> command = new ArrayList<>(List.of(words));
        command.addAll(List.of("--username=" + named[0], "--host=" + named[1], "--port=" + named[2], named[3]));
        Path told = folder.resolve("told");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(told.toFile())
                .start();
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), command + " goes on and on");
        assertEquals(0, process.exitValue(), command + "\n" + Files.readString(told));
    }

    @Test
    void fileAndServerAtOnce_areNeverUsed() throws IOException {
        run(0, "stock", "open", shop);
        SERVER.name(path);
        for (String[] command : new String[][] {
            {"stock", "list", shop}, {"stock", "receive", shop, "N1", "DB12", "50 m"}, {"plan", shop}, {"check", shop}
        }) {
            Run refused = run(3, command);
            assertTrue(refused.err().contains("stock move-ledger " + shop), refused.err());
        }
    }

    @Test
    void movingOverAnotherLedger_isRefused() throws IOException {
        String loft = SERVER.name(path);
        run(0, "stock", "open", shop);
        List<Event> there = events();
        LoftServer.forget(path);
        run(0, "stock", "open", shop);
        List<Event> here = events();
        SERVER.name(path, loft);
        assertTrue(run(3, "stock", "move-ledger", shop).err().contains("is there already"));
        assertTrue(run(3, "stock", "move-ledger", shop, "--to-file").err().contains("is there already"));
        assertTrue(Files.exists(path.resolve("stock.db")));
        Files.move(path.resolve("stock.db"), folder.resolve("kept.db"));
        assertEquals(there, events());
        LoftServer.forget(path);
        Files.move(folder.resolve("kept.db"), path.resolve("stock.db"));
        assertEquals(here, events());
    }

    @Test
    void loftThatWasLeftBehind_isNotUsed() throws IOException {
        String loft = SERVER.name(path);
        run(0, "stock", "open", shop);
        run(0, "stock", "move-ledger", shop, "--to-file");
        Files.move(path.resolve("stock.db"), folder.resolve("kept.db"));
        Run refused = run(3, "stock", "receive", shop, "N1", "DB12", "50 m");
        assertTrue(refused.err().contains("loft " + loft), refused.err());
        assertTrue(refused.err().contains("was moved away into a file"), refused.err());
    }

    /** Cut short between the copy and the putting aside: the same command again brings it to its end. */
    @Test
    void moveThatWasCutShort_goesOn() throws IOException {
        run(0, "stock", "open", shop);
        SERVER.name(path);
        Files.copy(path.resolve("stock.db"), folder.resolve("kept.db"));
        run(0, "stock", "move-ledger", shop);
        List<Event> events = events();
        Files.copy(folder.resolve("kept.db"), path.resolve("stock.db"));
        run(0, "stock", "move-ledger", shop);
        assertEquals(events, events());
        run(0, "stock", "move-ledger", shop, "--to-file");
        assertEquals(events, fileEvents());
    }

    @Test
    void backupOfALoft_isALedgerFile() throws IOException {
        SERVER.name(path);
        run(0, "stock", "open", shop);
        run(0, "stock", "receive", shop, "N1", "DB12", "50 m");
        List<Event> events = events();
        run(0, "stock", "backup", shop, folder.resolve("b.db").toString());
        Run refused = run(3, "stock", "restore", shop, folder.resolve("b.db").toString());
        assertTrue(refused.err().contains("pg_restore"), refused.err());
        LoftServer.forget(path);
        run(0, "stock", "restore", shop, folder.resolve("b.db").toString());
        assertEquals(events, events().subList(0, events.size()));
    }

    @Test
    void wrongWords_areToldWithTheirPlace() throws IOException {
        for (String[] wrong : new String[][] {
            {"bench:secret@lofts.example/ropes", "gannet", "server"},
            {"lofts.example", "gannet", "server"},
            {"lofts.example:99999/ropes", "gannet", "server"},
            {"lofts.example/ropes", "Gannet Loft", "loft"}
        }) {
            Path settings = path.resolve("shop.json");
            String sound = Files.readString(settings);
            Files.writeString(
                    settings,
                    sound.replaceFirst(
                            "\\{", "{\"ledger\": {\"server\": \"" + wrong[0] + "\", \"loft\": \"" + wrong[1] + "\"},"));
            Run told = run(3, "check", shop);
            assertTrue(
                    (told.out() + told.err()).contains("ledger " + wrong[2])
                            || (told.out() + told.err()).contains("/ledger"),
                    told.out() + told.err());
            assertTrue(run(3, "stock", "list", shop).err().contains("bitterend check"), wrong[0]);
            Files.writeString(settings, sound);
        }
    }

    private List<Event> events() {
        return ShopArgument.access(path).reading(ledger -> ledger.read(Ledger.Stock::events));
    }

    private List<Event> fileEvents() throws IOException {
        LoftServer.forget(path);
        return events();
    }

    private List<Path> kept(String start) throws IOException {
        try (Stream<Path> files = Files.list(path)) {
            return files.filter(file -> file.getFileName().toString().startsWith(start))
                    .toList();
        }
    }
}
