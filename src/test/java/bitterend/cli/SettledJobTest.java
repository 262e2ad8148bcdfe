package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Folders;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job that is settled stays as it was settled, whatever is cut, planned and received later. */
final class SettledJobTest {
    private static final int ROUNDS = 2;

    /** What a shop does later. What does not go, since the day went otherwise, may fail: a job stays as it was all the same. */
    private static final List<List<String>> LATER = List.of(
            List.of("stock", "cut", "SHOP", "E10", "3.5 m", "--sample", "lot test"),
            List.of("stock", "cut", "SHOP", "E8", "2.9 m", "--for", "Harbour Board"),
            List.of("stock", "cut", "SHOP", "E7", "12 m", "--for", "Harbour Board"),
            List.of("stock", "receive", "SHOP", "E20", "LAID-14", "350 m", "--paid", "600 EUR"),
            List.of("stock", "receive", "SHOP", "E21", "LAID-14", "40 m"),
            List.of("stock", "cut", "SHOP", "E20", "300 m", "--for", "Harbour Board"),
            List.of("stock", "condemn", "SHOP", "E7", "--note", "chafed"),
            List.of("quote", "accept", "SHOP", "Q-2602", "--order", "E-62", "--due", "2026-03-04"),
            List.of("plan", "SHOP", "--time", "100ms"),
            List.of("stock", "post", "SHOP", "--all"),
            List.of("stock", "count", "SHOP", "E9", "199.5 m"));

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void copyShed() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        Files.writeString(
                shop.resolve("asks.csv"),
                "line,customer,rope,length,end a,quantity,minutes\n1,sloop Redshank,LAID-14,5 m,whipped,2,20 min\n");
        run(0, "quote", "SHOP", "SHOP/asks.csv", "--keep", "--time", "100ms");
        run(0, "quote", "SHOP", "SHOP/asks.csv", "--keep", "--time", "100ms");
        run(0, "quote", "accept", "SHOP", "Q-2601", "--order", "E-61", "--due", "2026-03-03");
        run(0, "stock", "open", "SHOP");
    }

    private Run run(String... words) {
        return Run.of(Arrays.stream(words)
                .map(word -> word.replace("SHOP", "" + shop))
                .toArray(String[]::new));
    }

    private Run run(int code, String... words) {
        Run run = run(words);
        assertEquals(code, run.code(), String.join(" ", words) + "\n" + run.out() + run.err());
        return run;
    }

    private String settled() {
        return run(0, "quote", "compare", "SHOP", "Q-2601", "--json").out();
    }

    private void staysAsItIs(long seed) {
        List<List<String>> later = new ArrayList<>(LATER);
        Collections.shuffle(later, new Random(seed));
        String before = settled();
        int done = 0;
        for (List<String> words : later) {
            done += run(words.toArray(String[]::new)).code() == 0 ? 1 : 0;
            assertEquals(before, settled(), "seed " + seed + " after " + words);
        }
        assertTrue(done >= 6, "seed " + seed + ": " + done + " of them went");
    }

    private void isChangedByItsOwn(String piece) {
        String before = settled();
        String event = run(0, "stock", "trace", "SHOP", piece, "--json")
                .out()
                .replaceAll("(?s).*?\"event\": ([0-9]+).*", "$1");
        run(0, "stock", "undo", "SHOP", event);
        assertNotEquals(
                before, run("quote", "compare", "SHOP", "Q-2601", "--json").out());
    }

    /** Some histories from here on; then it is as it was, and what was cut for the job is taken back. */
    private void rounds() throws IOException {
        Path begun = shop;
        for (int seed = 1; seed <= ROUNDS; seed++) {
            shop = folder.resolve("round" + seed);
            Folders.copy(begun, shop);
            staysAsItIs(seed);
        }
        shop = begun;
        isChangedByItsOwn("E-61/1.2");
    }

    @Test
    void jobCutOffPlan_staysAsItWasSettled() throws IOException {
        run(0, "stock", "cut", "SHOP", "E10", "5 m", "--piece", "E-61/1.1");
        run(0, "stock", "cut", "SHOP", "E8", "5 m", "--piece", "E-61/1.2");
        rounds();
    }

    @Test
    void jobCutByAPlan_staysAsItWasSettled_whileOthersOfItsReelAreStillToBeCut() throws IOException {
        run(0, "plan", "SHOP", "--time", "300ms");
        run(0, "stock", "post", "SHOP", "--piece", "E-61/1.1");
        run(0, "stock", "post", "SHOP", "--piece", "E-61/1.2");
        assertTrue(
                run(0, "quote", "compare", "SHOP", "Q-2601")
                        .out()
                        .replaceAll("\\s+", " ")
                        .contains("counts as planned"),
                "others are still to be cut");
        rounds();
    }
}
