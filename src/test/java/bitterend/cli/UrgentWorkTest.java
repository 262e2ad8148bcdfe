package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The urgent before the rest, where the rack is too short for all of it. */
final class UrgentWorkTest {
    private static final String ORDERS = "order,line,rope,length,end a,end b,quantity,due,priority,set,match\n";
    private static final String REELS = "reel,rope,length,full\n";

    @TempDir
    private Path folder = Path.of(".");

    @Test
    void overduePieces_goBeforeAMatchedSetWithoutADate() {
        Run run = plan(
                "O1,1,B12,4.8 m,sealed,sealed,2,,9,S1,reel\nO2,1,B12,4.5 m,sealed,sealed,2,2026-03-01,1,,\n",
                "R1,B12,10 m,no\n");
        assertEquals(4, run.code(), run.err());
        assertTrue(run.out().contains("O1/1.1, O1/1.2"), run.out());
        assertFalse(run.out().contains("O2/1.1, O2/1.2: each"), run.out());
    }

    @Test
    void aRushPieceOfPriorityOne_goesBeforeManyPiecesDueOnFriday() {
        Run run = plan(
                "RUSH,1,B12,50 m,plain,plain,1,2026-03-02,1,,\nFRI,1,B12,8 m,plain,plain,6,2026-03-06,5,,\n",
                "R1,B12,52 m,no\n");
        assertEquals(4, run.code(), run.err());
        assertTrue(run.out().contains("Planned: 1 of 7 pieces"), run.out());
    }

    @Test
    void aRushPieceOfPriorityOne_goesBeforeFiftyPiecesDueInThreeWeeks() {
        Run run = plan(
                "RUSH,1,B12,50 m,plain,plain,1,2026-03-02,1,,\nLATE,1,B12,1 m,plain,plain,50,2026-03-23,9,,\n",
                "R1,B12,52 m,no\n");
        assertTrue(run.out().contains("RUSH/1.1"), run.out());
        assertFalse(run.out().contains("RUSH/1.1: "), run.out());
    }

    @Test
    void aPieceLeftUndone_saysWhoTookTheRope() {
        Run run = plan(
                "RUSH,1,B12,50 m,plain,plain,1,2026-03-02,1,,\nFRI,1,B12,8 m,plain,plain,6,2026-03-06,5,,\n",
                "R1,B12,52 m,no\n");
        assertTrue(run.out().replaceAll("\\s+", " ").contains("went to RUSH/1.1"), run.out());
    }

    /** The urgent piece of Thursday weighs more than what is overdue today; it waits all the same. */
    @Test
    void urgentPieceOfThursday_doesNotTakeTheRopeOfTodaysOverdueWork() {
        Run run = plan(
                "OLD,1,B12,6 m,plain,plain,1,2026-02-27,5,,\nTHU,1,B12,9 m,plain,plain,1,2026-03-05,1,,\n",
                "R1,B12,10 m,no\n");
        assertEquals(0, run.code(), run.err());
        String page = run.out().replaceAll("\\s+", " ");
        assertTrue(page.contains("Planned: all 1 piece"), page);
        assertTrue(
                page.contains("Planned for today alone: looking ahead to 2026-03-09 leaves more first-class work of"
                        + " today undone."),
                page);
    }

    /** 11 m are known and 10 m there: what is not for today does not share its reel, and is told of. */
    @Test
    void whileRopeIsShort_nothingIsCutAhead() {
        String orders =
                "NOW,1,B12,2 m,plain,plain,1,2026-03-02,5,,\nTUE,1,B12,4 m,plain,plain,1,2026-03-03,5,,\nFRI,1,B12,5 m,plain,plain,1,2026-03-06,5,,\n";
        Run run = plan(orders, "R1,B12,10 m,no\n");
        assertEquals(4, run.code(), run.err());
        String page = run.out().replaceAll("\\s+", " ");
        assertTrue(page.contains("Planned: 1 of 3 pieces"), page);
        assertFalse(page.contains("Every piece is planned"), page);
        assertTrue(
                page.contains(
                        "2 pieces of B12 are not cut ahead: what is in the house is kept for what comes first and"
                                + " none is on order. Order lines: TUE/1 (1 piece, due 2026-03-03); FRI/1 (1 piece, due 2026-03-06)."),
                page);
        assertTrue(
                page.contains(
                        "Not planned: 1 piece of FRI/1, due 2026-03-06, not cut ahead. The B12 in the house and on"
                                + " order does not hold it beside the other work"),
                page);
        Run asked = Run.of("plan", folder.toString(), "--explain", "FRI/1.1");
        assertEquals(0, asked.code(), asked.err());
        String answer = asked.out().replaceAll("\\s+", " ");
        assertTrue(answer.contains("Piece FRI/1.1: not cut ahead"), answer);
        assertTrue(answer.contains("2 pieces of B12 are not cut ahead"), answer);
        assertTrue(answer.contains("Not planned: 1 piece of FRI/1, due 2026-03-06"), answer);
        Run program = Run.of("plan", folder.toString(), "--explain", "FRI/1.1", "--json");
        assertTrue(program.out().contains("\"waits\""), program.out());
        assertTrue(program.out().replaceAll("\\s+", "").contains("\"undone\":[\"FRI/1.1\"]"), program.out());
        assertTrue(
                Run.of("show", folder.toString(), "reasons").out().contains("Not planned: 1 piece of FRI/1"), answer);
        write("shop.json", settings("\"brake\": 0,"));
        Run without = planOf(orders, "R1,B12,10 m,no\n");
        assertFalse(without.out().contains("cut ahead"), without.out());
    }

    /** Of two hawsers one fits, and rope that is ordered today comes too late for both: named, counted, and not well. */
    @Test
    void heldBackWorkThatTheHouseDoesNotHold_isNamedAndIsNotDone() {
        write("offers.csv", "offer,supplier,rope,length,price,lead days\nB-110,Longreach,B12,110 m,905.00 EUR,10\n");
        Run run = plan(
                "NOW,1,B12,3 m,plain,plain,1,2026-03-02,5,,\nHAWSER,2,B12,6 m,plain,plain,2,2026-03-05,6,,\n",
                "R1,B12,10 m,no\n");
        String page = run.out().replaceAll("\\s+", " ");
        assertEquals(4, run.code(), run.err() + page);
        assertTrue(page.contains("Planned: 1 of 3 pieces"), page);
        assertTrue(page.contains("Not planned: 1 of 2 pieces of HAWSER/2, due 2026-03-05, not cut ahead."), page);
        assertTrue(page.contains("Order lines: HAWSER/2 (2 pieces, due 2026-03-05)."), page);
    }

    /** Promised while the brake was off; with it they wait, and the promise is told of that is not kept. */
    @Test
    void promisesThatTheBrakeDrops_areToldOf() {
        String orders =
                "NOW,1,B12,2 m,plain,plain,1,2026-03-02,5,,\nTUE,1,B12,4 m,plain,plain,1,2026-03-03,5,,\nFRI,1,B12,5 m,plain,plain,1,2026-03-06,5,,\n";
        write("shop.json", settings("\"brake\": 0,"));
        planOf(orders, "R1,B12,10 m,no\n");
        write("shop.json", settings(""));
        Run braked = planOf(orders, "R1,B12,10 m,no\n");
        assertTrue(braked.out().contains("no longer planned"), braked.out());
        String changes = Run.of("show", folder.toString(), "changes").out().replaceAll("\\s+", " ");
        assertTrue(
                changes.contains("TUE/1.1 R1 not planned it waits while B12 is short, and none is on order"), changes);
    }

    /** With the rope a week later all that is known does not fit the house: then nothing is cut ahead, as the plan would do it. */
    @Test
    void delayOfRope_isHeldAgainstThePlanThatTheDayWouldHave() {
        write("on-order.csv", "number,rope,length,expected\nP-8,B12,100 m,2026-03-02\n");
        Run plan = plan(
                "NOW,1,B12,2 m,plain,plain,1,2026-03-02,5,,\nFRI,1,B12,5 m,plain,plain,1,2026-03-06,5,,\nMON,1,B12,4 m,plain,plain,1,2026-03-09,5,,\n",
                "R1,B12,10 m,no\n");
        assertEquals(0, plan.code(), plan.err());
        Run late = Run.of("plan", folder.toString(), "--late", "P-8=8", "--day", "2026-03-02", "--time", "2s");
        String page = late.out().replaceAll("\\s+", " ");
        assertTrue(page.contains("Not cut ahead then, while rope is short: FRI; MON."), page);
        assertTrue(page.contains("Nothing more would be left undone."), page);
    }

    @Test
    void closedDaysAndLimits_areReadFromTheShopFile() throws IOException {
        write(
                "shop.json",
                settings("\"closed\": [\"2026-03-03\", \"Monday\"], \"urgency\": {\"third\": \"two days\"},"));
        Run run = planOf("O1,1,B12,1 m,plain,plain,1,,,,\n", "R1,B12,5 m,no\n");
        assertEquals(3, run.code());
        assertTrue(run.err().contains("shop.json, /closed/1: found \"Monday\""), run.err());
        assertTrue(run.err().contains("third: found \"two days\", expected how far ahead"), run.err());
    }

    private Run plan(String orders, String reels) {
        write("shop.json", settings(""));
        return planOf(orders, reels);
    }

    private Run planOf(String orders, String reels) {
        write(
                "ropes.json",
                """
                {"format": "bitterend/ropes/1", "ropes": [{"id": "B12", "name": "braid 12", "construction": "double braid",
                 "fibre": "polyester", "diameter": "12 mm", "lay": "none", "mass": "0.1 kg/m", "price": "3 EUR/m",
                 "keepFrom": "2 m", "asGoodAsNew": "20 m", "usualReel": "200 m"}]}
                """);
        write("orders.csv", ORDERS + orders);
        write("reels.csv", REELS + reels);
        return Run.of("plan", folder.toString(), "--time", "2s", "--day", "2026-03-02")
                .withParts(folder.toString());
    }

    private static String settings(String more) {
        return """
                {"format": "bitterend/shop/1", "name": "Mole End", "currency": "EUR", %s "labour": "45 EUR/h"}
                """
                .formatted(more);
    }

    private void write(String name, String text) {
        try {
            Files.writeString(folder.resolve(name), text);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
