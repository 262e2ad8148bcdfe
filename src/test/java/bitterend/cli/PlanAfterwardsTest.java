package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever books what keeps the plan in force from being posted is told at once, and what to do; others are not. */
final class PlanAfterwardsTest {
    private static final String BARRED = "nothing can be posted off it any more";

    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    @BeforeEach
    void aShop() throws IOException {
        shop = DemoShop.copy("eider-shed", folder).toString();
    }

    @Test
    void ledgerBegunAfterThePlan_isToldWithWhatToDo() {
        plan();
        Run open = run("stock", "open", shop);
        assertTrue(
                words(open)
                        .contains(
                                "plan 1 was not made with this ledger, and nothing can be posted off its reels; what is cut"
                                        + " already is booked first, bitterend stock post " + shop
                                        + " --reel REEL says how; plan again: bitterend plan " + shop),
                open.out());
        plan();
        assertEquals(0, Run.of("stock", "post", shop, "--reel", "E7").code());
    }

    /** What was booked since is told beside it: by the booking, and on the sheet. */
    @Test
    void ledgerBegunAfterThePlan_hidesNothingThatIsBookedOnItsReels() throws IOException {
        plan();
        run("stock", "open", shop);
        String told = stock("hold", "E8");
        assertTrue(told.contains(" off reel E8, and was made before the ledger was begun; what is cut"), told);
        assertTrue(told.contains("plan again: bitterend plan " + shop), told);
        assertTrue(stock("flaw", "E7", "1 m to 2 m: chafed").contains(" was made before the ledger was begun; "));
        assertFalse(stock("move", "E7", "hook 9").contains("plan"), "another place");
        assertFalse(stock("release", "E8").contains("plan 1"), "as it was");
        stock("hold", "E8");
        run("sheet", shop, "--all");
        String sheet = PageText.of(Path.of(shop, "sheet.html"));
        assertTrue(
                sheet.contains("the plan was made before the ledger was begun, and nothing can be posted off its reels;"
                        + " plan again: bitterend plan " + shop),
                sheet);
        assertFalse(sheet.contains("not made with this ledger"), "told once and not of every reel");
        assertTrue(sheet.contains("flaw 1.000 m to 2.000 m, chafed: lies in E-"), sheet);
        assertTrue(sheet.contains("reel E8: on hold on "), sheet);
        assertEquals(5, Run.of("stock", "post", shop, "--reel", "E7").code());
    }

    @Test
    void ledgerBegunBeforeAnyPlan_tellsNothingOfOne() {
        Run open = run("stock", "open", shop);
        assertFalse(open.out().contains("plan"), open.out());
        assertFalse(stock("hold", "E7").contains("plan"), "none is in force");
    }

    /** What the command tells is what posting then says: refused, with the same reel. */
    @Test
    void whatTakesOrTurnsTheRope_isToldOnce() throws IOException {
        for (List<String> event : List.of(
                List.of("count", "E7", "60.5 m"),
                List.of("flaw", "E7", "1 m to 2 m: chafed"),
                List.of("split", "E7", "1 m", "E70"),
                List.of("cut", "E7", "1 m", "--for", "Harbour Board"),
                List.of("rewind", "E7"))) {
            shop = DemoShop.copy("eider-shed", folder.resolve(event.get(0))).toString();
            run("stock", "open", shop);
            plan();
            String told = stock(event.get(0), event.subList(1, event.size()).toArray(String[]::new));
            assertTrue(told.contains("plan 1 cuts 3 pieces off reel E7, and " + BARRED), event + told);
            assertTrue(told.contains(" --reel E7 says how; plan again: bitterend plan "), event + told);
            assertEquals(5, Run.of("stock", "post", shop, "--reel", "E7").code(), event.toString());
            assertFalse(stock("count", "E7", "55 m").contains(BARRED), "it was barred before");
        }
    }

    @Test
    void reelThatIsGone_hasNothingLeftToBook() {
        run("stock", "open", shop);
        plan();
        String told = stock("condemn", "E7");
        assertTrue(told.contains(BARRED + "; plan again: bitterend plan"), told);
    }

    @Test
    void hold_isToldWithItsEnd_andItsEndTellsNothing() {
        run("stock", "open", shop);
        plan();
        String held = stock("hold", "E7");
        assertTrue(
                held.contains("plan 1 cuts 3 pieces off reel E7, and nothing is posted off it while it is on hold; when"
                        + " that is over: bitterend stock release"),
                held);
        assertFalse(stock("release", "E7").contains("plan 1"), "it can be posted again");
        assertEquals(0, Run.of("stock", "post", shop, "--reel", "E7").code());
    }

    @Test
    void reservationForAnother_namesThePieces() {
        run("stock", "open", shop);
        plan();
        String told = stock("reserve", "E7", "E-32");
        assertTrue(told.contains("plan 1 cuts off reel E7 what may not come off it any more: E-31/1.1, "), told);
        assertFalse(stock("move", "E7", "hook 9").contains("plan"), "that is told already");
    }

    @Test
    void whatThePlanDoesNotCareFor_isNotTold() {
        run("stock", "open", shop);
        plan();
        assertFalse(stock("move", "E7", "hook 9").contains("plan"), "another place");
        run("stock", "post", shop, "--reel", "E7");
        assertFalse(stock("rewind", "E7").contains("plan 1"), "all of it is posted");
        assertFalse(run("stock", "post", shop, "--reel", "E8").out().contains(BARRED), "its own cuts");
    }

    private void plan() {
        run("plan", shop, "--time", "300ms");
    }

    private String stock(String command, String... more) {
        return words(run(Stream.concat(Stream.of("stock", command, shop), Stream.of(more))
                .toArray(String[]::new)));
    }

    private static String words(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    private static Run run(String... arguments) {
        Run run = Run.of(arguments);
        assertEquals(0, run.code(), run.err());
        return run;
    }
}
