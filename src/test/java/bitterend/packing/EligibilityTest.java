package bitterend.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.demand.Piece;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import bitterend.stock.Reel;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class EligibilityTest {
    @Test
    void allows_isWhatEveryRuleByItselfAllows() {
        for (int seed = 0; seed < 150; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Eligibility rules = new Eligibility(shop);
            for (Piece piece : shop.pieces()) {
                for (Reel reel : shop.reels()) {
                    assertEquals(
                            each(rules, piece, reel).allMatch(Optional::isEmpty),
                            rules.allows(piece, reel),
                            "seed " + seed + " " + piece.id() + " on " + reel.id());
                }
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
