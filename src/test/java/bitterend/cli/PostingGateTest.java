package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Only what is booked is looked at, and what was really cut can be booked. Plan 1 cuts three pieces of 12 m off R1, of two
 * lines; its sheet is out.
 */
final class PostingGateTest {
    private static final String ORDERS =
            """
            order,line,customer,rope,length,end a,end b,quantity,due,match
            1,1,Harbour Board,DB12,12 m,plain,plain,2,2026-03-05,
            2,1,Ferry Co,DB12,9 m,plain,plain,1,2026-03-06,
            """;

    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    @BeforeEach
    void issue() throws IOException {
        TestShop made = TestShop.in(folder);
        shop = made.path().toString();
        write("orders.csv", ORDERS);
        write("reels.csv", "reel,rope,lot,length,full\nR1,DB12,L1,60 m,no\nR2,DB12,L2,30 m,no\n");
        write("pins.csv", "piece,reel\n1/1.1,R1\n1/1.2,R1\n2/1.1,R1\n");
        run(0, "stock", "open", shop);
        plan();
        run(0, "sheet", shop, "--all", "--issue");
        Files.delete(Path.of(shop, "pins.csv"));
    }

    @AfterEach
    void soundWhateverHappened() {
        assertTrue(run(0, "stock", "verify", shop).out().contains("the ledger is sound"));
    }

    /** The order is cancelled while its sheet is being cut; the other pieces of the reel are booked as ever. */
    @Test
    void goodPiecesOfAReel_arePostedWhateverBecameOfTheOthers() throws IOException {
        cancel("2,1");
        post("--piece", firstOf("1/1"));
        refused("2/1.1 is not ordered any more", "--reel", "R1");
        post("--reel", "R1", "--skipped", "2/1.1");
        assertEquals("", run(0, "stock", "trace", shop, "1/1.2").err());
        assertTrue(run(3, "stock", "trace", shop, "2/1.1").err().contains("2/1.1"));
    }

    @Test
    void pieceThatWasCutThoughItsLineIsCancelled_isASparePieceAtOnce() throws IOException {
        cancel("2,1");
        Run refused = refused("is not ordered any more", "--reel", "R1", "--who", "Olaf");
        String told = typed(refused, "If it was cut all the same: ", 0);
        assertEquals(2, told.split("is booked as it was planned", -1).length, "of this piece alone: " + told);
        assertTrue(told.contains("piece 2/1.1 is booked as it was planned; where no order asks for it"), told);
        assertTrue(flat(run(0, "orders", shop).out()).contains("2/1.1: its line is cancelled; 9."));
        write("orders.csv", ORDERS.replace("2,1,Ferry Co", "3,1,Port Pilots"));
        assertTrue(flat(plan().out()).contains("bitterend orders give"), "offered to the line that it fits");
        run(0, "orders", "give", shop, "2/1.1", "3/1.1");
    }

    @Test
    void pieceThatWasNotCut_isSkippedByTheCommandThatIsPrinted() throws IOException {
        cancel("2,1");
        typed(refused("is not ordered any more", "--reel", "R1"), "If it was not cut: ", 0);
        assertTrue(run(3, "stock", "trace", shop, "2/1.1").err().contains("2/1.1"));
    }

    @Test
    void pieceThatIsOrderedOtherwise_isBookedAsItWasPlannedAndTold() throws IOException {
        write("orders.csv", ORDERS.replace("9 m", "9.5 m"));
        typed(refused("was to be cut at", "--reel", "R1"), "If it was cut all the same: ", 0);
        String orders = flat(run(0, "orders", shop).out());
        assertTrue(orders.contains("2/1.1") && orders.contains("9.000 m"), orders);
    }

    @Test
    void pieceThatNoOrderAsksFor_isBookedAsASparePieceOffAnyReel() throws IOException {
        cancel("2,1");
        Run refused = run(3, "stock", "cut", shop, "R2", "9.02 m", "--piece", "2/1.1");
        typed(refused, "if it was cut all the same it is a spare piece: ", 0);
        assertTrue(flat(run(0, "orders", shop).out()).contains("2/1.1 spare"));
        run(0, "stock", "undo", shop, "4");
        run(2, "stock", "cut", shop, "R2", "9.02 m", "--spare", "x", "--for", "y");
    }

    /** A pair of one lot: one leg was cut off another lot, the other as planned before anybody saw it. */
    @Test
    void setOfWhichAPieceCameOffAnotherReel_isNoDeadEnd() throws IOException {
        again(
                "5,1,Harbour Board,DB12,12 m,plain,plain,1,2026-03-05,lot,2\n2,1,Ferry Co,DB12,9 m,plain,plain,1,2026-03-06,,\n");
        run(0, "stock", "cut", shop, "R2", "12.02 m", "--piece", "5/1.1-1");
        post("--plan", "2", "--piece", "2/1.1", "--skipped", "5/1.1-1", "--skipped", "5/1.1-2");
        Run torn = refused("it would not match 5/1.1-1", "--plan", "2", "--reel", "R1", "--skipped", "5/1.1-1");
        String booked = typed(torn, "If it was cut all the same: ", 0);
        assertTrue(booked.contains("is spare piece '"), booked);
        assertTrue(flat(run(0, "orders", shop).out()).contains("5/1.1-2 spare"));
        assertTrue(flat(plan().out()).contains("5/1.1-2"), "it is still to be made");
    }

    @Test
    void setOfWhichAllWasSkipped_letsTheReelGoOn() throws IOException {
        again(
                "5,1,Harbour Board,DB12,12 m,plain,plain,1,2026-03-05,lot,2\n2,1,Ferry Co,DB12,9 m,plain,plain,1,2026-03-06,,\n");
        run(0, "stock", "cut", shop, "R2", "12.02 m", "--piece", "5/1.1-1");
        post("--plan", "2", "--reel", "R1", "--skipped", "5/1.1-1", "--skipped", "5/1.1-2");
    }

    /** Cut twice by mistake: the second is a spare piece. */
    @Test
    void pieceThatWasCutTwice_isASparePieceTheSecondTime() {
        run(0, "stock", "cut", shop, "R2", "12.02 m", "--piece", "1/1.1");
        Run refused = refused("piece 1/1.1 was cut already", "--reel", "R1");
        String booked = typed(refused, "if it was cut here too, and is a spare piece: ", 0);
        assertTrue(booked.contains("spare piece '1/1.1 spare"), booked);
        assertTrue(flat(run(0, "orders", shop).out()).contains("1/1.1 spare"));
    }

    /** What the sheet has cut is booked off its reel before anybody plans: a new plan must not count on that rope. */
    @Test
    void reelThatOthersCut_isBookedCutByCutAsPrinted() {
        run(0, "stock", "cut", shop, "R1", "2 m", "--for", "a passing sloop");
        Run refused = refused("which changed its length by -2.010 m", "--reel", "R1");
        int from = refused.err().indexOf("before anything is planned anew");
        assertTrue(from > 0 && from < refused.err().indexOf("bitterend plan " + shop + " --from 1"), refused.err());
        refused.err()
                .lines()
                .filter(line -> line.startsWith("  bitterend stock cut"))
                .forEach(this::command);
        assertTrue(run(0, "plan", shop, "--from", "1", "--time", "300ms").err().contains("3 pieces cut already"));
    }

    @Test
    void reelThatWasHeldAndReleased_orWhosePapersChanged_isPosted() {
        run(0, "stock", "hold", shop, "R1");
        Run held = refused("reel R1: on hold on", "--reel", "R1");
        typed(held, "When that is over: ", 0);
        run(0, "stock", "correct", shop, "R1", "--lot", "L9", "--certificate", "3.1");
        run(0, "stock", "correct", shop, "R1", "--use-by", "2030-01-31");
        run(0, "stock", "count", shop, "R1", "60 m");
        String posted = post("--reel", "R1");
        assertEquals(3, posted.split("; plan 1", -1).length - 1, posted);
    }

    @Test
    void reelThatIsOutOfDateNow_wantsAWord() {
        run(0, "stock", "correct", shop, "R1", "--use-by", "2026-01-31");
        Run refused = refused("R1 was to be used by 2026-01-31", "--reel", "R1");
        assertFalse(refused.err().contains("by 0 mm"), refused.err());
        assertTrue(typed(refused, "If they were cut all the same: ", 0).contains("is spare piece '"));
    }

    /** Plan 2 cuts the reel like plan 1, whose sheet is on the bench: a step is one step, whichever it is booked under. */
    @Test
    void numberOnTheIssuedSheet_worksAfterASecondPlan() {
        String before = run(0, "stock", "export", shop).out();
        plan();
        assertTrue(post("--piece", firstOf("1/1")).contains("plan 2"));
        post("--reel", "R1", "--plan", "1");
        String all = post("--reel", "R1", "--plan", "1");
        assertTrue(all.contains("3 steps were in the ledger already"), all);
        assertTrue(post("--reel", "R1", "--plan", "2").contains("3 steps were"));
        assertTrue(run(3, "stock", "undo", shop, "--plan", "1", "--reel", "R2")
                .err()
                .contains("nothing is left of what was posted of plan 1 off reel R2"));
        run(0, "stock", "undo", shop, "--plan", "1", "--reel", "R1");
        assertEquals(before, run(0, "stock", "export", shop).out());
    }

    /** A plan made when some was posted has the same steps as what was left of the one before. */
    @Test
    void planMadeAtNoon_hasTheStepsThatWereLeftOfTheMornings() {
        post("--piece", firstOf("1/1"));
        plan();
        String noon = post("--reel", "R1");
        assertTrue(noon.contains("plan 1: reel R1") || noon.contains("plan 2: reel R1"), noon);
        assertTrue(post("--reel", "R1", "--plan", "1").contains("3 steps were"));
        assertTrue(post("--reel", "R1", "--plan", "2").contains("steps were"));
    }

    @Test
    void postedReelThatWasCountedSince_standsAlready() {
        post("--reel", "R1");
        run(0, "stock", "count", shop, "R1", "26 m");
        String again = post("--reel", "R1");
        assertTrue(again.contains("3 steps were in the ledger already"), again);
        assertTrue(run(0, "stock", "list", shop).out().contains("26 m"));
    }

    @Test
    void countThatIsFarOffWhatTheCutsLeave_wantsAWord() {
        run(0, "stock", "count", shop, "R1", "36 m");
        Run refused = run(2, "stock", "post", shop, "--reel", "R1", "--before-count");
        assertTrue(refused.err().contains("more than 5 % off") && refused.err().contains("--sure"), refused.err());
        post("--reel", "R1", "--before-count", "--sure");
    }

    private void again(String rows) throws IOException {
        write("orders.csv", "order,line,customer,rope,length,end a,end b,quantity,due,match,legs\n" + rows);
        write("pins.csv", "piece,reel\n5/1.1-1,R1\n5/1.1-2,R1\n2/1.1,R1\n");
        run(0, "plan", shop, "--time", "300ms", "--withdraw");
        run(0, "sheet", shop, "--all", "--issue");
        Files.delete(Path.of(shop, "pins.csv"));
    }

    /** The piece of a line that the sheet cuts first. */
    private String firstOf(String line) {
        return run(0, "sheet", shop, "--all", "--csv").code() == 0
                        && csv().indexOf(line + ".2") < csv().indexOf(line + ".1")
                ? line + ".2"
                : line + ".1";
    }

    private String csv() {
        try {
            return Files.readString(Path.of(shop, "sheet.csv"));
        } catch (IOException gone) {
            throw new java.io.UncheckedIOException(gone);
        }
    }

    private void cancel(String line) throws IOException {
        StringBuilder left = new StringBuilder();
        ORDERS.lines().filter(row -> !row.startsWith(line)).forEach(row -> left.append(row)
                .append('\n'));
        write("orders.csv", left.toString());
    }

    private Run plan() {
        return run(0, "plan", shop, "--time", "300ms");
    }

    private String post(String... words) {
        return flat(run(0, posting(words)).out());
    }

    private Run refused(String sentence, String... words) {
        Run refused = run(5, posting(words));
        assertTrue(refused.err().contains(sentence), refused.err());
        return refused;
    }

    private String[] posting(String... words) {
        List<String> all = new ArrayList<>(List.of("stock", "post", shop));
        all.addAll(List.of(words));
        return all.toArray(String[]::new);
    }

    /** Types the command that stands behind these words, as it stands there. */
    private String typed(Run run, String before, int code) {
        String line = run.err()
                .lines()
                .filter(each -> each.contains(before + "bitterend "))
                .findFirst()
                .orElseThrow(() -> new AssertionError(before + "\n" + run.err()));
        Run typed = command(line.substring(line.indexOf(before) + before.length()));
        assertEquals(code, typed.code(), line + "\n" + typed.err());
        return flat(typed.out());
    }

    private Run command(String line) {
        List<String> words = new ArrayList<>();
        java.util.regex.Matcher word =
                java.util.regex.Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(line.strip());
        while (word.find()) {
            words.add(word.group(1) == null ? word.group(2) : word.group(1));
        }
        assertEquals("bitterend", words.get(0), line);
        return run(0, words.subList(1, words.size()).toArray(String[]::new));
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(Path.of(shop, name), text);
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static Run run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), String.join(" ", words) + "\n" + run.out() + run.err());
        assertFalse(run.err().contains("Exception"), run.err());
        return run;
    }
}
