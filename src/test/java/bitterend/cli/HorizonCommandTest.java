package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How far {@code plan} looks ahead, on the small demo loft: on 2 March four pieces are due by the 3rd, 3 on the 13th. */
final class HorizonCommandTest {
    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    @BeforeEach
    void copyDemo() throws IOException {
        shop = DemoShop.copy("eider-shed", folder).toString();
    }

    private static Run run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), run.err());
        return run;
    }

    @Test
    void whatNeedNotBeCutYet_isOneLineAndNoWorkLeftUndone() throws IOException {
        String page = run(0, "plan", shop, "--until", "2026-03-12", "--effort", "reproducible")
                .out();
        assertTrue(page.contains("3 pieces more to be cut after 2026-03-12, planned later."), page);
        assertTrue(page.contains("Planned: all 7 pieces"), page);
        assertFalse(page.contains("Not planned"), page);
        run(0, "sheet", shop);
        assertFalse(Files.readString(Path.of(shop, "sheet.html")).contains("not in this plan"));
        assertFalse(
                run(0, "plan", shop, "--effort", "reproducible").out().contains("planned later"),
                "the shop looks ten working days ahead");
    }

    /** What comes in and must be cut in time is told of, what is for later is not. */
    @Test
    void newWork_isToldOfWhereItIsDueWithinTheHorizon() throws IOException {
        run(0, "plan", shop, "--until", "2026-03-12", "--effort", "reproducible");
        DemoShop.order(Path.of(shop), "E-41,1,pilot boat Dunlin,LAID-14,2 m,whipped,whipped,1,2026-03-11");
        DemoShop.order(Path.of(shop), "E-42,1,pilot boat Dunlin,LAID-14,2 m,whipped,whipped,1,2026-03-20");
        run(0, "sheet", shop);
        String told = PageText.of(Path.of(shop, "sheet.html"));
        assertTrue(told.contains("order E-41: 1 piece is not in this plan"), told);
        assertFalse(told.contains("E-42"), told);
    }

    /** Nothing is due on the day itself; the halyard reel is cut on the 3rd, with all that lies on it. */
    @Test
    void week_saysOnWhichDayEachReelIsCut() throws IOException {
        String screen = run(0, "plan", shop, "--effort", "reproducible").out();
        assertTrue(screen.contains("None must be cut today"), screen);
        Path html = folder.resolve("week.html");
        String week = run(0, "show", shop, "week", "--html", html.toString()).out();
        assertTrue(week.contains("To be cut today: 0 reels."), week);
        assertTrue(Pattern.compile("Tue 2026-03-03 +1 +3 ").matcher(week).find(), week);
        assertTrue(
                Pattern.compile("2026-03-03 +E7 +BRAID-12 +3 +3").matcher(week).find(), week);
        week.lines()
                .filter(line -> !line.contains("bitterend sheet"))
                .forEach(line -> assertTrue(line.length() <= 80, line));
        assertTrue(Files.readString(html).contains("<svg"), "drawn on a page");
    }

    /** Planned at closing time for the next day; in the morning a reel is found short and an order came in. */
    @Test
    void planOfTheEvening_outlivesSmallEventsOfTheMorning() throws IOException {
        run(0, "plan", shop, "--day", "2026-03-03", "--effort", "reproducible");
        String same = run(0, "plan", shop, "--day", "2026-03-03", "--effort", "reproducible")
                .err();
        assertTrue(same.contains("nothing moved since plan 1"), same);
        Path reels = Path.of(shop, "reels.csv");
        Files.writeString(reels, Files.readString(reels).replace("E8,LAID-14,12,33.5 m", "E8,LAID-14,12,32.9 m"));
        DemoShop.order(Path.of(shop), "E-61,1,pilot boat Dunlin,LAID-14,5 m,whipped,whipped,1,2026-03-04");
        String told = run(0, "plan", shop, "--day", "2026-03-03", "--effort", "reproducible")
                .err();
        String changes = told.substring(told.indexOf("changed since plan 2"));
        assertTrue(changes.contains("E-61/1.1: not planned ->"), told);
        long moved = Pattern.compile(": E[0-9]+ -> E[0-9]+:")
                .matcher(changes)
                .results()
                .count();
        assertTrue(moved <= 1, told);
    }

    /** The set is begun with the leg that is cut: the other keeps its lot, though it need not be cut for weeks. */
    @Test
    void whatIsLeftOfABegunSet_isPlannedWhateverItsDay() throws IOException {
        DemoShop.order(Path.of(shop), "E-51,1,pilot boat Dunlin,BRAID-12,3 m,sealed,sealed,1,2026-03-03,,springs,lot");
        DemoShop.order(Path.of(shop), "E-51,2,pilot boat Dunlin,BRAID-12,3 m,sealed,sealed,1,2026-06-03,,springs,lot");
        run(0, "stock", "open", shop);
        run(0, "plan", shop, "--effort", "reproducible");
        run(0, "stock", "post", shop, "--piece", "E-51/1.1");
        assertFalse(run(0, "plan", shop, "--effort", "reproducible").out().contains("planned later"));
    }

    /** Sheets that are called back are planned anew, however far ahead they looked. */
    @Test
    void withdrawnSheets_arePlannedAnewWhateverTheirDay() {
        run(0, "plan", shop, "--effort", "reproducible");
        run(0, "sheet", shop, "--all", "--issue");
        String page = run(0, "plan", shop, "--withdraw", "--until", "2026-03-05", "--effort", "reproducible")
                .out();
        assertTrue(page.contains("Planned: all 10 pieces"), page);
    }

    /** Three pieces of the 13th had their reels; the second plan does not look at them. */
    @Test
    void promisesThatAShorterHorizonDrops_areToldOf() {
        run(0, "plan", shop, "--effort", "reproducible");
        Run second = run(0, "plan", shop, "--until", "2026-03-12", "--effort", "reproducible");
        assertTrue(second.out().contains("3 are no longer planned"), second.out());
        String changes = run(0, "show", shop, "changes").out().replaceAll("\\s+", " ");
        assertTrue(
                Pattern.compile("E-32/2.1 E[0-9]+ not planned it need not be cut by 2026-03-12, and is planned later")
                        .matcher(changes)
                        .find(),
                changes);
        assertTrue(second.err().contains("E-32/2.1"), second.err());
        run(0, "stock", "open", shop);
        run(0, "plan", shop, "--effort", "reproducible");
        run(0, "stock", "post", shop, "--piece", "E-32/2.1");
        assertFalse(
                run(0, "plan", shop, "--until", "2026-03-12", "--effort", "reproducible")
                        .err()
                        .contains("E-32/2.1"),
                "it is cut");
    }

    @Test
    void questionAboutALaterPiece_isAnsweredWithItsDay() {
        run(0, "plan", shop, "--until", "2026-03-12", "--effort", "reproducible");
        String told = run(2, "plan", shop, "--explain", "E-32/2.1").err();
        assertTrue(
                told.contains("E-32/2.1 need not be cut before 2026-03-13, and plan 1 looks ahead to 2026-03-12"),
                told);
        assertTrue(told.contains("--until 2026-03-13"), told);
    }

    /** The rack has no 90 m of it; what is on order has, and is named where the plan says what would help. */
    @Test
    void ropeOnOrderThatWouldDo_isNamedInThePlan() throws IOException {
        DemoShop.order(Path.of(shop), "E-61,1,pilot boat Dunlin,LAID-14,90 m,whipped,whipped,1,2026-03-04");
        Files.writeString(
                Path.of(shop, "on-order.csv"),
                "number,rope,length,quantity,expected\nB-9,LAID-14,110 m,1,2026-03-03\n");
        String page = run(4, "plan", shop, "--effort", "reproducible").out().replaceAll("\\s+", " ");
        assertTrue(
                page.contains(
                        "Order B-9 would do for E-61/1.1: 110 m of LAID-14, expected 2026-03-03, counted on from 2026-03-05;"
                                + " or receive"),
                page);
    }

    @Test
    void dayBeforeThePlan_isRefused() {
        String told = run(2, "plan", shop, "--until", "2026-03-01").err();
        assertTrue(told.contains("--until 2026-03-01 is before the day of the plan, 2026-03-02"), told);
    }
}
