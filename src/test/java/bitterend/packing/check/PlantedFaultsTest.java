package bitterend.packing.check;

import static bitterend.packing.check.PlantedDay.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Bound;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.LengthBook.Account;
import bitterend.packing.Reason;
import bitterend.packing.ReelDraw;
import bitterend.packing.Rule;
import bitterend.packing.RunDraw;
import bitterend.packing.RunDraw.Rest;
import bitterend.packing.Undone;
import bitterend.packing.Unplanned;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The checker's checker: one fault planted in a sound plan, and exactly the right check finds it. */
final class PlantedFaultsTest {
    private static final CutPlan SOUND = PlantedDay.plan();

    /** A plan with one fault. */
    record Planted(String name, Check check, String where, CutPlan plan) {
        @Override
        public String toString() {
            return name;
        }
    }

    @Test
    void soundPlan_hasNoFault() {
        assertEquals(List.of(), PlanChecker.check(PlantedDay.problem(), SOUND));
    }

    @ParameterizedTest
    @MethodSource({"rules", "marks", "orders", "lists", "rests", "totals", "reasons", "bounds"})
    void plantedFault_isFoundByItsCheckAlone(Planted planted) {
        List<Fault> faults = PlanChecker.check(PlantedDay.problem(), planted.plan());
        assertEquals(1, faults.size(), faults.toString());
        assertEquals(planted.check(), faults.get(0).check(), faults.toString());
        assertEquals(planted.where(), faults.get(0).where(), faults.toString());
    }

    @Test
    void everyCheck_hasAPlantedFault() {
        Set<Check> planted = new TreeSet<>(Set.of(Check.SIZE, Check.CURVE)); // the second: CurveCheckTest
        Stream.of(rules(), marks(), orders(), lists(), rests(), totals(), reasons(), bounds())
                .flatMap(each -> each)
                .forEach(each -> planted.add(each.check()));
        assertEquals(new TreeSet<>(Arrays.asList(Check.values())), planted);
    }

    @Test
    void sumsTooLarge_areAFaultAndNotACrash() {
        CutPlan plan = new CutPlan(
                SOUND.day(),
                SOUND.draws().stream()
                        .map(draw -> Surgery.cost(draw, Long.MAX_VALUE / 2))
                        .toList(),
                SOUND.unplanned(),
                SOUND.book(),
                SOUND.cost(),
                List.of());
        Set<Check> checks = PlanChecker.check(PlantedDay.problem(), plan).stream()
                .map(Fault::check)
                .collect(Collectors.toSet());
        assertTrue(checks.contains(Check.SIZE), checks.toString());
    }

    static Stream<Planted> rules() {
        return Stream.of(
                new Planted(
                        "piece without its certificate",
                        Check.CERTIFICATE,
                        "A1/1.2",
                        PlantedDay.with("K2", 1, "A1/1.2")),
                new Planted("set over two lots", Check.ONE_LOT, "slings", PlantedDay.with("K2", 1, "A1/2.2")),
                new Planted("pair over two reels", Check.ONE_REEL, "pair", PlantedDay.with("K1", 2, "A1/3.2")),
                new Planted("set torn", Check.SET_WHOLE, "pair", PlantedDay.without("A1/3.2")),
                new Planted("expired reel", Check.USE_BY, "A4/1.1", PlantedDay.with("K3", 1, "A4/1.1")),
                new Planted("reel on hold", Check.ON_HOLD, "A4/1.1", PlantedDay.with("K4", 1, "A4/1.1")),
                new Planted(
                        "reel kept for another order", Check.RESERVED, "A4/1.1", PlantedDay.with("K5", 1, "A4/1.1")),
                new Planted(
                        "a customer's rope for another order",
                        Check.OWN_ROPE,
                        "A4/1.1",
                        PlantedDay.with("K6", 1, "A4/1.1")),
                new Planted("our rope for own-rope work", Check.OWN_ROPE, "C1/1.1", PlantedDay.with("K2", 1, "C1/1.1")),
                new Planted(
                        "begun set finished off another reel",
                        Check.BEGUN_SET,
                        "B9/1.1",
                        PlantedDay.with("K2", 1, "B9/1.1")),
                new Planted("pinned piece moved", Check.PINNED, "D1/1.1", PlantedDay.with("K1", 2, "D1/1.1")),
                new Planted(
                        "one more piece off an issued reel",
                        Check.ISSUED,
                        "F1/1.1",
                        PlantedDay.with("K7a", 1, "F1/1.1")),
                new Planted(
                        "a piece off a reel before it comes",
                        Check.COMES_IN_TIME,
                        "A4/1.1",
                        PlantedDay.with("P-88:1", 1, "A4/1.1")),
                new Planted("another rope", Check.SAME_ROPE, "F1/1.1", PlantedDay.with("K2", 1, "F1/1.1")),
                new Planted(
                        "run overfull by one millimetre",
                        Check.FITS_THE_RUN,
                        "K8 run 1",
                        PlantedDay.with("K8", 1, "A4/1.1")));
    }

    static Stream<Planted> marks() {
        return Stream.of(
                cut("cut 1 mm long", Check.MARKS, "K1 run 1", "A1/1.2", 0, 1),
                cut("cut 1 mm short", Check.MARKS, "K1 run 1", "A1/1.1", 0, -1),
                cut("piece 1 mm on", Check.MARKS, "K1 run 1", "A1/1.2", 1, 1),
                cut("cut loss left out", Check.MARKS, "K1 run 1", "A1/1.2", -20, -20),
                cut("flaw crossed", Check.CLEAR_OF_FLAWS, "K1 run 1", "A1/1.2", 10_000, 10_000),
                cut("uncertain edge of a flaw touched", Check.CLEAR_OF_FLAWS, "K1 run 2", "A1/2.1", -1, -1),
                cut("piece in the lead trim", Check.CLEAR_OF_FLAWS, "K1 run 1", "A1/1.1", -500, -500),
                cut("piece in the inner wraps", Check.CLEAR_OF_FLAWS, "K1 run 2", "A1/2.2", 25_000, 25_000),
                new Planted(
                        "two pieces swapped, marks not",
                        Check.MARKS,
                        "K2 run 1",
                        Surgery.run(SOUND, "K2", 1, PlantedFaultsTest::namesSwapped)));
    }

    /** D1/1.1 is pinned and has no other home; the set of A1/2 lies on one run, with A4/1.1 put beside it. */
    static Stream<Planted> orders() {
        CutPlan beside = PlantedDay.with("K1", 2, "A4/1.1");
        return Stream.of(
                new Planted(
                        "easiest to place elsewhere cut first",
                        Check.CUTTING_ORDER,
                        "K2 run 1",
                        Surgery.run(SOUND, "K2", 1, run -> Surgery.inOrder(run, 20, "A4/1.1", "D1/1.1"))),
                new Planted(
                        "another piece between those of a set",
                        Check.CUTTING_ORDER,
                        "K1 run 2",
                        Surgery.run(beside, "K1", 2, run -> Surgery.inOrder(run, 20, "A1/2.1", "A4/1.1", "A1/2.2"))));
    }

    @Test
    void piecesAlike_mayBeCutInAnyOrder() {
        CutPlan plan = Surgery.run(SOUND, "K1", 1, run -> Surgery.inOrder(run, 20, "A1/1.2", "A1/1.1"));
        assertEquals(List.of(), PlanChecker.check(PlantedDay.problem(), plan));
    }

    private static Planted cut(String name, Check check, String where, String piece, long fromBy, long toBy) {
        CutPlan plan = Surgery.cut(SOUND, piece, cut -> Surgery.moved(cut, fromBy, toBy));
        return new Planted(name, check, where, plan);
    }

    private static RunDraw namesSwapped(RunDraw run) {
        Cut one = run.cuts().get(0);
        Cut other = run.cuts().get(1);
        return Surgery.cuts(
                run,
                List.of(new Cut(other.piece(), one.from(), one.to()), new Cut(one.piece(), other.from(), other.to())));
    }

    static Stream<Planted> lists() {
        Unplanned twice =
                new Unplanned("A1/3.1", new Reason(Rule.ONE_REEL, "no reel takes the pair"), Sentence.of("a reel"));
        Unplanned stranger = new Unplanned("X1/1.1", new Reason(Rule.PLANNED, "no room"), Sentence.of("more rope"));
        ReelDraw nowhere = new ReelDraw("K9", mm(0), List.of(), mm(0), LengthBook.EMPTY, Cost.ZERO);
        return Stream.of(
                new Planted("piece left out", Check.ONCE, "E1/1.1", Surgery.unplanned(SOUND, List.of())),
                new Planted(
                        "piece planned and unplanned",
                        Check.ONCE,
                        "A1/3.1",
                        Surgery.unplanned(
                                SOUND, List.of(twice, SOUND.unplanned().get(0)))),
                new Planted(
                        "unplanned piece that nobody wants",
                        Check.KNOWN,
                        "X1/1.1",
                        Surgery.unplanned(SOUND, Surgery.with(SOUND.unplanned(), stranger))),
                new Planted(
                        "cut that nobody wants",
                        Check.KNOWN,
                        "K8",
                        Surgery.run(
                                SOUND,
                                "K8",
                                1,
                                run -> Surgery.cuts(
                                        run, Surgery.with(run.cuts(), new Cut("X1/1.1", mm(6_040), mm(7_000)))))),
                new Planted(
                        "reel that is not there",
                        Check.KNOWN,
                        "K9",
                        Surgery.draws(SOUND, Surgery.with(SOUND.draws(), nowhere))),
                new Planted(
                        "reels out of order",
                        Check.LISTED,
                        "K1",
                        Surgery.draws(SOUND, Surgery.swapped(SOUND.draws(), 0, 1))),
                new Planted("reel listed twice", Check.LISTED, "K2", reelListedTwice()),
                new Planted("plan of another day", Check.DAY, "plan", planOfTomorrow()),
                new Planted(
                        "reel brought forward to a day that is past",
                        Check.CUT_DAY,
                        "K2",
                        Surgery.draw(SOUND, "K2", draw -> draw.broughtForwardTo(PlantedDay.DAY.minusDays(3)))),
                runs("run with a wrong number", "K1 run 3", draw -> Surgery.runs(draw, renumbered(draw.runs()))),
                new Planted("skipped run not listed", Check.RUNS, "K1 run 2", skippedRunNotListed()),
                runs("runs swapped", "K1 run 2", draw -> Surgery.runs(draw, Surgery.swapped(draw.runs(), 0, 1))),
                runs("run begins 1 mm early", "K1 run 2", draw -> Surgery.runs(draw, begunEarly(draw.runs()))));
    }

    @Test
    void pieceTwice_isFoundForBothPieces() {
        CutPlan plan = Surgery.cut(SOUND, "A1/1.2", cut -> new Cut("A1/1.1", cut.from(), cut.to()));
        List<Fault> faults = PlanChecker.check(PlantedDay.problem(), plan);
        assertEquals(
                List.of(Check.ONCE, Check.ONCE),
                faults.stream().map(Fault::check).toList());
        assertEquals(
                List.of("A1/1.1", "A1/1.2"), faults.stream().map(Fault::where).toList());
    }

    /** The second of them would have room: that is found beside it. */
    @Test
    void unplannedPiecesOutOfOrder_areFound() {
        CutPlan two = PlantedDay.without("A4/1.1");
        CutPlan turned = Surgery.unplanned(two, Surgery.swapped(two.unplanned(), 0, 1));
        assertEquals(
                List.of(Check.LISTED, Check.REASON),
                PlanChecker.check(PlantedDay.problem(), turned).stream()
                        .map(Fault::check)
                        .toList());
    }

    @Test
    void unwantedRunBehindTheLastCut_isFound() {
        ReelDraw k2 = SOUND.draws().get(1);
        RunDraw behind = new RunDraw(2, mm(30_000), mm(31_000), List.of(), mm(1_000), Rest.ON_REEL);
        CutPlan plan = Surgery.draw(SOUND, "K2", draw -> Surgery.runs(draw, Surgery.with(k2.runs(), behind)));
        List<Fault> faults = PlanChecker.check(PlantedDay.problem(), plan);
        assertEquals(List.of(Check.RUNS), faults.stream().map(Fault::check).toList());
    }

    private static CutPlan skippedRunNotListed() {
        CutPlan plan = PlantedDay.with("K1", 2, "A1/1.1", "A1/1.2");
        return Surgery.draw(
                plan, "K1", draw -> Surgery.runs(draw, List.of(draw.runs().get(1))));
    }

    private static CutPlan reelListedTwice() {
        CutPlan one = PlantedDay.without("A4/1.1");
        CutPlan other = PlantedDay.without("D1/1.1");
        List<ReelDraw> draws = new ArrayList<>(SOUND.draws());
        draws.set(1, one.draws().get(1));
        draws.add(2, other.draws().get(1));
        return Surgery.draws(SOUND, draws);
    }

    private static CutPlan planOfTomorrow() {
        return new CutPlan(
                SOUND.day().plusDays(1), SOUND.draws(), SOUND.unplanned(), SOUND.book(), SOUND.cost(), SOUND.bounds());
    }

    private static Planted runs(String name, String where, UnaryOperator<ReelDraw> change) {
        CutPlan plan = Surgery.draw(SOUND, "K1", change);
        return new Planted(name, Check.RUNS, where, plan);
    }

    private static List<RunDraw> renumbered(List<RunDraw> runs) {
        RunDraw last = runs.get(1);
        return List.of(runs.get(0), new RunDraw(3, last.from(), last.to(), last.cuts(), last.left(), last.rest()));
    }

    private static List<RunDraw> begunEarly(List<RunDraw> runs) {
        RunDraw last = runs.get(1);
        return List.of(
                runs.get(0),
                new RunDraw(2, last.from().minus(mm(1)), last.to(), last.cuts(), last.left(), last.rest()));
    }

    static Stream<Planted> rests() {
        return Stream.of(
                new Planted("lead trim of a clean reel", Check.LEAD_TRIM, "K2", leadTrim("K2", 500)),
                new Planted("lead trim forgotten", Check.LEAD_TRIM, "K1", leadTrim("K1", 0)),
                new Planted(
                        "1 mm more left of a run",
                        Check.LEFT,
                        "K1 run 1",
                        Surgery.run(SOUND, "K1", 1, run -> rest(run, run.left().plus(mm(1)), run.rest()))),
                new Planted("1 mm less left on a reel", Check.LEFT, "K2", leftOnReel("K2", -1)),
                new Planted(
                        "good rest scrapped",
                        Check.REST,
                        "K1 run 1",
                        Surgery.run(SOUND, "K1", 1, run -> rest(run, run.left(), Rest.SCRAP))),
                new Planted(
                        "rest left on a reel that is done with",
                        Check.REST,
                        "K1 run 1",
                        Surgery.run(SOUND, "K1", 1, run -> rest(run, run.left(), Rest.ON_REEL))),
                new Planted(
                        "customer's rope scrapped",
                        Check.REST,
                        "K6 run 1",
                        Surgery.run(SOUND, "K6", 1, run -> rest(run, run.left(), Rest.SCRAP))));
    }

    private static RunDraw rest(RunDraw run, Length left, Rest rest) {
        return new RunDraw(run.run(), run.from(), run.to(), run.cuts(), left, rest);
    }

    private static CutPlan leadTrim(String reel, long trim) {
        return Surgery.draw(
                SOUND,
                reel,
                draw -> new ReelDraw(draw.reel(), mm(trim), draw.runs(), draw.leftOnReel(), draw.book(), draw.cost()));
    }

    private static CutPlan leftOnReel(String reel, long by) {
        return Surgery.draw(
                SOUND,
                reel,
                draw -> new ReelDraw(
                        draw.reel(),
                        draw.leadTrim(),
                        draw.runs(),
                        draw.leftOnReel().plus(mm(by)),
                        draw.book(),
                        draw.cost()));
    }

    static Stream<Planted> totals() {
        return Stream.of(
                new Planted("cut loss booked as scrap", Check.BOOK, "K1", lossBookedAsScrap()),
                new Planted("millimetre booked nowhere", Check.BOOK, "K2", millimetreMissing()),
                new Planted("wrong total of lengths", Check.BOOK, "plan", wrongTotalOfLengths()),
                cost("opening of a full reel left out", "K2", -300_000),
                cost("changing left out", "K7", -200_000),
                cost("a fourth year of credit", "K1", -10_000),
                cost("fraction of a cent", "K5", 1),
                new Planted("wrong total of money", Check.COST, "plan", Surgery.cost(SOUND, 1)),
                new Planted("moved piece not charged", Check.COST, "plan", Surgery.cost(SOUND, -60_000)),
                new Planted(
                        "split order not charged",
                        Check.COST,
                        "plan",
                        Surgery.cost(PlantedDay.with("K2", 1, "A1/2.1", "A1/2.2"), -70_000)));
    }

    private static Planted cost(String name, String reel, long by) {
        return new Planted(name, Check.COST, reel, Surgery.draw(SOUND, reel, draw -> Surgery.cost(draw, by)));
    }

    private static CutPlan lossBookedAsScrap() {
        return Surgery.draw(SOUND, "K1", draw -> {
            LengthBook book = draw.book();
            return Surgery.book(
                    draw,
                    book.with(Account.CUT_LOSS, mm(0))
                            .with(Account.SCRAP, book.scrap().plus(book.cutLoss())));
        });
    }

    private static CutPlan millimetreMissing() {
        return Surgery.draw(SOUND, "K2", draw -> Surgery.book(draw, lessLeft(draw.book())));
    }

    private static CutPlan wrongTotalOfLengths() {
        return new CutPlan(
                SOUND.day(), SOUND.draws(), SOUND.unplanned(), lessLeft(SOUND.book()), SOUND.cost(), List.of());
    }

    private static LengthBook lessLeft(LengthBook book) {
        return book.with(Account.LEFT, book.left().minus(mm(1)));
    }

    static Stream<Planted> reasons() {
        return Stream.of(
                reason("said to be too long", "D1/1.1", Rule.FITS_THE_RUN),
                reason("said to find no room", "A4/1.1", Rule.PLANNED),
                reason("said to have no rope", "A4/1.1", Rule.SAME_ROPE),
                reason("said to lack a certificate", "A1/1.1", Rule.CERTIFICATE),
                reason("said to be a set", "A4/1.1", Rule.ONE_LOT),
                reason("said to cost too much", "A4/1.1", Rule.OPENING),
                reason("said to be pinned", "E1/1.1", Rule.PINNED),
                reason("said to be kept off an issued reel", "A4/1.1", Rule.ISSUED));
    }

    private static Planted reason(String name, String piece, Rule rule) {
        CutPlan plan = PlantedDay.without(piece);
        List<Unplanned> unplanned = plan.unplanned().stream()
                .map(each -> each.piece().equals(piece)
                        ? new Unplanned(piece, new Reason(rule, name), Sentence.of("nothing"))
                        : each)
                .toList();
        return new Planted(name, Check.REASON, piece, Surgery.unplanned(plan, unplanned));
    }

    static Stream<Planted> bounds() {
        Undone undone = Undone.of(2, 5);
        Bound laid = bound("laid", 0, 0, Undone.NONE);
        Bound braid = bound("braid", 0, 0, undone);
        long cost = SOUND.cost().millis();
        return Stream.of(
                bounds("bound above the cost", "braid", laid, bound("braid", 0, cost, undone)),
                bounds("root that the duals do not prove", "braid", laid, bound("braid", 1, 1, undone)),
                bounds("root above the best", "braid", laid, bound("braid", 1, 0, undone)),
                bounds("wrong weight undone", "braid", laid, bound("braid", 0, 0, Undone.of(2, 6))),
                bounds("undone in a wrong class", "braid", laid, bound("braid", 0, 0, Undone.of(3, 5))),
                bounds("rope without a bound", "laid", braid),
                bounds("rope in two bounds", "laid", braid, laid, laid),
                bounds(
                        "dual of a piece of another rope",
                        "laid",
                        braid,
                        new Bound(
                                List.of("laid"),
                                Cost.ZERO,
                                Cost.ZERO,
                                1,
                                Undone.NONE,
                                Bound.noPrices(),
                                List.of(new Bound.Dual(List.of("A1/1.1"), 1)))));
    }

    private static Bound bound(String rope, long root, long best, Undone undone) {
        return new Bound(List.of(rope), new Cost(best), new Cost(root), 1, undone, Bound.noPrices(), List.of());
    }

    private static Planted bounds(String name, String where, Bound... bounds) {
        return new Planted(name, Check.BOUND, where, Surgery.bounds(SOUND, bounds));
    }
}
