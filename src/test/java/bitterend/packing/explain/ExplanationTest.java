package bitterend.packing.explain;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Prices;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.Sketch;
import bitterend.packing.explain.PieceAnswer.Elsewhere;
import bitterend.packing.explain.ReelAnswer.Charge;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class ExplanationTest {
    private static final Cost NONE = Cost.ZERO;

    @Test
    void piece_isToldTheNextCheapestPlaceAndItsPrice() {
        PieceAnswer answer = ask(
                "P1",
                new Sketch()
                        .prices(new Prices(new Cost(500), NONE, NONE, NONE, NONE, NONE))
                        .with(reel("K1", 9_000))
                        .with(reel("K2", 9_000).full())
                        .with(piece("P1", 2_000), "K1", 1));
        assertEquals(
                List.of(new Reason(
                        Rule.STOCK_VALUE,
                        "K1 run 1 is the cheapest place for it with all else as planned; the next is K2 run 1")),
                answer.why());
        assertEquals(List.of(new Elsewhere(new RunId("K2", 1), List.of(), new Cost(500))), answer.elsewhere());
    }

    @Test
    void piece_isToldEveryRuleThatBarsARun() {
        PieceAnswer answer = ask(
                "P1",
                new Sketch()
                        .with(reel("K1", 9_000).certificate("2.2"))
                        .with(reel("K2", 1_000).onHold())
                        .with(piece("P1", 2_000).certificate("2.2"), "K1", 1));
        assertEquals(
                List.of("no other run is open to P1 with all else as planned"),
                answer.why().stream().map(Reason::sentence).map(Sentence::exact).toList());
        assertEquals(
                List.of(Rule.ON_HOLD, Rule.CERTIFICATE, Rule.FITS_THE_RUN),
                answer.elsewhere().get(0).bars().stream().map(Reason::rule).toList());
    }

    @Test
    void piece_ofASetIsToldThatItStaysWithIt() {
        PieceAnswer answer = ask(
                "P1",
                new Sketch()
                        .with(reel("K1", 9_000).lot("L1"))
                        .with(reel("K2", 9_000).lot("L2"))
                        .with(piece("P1", 2_000).set("S", Bond.ONE_LOT), "K1", 1)
                        .with(piece("P2", 2_000).set("S", Bond.ONE_LOT), "K1", 1));
        assertEquals(
                List.of(new Reason(Rule.ONE_LOT, "set S comes off lot L1; P1 cannot leave it alone")),
                answer.elsewhere().get(0).bars());
    }

    @Test
    void set_isOfferedNoPlaceThatCannotTakeAllOfIt() {
        PieceAnswer answer = ask(
                "P1",
                new Sketch()
                        .with(reel("K1", 3_000).lot("L1"))
                        .with(reel("K2", 9_000).lot("L2").onHold())
                        .with(piece("P1", 2_000).set("S", Bond.ONE_LOT))
                        .with(piece("P2", 2_000).set("S", Bond.ONE_LOT)));
        assertTrue(answer.elsewhere().stream().noneMatch(Elsewhere::isOpen));
        assertEquals(
                List.of(
                        "set S: 2 pieces, 4.000 m in all, to come off one lot",
                        "no room for all that is left of set S on lot L1 beside the other work",
                        "K2 is on hold"),
                answer.why().stream().map(Reason::sentence).map(Sentence::exact).toList());
        assertEquals(
                List.of(
                        "K2 (lot L2) would do for the set if this were settled: K2 is on hold",
                        "receive at least 4.010 m of white in one length, for set S (2 pieces)"),
                answer.help().stream()
                        .map(Reason::sentence)
                        .map(Sentence::exact)
                        .toList());
    }

    @Test
    void set_liesOnSeveralReelsOfItsLot() {
        PieceAnswer answer = ask(
                "P1",
                new Sketch()
                        .with(reel("K1", 3_000).lot("L1"))
                        .with(reel("K2", 2_000).lot("L1"))
                        .with(piece("P1", 2_000).set("S", Bond.ONE_LOT))
                        .with(piece("P2", 2_000).set("S", Bond.ONE_LOT)));
        assertEquals(2, answer.elsewhere().stream().filter(Elsewhere::isOpen).count());
    }

    @Test
    void begunSet_isToldWhatItIsBoundTo_andNeverOfferedOtherRope() {
        Sketch sketch = new Sketch()
                .with(reel("K2", 9_000).lot("L2"))
                .with(reel("K3", 9_000).lot("L1").onHold())
                .with(reel("B-7:1", 50_000).lot(""))
                .coming("B-7:1", Sketch.DAY.plusDays(1))
                .with(piece("P2", 2_000).begun("S", Bond.ONE_LOT, "P1", "L1", "K1"));
        PieceAnswer answer =
                new Explanation(sketch.problem(), sketch.packing()).piece("P2").orElseThrow();
        assertTrue(answer.elsewhere().stream().noneMatch(Elsewhere::isOpen));
        assertEquals(
                List.of(
                        "set S: 1 piece is cut, off lot L1; 1 piece, 2.000 m in all, is left and must match",
                        "set S is begun: P1 is cut off lot L1; K2 is not of that lot",
                        "K3 is on hold",
                        "set S is begun: P1 is cut off lot L1; B-7:1 is not of that lot"),
                answer.why().stream().map(Reason::sentence).map(Sentence::exact).toList());
        assertEquals(
                List.of(
                        "K3 (lot L1) would do for the set if this were settled: K3 is on hold",
                        "else a person decides: the set is released (orders release) and its rest comes off"
                                + " other rope, or all of it is made again (orders again)"),
                answer.help().stream()
                        .map(Reason::sentence)
                        .map(Sentence::exact)
                        .toList());
    }

    @Test
    void reelOnOrder_isNamedForASetThatItTakesWhole() {
        Sketch sketch = new Sketch()
                .with(reel("B-7:1", 4_010).lot(""))
                .with(reel("B-8:1", 4_009).lot(""))
                .coming("B-7:1", Sketch.DAY.plusDays(2))
                .coming("B-8:1", Sketch.DAY.plusDays(2))
                .with(piece("P1", 2_000).set("S", Bond.ONE_REEL))
                .with(piece("P2", 2_000).set("S", Bond.ONE_REEL));
        Explanation explanation = new Explanation(sketch.problem(), sketch.packing());
        assertEquals(
                List.of(
                        "order B-7 would do for the set: 4.010 m of white, expected 2026-03-04",
                        "receive at least 4.010 m of white in one length, for set S (2 pieces)"),
                explanation.piece("P1").orElseThrow().help().stream()
                        .map(Reason::sentence)
                        .map(Sentence::exact)
                        .toList());
    }

    @Test
    void reelOnOrderThatThePlanUsesUp_isNamedAsNoHelp() {
        Sketch sketch = new Sketch()
                .with(reel("B-7:1", 5_000).lot(""))
                .coming("B-7:1", Sketch.DAY.plusDays(2))
                .with(piece("P1", 2_000))
                .with(piece("P2", 2_000).due(Sketch.DAY.plusDays(9)), "B-7:1", 1);
        assertEquals(
                List.of(
                        "order B-7 would do for P1: 5.000 m of white, of which the plan leaves 2.990 m, expected 2026-03-04"),
                told(new Explanation(sketch.problem(), sketch.packing()).onOrder("P1")));
        Sketch full = sketch.with(piece("P3", 2_000).due(Sketch.DAY.plusDays(9)), "B-7:1", 1);
        assertEquals(List.of(), told(new Explanation(full.problem(), full.packing()).onOrder("P1")));
    }

    private static List<String> told(List<Reason> reasons) {
        return reasons.stream().map(Reason::sentence).map(Sentence::exact).toList();
    }

    @Test
    void unplannedPiece_isToldWhatStandsInItsWayAndWhatWouldHelp() {
        PieceAnswer answer = ask(
                "P1",
                new Sketch()
                        .with(reel("K1", 5_000))
                        .with(reel("K2", 5_000).onHold())
                        .with(piece("P1", 4_000))
                        .with(piece("P2", 3_000).order("2"), "K1", 1));
        assertFalse(answer.isPlanned());
        assertEquals(
                List.of("P1 takes 4.000 m; beside the other work K1 run 1 has 1.990 m", "K2 is on hold"),
                answer.why().stream().map(Reason::sentence).map(Sentence::exact).toList());
        assertEquals(
                List.of(
                        "K2 run 1 would take it if this were settled: K2 is on hold",
                        "on K1 run 1 there would be room if P2 waited",
                        "receive at least 4.000 m of white in one length"),
                answer.help().stream()
                        .map(Reason::sentence)
                        .map(Sentence::exact)
                        .toList());
    }

    /** A set waits whole, and who is more urgent is marked; nobody is advised to settle that rope belongs to somebody else. */
    @Test
    void unplannedPiece_isToldWhoMightWait_andNothingThatNobodyCanSettle() {
        PieceAnswer answer = ask(
                "P1",
                new Sketch()
                        .with(reel("K1", 9_000).lot("L1"))
                        .with(reel("K2", 5_000).lot("L1"))
                        .with(reel("K3", 5_000).ownedBy("Heron", "55"))
                        .with(piece("P1", 4_000).priority(9).due(Sketch.DAY.plusDays(30)))
                        .with(piece("P2", 3_000).order("7").priority(1).set("S", Bond.ONE_LOT), "K1", 1)
                        .with(piece("P3", 4_000).order("7").set("S", Bond.ONE_LOT), "K2", 1)
                        .with(piece("P4", 4_000).order("8").priority(1), "K1", 1));
        assertEquals(
                List.of(
                        "on K1 run 1 there would be room if P4 (more urgent) waited",
                        "on K2 run 1 there would be room if P2 (more urgent), P3 (more urgent) waited",
                        "receive at least 4.000 m of white in one length"),
                told(answer.help()));
    }

    @Test
    void ropeThatIsProbablyThere_isToBeCountedBeforeAnyIsReceived() {
        String count = "5.000 m is probably left on K1 beside the other work: count it first (stock count)";
        Sketch one = new Sketch().with(reel("K1", 5_000).uncertain(1_000)).with(piece("P1", 4_500));
        assertEquals(
                List.of(count, "receive at least 4.500 m of white in one length"),
                told(ask("P1", one).help()));
        Sketch set = new Sketch()
                .with(reel("K1", 5_000).uncertain(1_000))
                .with(piece("P1", 2_000).set("S", Bond.ONE_REEL))
                .with(piece("P2", 2_000).set("S", Bond.ONE_REEL));
        assertEquals(
                List.of(count, "receive at least 4.010 m of white in one length, for set S (2 pieces)"),
                told(ask("P1", set).help()));
    }

    @Test
    void unplannedPiece_isToldNothingOfOtherRope() {
        PieceAnswer answer = ask(
                "P1",
                new Sketch()
                        .with(reel("K1", 3_000))
                        .with(reel("K2", 5_000).of("navy").onHold())
                        .with(piece("P1", 4_000)));
        assertEquals(1, answer.why().size(), answer.why()::toString);
        assertTrue(answer.why().get(0).sentence().exact().contains("K1"), answer.why()::toString);
    }

    @Test
    void unplannedPiece_isToldWhenThereIsNoSuchRope() {
        PieceAnswer answer =
                ask("P1", new Sketch().with(reel("K1", 5_000).of("navy")).with(piece("P1", 4_000)));
        assertEquals(List.of(new Reason(Rule.SAME_ROPE, "no reel of white is in stock")), answer.why());
    }

    @Test
    void reel_isChargedRuleByRule() {
        Sketch sketch = new Sketch()
                .prices(new Prices(new Cost(700), new Cost(300), new Cost(60), NONE, NONE, NONE))
                .with(reel("K1", 9_000).full().flaw(2_000, 2_100))
                .with(piece("P1", 1_000), "K1", 2);
        ReelAnswer answer =
                new Explanation(sketch.problem(), sketch.packing()).reel("K1").orElseThrow();
        assertEquals(
                List.of(
                        new Charge(new Reason(Rule.OPENING, "K1 is a full reel and is opened"), new Cost(700)),
                        new Charge(new Reason(Rule.CHANGING, "K1 is fetched and put back"), new Cost(300)),
                        new Charge(new Reason(Rule.HANDLING, "K1 run 1 is cut off whole and put aside"), new Cost(60)),
                        new Charge(
                                new Reason(
                                        Rule.STOCK_VALUE,
                                        Sentence.of(
                                                "of 6.900 m on K1 run 2 5.890 m is left",
                                                List.of(new Length(6_900), new Length(5_890)))),
                                new Cost(1_010))),
                answer.charges());
        assertEquals(new Cost(2_070), answer.cost());
    }

    @Test
    void reel_saysWhyNothingComesOffIt() {
        Sketch sketch = new Sketch()
                .with(reel("K1", 9_000))
                .with(reel("K2", 9_000))
                .with(reel("K3", 9_000).onHold())
                .with(piece("P1", 1_000), "K1", 1);
        Explanation explanation = new Explanation(sketch.problem(), sketch.packing());
        assertEquals(
                "1 piece could come off it and come off other reels",
                explanation
                        .reel("K2")
                        .orElseThrow()
                        .untouched()
                        .get(0)
                        .sentence()
                        .exact());
        assertEquals(
                "K3 is on hold",
                explanation
                        .reel("K3")
                        .orElseThrow()
                        .untouched()
                        .get(0)
                        .sentence()
                        .exact());
        assertTrue(explanation.reel("K9").isEmpty());
    }

    @Test
    void answers_agreeWithTheTruePriceOnRandomShops() {
        for (long seed = 0; seed < 60; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Packing packing = new GreedyPacker(shop).best();
            PlanPrice price = new PlanPrice(shop);
            Explanation explanation = new Explanation(shop, packing);
            Cost draws = shop.reels().stream()
                    .map(reel -> explanation.reel(reel.id()).orElseThrow().cost())
                    .reduce(Cost.ZERO, Cost::plus);
            assertEquals(price.of(packing), draws.plus(price.acrossReels(packing)), "seed " + seed);
            for (bitterend.demand.Piece piece : shop.pieces()) {
                PieceAnswer answer = explanation.piece(piece.id()).orElseThrow();
                answer.elsewhere().stream().filter(Elsewhere::isOpen).forEach(open -> {
                    Map<String, RunId> places = new HashMap<>(packing.places());
                    places.put(piece.id(), open.run());
                    assertEquals(
                            price.of(new Packing(places)), price.of(packing).plus(open.change()));
                });
                assertFalse(answer.why().isEmpty());
                assertEquals(answer.isPlanned(), answer.help().isEmpty());
            }
        }
    }

    private static PieceAnswer ask(String piece, Sketch sketch) {
        return new Explanation(sketch.problem(), sketch.packing()).piece(piece).orElseThrow();
    }
}
