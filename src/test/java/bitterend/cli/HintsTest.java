package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Folders;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands that the program prints: every one can be pasted and does something. */
final class HintsTest {
    private static final Pattern HINT = Pattern.compile("\\bbitterend (?:" + String.join("|", Main.commands())
            + ")(?: (?:\"[^\"]*\"|'[^']*'|[^\\s\"';,()]*[^\\s\"';,().:]))+(?=[;,.():]?(?:\\s|$))");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");
    private static final Pattern PLACEHOLDER = Pattern.compile(" [A-Z][A-Z/]{3,}(?![\\w-])");

    private static final Pattern COUNTED = Pattern.compile("--before-count");

    @TempDir
    private Path folder = Path.of("");

    private final Set<String> seen = new LinkedHashSet<>();

    @Test
    void hint_namesTheProgramAsItWasCalledAndTheShopAsItWasTyped() {
        Hints hints = new Hints("java -jar target/bitterend.jar");
        hints.of("my shop");
        assertEquals(
                "see java -jar target/bitterend.jar stock list \"my shop\" --all",
                hints.typed("see bitterend stock list SHOP --all"));
        assertEquals("{\"a\": \"bitterend plan SHOP\"}", hints.typed("{\"a\": \"bitterend plan SHOP\"}"));
        assertEquals("target/bitterend.jar", hints.typed("target/bitterend.jar"));
    }

    @Test
    void beforeADay_everyHintRuns() throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        hintsOf(shop, "");
        hintsOf(shop, "stock", "list", "" + shop);
        hintsOf(shop, "sheet", "" + shop);
        hintsOf(shop, "plan", "" + shop, "--shares");
        hintsOf(shop, "lengths", "" + shop);
        hintsOf(shop, "orders");
        hintsOf(shop, "plan", "" + shop, "--foo");
        hintsOf(shop, "quote", "" + shop);
        hintsOf(shop, "plan", "" + shop, "--effort", "reproducible");
        Path other = folder.resolve("new shop");
        hintsOf(other, "init", "" + other, "--example");
        assertTrue(seen.size() >= 9, seen.toString());
    }

    @Test
    void inTheMiddleOfADay_everyHintRuns() throws IOException {
        DayInTheShop day = DayInTheShop.in(folder);
        Path shop = day.shop();
        hintsOf(shop, "show", "" + shop);
        hintsOf(shop, "stock", "receive", "" + shop);
        hintsOf(shop, "measure", "" + shop, "E-32/1.4", "--cut", "6.72m", "--came-out", "6m");
        hintsOf(shop, "stock", "undo", "" + shop, "999");
        hintsOf(shop, "stock", "history", "" + shop, "E99");
        hintsOf(shop, "stock", "cut", "" + shop, "E10", "200m", "--for", "sloop");
        hintsOf(shop, "stock", "cut", "" + shop, "E10", "6.8m", "--piece", "E-32/1.2");
        hintsOf(shop, "plan", "" + shop, "--explain", "E-32/1.2");
        hintsOf(shop, "plan", "" + shop, "--effort", "reproducible");
        day.book("stock post SHOP --piece E-31/2.1");
        hintsOf(shop, "plan", "" + shop, "--explain", "E-31/2.2");
        day.book("stock spoil SHOP E-32/1.3");
        hintsOf(shop, "stock", "spoil", "" + shop, "E-32/1.3");
        day.book("orders spare SHOP E-32/1.2");
        hintsOf(shop, "orders", "" + shop);
        day.book("stock hold SHOP E7");
        hintsOf(shop, "stock", "cut", "" + shop, "E7", "2m", "--for", "sloop");
        hintsOf(shop, "stock", "post", "" + shop, "--plan", "1", "--all");
        Path orders = shop.resolve("orders.csv");
        Files.writeString(orders, Files.readString(orders).replace("LAID-14,6 m", "LAID-14,5.8 m"));
        hintsOf(shop, "orders", "" + shop);
        hintsOf(shop, "check", "" + shop);
        assertTrue(seen.size() >= 12, seen.toString());
    }

    @Test
    void reelThatWasCutElsewhere_isToldWithCommandsThatRun() throws IOException {
        DayInTheShop day = DayInTheShop.in(folder);
        day.book("stock count SHOP E7 9.4m");
        hintsOf(day.shop(), COUNTED, "stock", "post", "" + day.shop(), "--all", "--plan", "1");
        day.book("stock undo SHOP --plan 1 --reel E10");
        day.book("stock cut SHOP E10 2m --for sloop");
        hintsOf(day.shop(), "stock", "post", "" + day.shop(), "--reel", "E10", "--plan", "1");
        hintsOf(day.shop(), "sheet", "" + day.shop());
        assertTrue(seen.size() >= 4, seen.toString());
    }

    /** Runs every command that an answer names, each on the shop as it was then. */
    private void hintsOf(Path shop, String... words) throws IOException {
        hintsOf(shop, Pattern.compile(""), words);
    }

    /** Those of them that are for what happened; the others are for what else may have happened. */
    private void hintsOf(Path shop, Pattern fitting, String... words) throws IOException {
        Run run = Run.of(words);
        Path kept = folder.resolve("kept");
        Matcher hints = HINT.matcher(run.out() + "\n" + run.err());
        while (hints.find()) {
            String hint = hints.group();
            assertFalse(PLACEHOLDER.matcher(hint).find(), List.of(words) + " says: " + hint);
            if (fitting.matcher(hint).find() && seen.add(hint)) {
                Folders.copy(shop, kept);
                Run pasted = Run.of(words(hint));
                assertTrue(
                        pasted.code() == 0 || pasted.code() == 4,
                        List.of(words) + " says: " + hint + "\n" + pasted.code() + " " + pasted.err());
                delete(shop);
                Files.move(kept, shop);
            }
        }
    }

    /** The words of a command as a shell takes them, without the program. */
    private static String[] words(String command) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            words.add(Stream.of(1, 2, 3)
                    .map(word::group)
                    .filter(Objects::nonNull)
                    .findFirst()
                    .orElseThrow());
        }
        return words.subList(1, words.size()).toArray(String[]::new);
    }

    private static void delete(Path shop) throws IOException {
        try (Stream<Path> all = Files.walk(shop)) {
            for (Path each : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
