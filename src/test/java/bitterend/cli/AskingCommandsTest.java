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
 * A question never writes: whatever asks leaves the shop folder byte for byte as it was. The commands are those that the
 * command line itself knows; one that is in neither list fails the test.
 */
final class AskingCommandsTest {
    private static final String FEW = " --from-history --scenarios 20 --weeks 2";

    /** What each command that asks is asked; {@code SHOP} and {@code OUT} are folders, {@code NOTE} a delivery. */
    private static final Map<String, List<String>> ASKS = new TreeMap<>(Map.ofEntries(
            Map.entry("check", List.of("check SHOP")),
            Map.entry("lengths", List.of("lengths SHOP", "lengths SHOP E-31/1")),
            Map.entry(
                    "plan",
                    List.of(
                            "plan SHOP --explain E-31/1.1",
                            "plan SHOP --explain E-32/1.1",
                            "plan SHOP --explain E7",
                            "plan SHOP --shares",
                            "plan SHOP --time 100ms --out OUT/plan.json")),
            Map.entry(
                    "show",
                    List.of("show SHOP", "show SHOP tables", "show SHOP reasons", "show SHOP money", "show SHOP E7")),
            Map.entry("calibrate", List.of("calibrate SHOP")),
            Map.entry("quote", List.of("quote SHOP --order E-31", "quote SHOP --order E-31 --customer")),
            Map.entry("quote compare", List.of("quote compare SHOP OUT/filed.json")),
            Map.entry("orders", List.of("orders SHOP", "orders SHOP --by customer", "orders SHOP --by due")),
            Map.entry("orders note", List.of("orders note SHOP E-32", "orders note SHOP --delivery NOTE")),
            Map.entry("stock list", List.of("stock list SHOP", "stock list SHOP --all")),
            Map.entry("stock history", List.of("stock history SHOP E7")),
            Map.entry("stock export", List.of("stock export SHOP")),
            Map.entry("stock verify", List.of("stock verify SHOP")),
            Map.entry("stock trace", List.of("stock trace SHOP E-32/1.1", "stock trace SHOP --lot 12")),
            Map.entry("stock backup", List.of("stock backup SHOP OUT/backup.db")),
            Map.entry(
                    "stock gauge",
                    List.of("stock gauge SHOP E7 --barrel 150mm --traverse 300mm --depth 120mm --flange 500mm")),
            Map.entry("buy", List.of("buy SHOP --time 200ms", "buy SHOP" + FEW)),
            Map.entry("value", List.of("value SHOP" + FEW))));

    /** What books, begins, or writes the file that it is there for. */
    private static final Set<String> WRITES = new TreeSet<>(Set.of(
            "init",
            "sheet",
            "measure",
            "orders release",
            "orders again",
            "orders spare",
            "orders give",
            "orders back",
            "orders keep",
            "orders deliver",
            "stock",
            "stock open",
            "stock restore",
            "stock receive",
            "stock post",
            "stock cut",
            "stock flaw",
            "stock correct",
            "stock spoil",
            "stock undo",
            "stock count",
            "stock hold",
            "stock release",
            "stock reserve",
            "stock move",
            "stock rewind",
            "stock split",
            "stock return",
            "stock sell",
            "stock condemn",
            "stock send"));

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");
    private String note = "";

    @Test
    void everyCommand_asksOrWrites() {
        Set<String> known = new TreeSet<>(ASKS.keySet());
        known.addAll(WRITES);
        assertEquals(known, EveryCommand.byWords().keySet());
    }

    @Test
    void everyCommandThatAsks_leavesTheFolderAsItWas() throws IOException {
        aDayInTheShop();
        Map<String, String> before = digests(shop);
        int files = 0;
        for (Map.Entry<String, List<String>> asked : ASKS.entrySet()) {
            CommandLine command = Objects.requireNonNull(EveryCommand.byWords().get(asked.getKey()));
            for (String words : asked.getValue()) {
                ask(words, before);
                if (has(command, "--json")) {
                    ask(words + " --json", before);
                }
            }
            if (has(command, "--units")) {
                ask(asked.getValue().get(0) + " --units imperial", before);
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
        Run run = Run.of(filled(words));
        assertTrue(run.code() == 0 || run.code() == 4, words + "\n" + run.code() + run.err());
        if (words.endsWith(" --json")) {
            assertTrue(run.out().startsWith("{") && run.out().endsWith("}\n"), words + "\n" + run.out());
        }
        assertEquals(before, digests(shop), words);
        Files.deleteIfExists(folder.resolve("out/backup.db"));
        Files.deleteIfExists(folder.resolve("out/plan.json"));
    }

    private String[] filled(String words) {
        return words.replace("SHOP", shop.toString())
                .replace("OUT", folder.resolve("out").toString())
                .replace("NOTE", note)
                .split(" ");
    }

    /** A shop with a ledger in the middle of its day: planned, issued, cut, measured, delivered, quoted. */
    private void aDayInTheShop() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        Files.createDirectories(folder.resolve("out"));
        book("stock open SHOP");
        book("plan SHOP --time 300ms");
        book("sheet SHOP --issue");
        Files.delete(shop.resolve("sheet.html"));
        book("stock post SHOP --piece E-32/1.3 --piece E-32/1.4");
        for (String piece : List.of("E-32/1.1", "E-32/1.2", "E-32/1.3")) {
            book("measure SHOP " + piece + " --cut 6.72m --came-out 6m");
        }
        note = book("orders deliver SHOP E-32 --piece E-32/1.1 --unpassed")
                .out()
                .replaceAll("(?s).*Delivery (\\d+).*", "$1");
        book("quote SHOP --order E-31 --out OUT/filed.json");
    }

    private Run book(String words) {
        Run run = Run.of(filled(words));
        assertEquals(0, run.code(), words + "\n" + run.err());
        return run;
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
