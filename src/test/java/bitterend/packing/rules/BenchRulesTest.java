package bitterend.packing.rules;

import static bitterend.packing.PieceSketch.ofRope;
import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static bitterend.packing.Sketch.DAY;
import static bitterend.packing.Sketch.OTHER_ROPE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import bitterend.packing.Eligibility;
import bitterend.packing.PlanPrice;
import bitterend.packing.Prices;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.Sketch;
import bitterend.packing.model.Bench;
import bitterend.packing.model.BenchLayout;
import bitterend.packing.model.PieceToCut;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;

/** Every rule on both sides of its boundary, with the sentence it says. */
final class BenchRulesTest {
    private static final Cost NONE = Cost.ZERO;

    private final ConstraintVerifier<BenchRules, Bench> verifier =
            ConstraintVerifier.build(new BenchRules(), Bench.class, PieceToCut.class);

    @Test
    void sameRope_takesAnAllowedSubstitute() {
        holds(
                BenchRules::sameRope,
                new Sketch()
                        .with(reel("K1", 9_000).of(OTHER_ROPE))
                        .with(piece("P1", 2_000).or(OTHER_ROPE, 2_100), "K1", 1));
    }

    @Test
    void sameRope_barsAnotherRope() {
        bars(
                Rule.SAME_ROPE,
                BenchRules::sameRope,
                new Sketch().with(reel("K1", 9_000).of(OTHER_ROPE)).with(piece("P1", 2_000), "K1", 1),
                1,
                "K1 holds navy; P1 is ordered in white");
    }

    @Test
    void onHold_leavesAFreeReelAlone() {
        holds(BenchRules::onHold, new Sketch().with(reel("K1", 9_000)).with(piece("P1", 2_000), "K1", 1));
    }

    @Test
    void onHold_barsTheReel() {
        bars(
                Rule.ON_HOLD,
                BenchRules::onHold,
                new Sketch().with(reel("K1", 9_000).onHold()).with(piece("P1", 2_000), "K1", 1),
                1,
                "K1 is on hold");
    }

    /** A piece that one rule bars off a reel breaks that rule alone: the others find nothing wrong with it. */
    @Test
    void pieceBarredByOneRule_breaksNoOther() {
        Sketch onHold = new Sketch().with(reel("K1", 9_000).onHold()).with(piece("P1", 2_000), "K1", 1);
        holds(BenchRules::sameRope, onHold);
        holds(BenchRules::certificate, onHold);
        holds(BenchRules::useBy, onHold);
        Sketch kept = new Sketch()
                .with(reel("K1", 9_000).reservedFor("B7"))
                .with(piece("P1", 2_000).order("B8"), "K1", 1);
        holds(BenchRules::onHold, kept);
        holds(BenchRules::pinned, kept);
    }

    @Test
    void reserved_servesItsOwnOrder() {
        holds(
                BenchRules::reserved,
                new Sketch()
                        .with(reel("K1", 9_000).reservedFor("B7"))
                        .with(piece("P1", 2_000).order("B7"), "K1", 1));
    }

    @Test
    void reserved_barsAnotherOrder() {
        bars(
                Rule.RESERVED,
                BenchRules::reserved,
                new Sketch()
                        .with(reel("K1", 9_000).reservedFor("B7"))
                        .with(piece("P1", 2_000).order("B8"), "K1", 1),
                1,
                "K1 is kept for order B7");
    }

    @Test
    void ownRope_servesTheCustomersOrder() {
        holds(
                BenchRules::ownRope,
                new Sketch()
                        .with(reel("K1", 9_000).ownedBy("Hollow Quay Boats", "B7"))
                        .with(piece("P1", 2_000).order("B7").ownRope(), "K1", 1));
    }

    @Test
    void ownRope_barsEveryOtherOrder() {
        bars(
                Rule.OWN_ROPE,
                BenchRules::ownRope,
                new Sketch()
                        .with(reel("K1", 9_000).ownedBy("Hollow Quay Boats", "B7"))
                        .with(piece("P1", 2_000).order("B7"), "K1", 1),
                1,
                "K1 belongs to Hollow Quay Boats and serves order B7 alone");
    }

    @Test
    void ownRope_barsTheShopsRopeForAnOrderOfOwnRope() {
        bars(
                Rule.OWN_ROPE,
                BenchRules::ownRope,
                new Sketch().with(reel("K1", 9_000)).with(piece("P1", 2_000).ownRope(), "K1", 1),
                1,
                "P1 is to be cut from the customer's own rope; K1 is ours");
    }

    @Test
    void certificate_isCarriedByTheReel() {
        holds(
                BenchRules::certificate,
                new Sketch()
                        .with(reel("K1", 9_000).certificate("2.2"))
                        .with(piece("P1", 2_000).certificate("2.2"), "K1", 1));
    }

    @Test
    void certificate_barsAReelWithAnother() {
        bars(
                Rule.CERTIFICATE,
                BenchRules::certificate,
                new Sketch()
                        .with(reel("K1", 9_000).certificate("3.1"))
                        .with(piece("P1", 2_000).certificate("2.2"), "K1", 1),
                1,
                "P1 needs a certificate (2.2); K1 carries 3.1");
    }

    @Test
    void useBy_allowsTheDayItself() {
        holds(BenchRules::useBy, new Sketch().with(reel("K1", 9_000).useBy(DAY)).with(piece("P1", 2_000), "K1", 1));
    }

    @Test
    void useBy_barsTheDayAfter() {
        bars(
                Rule.USE_BY,
                BenchRules::useBy,
                new Sketch().with(reel("K1", 9_000).useBy(DAY.minusDays(1))).with(piece("P1", 2_000), "K1", 1),
                1,
                "K1 was to be used by 2026-03-01");
    }

    @Test
    void begunSet_goesOnOffTheSameLot() {
        holds(
                BenchRules::begunSet,
                new Sketch()
                        .with(reel("K1", 9_000).lot("L1"))
                        .with(piece("P2", 2_000).begun("S", Bond.ONE_LOT, "P1", "L1", "K7"), "K1", 1));
    }

    @Test
    void begunSet_barsAnotherLot() {
        bars(
                Rule.BEGUN_SET,
                BenchRules::begunSet,
                new Sketch()
                        .with(reel("K1", 9_000).lot("L2"))
                        .with(piece("P2", 2_000).begun("S", Bond.ONE_LOT, "P1", "L1", "K7"), "K1", 1),
                1,
                "set S is begun: P1 is cut off lot L1; K1 is not of that lot");
    }

    @Test
    void begunSet_ofUnknownLot_goesOnOffItsReelAndTheCoilsOfIt() {
        holds(
                BenchRules::begunSet,
                new Sketch()
                        .with(reel("K1-1", 9_000).lot(""))
                        .with(piece("P2", 2_000).begun("S", Bond.ONE_LOT, "P1", "", "K1", "K1-1"), "K1-1", 1));
        bars(
                Rule.BEGUN_SET,
                BenchRules::begunSet,
                new Sketch()
                        .with(reel("K2", 9_000).lot(""))
                        .with(piece("P2", 2_000).begun("S", Bond.ONE_LOT, "P1", "", "K1", "K1-1"), "K2", 1),
                1,
                "set S is begun: P1 is cut off reel K1 of unknown lot; K2 is not of that lot");
    }

    @Test
    void begunSet_toTheReel_barsAnotherReelOfTheLot() {
        holds(
                BenchRules::begunSet,
                new Sketch()
                        .with(reel("K1", 9_000).lot("L1"))
                        .with(piece("P2", 2_000).begun("S", Bond.ONE_REEL, "P1", "L1", "K1"), "K1", 1));
        bars(
                Rule.BEGUN_SET,
                BenchRules::begunSet,
                new Sketch()
                        .with(reel("K2", 9_000).lot("L1"))
                        .with(piece("P2", 2_000).begun("S", Bond.ONE_REEL, "P1", "L1", "K1"), "K2", 1),
                1,
                "set S is begun: P1 is cut off reel K1; K2 is not of that reel");
    }

    @Test
    void pinned_staysOnItsReel() {
        holds(
                BenchRules::pinned,
                new Sketch()
                        .with(reel("K1", 9_000))
                        .with(piece("P1", 2_000), "K1", 1)
                        .pin("P1", "K1"));
    }

    @Test
    void pinned_barsAnotherReel() {
        bars(
                Rule.PINNED,
                BenchRules::pinned,
                new Sketch()
                        .with(reel("K1", 9_000))
                        .with(reel("K2", 9_000))
                        .with(piece("P1", 2_000), "K1", 1)
                        .pin("P1", "K2"),
                1,
                "P1 is pinned to K2");
    }

    @Test
    void issued_takesWhatStandsOnItsSheet() {
        holds(
                BenchRules::issued,
                new Sketch()
                        .with(reel("K1", 9_000))
                        .with(piece("P1", 2_000), "K1", 1)
                        .issue("P1", "K1", 4));
    }

    @Test
    void issued_takesNothingMore() {
        bars(
                Rule.ISSUED,
                BenchRules::issued,
                new Sketch()
                        .with(reel("K1", 9_000))
                        .with(piece("P1", 2_000))
                        .with(piece("P2", 2_000), "K1", 1)
                        .issue("P1", "K1", 4),
                1,
                "reel K1 is issued on plan 4 and takes nothing more");
    }

    @Test
    void comesInTime_servesWhatIsCutOnTheDayItComes() {
        holds(
                BenchRules::comesInTime,
                new Sketch()
                        .with(reel("P-88:1", 9_000))
                        .coming("P-88:1", DAY.plusDays(2))
                        .with(piece("P1", 2_000).due(DAY.plusDays(3)).finishing(1), "P-88:1", 1));
    }

    @Test
    void comesInTime_barsWhatMustBeCutBefore() {
        bars(
                Rule.COMES_IN_TIME,
                BenchRules::comesInTime,
                new Sketch()
                        .with(reel("P-88:1", 9_000))
                        .coming("P-88:1", DAY.plusDays(2))
                        .with(piece("P1", 2_000).due(DAY.plusDays(3)).finishing(2), "P-88:1", 1),
                1,
                "P1 must be cut by 2026-03-03; rope on order P-88 is counted on from 2026-03-04");
    }

    @Test
    void fitsTheRun_needsNoCutLossBehindTheLastPiece() {
        holds(
                BenchRules::fitsTheRun,
                new Sketch()
                        .with(reel("K1", 4_010))
                        .with(piece("P1", 2_000), "K1", 1)
                        .with(piece("P2", 2_000), "K1", 1));
    }

    @Test
    void fitsTheRun_countsTheCutLossBetweenNeighbours() {
        breaks(
                BenchRules::fitsTheRun,
                new Sketch()
                        .with(reel("K1", 4_009))
                        .with(piece("P1", 2_000), "K1", 1)
                        .with(piece("P2", 2_000), "K1", 1),
                1);
    }

    @Test
    void clearOfFlaws_lendsEachSideOfAFlaw() {
        Sketch sketch = new Sketch().with(reel("K1", 9_000).flaw(4_000, 4_500)).with(piece("P1", 4_500));
        assertEquals("[K1 run 2]", bench(sketch).pieces().get(0).getHomes().toString());
    }

    @Test
    void clearOfFlaws_offersNoRunThatCrossesOne() {
        Sketch sketch = new Sketch().with(reel("K1", 9_000).flaw(4_000, 4_500)).with(piece("P1", 4_501));
        assertEquals(List.of(), bench(sketch).pieces().get(0).getHomes());
    }

    @Test
    void oneLot_mayComeOffSeveralReelsOfTheLot() {
        holds(BenchRules::oneLot, pair(Bond.ONE_LOT, "L1", "L1"));
    }

    @Test
    void oneLot_barsTwoLots() {
        breaks(BenchRules::oneLot, pair(Bond.ONE_LOT, "L1", "L2"), 1);
    }

    @Test
    void oneLot_takesReelsOfUnknownLotForDifferentLots() {
        breaks(BenchRules::oneLot, pair(Bond.ONE_LOT, "", ""), 1);
    }

    @Test
    void oneReel_allowsAnotherRunOfTheReel() {
        holds(
                BenchRules::oneReel,
                new Sketch()
                        .with(reel("K1", 9_000).flaw(4_000, 4_500))
                        .with(piece("P1", 2_000).set("S", Bond.ONE_REEL), "K1", 1)
                        .with(piece("P2", 2_000).set("S", Bond.ONE_REEL), "K1", 2));
    }

    @Test
    void oneReel_barsAnotherReelOfTheLot() {
        breaks(BenchRules::oneReel, pair(Bond.ONE_REEL, "L1", "L1"), 1);
    }

    @Test
    void planned_asksNothingOfAPlannedPiece() {
        holds(planned(5), new Sketch().with(reel("K1", 9_000)).with(piece("P1", 2_000), "K1", 1));
    }

    @Test
    void planned_weighsPriorityAndDueDate() {
        breaks(
                planned(1),
                new Sketch()
                        .with(reel("K1", 9_000))
                        .with(piece("P1", 2_000).priority(1).due(DAY.plusDays(7))),
                9);
    }

    @Test
    void setWhole_isContentWhenNoneIsPlanned() {
        holds(
                setWhole(5),
                new Sketch()
                        .with(reel("K1", 9_000))
                        .with(piece("P1", 2_000).set("S", Bond.ONE_LOT))
                        .with(piece("P2", 2_000).set("S", Bond.ONE_LOT)));
    }

    @Test
    void setWhole_isContentWhenAllArePlanned() {
        holds(setWhole(5), pair(Bond.ONE_LOT, "L1", "L1"));
    }

    @Test
    void setWhole_countsThePlannedPiecesOfAPartSetAsUnplanned() {
        breaks(
                setWhole(5),
                new Sketch()
                        .with(reel("K1", 9_000))
                        .with(piece("P1", 2_000).set("S", Bond.ONE_LOT).priority(3), "K1", 1)
                        .with(piece("P2", 2_000).set("S", Bond.ONE_LOT)),
                7);
    }

    @Test
    void stockValue_leavesAnUntouchedReelAlone() {
        holds(BenchRules::stockValue, new Sketch().with(reel("K1", 9_000)).with(piece("P1", 2_000)));
    }

    @Test
    void stockValue_takesThePieceTheCutLossAndWhatIsNotWorthKeeping() {
        breaks(
                BenchRules::stockValue,
                new Sketch()
                        .value(length -> new Cost(length.mm() < 1_000 ? 0 : length.mm()))
                        .with(reel("K1", 3_009))
                        .with(piece("P1", 2_000), "K1", 1),
                3_009);
    }

    @Test
    void stockValue_creditsARemnant() {
        breaks(
                BenchRules::stockValue,
                new Sketch()
                        .value(length -> new Cost(length.mm() < 1_000 ? 0 : length.mm()))
                        .with(reel("K1", 3_010))
                        .with(piece("P1", 2_000), "K1", 1),
                2_010);
    }

    @Test
    void opening_isFreeOnAPartReel() {
        holds(
                BenchRules::opening,
                new Sketch()
                        .prices(new Prices(new Cost(700), NONE, NONE, NONE, NONE, NONE))
                        .with(reel("K1", 9_000))
                        .with(piece("P1", 2_000), "K1", 1));
    }

    @Test
    void opening_isPaidOnceOnAFullReel() {
        breaks(
                BenchRules::opening,
                new Sketch()
                        .prices(new Prices(new Cost(700), new Cost(300), NONE, NONE, NONE, new Cost(250)))
                        .with(reel("K1", 9_000).full().received(DAY.minusYears(2)))
                        .with(piece("P1", 2_000), "K1", 1)
                        .with(piece("P2", 2_000), "K1", 1),
                200);
    }

    @Test
    void changing_isFreeForAReelThatStaysOnTheRack() {
        holds(
                BenchRules::changing,
                new Sketch()
                        .prices(new Prices(NONE, new Cost(300), NONE, NONE, NONE, NONE))
                        .with(reel("K1", 9_000))
                        .with(piece("P1", 2_000)));
    }

    @Test
    void changing_isPaidOnceForAReelLessWhatAgeCreditsBeyondTheOpening() {
        breaks(
                BenchRules::changing,
                new Sketch()
                        .prices(new Prices(new Cost(700), new Cost(300), NONE, NONE, NONE, new Cost(400)))
                        .with(reel("K1", 9_000).full().received(DAY.minusYears(2)))
                        .with(piece("P1", 2_000), "K1", 1)
                        .with(piece("P2", 2_000), "K1", 1),
                200);
    }

    @Test
    void handling_isFreeForTheRunsBehindTheLastCut() {
        holds(BenchRules::handling, twoFlaws().with(piece("P1", 1_000), "K1", 1));
    }

    @Test
    void handling_isPaidForEveryRunCutOffWhole() {
        breaks(BenchRules::handling, twoFlaws().with(piece("P1", 1_000), "K1", 3), 120);
    }

    @Test
    void splitOrder_isFreeOverReelsOfOneLot() {
        holds(BenchRules::splitOrder, pair(Bond.NONE, "L1", "L1"));
    }

    @Test
    void splitOrder_isFreeOverTwoRopes() {
        holds(
                BenchRules::splitOrder,
                new Sketch()
                        .prices(new Prices(NONE, NONE, NONE, new Cost(80), NONE, NONE))
                        .with(reel("K1", 9_000).lot("L1"))
                        .with(reel("K2", 9_000).lot("L2").of(OTHER_ROPE))
                        .with(piece("P1", 2_000), "K1", 1)
                        .with(ofRope("P2", OTHER_ROPE, 2_000), "K2", 1));
    }

    @Test
    void splitOrder_isPaidForEveryLotAfterTheFirst() {
        breaks(BenchRules::splitOrder, pair(Bond.NONE, "L1", "L2"), 80);
    }

    /** Two orders of two, each whole off a lot of its own. */
    @Test
    void splitOrder_isFreeForOrdersEachOffALotOfItsOwn() {
        holds(
                BenchRules::splitOrder,
                new Sketch()
                        .prices(new Prices(NONE, NONE, NONE, new Cost(80), NONE, NONE))
                        .with(reel("K1", 9_000).lot("L1"))
                        .with(reel("K2", 9_000).lot("L2"))
                        .with(piece("P1", 2_000).order("B7"), "K1", 1)
                        .with(piece("P2", 2_000).order("B7"), "K1", 1)
                        .with(piece("P3", 2_000).order("B8"), "K2", 1)
                        .with(piece("P4", 2_000).order("B8"), "K2", 1));
    }

    @Test
    void movedPiece_isFreeOnItsEarlierReel() {
        holds(BenchRules::movedPiece, moved().earlier("P1", "K1"));
    }

    @Test
    void movedPiece_isPaidOnAnotherReel() {
        breaks(BenchRules::movedPiece, moved().earlier("P1", "K2"), 90);
    }

    @Test
    void shaping_isNothingForAFullRunAndAnEmptyOne() {
        Sketch sketch =
                new Sketch().with(reel("K1", 2_000)).with(reel("K2", 2_000)).with(piece("P1", 2_000), "K1", 1);
        verifier.verifyThat(BenchRules::shaping)
                .givenSolution(new BenchLayout(sketch.problem(), 100).with(sketch.packing()))
                .penalizesBy(0);
    }

    @Test
    void shaping_isGreatestHalfWay() {
        Sketch sketch = new Sketch()
                .loss(0)
                .prices(new Prices(new Cost(1_000), NONE, NONE, NONE, NONE, NONE))
                .with(reel("K1", 4_000))
                .with(piece("P1", 2_000), "K1", 1);
        verifier.verifyThat(BenchRules::shaping)
                .givenSolution(new BenchLayout(sketch.problem(), 100).with(sketch.packing()))
                .penalizesBy(250);
    }

    @Test
    void everyRule_isAMethodAndHasTestsOnBothSides() {
        Set<String> methods = Arrays.stream(BenchRules.class.getDeclaredMethods())
                .filter(method -> method.getReturnType() == Constraint.class && method.getParameterCount() <= 2)
                .map(Method::getName)
                .collect(Collectors.toSet());
        for (Rule rule : EnumSet.allOf(Rule.class)) {
            assertTrue(methods.contains(methodOf(rule)) || rule == Rule.CLEAR_OF_FLAWS, rule + " is no method");
            methods.add(methodOf(rule));
        }
        for (String method : methods) {
            long tests = Arrays.stream(BenchRulesTest.class.getDeclaredMethods())
                    .filter(test -> test.isAnnotationPresent(Test.class))
                    .filter(test -> test.getName().startsWith(method + "_"))
                    .count();
            assertTrue(tests >= 2, method + " has " + tests + " tests");
        }
    }

    private static String methodOf(Rule rule) {
        String[] words = rule.name().toLowerCase(java.util.Locale.ROOT).split("_", -1);
        StringBuilder name = new StringBuilder(words[0]);
        for (String word : List.of(words).subList(1, words.length)) {
            name.append(Character.toUpperCase(word.charAt(0))).append(word.substring(1));
        }
        return name.toString();
    }

    private static Sketch pair(Bond bond, String firstLot, String secondLot) {
        return new Sketch()
                .prices(new Prices(NONE, NONE, NONE, new Cost(80), NONE, NONE))
                .with(reel("K1", 9_000).lot(firstLot))
                .with(reel("K2", 9_000).lot(secondLot))
                .with(piece("P1", 2_000).set("S", bond), "K1", 1)
                .with(piece("P2", 2_000).set("S", bond), "K2", 1);
    }

    private static Sketch twoFlaws() {
        return new Sketch()
                .prices(new Prices(NONE, NONE, new Cost(60), NONE, NONE, NONE))
                .with(reel("K1", 9_000).flaw(2_000, 2_100).flaw(4_000, 4_100));
    }

    private static Sketch moved() {
        return new Sketch()
                .prices(new Prices(NONE, NONE, NONE, NONE, new Cost(90), NONE))
                .with(reel("K1", 9_000))
                .with(reel("K2", 9_000))
                .with(piece("P1", 2_000), "K1", 1);
    }

    private static BiFunction<BenchRules, ConstraintFactory, Constraint> planned(int urgency) {
        return (rules, factory) -> rules.planned(factory, urgency);
    }

    private static BiFunction<BenchRules, ConstraintFactory, Constraint> setWhole(int urgency) {
        return (rules, factory) -> rules.setWhole(factory, urgency);
    }

    private static Bench bench(Sketch sketch) {
        return new BenchLayout(sketch.problem(), 0).with(sketch.packing());
    }

    private void holds(BiFunction<BenchRules, ConstraintFactory, Constraint> rule, Sketch sketch) {
        verifier.verifyThat(rule).givenSolution(bench(sketch)).penalizesBy(0);
    }

    private void breaks(BiFunction<BenchRules, ConstraintFactory, Constraint> method, Sketch sketch, long by) {
        verifier.verifyThat(method).givenSolution(bench(sketch)).penalizesBy(by);
        Verdict verdict = Verdict.on(bench(sketch));
        if (verdict.isSound()) {
            assertEquals(
                    new PlanPrice(sketch.problem()).of(sketch.packing()).millis(), verdict.softCost(), "true price");
        }
    }

    /** A rule of one piece on one reel, with the sentence that everybody is told. */
    private void bars(
            Rule rule,
            BiFunction<BenchRules, ConstraintFactory, Constraint> method,
            Sketch sketch,
            long by,
            String sentence) {
        breaks(method, sketch, by);
        Eligibility rules = new Eligibility(sketch.problem());
        List<Reason> told = bench(sketch).pieces().stream()
                .filter(PieceToCut::isPlanned)
                .flatMap(piece ->
                        rules.all(piece.piece(), piece.plannedRun().reel().reel()).stream())
                .filter(reason -> reason.rule() == rule)
                .toList();
        assertEquals(List.of(new Reason(rule, sentence)), told);
    }
}
