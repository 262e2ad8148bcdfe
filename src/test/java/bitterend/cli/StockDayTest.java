package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop's day with its ledger, from the morning plan to the noon plan to the evening, on the command line. */
final class StockDayTest {
    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    @BeforeEach
    void openShop() throws IOException {
        shop = TestShop.in(folder).path().toString();
    }

    @Test
    void plan_saysWhichStockItUses() {
        assertTrue(plan().err().contains("stock: reels.csv, 2 reels"));
        run(0, "stock", "open", shop);
        assertTrue(plan().err().contains("stock: stock.db, 2 reels"));
    }

    @Test
    void plan_saysThatItsBoundWasComputedAgain() {
        String told = plan().err();
        assertTrue(told.contains("proof, computed again:"), told);
        assertTrue(told.contains("1 bound confirmed") || told.contains("mm: bound confirmed"), told);
    }

    @Test
    void postedPlan_isDoneAndPostingItAgainDoesNothing() {
        run(0, "stock", "open", shop);
        plan();
        assertTrue(run(0, "stock", "post", shop, "--all").out().contains("cut"));
        Run again = run(0, "stock", "post", shop, "--all");
        assertTrue(again.out().contains("were in the ledger already"), again.out());
        assertFalse(again.out().contains("piece 1001"), again.out());
        assertTrue(plan().err().contains("11 pieces cut already"));
        run(0, "stock", "verify", shop);
    }

    @Test
    void planMadeWithoutTheLedger_isNotPosted() {
        plan();
        run(0, "stock", "open", shop);
        Run refused = run(5, "stock", "post", shop, "--all");
        assertTrue(refused.err().contains("not made with this ledger"), refused.err());
    }

    @Test
    void changedReel_isRefusedWithFiveSayingWhichAndHow() {
        run(0, "stock", "open", shop);
        plan();
        run(0, "stock", "count", shop, "R-105", "80 m", "--who", "Ada", "--note", "tape");
        Run refused = run(5, "stock", "post", shop, "--all");
        assertTrue(refused.err().contains("reel R-105: counted"), refused.err());
        assertTrue(refused.err().contains("by Ada"), refused.err());
        assertTrue(refused.err().contains("changed its length by -140.000 m"), refused.err());
        assertFalse(run(0, "stock", "history", shop, "R-105").out().contains("cut"));
    }

    @Test
    void aDay_runsFromMorningPlanToNoonPlanToEvening() throws IOException {
        run(0, "stock", "open", shop);
        plan();
        Path plan = Path.of(shop, "plans/1.json");
        String first = firstPiece(Files.readString(plan));
        String longer = first.startsWith("1001/2") ? "31.05 m" : "12.4 m";
        run(0, "stock", "post", shop, "--piece", first, "--measured", first + "=" + longer);
        run(0, "stock", "spoil", shop, first, "--back", "11 m", "--note", "tuck slipped");
        String other = reelOf(Files.readString(plan)).equals("R-104") ? "R-105" : "R-104";
        run(0, "stock", "hold", shop, other, "--note", "tag missing");
        Files.writeString(
                Path.of(shop, "orders.csv"),
                Files.readString(Path.of(shop, "orders.csv"))
                        + "1003,1,Lock Keeper,DB12,3 m,plain,plain,2,2026-03-02,1\n");
        Run noon = Run.of("plan", shop, "--time", "1s", "--from", "1");
        assertTrue(noon.code() == 0 || noon.code() == 4, noon.err());
        assertTrue(noon.err().contains("1003/1.1: not planned ->"), noon.err());
        run(0, "stock", "post", shop, "--all", "--plan", "2");
        run(0, "stock", "release", shop, other);
        assertEquals(0, plan().code());
        run(0, "stock", "post", shop, "--all");
        String trace = run(0, "stock", "trace", shop, first).out();
        assertTrue(trace.contains("spoiled"), trace);
        assertTrue(trace.contains("lot P22-11"), trace);
        assertTrue(plan().err().contains("13 pieces cut already"));
        assertTrue(run(0, "stock", "trace", shop, "--lot", "P22-118").out().contains("piece"));
        run(0, "stock", "verify", shop);
    }

    /** The day that docs/stock.md tells. */
    @Test
    void demoLoft_runsFromMorningPlanToNoonPlanToPosting() throws IOException {
        Path loft = DemoShop.copy("gannet-loft", folder);
        String at = loft.toString();
        run(0, "stock", "open", at);
        run(4, "plan", at, "--time", "1s");
        String reel = reelOf(Files.readString(loft.resolve("plans/1.json")));
        run(0, "stock", "post", at, "--reel", reel, "--who", "Maren");
        run(0, "stock", "flaw", at, "0418", "30 m to 30.4 m +/- 0.1 m: chafed", "--who", "Olaf");
        run(0, "stock", "count", at, "0411", "6 m", "--note", "tape, not weight", "--who", "Olaf");
        Run refused = run(5, "stock", "post", at, "--reel", "0411");
        assertTrue(refused.err().contains("reel 0411: counted") && refused.err().contains("by Olaf"), refused.err());
        Run noon = run(4, "plan", at, "--time", "1s", "--from", "1");
        assertTrue(noon.err().contains("cut already"), noon.err());
        assertTrue(noon.err().contains("changed since the earlier plan"), noon.err());
        run(0, "sheet", at);
        Posted.whole(at, "Maren", "--plan", "2");
        run(0, "stock", "verify", at);
        int cuts = Files.readString(loft.resolve("plans/2.json")).split("\"piece\": ").length - 1;
        assertTrue(cuts > 100, "hardly anything was planned at noon");
        String evening = run(4, "plan", at, "--time", "1s").err();
        assertTrue(evening.contains("pieces cut already"), evening);
    }

    @Test
    void answersForPrograms_areJsonAlone() {
        run(0, "stock", "open", shop);
        plan();
        for (String words : new String[] {"list", "post --all", "history R-104", "hold R-104", "trace 1001/1.1"}) {
            String[] parts = (words.replaceFirst("^([a-z]+)", "stock $1 SHOP") + " --json").split(" ");
            parts[2] = shop;
            String out = run(0, parts).out();
            assertTrue(out.startsWith("{\n  \"format\": \"bitterend/") && out.endsWith("}\n"), words + "\n" + out);
        }
    }

    /** What the ledger says under --json, not another export, is what the file has to say. */
    @Test
    void exportedRack_isTheLedgersOwnRack() throws IOException {
        TestShop.note(Path.of(shop, "reels.csv"), "R-105", "glazed; to be looked at, \"soon\"");
        run(0, "stock", "open", shop);
        String[] received = {
            "N-1",
            "DB12",
            "100.5 m",
            "--tolerance",
            "1.5 %",
            "--lot",
            "P23-001",
            "--part",
            "--lead-trim",
            "0.2 m",
            "--flaws",
            "20 m to 21 m: join; 20.5 m to 22 m +/- 0.1 m: cut strand",
            "--received",
            "2026-02-27",
            "--use-by",
            "2027-03-01",
            "--certificate",
            "3.1",
            "--certificate-number",
            "K-77",
            "--reel-note",
            "=1+1"
        };
        run(0, with(received, "stock", "receive", shop));
        run(0, "stock", "receive", shop, "N-2", "DB12", "40 m", "--uncertainty", "3 m", "--known", "weighed");
        run(0, "stock", "reserve", shop, "R-104", "1001");
        String ledger = rack();
        assertTrue(ledger.contains("\"uncertainty\": \"1508 mm\""), ledger);
        assertTrue(ledger.contains("\"what\": \"join / cut strand\""), ledger);
        String csv = run(0, "stock", "export", shop).out();
        assertTrue(csv.lines().anyMatch(row -> row.startsWith("N-1,") && row.contains(",1508 mm,")), csv);
        assertTrue(csv.lines().anyMatch(row -> row.startsWith("N-1,") && row.contains(",2026-02-27,")), csv);
        Files.delete(Path.of(shop, "stock.db"));
        Files.writeString(Path.of(shop, "reels.csv"), csv);
        run(0, "check", shop);
        run(0, "stock", "open", shop);
        assertEquals(ledger, rack());
    }

    /** Everything the ledger says of the rack, but how many movements there were. */
    private String rack() {
        return run(0, "stock", "list", shop, "--json").out().replaceAll("\"movements\": [0-9]+", "");
    }

    @Test
    void toleranceOfASupplier_isBookedAndPlansDoNotCountOnIt() throws IOException {
        Files.writeString(
                Path.of(shop, "orders.csv"),
                "order,line,rope,length,end a,end b,quantity\n1,1,DB12,99.5 m,plain,plain,1\n");
        Files.writeString(Path.of(shop, "reels.csv"), "reel,rope,length,full\n");
        run(0, "stock", "open", shop);
        run(0, "stock", "receive", shop, "N-1", "DB12", "100 m", "--tolerance", "2 %");
        assertTrue(run(4, "plan", shop, "--time", "1s").out().contains("Not planned: 1/1.1, 99.500 m of DB12."));
        run(0, "stock", "receive", shop, "N-2", "DB12", "100 m");
        run(0, "plan", shop, "--time", "1s");
    }

    @Test
    void everyAct_isBookedAndCanBeTakenBack() {
        run(0, "stock", "open", shop);
        String before = run(0, "stock", "export", shop).out();
        run(0, "stock", "reserve", shop, "R-104", "1001");
        run(0, "stock", "release", shop, "R-104");
        run(0, "stock", "move", shop, "R-104", "bay 7");
        run(0, "stock", "rewind", shop, "R-104");
        run(0, "stock", "flaw", shop, "R-104", "20 m to 21 m +/- 0.1 m: chafed");
        run(0, "stock", "split", shop, "R-104", "10 m", "R-104b");
        run(0, "stock", "sell", shop, "R-104b");
        run(0, "stock", "condemn", shop, "R-105", "--note", "acid");
        for (int number = 9; number > 1; number--) {
            run(0, "stock", "undo", shop, "" + number);
        }
        assertEquals(before, run(0, "stock", "export", shop).out());
        run(0, "stock", "verify", shop);
    }

    /**
     * Worked: 12 mm rope on barrel 150, flange 450, traverse 300 mm is 277.1 m in whole turns; 0.85 of it is safe. By a factor
     * of 0.925: 5.9055 x 11.811 x 11.811 in x 0.925 = 762.03 ft.
     */
    @Test
    void gaugedReel_isBookedWithItsUncertainty() {
        run(0, "stock", "open", shop);
        String[] size = {"--barrel", "150 mm", "--flange", "450 mm", "--traverse", "300 mm", "--type", "plywood 450"};
        Run gauged = run(0, with(size, "stock", "gauge", shop, "R-105", "--book"));
        assertTrue(gauged.out().contains("whole turns  277.088 m"), gauged.out());
        assertTrue(gauged.out().contains("fill 85 %"), gauged.out());
        assertTrue(run(0, "stock", "export", shop).out().contains("R-105,DB12,277088 mm,P22-119,41564 mm,gauged"));
        Run taught = run(0, with(size, "stock", "gauge", shop, "R-105", "--known", "255 m"));
        assertTrue(taught.out().contains("fill 92 %"), taught.out());
        assertTrue(gauged.out().contains("less than about 5 % of its breaking strength"), gauged.out());
        assertTrue(taught.out().contains("are not taken off twice"), taught.out());
        Run factor = run(0, with(size, "stock", "gauge", shop, "R-105", "--factor", "0.925"));
        assertTrue(factor.out().contains("by factor    232.267 m\n"), factor.out());
        assertTrue(factor.out().contains("safe         232.267 m"), factor.out());
        assertTrue(run(3, with(size, "stock", "gauge", shop, "R-105", "--factor", "0"))
                .err()
                .contains("give a factor such as 0.925"));
        run(3, "stock", "gauge", shop, "R-105", "--barrel", "150 mm");
        assertTrue(run(2, with(size, "stock", "gauge", shop, "R-105", "--depth", "20 km"))
                .err()
                .contains("of at most 20 m"));
        assertTrue(run(3, with(size, "stock", "gauge", shop, "R-105", "--factor", ""))
                .err()
                .contains("give a factor such as 0.925"));
    }

    /** Ten metres across, or a lorry on the scales: what no reel holds is not booked, and far more than known needs a word. */
    @Test
    void gaugedFigureThatNobodyBelieves_isNotBooked() {
        run(0, "stock", "open", shop);
        String[] wide = {"--barrel", "10 m", "--depth", "1 m", "--traverse", "10 m", "--book"};
        String before = run(0, "stock", "export", shop).out();
        Run huge = run(3, with(wide, "stock", "gauge", shop, "R-105"));
        assertTrue(huge.err().contains("look at the sizes and masses again"), huge.err());
        String[] large = {"--barrel", "600 mm", "--depth", "300 mm", "--traverse", "900 mm", "--book"};
        Run far = run(3, with(large, "stock", "gauge", shop, "R-105"));
        assertTrue(far.err().contains("say it with --sure"), far.err());
        assertEquals(before, run(0, "stock", "export", shop).out());
        run(0, with(large, "stock", "gauge", shop, "R-105", "--sure"));
    }

    @Test
    void weighedFigureThatNobodyBelieves_isNotBooked() {
        run(0, "stock", "open", shop);
        run(3, "stock", "gauge", shop, "R-105", "--gross", "50 kg", "--tare", "4 kg");
    }

    private static String[] with(String[] more, String... words) {
        String[] all = java.util.Arrays.copyOf(words, words.length + more.length);
        System.arraycopy(more, 0, all, words.length, more.length);
        return all;
    }

    @Test
    void whatDoesNotGo_isRefusedWithASentence() {
        run(3, "stock", "list", shop);
        run(0, "stock", "open", shop);
        run(3, "stock", "open", shop);
        run(3, "stock", "hold", shop, "R-999");
        run(3, "stock", "receive", shop, "R-104", "DB12", "10 m");
        run(3, "stock", "receive", shop, "R-200", "NOPE", "10 m");
        run(3, "stock", "spoil", shop, "1001/1.1");
        run(3, "stock", "trace", shop, "1001/1.1");
        run(3, "stock", "undo", shop, "77");
        run(3, "stock", "split", shop, "R-104", "900 m", "R-300");
        run(2, "stock", "count", shop, "R-104", "many");
        run(2, "stock", "count", shop, "R-104");
    }

    @Test
    void reelOfARopeTheCatalogueLost_isToldAndNothingIsPlanned() throws IOException {
        run(0, "stock", "open", shop);
        Path ropes = Path.of(shop, "ropes.json");
        Files.writeString(ropes, Files.readString(ropes).replace("\"DB12\"", "\"DB14\""));
        Run told = run(3, "plan", shop);
        assertTrue(told.err().contains("stock.db, reel R-104, rope"), told.err());
    }

    private Run plan() {
        return Run.of("plan", shop, "--time", "1s");
    }

    private static Run run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), String.join(" ", words) + "\n" + run.out() + run.err());
        assertFalse(run.err().toLowerCase(Locale.ROOT).contains("exception"), run.err());
        return run;
    }

    private static String firstPiece(String plan) {
        return plan.replaceAll("(?s).*?\"piece\": \"([^\"]+)\".*", "$1");
    }

    private static String reelOf(String plan) {
        return plan.replaceAll("(?s).*?\"reel\": \"([^\"]+)\".*", "$1");
    }
}
