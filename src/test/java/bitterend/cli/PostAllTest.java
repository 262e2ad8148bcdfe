package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code stock post --all} books what lies on the bench and nothing that nobody cut. */
final class PostAllTest {
    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    @BeforeEach
    void openTheLedger() throws IOException {
        shop = DemoShop.copy("eider-shed", folder).toString();
        run(0, "stock", "open", shop);
        run(0, "plan", shop, "--effort", "reproducible");
    }

    private static Run run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), run.err());
        return run;
    }

    /** Of a plan made at closing time for tomorrow no sheet is out: what was issued today was cut. */
    @Test
    void planForTomorrow_leavesAllToWhatIsIssued() {
        run(0, "sheet", shop, "--reel", "E8", "--issue");
        run(0, "plan", shop, "--day", "2026-03-03", "--effort", "reproducible");
        String told = run(0, "stock", "post", shop, "--all").out();
        assertTrue(told.contains("plan 1: reel E8\n"), told);
        String again = run(2, "stock", "post", shop, "--all").err().replaceAll("\\s+", " ");
        assertTrue(again.contains("plan 2 is for 2026-03-03, today is 2026-03-02, and none of its sheets"), again);
        assertTrue(again.contains("--reel REEL or --piece PIECE"), again);
        run(2, "stock", "post", shop, "--all", "--plan", "2");
        run(0, "stock", "verify", shop);
    }

    /** What the day has besides what is out was not cut. */
    @Test
    void whereASheetIsOut_theOthersOfTheDayAreNotBooked() {
        run(0, "sheet", shop, "--reel", "E8", "--issue");
        String told = run(0, "stock", "post", shop, "--all").out();
        assertTrue(told.contains("plan 1: reel E8\n"), told);
    }

    /** Two plans with sheets out: a person says which. */
    @Test
    void sheetsOfTwoPlansOut_areAskedFor() throws IOException {
        run(0, "sheet", shop, "--reel", "E8", "--issue");
        run(0, "plan", shop, "--day", "2026-03-03", "--effort", "reproducible");
        run(0, "sheet", shop, "--all", "--issue");
        String asked = run(2, "stock", "post", shop, "--all").err().replaceAll("\\s+", " ");
        assertTrue(asked.contains("more than one plan could be meant: 1, 2"), asked);
        String told = run(0, "stock", "post", shop, "--all", "--plan", "1").out();
        assertTrue(told.contains("plan 1: reel E8\n"), told);
    }
}
