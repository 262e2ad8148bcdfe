package bitterend.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

    /** What a kind leaves out decides nothing: a piece with all of that taken from another comes off the same reels. */
    @Test
    void whatAKindLeavesOut_decidesNothing() {
        int looked = 0;
        for (int seed = 0; seed < 150; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Eligibility rules = new Eligibility(shop);
            for (Piece piece : shop.pieces()) {
                for (Piece other : shop.pieces()) {
                    Piece mixed = mixed(piece, other);
                    if (rules.kindOf(mixed).equals(rules.kindOf(piece))) {
                        looked++;
                        shop.reels()
                                .forEach(reel -> assertEquals(rules.allows(piece, reel), rules.allows(mixed, reel)));
                    }
                }
            }
        }
        assertTrue(looked > 1000, looked + " pairs");
    }

    private static Piece mixed(Piece piece, Piece other) {
        return new Piece(
                piece.pieceId(),
                other.source(),
                piece.choices(),
                // a set that was begun is one set, however its pieces are asked for
                piece.matching().begun().isEmpty()
                        ? new Piece.Matching(
                                other.matching().set(),
                                other.matching().bond(),
                                List.of(),
                                other.matching().released())
                        : piece.matching(),
                piece.certificate(),
                piece.ownRope(),
                other.finished(),
                other.ends());
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
                rules.issued(piece, reel),
                rules.comesInTime(piece, reel));
    }
}
