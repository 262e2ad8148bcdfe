package bitterend.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.demand.Piece;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import bitterend.stock.Reel;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class EligibilityTest {
    @Test
    void allows_isWhatEveryRuleByItselfAllows() {
        forAllPairs((rules, piece, reel) -> assertEquals(
                each(rules, piece, reel).allMatch(Optional::isEmpty),
                rules.allows(piece, reel),
                piece.id() + " on " + reel.id()));
    }

    @Test
    void all_isEveryRuleThatBars_andAgainstTheFirst() {
        forAllPairs((rules, piece, reel) -> {
            List<Reason> every =
                    each(rules, piece, reel).flatMap(Optional::stream).toList();
            assertEquals(every, rules.all(piece, reel));
            assertEquals(every.stream().findFirst(), rules.against(piece, reel));
        });
    }

    @Test
    void piecesOfOneKind_mayComeOffTheSameReels() {
        Map<List<Object>, Boolean> known = new HashMap<>();
        forAllPairs((rules, piece, reel) -> {
            boolean before = known.computeIfAbsent(
                    List.of(rules, rules.kindOf(piece), reel.id()), key -> rules.allows(piece, reel));
            assertEquals(before, rules.allows(piece, reel));
        });
    }

    private interface Pair {
        void look(Eligibility rules, Piece piece, Reel reel);
    }

    private static void forAllPairs(Pair pair) {
        for (int seed = 0; seed < 150; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Eligibility rules = new Eligibility(shop);
            for (Piece piece : shop.pieces()) {
                shop.reels().forEach(reel -> pair.look(rules, piece, reel));
            }
        }
    }

    private static Stream<Optional<Reason>> each(Eligibility rules, Piece piece, Reel reel) {
        return Stream.of(
                rules.sameRope(piece, reel),
                rules.onHold(piece, reel),
                rules.reserved(piece, reel),
                rules.ownRope(piece, reel),
                rules.certificate(piece, reel),
                rules.useBy(piece, reel),
                rules.begunSet(piece, reel),
                rules.pinned(piece, reel),
                rules.issued(piece, reel));
    }
}
