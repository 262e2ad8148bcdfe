package bitterend.packing.strategy;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece.Bond;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceSketch;
import bitterend.packing.Sketch;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a packing is asked when it is offered. */
final class HardRulesTest {
    @Test
    void soundPackings_passThem() {
        for (long seed = 0; seed < 60; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.DAY);
            Packing packing = new GreedyPacker(shop).best();
            assertEquals(Optional.empty(), new HardRules(shop).brokenBy(packing), "seed " + seed);
        }
    }

    @Test
    void overfullRun_isFound() {
        assertBroken(rack().with(piece("a", 5_000), "R", 1).with(piece("b", 4_991), "R", 1), "more than it has");
        assertSound(rack().with(piece("a", 5_000), "R", 1).with(piece("b", 4_990), "R", 1));
    }

    @Test
    void whatIsNotThere_isFound() {
        assertBroken(rack().with(piece("a", 5_000), "R", 2), "not there");
        assertBroken(rack().with(piece("a", 5_000), "R9", 1), "not there");
    }

    @Test
    void pieceThatMayNotComeOffTheReel_isFound() {
        assertBroken(rack().with(piece("a", 5_000).certificate("3.1"), "R", 1), "certificate");
    }

    @Test
    void tornSet_isFound() {
        assertBroken(rack().with(set("a"), "R", 1).with(set("b"), "S", 1), "not whole in one place");
        assertBroken(rack().with(set("a"), "R", 1).with(set("b")), "not whole in one place");
        assertSound(rack().with(set("a"), "R", 1).with(set("b"), "R", 1));
        assertSound(rack().with(set("a")).with(set("b")));
    }

    private static PieceSketch set(String id) {
        return piece(id, 2_000).set("S1", Bond.ONE_LOT);
    }

    private static Sketch rack() {
        return new Sketch()
                .with(reel("R", 10_000).lot("1"))
                .with(reel("S", 10_000).lot("2"));
    }

    private static void assertBroken(Sketch day, String words) {
        Optional<String> broken = new HardRules(day.problem()).brokenBy(day.packing());
        assertTrue(broken.orElse("").contains(words), broken.toString());
    }

    private static void assertSound(Sketch day) {
        assertEquals(Optional.empty(), new HardRules(day.problem()).brokenBy(day.packing()));
    }
}
