package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Matched sets of which some pieces are cut: the rest matches what they came off, or is left undone. */
final class BegunSetTest {
    @TempDir
    private Path shop;

    @BeforeEach
    void aShop() throws IOException {
        write("shop.json", "{'format': 'bitterend/shop/1', 'name': 'A loft', 'currency': 'EUR', 'labour': '45 EUR/h'}");
        write(
                "ropes.json",
                """
                {'format': 'bitterend/ropes/1', 'ropes': [
                  {'id': 'DB16', 'construction': 'double braid', 'fibre': 'polyester', 'diameter': '16 mm',
                   'price': '3 EUR/m', 'usualReel': '200 m'}]}
                """);
        write(
                "values.json",
                """
                {'format': 'bitterend/values/1', 'values': [{'rope': 'DB16', 'typed': 'yes', 'knots': [
                  {'length': '1 m', 'share': '15 %'}, {'length': '100 m', 'share': '100 %'}]}]}
                """);
    }

    @Test
    void fourLegs_goOnOffAnotherReelOfTheLot_whileTheFirstStillHoldsALittle() throws IOException {
        cutTwo("lot", "W1,DB16,S1,11 m\nW2,DB16,S1,60 m\nW3,DB16,S2,60 m\n");
        Run plan = plan(0);
        assertTrue(run(0, "stock", "list", "" + shop).out().contains("W1"));
        assertFalse(plan.out().contains("Reel W1"), plan.out());
        assertFalse(plan.out().contains("Reel W3"), plan.out());
        String off = plan.out().substring(plan.out().indexOf("Reel W2"));
        assertTrue(off.contains("9001/1.1-3") && off.contains("9001/1.1-4"), plan.out());
    }

    @Test
    void setOfOneLot_isNeverFinishedOffAnother() throws IOException {
        cutTwo("lot", "W1,DB16,S1,11 m\nW3,DB16,S2,60 m\n");
        run(0, "stock", "condemn", "" + shop, "W1", "--note", "wet");
        Run plan = plan(4);
        assertEquals(
                "set 9001/1.1 is begun, 9001/1.1-1, 9001/1.1-2 are cut off lot S1, and no rope on the rack matches",
                why(plan));
        assertTrue(flat(plan.out()).contains("released or made again whole"), plan.out());
    }

    @Test
    void setToTheReel_isNeverFinishedOffAnotherReelOfTheLot() throws IOException {
        cutTwo("reel", "W1,DB16,S1,18 m\nW2,DB16,S1,60 m\n");
        assertTrue(plan(0).out().contains("Reel W1"));
        run(0, "stock", "condemn", "" + shop, "W1", "--note", "wet");
        assertEquals(
                "set 9001/1.1 is begun, 9001/1.1-1, 9001/1.1-2 are cut off reel W1, and no rope on the rack matches",
                why(plan(4)));
    }

    @Test
    void coilOffTheReel_isRopeOfTheReel() throws IOException {
        cutTwo("reel", "W1,DB16,S1,18 m\nW2,DB16,S1,60 m\n");
        run(0, "stock", "split", "" + shop, "W1", "9 m", "W1-a");
        run(0, "stock", "condemn", "" + shop, "W1", "--note", "wet");
        assertTrue(plan(0).out().contains("Reel W1-a"));
    }

    @Test
    void releasedSet_goesOnOffOtherRope_andRowTagAndTraceSaySo() throws IOException {
        cutTwo("lot", "W1,DB16,S1,11 m\nW3,DB16,S2,60 m\n");
        String[] release = {"orders", "release", "" + shop, "9001/1.1", "--who", "Ada", "--note", "customer agrees"};
        run(0, release);
        Run plan = plan(0);
        assertTrue(plan.out().contains("Reel W3"), plan.out());
        assertTrue(flat(plan.out()).contains("sealed, both ends; set"), plan.out());
        run(0, "sheet", "" + shop, "--all", "--tags", "--csv");
        String told = "set 9001/1.1 was released on ";
        assertTrue(PageText.of(shop.resolve("tags.html")).contains(told));
        assertTrue(Files.readString(shop.resolve("sheet.csv")).contains(told));
        run(0, "sheet", "" + shop, "--all");
        assertTrue(PageText.of(shop.resolve("sheet.html")).contains(told));
        run(0, "stock", "post", "" + shop, "--reel", "W3");
        String trace = run(0, "stock", "trace", "" + shop, "9001/1.1-3").out();
        assertTrue(trace.contains("set released 9001/1.1; customer agrees"), trace);
        assertTrue(run(0, "orders", "" + shop).out().contains("4 cut"));
        assertEquals(3, Run.of("stock", "undo", "" + shop, "99").code());
    }

    @Test
    void olderPlan_isNotPosted_whereItWouldTearASetBegunSince() throws IOException {
        write("orders.csv", "order,line,rope,length,end a,end b,match,legs\n9001,1,DB16,4 m,sealed,sealed,lot,2\n");
        write("reels.csv", "reel,rope,lot,length\nW1,DB16,S1,11 m\nW3,DB16,S2,60 m\n");
        run(0, "stock", "open", "" + shop);
        write("pins.csv", "piece,reel\n9001/1.1-1,W1\n9001/1.1-2,W1\n");
        plan(0);
        write("pins.csv", "piece,reel\n9001/1.1-1,W3\n9001/1.1-2,W3\n");
        plan(0);
        Files.delete(shop.resolve("pins.csv"));
        run(0, "stock", "post", "" + shop, "--plan", "2", "--piece", "9001/1.1-1");
        Run torn = Run.of("stock", "post", "" + shop, "--plan", "1", "--reel", "W1");
        assertEquals(5, torn.code(), torn::err);
        assertTrue(
                torn.err().contains("it would not match 9001/1.1-1, which the ledger has as cut off W3"), torn.err());
    }

    @Test
    void reelOnOrder_isNamedForASetThatIsNotBegun() throws IOException {
        write("orders.csv", "order,line,rope,length,end a,end b,match,legs\n9001,1,DB16,4 m,sealed,sealed,lot,2\n");
        write("reels.csv", "reel,rope,lot,length\nW1,DB16,S1,5 m\n");
        write("on-order.csv", "number,rope,length,quantity,expected\nB-7,DB16,200 m,1,2026-03-09\n");
        plan(4);
        String answer =
                flat(run(0, "plan", "" + shop, "--explain", "9001/1.1-2").out());
        assertTrue(
                answer.contains(
                        "Order B-7 would do for the set: 200 m of DB16, expected 2026-03-09, counted on from 2026-03-11."),
                answer);
    }

    @Test
    void release_isTakenBack_andTheSetIsBoundAgain() throws IOException {
        cutTwo("lot", "W1,DB16,S1,11 m\nW3,DB16,S2,60 m\n");
        String out =
                run(0, "orders", "release", "" + shop, "9001/1.1", "--json").out();
        String event = out.replaceAll("(?s).*\"event\": ([0-9]+).*", "$1");
        plan(0);
        run(0, "stock", "undo", "" + shop, event);
        plan(4);
        run(0, "stock", "verify", "" + shop);
    }

    @Test
    void setThatIsMadeAgain_isPlannedWhole_andItsCutPiecesAreSpare() throws IOException {
        cutTwo("lot", "W1,DB16,S1,11 m\nW3,DB16,S2,60 m\n");
        run(0, "orders", "again", "" + shop, "9001/1.1", "--note", "lot is gone");
        Run plan = plan(0);
        assertTrue(plan.out().contains("all 4 pieces off 1 reel"), plan.out());
        assertTrue(plan.out().contains("9001/1.1-1 spare 4: 4.000 m of DB16, lot S1"), plan.out());
        run(0, "stock", "verify", "" + shop);
    }

    @Test
    void releaseAndAgain_wantABegunSet() throws IOException {
        cutTwo("lot", "W1,DB16,S1,11 m\n");
        assertTrue(run(3, "orders", "release", "" + shop, "nowhere").err().contains("no order has a matched set"));
        run(0, "orders", "again", "" + shop, "9001/1.1");
        assertTrue(run(3, "orders", "again", "" + shop, "9001/1.1").err().contains("nothing of set 9001/1.1 is cut"));
    }

    @Test
    void answerAboutAPieceOfABegunSet_speaksOfTheSet() throws IOException {
        cutTwo("lot", "W1,DB16,S1,11 m\nW2,DB16,S1,60 m\nW3,DB16,S2,60 m\n");
        run(0, "stock", "hold", "" + shop, "W2");
        plan(4);
        String answer =
                flat(run(0, "plan", "" + shop, "--explain", "9001/1.1-3").out());
        assertTrue(answer.contains("2 pieces are cut, off lot S1; 2 pieces, 8.000 m in all, are left and must match"));
        assertTrue(answer.contains("W2 (lot S1) would do for the set if this were settled: W2 is on hold"), answer);
        assertFalse(answer.contains("What it would cost elsewhere"), answer);
    }

    /** Asked of the plan that was made before anything was cut. */
    @Test
    void answerAboutASetThatWasBegunSince_offersToReleaseItOrToMakeItAgain() throws IOException {
        write("orders.csv", "order,line,rope,length,end a,end b,match,legs\n9001,1,DB16,4 m,sealed,sealed,lot,4\n");
        write("reels.csv", "reel,rope,lot,length\nW1,DB16,S1,60 m\nW3,DB16,S2,60 m\n");
        write("pins.csv", "piece,reel\n9001/1.1-1,W1\n");
        run(0, "stock", "open", "" + shop);
        plan(0);
        run(0, "stock", "cut", "" + shop, "W1", "4.1 m", "--piece", "9001/1.1-1");
        run(0, "stock", "hold", "" + shop, "W1");
        Run asked = run(0, "plan", "" + shop, "--explain", "9001/1.1-3");
        String answer = flat(asked.out());
        assertTrue(answer.contains("9001/1.1-1 is cut, off lot S1: what is left of set 9001/1.1 must match"), answer);
        assertTrue(answer.contains("bitterend orders release " + shop + " 9001/1.1"), answer);
        assertTrue(asked.err().contains("on hold"), asked.err());
        String json = flat(
                run(0, "plan", "" + shop, "--explain", "9001/1.1-3", "--json").out());
        assertTrue(
                json.contains("\"begun\": [ { \"piece\": \"9001/1.1-1\", \"rope\": \"DB16\", \"lot\": \"S1\""), json);
        String cut = flat(run(0, "plan", "" + shop, "--explain", "9001/1.1-1").out());
        assertTrue(cut.contains("bitterend stock trace " + shop + " 9001/1.1-1"), cut);
    }

    @Test
    void reelOnHoldThatWouldDo_isNamed() throws IOException {
        cutTwo("lot", "W1,DB16,S1,11 m\nW2,DB16,S1,60 m\nW3,DB16,S2,60 m\n");
        run(0, "stock", "hold", "" + shop, "W2");
        assertEquals(
                "set 9001/1.1 is begun, 9001/1.1-1, 9001/1.1-2 are cut off lot S1, and it takes 4.000 m and the longest"
                        + " sound run that matches is 2.980 m; W2 is on hold",
                why(plan(4)));
    }

    @Test
    void reelOutOfDateThatWouldDo_isNamed() throws IOException {
        cutTwo("lot", "W1,DB16,S1,11 m\nW2,DB16,S1,60 m\nW3,DB16,S2,60 m\n");
        run(0, "stock", "correct", "" + shop, "W2", "--use-by", "2026-01-31");
        assertTrue(why(plan(4)).endsWith("; W2 was to be used by 2026-01-31"), why(plan(4)));
    }

    /** Two people cut the two legs of a set at the same moment, each off another lot: one is booked. */
    @Test
    void setCutByTwoAtOnce_isNotTorn() throws Exception {
        write("orders.csv", "order,line,rope,length,end a,end b,match,legs\n9001,1,DB16,4 m,sealed,sealed,lot,2\n");
        write("reels.csv", "reel,rope,lot,length\nW1,DB16,S1,60 m\nW3,DB16,S2,60 m\n");
        run(0, "stock", "open", "" + shop);
        List<Run> answers = AtOnce.run(List.of(
                List.of("stock", "cut", "" + shop, "W1", "4.1 m", "--piece", "9001/1.1-1"),
                List.of("stock", "cut", "" + shop, "W3", "4.1 m", "--piece", "9001/1.1-2")));
        assertEquals(List.of(0, 3), AtOnce.codes(answers), answers.toString());
        run(0, "stock", "verify", "" + shop);
    }

    /** Two legs are cut off W1; then the customer wants four. */
    private void cutTwo(String match, String reels) throws IOException {
        String legs = "order,line,rope,length,end a,end b,match,legs\n9001,1,DB16,4 m,sealed,sealed," + match + ",";
        write("orders.csv", legs + "2\n");
        write("reels.csv", "reel,rope,lot,length\n" + reels);
        write("pins.csv", "piece,reel\n9001/1.1-1,W1\n9001/1.1-2,W1\n");
        run(0, "stock", "open", "" + shop);
        plan(0);
        run(0, "stock", "post", "" + shop, "--reel", "W1");
        Files.delete(shop.resolve("pins.csv"));
        write("orders.csv", legs + "4\n");
    }

    private Run plan(int code) {
        return run(code, "plan", "" + shop, "--day", "2026-03-02", "--time", "300ms")
                .withParts("" + shop);
    }

    private static String why(Run plan) {
        String text = flat(plan.out());
        int from = text.indexOf("Why: ") + 5;
        return text.substring(from, text.indexOf(". ", from));
    }

    private static String flat(String page) {
        return page.replaceAll("\\s+", " ");
    }

    private static Run run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), () -> String.join(" ", args) + "\n" + run.out() + run.err());
        return run;
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(shop.resolve(name), name.endsWith(".json") ? text.replace('\'', '"') : text);
    }
}
