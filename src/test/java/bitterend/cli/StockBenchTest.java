package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What really happens at the bench. One reel of 60 m, three pieces of 12 m, 10 mm lost at a cut: 23.97 m are left. A second reel of the same rope stands beside it.
 */
final class StockBenchTest {
    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    @BeforeEach
    void plan() throws IOException {
        TestShop made = TestShop.in(folder);
        shop = made.path().toString();
        Files.writeString(
                made.path().resolve("orders.csv"),
                """
                order,line,customer,rope,length,end a,end b,quantity,due
                1,1,Harbour Board,DB12,12 m,plain,plain,3,2026-03-05
                """);
        reels("R1,DB12,L1,60 m,0 m,no", "R2,DB12,L2,9 m,0 m,no");
        run(0, "stock", "open", shop);
        run(0, "plan", shop, "--time", "1s");
    }

    @AfterEach
    void soundWhateverHappened() {
        String told = plain(run(0, "stock", "verify", shop).out());
        assertTrue(told.contains("the ledger is sound"), told);
    }

    @Test
    void wholePlan_needsAWord() {
        refused(2, "--all for the sheets that are out");
        refused(2, "say what was cut", "--all", "--reel", "R1");
        post("--all");
    }

    @Test
    void measuredThatCannotBeRead_isOneErrorAndBooksNothing() {
        for (String figure :
                List.of("1/1.1=12,1 m", "1/1.1=12100", "1/1.1=", "1/1.1", "=12 m", "1/1.1=-12 m", "1/1.1=0 m")) {
            Run refused = refused(2, figure, "--all", "--measured", figure);
            assertEquals(
                    1,
                    refused.err()
                            .lines()
                            .filter(line -> line.startsWith("error:"))
                            .count(),
                    refused.err());
        }
        refused(2, "two figures", "--all", "--measured", "1/1.1=12.1 m", "--measured", "1/1.1=12.2 m");
    }

    @Test
    void measuredOutsideThePostedPart_isRefused() {
        refused(2, "no part of what is posted: 1/1.2", "--piece", "1/1.1", "--measured", "1/1.2=12.1 m");
        refused(2, "no part of what is posted: 9/9.9", "--all", "--measured", "9/9.9=12.1 m");
        refused(2, "no part of what is posted: R2", "--reel", "R1", "--left", "R2=1 m");
    }

    @Test
    void measuredLongerThanTheReel_isRefusedNamingTheCount() {
        refused(3, "stock count", "--all", "--measured", "1/1.1=120.1 m", "--sure");
        refused(2, "--sure", "--all", "--measured", "1/1.1=40.1 m");
    }

    @Test
    void measuredSoLongThatAnotherPieceNoLongerFits_namesThatPiece() {
        Run refused = refused(3, "1/1.3", "--all", "--measured", "1/1.1=40.1 m", "--sure");
        assertTrue(refused.err().contains("--piece"), refused.err());
        assertTrue(
                post("--piece", "1/1.1", "--measured", "1/1.1=40.1 m", "--sure").contains("-40.110 m"));
    }

    @Test
    void measuredWithinTheUncertainty_isADifferenceAndNoRopeFromNothing() throws IOException {
        reopen("R1,DB12,L1,40 m,2 m,no");
        run(0, "plan", shop, "--time", "1s");
        post("--piece", "1/1.2");
        String booked = post("--piece", "1/1.3", "--measured", "1/1.3=16.5 m", "--sure");
        assertTrue(booked.contains("longer than the ledger knew"), booked);
        assertFalse(list().contains("R1 "), list());
    }

    @Test
    void measuredShorter_isShortAndThePieceIsOpenAgain() {
        String booked = post("--piece", "1/1.1", "--measured", "1/1.1=11.95 m");
        assertTrue(booked.contains("cut short"), booked);
        assertTrue(booked.contains("it is to be cut again"), booked);
        assertTrue(booked.contains("spare piece '1/1.1 short 3'"), booked);
        assertTrue(run(0, "stock", "trace", shop, "1/1.1").out().contains("11.950 m"));
        assertTrue(plain(run(0, "stock", "trace", shop, "--lot", "L1").out()).contains("cut short"));
        assertTrue(plain(run(0, "stock", "verify", shop).out()).contains("11.950 m"));
        assertTrue(run(0, "plan", shop, "--time", "1s").out().contains("1/1.1"));
        post("--all", "--plan", "2");
        assertTrue(plain(run(0, "stock", "trace", shop, "1/1.1").out()).contains("Harbour Board"));
    }

    @Test
    void muchShorter_needsAWordToo() {
        refused(2, "more than 5 % off", "--piece", "1/1.1", "--measured", "1/1.1=0.001 m");
        post("--piece", "1/1.1", "--measured", "1/1.1=0.001 m", "--sure");
    }

    @Test
    void reelThatEnded_isOneCommand() {
        String booked = post("--piece", "1/1.2", "--left", "R1=0 m");
        assertTrue(booked.contains("the reel ended here"), booked);
        assertFalse(list().contains("R1 "), list());
        refused(3, "ends before piece 1/1.3", "--all");
        assertTrue(run(4, "plan", shop, "--time", "1s").out().contains("1/1.3"));
    }

    @Test
    void whatIsLeft_isBookedAsMeasured() {
        post("--all", "--left", "R1=23.5 m");
        assertTrue(list().contains("23.500 m"), list());
        assertTrue(plain(run(0, "stock", "verify", shop).out()).contains("differences counted or corrected -0.470 m"));
    }

    @Test
    void countThatCameBeforeThePosting_isToldAndPostedWithAWord() {
        run(0, "stock", "count", shop, "R1", "23.8 m", "--note", "what was left");
        Run refused = refused(5, "--before-count", "--all");
        assertTrue(refused.err().contains("reel R1: counted"), refused.err());
        post("--piece", "1/1.1", "--before-count");
        assertTrue(list().contains("23.8 m"), list());
        post("--all", "--before-count");
        assertTrue(list().contains("23.8 m"), list());
        assertTrue(run(0, "plan", shop, "--time", "1s").err().contains("3 pieces cut already"));
    }

    @Test
    void cutOverTheCounter_isSold() {
        run(2, "stock", "cut", shop, "R1", "5 m");
        run(2, "stock", "cut", shop, "R1", "5 m", "--for", "Ferry Co", "--sample", "x");
        run(3, "stock", "cut", shop, "R1", "500 m", "--for", "Ferry Co");
        String booked =
                run(0, "stock", "cut", shop, "R1", "5 m", "--for", "Ferry Co").out();
        assertTrue(booked.contains("-5.010 m") && booked.contains("over the counter: Ferry Co"), booked);
        String balance = plain(run(0, "stock", "verify", shop).out());
        assertTrue(balance.contains("sold") && balance.contains(" 5.000 m") && balance.contains("0.010 m"), balance);
    }

    /** Whoever buys it cannot know how old it is. */
    @Test
    void ropePastItsLastDay_isSoldOnlyWithAWord() {
        run(0, "stock", "correct", shop, "R1", "--use-by", "2026-01-31");
        Run refused = run(2, "stock", "cut", shop, "R1", "5 m", "--for", "Ferry Co");
        assertTrue(refused.err().contains("was to be used by 2026-01-31"), refused.err());
        run(0, "stock", "cut", shop, "R1", "5 m", "--for", "Ferry Co", "--sure");
        run(0, "stock", "cut", shop, "R1", "1 m", "--sample", "to learn how it ages");
        assertTrue(
                run(3, "stock", "sell", shop, "R1").err().contains("If it is sold all the same, say it with --sure"));
        run(0, "stock", "sell", shop, "R1", "--sure");
        run(0, "stock", "verify", shop);
    }

    @Test
    void cutForNobody_andAFigureBelowNothing_areRefusedInWords() {
        assertTrue(run(2, "stock", "cut", shop, "R1", "5 m", "--for", "").err().contains("whom or what"));
        assertTrue(run(2, "stock", "count", shop, "R1", "-3 m").err().contains("below nothing"));
        assertTrue(run(3, "orders", "keep", shop, "9/9.9").err().contains("piece 9/9.9 is not cut"));
    }

    /** The commands in a refusal are typed as they stand. */
    @Test
    void commandsInARefusal_nameThisShop() {
        assertTrue(run(3, "stock", "hold", shop, "R7").err().contains("see bitterend stock list " + shop));
        assertTrue(run(3, "stock", "cut", shop, "R1", "90 m", "--for", "Ferry Co")
                .err()
                .contains("book that first; how: bitterend stock count --help"));
    }

    /** 12.1 m are measured of 12.3 m, 0.3 m of which are not certain. */
    @Test
    void cutAtTheVeryEnd_losesRopeToo() throws IOException {
        reopen("R1,DB12,L1,12.3 m,0.3 m,no");
        Files.writeString(
                Path.of(shop, "orders.csv"),
                "order,line,customer,rope,length,end a,end b,quantity,due\n1,1,Ferry Co,DB12,11.9 m,plain,plain,1,2026-03-05\n");
        run(0, "plan", shop, "--time", "1s");
        String booked = post("--piece", "1/1.1", "--measured", "1/1.1=12.1 m");
        assertTrue(booked.contains("-12.110 m"), booked);
    }

    @Test
    void sample_isScrap() {
        assertTrue(run(0, "stock", "cut", shop, "R1", "2 m", "--sample", "lot test")
                .out()
                .contains("sample: lot test"));
    }

    @Test
    void pieceOffAnotherReel_isOneCommandAndThePlanGoesOnWithoutIt() {
        run(0, "stock", "receive", shop, "R9", "DB12", "20 m", "--lot", "L9");
        run(3, "stock", "cut", shop, "R9", "12.02 m", "--piece", "7/7.7");
        String booked = run(0, "stock", "cut", shop, "R9", "12.02 m", "--piece", "1/1.2")
                .out();
        assertTrue(booked.contains("piece 1/1.2 for Harbour Board"), booked);
        run(3, "stock", "cut", shop, "R9", "7 m", "--piece", "1/1.2");
        Run refused = refused(5, "--skipped 1/1.2", "--all");
        assertTrue(refused.err().contains("piece 1/1.2 was cut already: reel R9"), refused.err());
        String rest = post("--all", "--skipped", "1/1.2");
        assertFalse(rest.contains("1/1.2"), rest);
        assertTrue(run(0, "plan", shop, "--time", "1s").err().contains("3 pieces cut already"));
    }

    /** 60 m less three pieces and three cuts: 23.940 m by the plan and by its tag. */
    @Test
    void reelWithOtherThanPlannedLeft_getsALabelAgain() {
        String other = post("--all", "--left", "R1=23.5 m");
        assertTrue(other.contains("a tag printed with the sheet is not right any more; label: | R1"), other);
        assertTrue(other.contains("| DB12, 23.500 m"), other);
        undoLast();
        assertFalse(post("--all").contains("not right any more"));
    }

    /** 12.02 m are needed: 120.2 m is a slip of the point. */
    @Test
    void cutFarOffWhatItsPieceNeeds_wantsAWord() {
        run(0, "stock", "receive", shop, "R9", "DB12", "200 m", "--lot", "L9");
        Run slip = run(2, "stock", "cut", shop, "R9", "120.2 m", "--piece", "1/1.2");
        assertTrue(slip.err().contains("more than 5 % off") && slip.err().contains("--sure"), slip.err());
        assertFalse(run(0, "stock", "history", shop, "R9").out().contains("1/1.2"));
        run(0, "stock", "cut", shop, "R9", "120.2 m", "--piece", "1/1.2", "--sure");
    }

    /** What is left behind a cut is held to the ledger like a measured piece: too much or too little by a slip. */
    @Test
    void leftFarBelowTheLedger_wantsAWord_andMoreThanThereIsACount() {
        Run less = refused(2, "--sure", "--piece", "1/1.1", "--left", "R1=2.3 m");
        assertTrue(less.err().contains("behind the last cut by the ledger"), less.err());
        Run more = refused(3, "stock count", "--piece", "1/1.1", "--left", "R1=230 m", "--sure");
        assertTrue(more.err().contains("behind the last cut by the ledger"), more.err());
    }

    @Test
    void pieceOffAReelThatIsOnHold_isRefused() {
        run(0, "stock", "receive", shop, "R9", "DB12", "20 m");
        run(0, "stock", "hold", shop, "R9");
        run(3, "stock", "cut", shop, "R9", "12.02 m", "--piece", "1/1.2");
        run(3, "stock", "cut", shop, "R9", "12.02 m", "--for", "Ferry Co");
    }

    /** 38.54 m, 2.5 m of them uncertain, three pieces of 12 m: by the ledger 2.51 m are left, of which 10 mm are certain. */
    @Test
    void uncertainRest_isAskedForBeforeItIsScrapped() throws IOException {
        keepFrom("1 m");
        reopen("R1,DB12,L1,38.54 m,2.5 m,no");
        run(0, "plan", shop, "--time", "1s");
        Run asked = refused(2, "--left \"R1=LENGTH\"", "--all");
        assertTrue(asked.err().contains("from 1.000 m on it stays on the rack"), asked.err());
        post("--all", "--left", "R1=2.1 m");
        assertTrue(list().contains("2.100 m"), list());
        undoLast();
        post("--all", "--left", "R1=0.4 m");
        assertFalse(list().contains("R1 "), list());
        assertTrue(plain(run(0, "stock", "verify", shop).out()).contains("0.400 m"));
    }

    @Test
    void uncertainRest_isMeasuredNotScrapOnEveryPaper() throws IOException {
        keepFrom("1 m");
        reopen("R1,DB12,L1,38.54 m,2.5 m,no");
        String plan = plain(run(0, "plan", shop, "--time", "1s").withParts(shop).out());
        assertTrue(plan.contains("Measure when cut, something is probably left: R1 (2.5 m)."), plan);
        assertTrue(
                plan.contains("by the ledger 2.510 m, of which 0.010 m for certain. Keep it if it is 1.000 m"), plan);
        assertTrue(plan.contains("of that, probably: measure 2.5"), plan);
        assertFalse(plan.contains("too short to keep"), plan);
        for (String paper : List.of("", "--tags", "--csv")) {
            String printed = paper.isEmpty() ? sheet() : sheet(paper);
            assertTrue(printed.matches("(?s).*measure\\b.{0,60}keep if 1\\.000 m or more.*"), printed);
            assertFalse(printed.contains("too short to keep"), printed);
        }
        assertTrue(sheet().contains("<b>2.5 m</b><br/>probably left, to measure"), sheet());
        assertTrue(sheet("--units", "imperial").contains("keep if 3 ft 3 "), sheet());
        String json = Files.readString(Path.of(shop, "plans", "1.json"));
        assertTrue(json.contains("\"certainScrap\": \"0 mm\""), json);
        assertTrue(json.contains("\"probablyLeft\": \"2510 mm\""), json);
    }

    @Test
    void restThatIsScrapWhateverItMeasures_isScrap() throws IOException {
        keepFrom("3 m");
        reopen("R1,DB12,L1,38.54 m,2.5 m,no");
        assertFalse(plain(run(0, "plan", shop, "--time", "1s").withParts(shop).out())
                .contains("Measure what"));
        assertTrue(sheet().contains("too short to keep"), sheet());
        post("--all");
    }

    private String sheet(String... options) throws IOException {
        String[] command = Stream.concat(Stream.of("sheet", shop, "--all"), Stream.of(options))
                .toArray(String[]::new);
        return plain(PageText.of(Path.of(run(0, command).out().strip())));
    }

    @Test
    void posting_isTakenBackByPlanAndReelInOneCommand() throws IOException {
        String before = run(0, "stock", "export", shop).out();
        post("--piece", "1/1.1");
        post("--all");
        run(2, "stock", "undo", shop, "2", "--reel", "R1");
        run(2, "stock", "undo", shop);
        run(3, "stock", "undo", shop, "--plan", "1", "--reel", "R2");
        run(0, "stock", "undo", shop, "--plan", "1", "--reel", "R1");
        assertEquals(before, run(0, "stock", "export", shop).out());
    }

    @Test
    void undoOfWhatOthersWereBuiltOn_listsThem() {
        post("--all");
        run(0, "stock", "move", shop, "R1", "bay 4", "--who", "Ben");
        Run refused = run(3, "stock", "undo", shop, "3");
        assertTrue(refused.err().contains("event 4: moved on reel R1, by Ben"), refused.err());
        run(0, "stock", "undo", shop, "4");
        run(0, "stock", "undo", shop, "3");
        run(3, "stock", "undo", shop, "3");
    }

    @Test
    void bookingSentTwice_countsOnce() {
        assertEquals(post("--piece", "1/1.1", "--once", "tick 1"), post("--piece", "1/1.1", "--once", "tick 1"));
        run(0, "stock", "move", shop, "R1", "bay 4", "--once", "tick 2");
        run(0, "stock", "move", shop, "R1", "bay 4", "--once", "tick 2", "--json", "--who", "Ada");
        assertTrue(list().contains("bay 4"), list());
        run(3, "stock", "hold", shop, "R1", "--once", "tick 2");
    }

    /** It would be told as done, and never be booked. */
    @Test
    void anotherBookingUnderAnIdThatIsGiven_isRefused() {
        run(0, "stock", "move", shop, "R1", "bay 4", "--once", "tick 2");
        Run other = run(3, "stock", "move", shop, "R1", "bay 5", "--once", "tick 2");
        assertTrue(other.err().contains("the id tick 2 was given to event"), other.err());
        run(0, "stock", "receive", shop, "N1", "DB12", "90 m", "--once", "tick 3");
        run(0, "stock", "receive", shop, "N1", "DB12", "90 m", "--once", "tick 3");
        Run receive = run(3, "stock", "receive", shop, "N2", "DB12", "90 m", "--once", "tick 3");
        assertEquals("", receive.out());
        run(3, "stock", "receive", shop, "N1", "DB12", "80 m", "--once", "tick 3");
        assertFalse(list().contains("N2"), list());
    }

    /** Two people post the same plan at the same moment: it is booked once. */
    @Test
    void planPostedByTwoAtOnce_isBookedOnce() throws Exception {
        List<String> post = List.of("stock", "post", shop, "--all");
        List<Run> answers = AtOnce.run(List.of(post, post));
        assertEquals(0, AtOnce.codes(answers).get(0), answers.toString());
        String history = run(0, "stock", "history", shop, "R1", "--json").out();
        assertEquals(3, history.split("\"kind\": \"cut\"", -1).length - 1, history + answers);
    }

    /** What was done to a reel since a plan is told by the number that stock undo takes. */
    @Test
    void whatWasDoneToAReelSince_isToldByItsEvent() {
        run(0, "stock", "count", shop, "R1", "59 m");
        Run refused = run(5, "stock", "post", shop, "--all");
        String event =
                refused.err().replaceAll("(?s).*\\(event (\\d+)\\), which changed its length by -1\\.000 m.*", "$1");
        run(0, "stock", "undo", shop, event);
        post("--all");
    }

    private void undoLast() {
        String last =
                run(0, "stock", "history", shop, "R1", "--json").out().replaceAll("(?s).*\"event\": ([0-9]+).*", "$1");
        run(0, "stock", "undo", shop, last);
    }

    /** By a curve of the shop's own. */
    private void keepFrom(String length) throws IOException {
        Files.writeString(
                Path.of(shop, "values.json"),
                """
                {"format": "bitterend/values/1", "values": [{"rope": "DB12", "typed": "yes", "knots": [
                  {"length": "%s", "share": "15 %%"}, {"length": "40 m", "share": "100 %%"}]}]}
                """
                        .formatted(length));
    }

    private void reopen(String... rows) throws IOException {
        Files.delete(Path.of(shop, "stock.db"));
        try (Stream<Path> plans = Files.walk(Path.of(shop, "plans"))) {
            for (Path plan : plans.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(plan);
            }
        }
        reels(rows);
        run(0, "stock", "open", shop);
    }

    private void reels(String... rows) throws IOException {
        Files.writeString(
                Path.of(shop, "reels.csv"), "reel,rope,lot,length,uncertainty,full\n" + String.join("\n", rows) + "\n");
    }

    private String list() {
        return run(0, "stock", "list", shop).out();
    }

    private String post(String... words) {
        return plain(run(0, posting(words)).out());
    }

    /** Words of a table that were wrapped, on one line. */
    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /** Posting is refused with these words, and nothing is booked. */
    private Run refused(int code, String sentence, String... words) {
        String before = run(0, "stock", "list", shop, "--json").out();
        Run refused = run(code, posting(words));
        assertTrue(refused.err().contains(sentence), refused.err());
        assertEquals(before, run(0, "stock", "list", shop, "--json").out());
        return refused;
    }

    private String[] posting(String... words) {
        List<String> all = new ArrayList<>(List.of("stock", "post", shop));
        all.addAll(List.of(words));
        return all.toArray(String[]::new);
    }

    private static Run run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), String.join(" ", words) + "\n" + run.out() + run.err());
        assertFalse(run.err().contains("Exception"), run.err());
        return run;
    }
}
