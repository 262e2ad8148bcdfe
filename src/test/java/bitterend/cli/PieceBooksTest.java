package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which piece is what, whatever was cut again, made spare, given, returned, spoiled or taken back; the ledger stays sound. */
final class PieceBooksTest {
    private static final String LEGS = "order,line,rope,length,end a,end b,match,legs\n";
    private static final String PAIR = "9001,1,DB16,4 m,sealed,sealed,lot,2\n";
    private static final String LEG = "9001/1.1-1";
    private static final String OTHER = "9001/1.1-2";

    @TempDir
    private Path shop;

    @BeforeEach
    void aPair_andTwoLots() throws IOException {
        write("shop.json", "{'format': 'bitterend/shop/1', 'name': 'A loft', 'currency': 'EUR', 'labour': '45 EUR/h'}");
        write(
                "ropes.json",
                """
                {'format': 'bitterend/ropes/1', 'ropes': [
                  {'id': 'DB16', 'construction': 'double braid', 'fibre': 'polyester', 'diameter': '16 mm',
                   'price': '3 EUR/m', 'usualReel': '200 m', 'keepFrom': '2 m'}]}
                """);
        write("orders.csv", LEGS + PAIR);
        write("reels.csv", "reel,rope,lot,length\nW1,DB16,S1,60 m\nW3,DB16,S2,60 m\n");
        stock("open");
    }

    @AfterEach
    void theLedgerIsSound() {
        stock("verify");
    }

    @Test
    void setThatIsMadeAgainTwice_leavesSparePiecesOfTheirOwnLots() throws IOException {
        cut("W1", LEG);
        cut("W1", OTHER);
        long first = event(orders("again", "9001/1.1"));
        cut("W3", LEG);
        cut("W3", OTHER);
        long second = event(orders("again", "9001/1.1"));
        String page = run(0, "orders", "" + shop).out();
        assertTrue(page.contains(LEG + " spare " + first + ": 4.000 m of DB16, lot S1;"), page);
        assertTrue(page.contains(LEG + " spare " + second + ": 4.000 m of DB16, lot S2;"), page);
        String lot = stock("trace", "--lot", "S1").out();
        assertTrue(lot.contains(LEG) && lot.contains(OTHER), lot);
        String several = refused("orders", "back", "" + shop, LEG).err();
        assertTrue(several.contains("there are 2 spare pieces of " + LEG + "; say which: '" + LEG + " spare " + first));
        String back = orders("back", LEG + " spare " + first).out();
        assertTrue(back.contains("is on the rack as coil W1-1"), back);
        assertTrue(flat(stock("list", "--json")).contains("\"reel\": \"W1-1\", \"rope\": \"DB16\", \"lot\": \"S1\""));
        write("orders.csv", LEGS + PAIR + "9002,1,DB16,4 m,sealed,sealed,,1\n");
        orders("give", OTHER + " spare " + second, "9002/1.1");
        String trace = flat(stock("trace", "9002/1.1"));
        assertTrue(trace.contains("off W3:") && trace.contains(OTHER + " spare " + second), trace);
    }

    @Test
    void pieceCutShort_isGivenOrReturned() throws IOException {
        long given = event(stock("cut", "W1", "3.5 m", "--piece", LEG, "--sure"));
        long returned = event(stock("cut", "W1", "3.6 m", "--piece", LEG, "--sure"));
        write("orders.csv", LEGS + PAIR + "9002,1,DB16,3.5 m,sealed,sealed,,1\n");
        String page = flat(run(0, "orders", "" + shop));
        assertTrue(page.contains(" \"" + LEG + " short " + given + "\" 9002/1.1"), page);
        orders("give", LEG + " short " + given, "9002/1.1");
        orders("back", LEG);
        assertTrue(stock("list").out().contains("3.600 m"));
        refused("orders", "back", "" + shop, LEG + " short " + returned);
    }

    @Test
    void pieceThatIsMadeAgain_isCutByTheNextPlanToo_thoughThatCutsItAtTheSamePlace() throws IOException {
        write("orders.csv", LEGS + "9003,1,DB16,4 m,sealed,sealed,,1\n");
        stock("hold", "W3");
        String piece = "9003/1.1";
        plan();
        post("1");
        String once = lengthOf("W1");
        long spare = event(orders("spare", piece));
        plan();
        Run again = post("2");
        assertFalse(again.out().contains("already"), again.out());
        assertTrue(again.out().contains("piece " + piece), again.out());
        assertFalse(once.equals(lengthOf("W1")), once);
        assertTrue(post("2").out().contains("1 steps were in the ledger already"), again.out());
        stock("undo", "--plan", "2", "--reel", "W1");
        assertEquals(once, lengthOf("W1"));
        assertTrue(flat(run(0, "stock", "trace", "" + shop, piece + " spare " + spare))
                .contains("W1"));
    }

    private void plan() {
        run(0, "plan", "" + shop, "--time", "1s");
    }

    private Run post(String plan) {
        return stock("post", "--plan", plan, "--reel", "W1");
    }

    private String lengthOf(String reel) {
        String list = stock("list", "--json").out();
        return list.replaceAll("(?s).*\"reel\": \"" + reel + "\",.*?\"length\": \"([0-9]+ mm)\".*", "$1");
    }

    @Test
    void undo_namesTheLaterCutOffAnotherReel() {
        cut("W1", LEG);
        long spoiled = event(stock("spoil", LEG));
        long again = cut("W3", LEG);
        assertBuiltOn(spoiled, "event " + again + ": cut, piece " + LEG + ", on reel W3");
        undo(again);
        undo(spoiled);
        long spare = event(orders("spare", LEG));
        again = cut("W3", LEG);
        assertBuiltOn(spare, "event " + again + ": cut, piece " + LEG + ", on reel W3");
    }

    @Test
    void undo_namesWhatWouldBeTorn_andAllThatWasBuiltOnThatAgain() {
        cut("W1", LEG);
        long spare = event(orders("spare", LEG));
        long other = cut("W3", OTHER);
        long passed = event(run(0, "measure", "" + shop, OTHER, "--passed"));
        String built = assertBuiltOn(spare, "event " + other + ": cut, piece " + OTHER + ", on reel W3");
        assertTrue(built.indexOf("event " + passed + ": passed") < built.indexOf("event " + other), built);
        assertTrue(built.contains("event " + passed + ": passed"), built);
    }

    @Test
    void undoOfSpoiling_isFreeWhereTheRestCameOffTheSameLot() {
        stock("receive", "W2", "DB16", "30 m", "--lot", "S1");
        cut("W1", LEG);
        long spoiled = event(stock("spoil", LEG));
        cut("W2", OTHER);
        undo(spoiled);
    }

    @Test
    void undoOfARelease_namesTheCutThatReliesOnIt() {
        cut("W1", LEG);
        long release = event(orders("release", "9001/1.1"));
        long other = cut("W3", OTHER);
        assertBuiltOn(release, "event " + other + ": cut, piece " + OTHER + ", on reel W3");
        undo(other);
        undo(release);
    }

    @Test
    void undoOfWhatWasPassed_namesTheDelivery_andADeliveredPieceIsNotSpoiled() {
        cut("W1", LEG);
        long passed = event(run(0, "measure", "" + shop, LEG, "--passed"));
        long delivered = event(run(0, "orders", "deliver", "" + shop, "9001", "--piece", LEG));
        assertBuiltOn(passed, "event " + delivered + ": delivered");
        String why = refused("stock", "spoil", "" + shop, LEG, "--back", "3 m").err();
        assertTrue(why.contains("piece " + LEG + " is delivered, so it cannot be spoiled"), why);
        assertFalse(stock("list").out().contains("W1-1"));
        undo(delivered);
        undo(passed);
    }

    @Test
    void twoAtOnce_neverTearASet() throws Exception {
        ExecutorService bench = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < 3; round++) {
                List<Future<Run>> cuts = bench.invokeAll(List.<Callable<Run>>of(
                        () -> Run.of("stock", "cut", "" + shop, "W1", "4 m", "--piece", LEG),
                        () -> Run.of("stock", "cut", "" + shop, "W3", "4 m", "--piece", OTHER)));
                int booked = 0;
                for (Future<Run> cut : cuts) {
                    booked += cut.get().code() == 0 ? 1 : 0;
                }
                assertEquals(1, booked, "round " + round);
                orders("again", "9001/1.1");
            }
        } finally {
            bench.shutdown();
        }
    }

    @Test
    void countBehindTheCuts_hasTheLastWordOnTheRest() throws IOException {
        write("orders.csv", "order,line,rope,length,end a,end b,quantity\n9001,1,DB16,5.8 m,sealed,sealed,10\n");
        stock("condemn", "W3");
        run(0, "plan", "" + shop, "--day", "2026-03-02", "--time", "300ms");
        stock("count", "W1", "3.2 m", "--note", "behind the cuts");
        stock("post", "--all", "--before-count", "--sure");
        String balance = stock("verify").out().replaceAll(" +", " ");
        assertTrue(balance.contains("scrap: trims, flaws, samples, ends 0.000 m"), balance);
        stock("post", "--all", "--before-count");
        assertTrue(stock("list").out().contains("3.2 m"), stock("list").out());
    }

    private long cut(String reel, String piece) {
        return event(stock("cut", reel, "4 m", "--piece", piece));
    }

    /** The event that a command booked is the last. */
    private long event(Run booked) {
        assertEquals(0, booked.code());
        String history = Run.of("stock", "verify", "" + shop, "--json").out();
        return Long.parseLong(history.replaceAll("(?s).*\"head\": \"[0-9a-f]+\\.([0-9]+)\\..*", "$1"));
    }

    private void undo(long event) {
        stock("undo", "" + event);
    }

    private String assertBuiltOn(long event, String later) {
        String why = refused("stock", "undo", "" + shop, "" + event).err();
        assertTrue(why.contains("this was built on event " + event) && why.contains(later), why);
        return why;
    }

    private Run stock(String... words) {
        return of("stock", words);
    }

    private Run orders(String... words) {
        return of("orders", words);
    }

    private Run of(String command, String... words) {
        List<String> all = new java.util.ArrayList<>(List.of(command, words[0], "" + shop));
        all.addAll(List.of(words).subList(1, words.length));
        return run(0, all.toArray(String[]::new));
    }

    private static String flat(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    private static Run refused(String... args) {
        return run(3, args);
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
