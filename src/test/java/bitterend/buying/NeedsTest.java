package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.strategy.FullStrategy;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What each reel of a set is needed for, where there is no time for a packing more. */
final class NeedsTest {
    private static final Effort NO_MORE = Effort.of(Duration.ofSeconds(1));

    /** The long reel alone holds the long piece; whether the short one is needed takes a packing. */
    @Test
    void pieceThatNoOtherReelHolds_isToldWithoutAPacking() {
        Purchase least = advise(Stall.pieces(90, 1, 15, 1)).best();
        Need of100 = need(least, "long");
        assertTrue(of100.known());
        assertEquals(List.of("A/1.1"), of100.without());
        assertFalse(need(least, "short").known());
    }

    /** The mate of a piece that stays without rope may stay without, too: that takes a packing. */
    @Test
    void matchedPiece_isNotToldWithoutAPacking() {
        List<Piece> pieces = new ArrayList<>(Stall.pieces(15, 1));
        Piece plain = Stall.piece("B", "1.1", 90, LocalDate.MAX);
        pieces.add(new Piece(
                plain.id(),
                plain.source(),
                plain.choices(),
                new Piece.Matching("pair", Piece.Bond.ONE_LOT),
                plain.certificate(),
                plain.ownRope(),
                Length.ofMetres(90),
                plain.ends()));
        assertFalse(need(advise(pieces).best(), "long").known());
    }

    private static Need need(Purchase purchase, String offer) {
        return purchase.lines().stream()
                .filter(line -> line.offer().id().equals(offer))
                .findFirst()
                .orElseThrow()
                .need();
    }

    /** Every packing is done, but none that can be given up is begun. */
    private static Advice advise(List<Piece> pieces) {
        Packer plain = FullStrategy.patternsAlone();
        Effort over = new Effort(
                NO_MORE.time(), NO_MORE.work(), NO_MORE.seed(), NO_MORE.threads(), () -> true, NO_MORE.progress());
        return new Buyer(
                        Stall.orders(pieces, List.of(Stall.offer("long", 100, 100), Stall.offer("short", 20, 20))),
                        (problem, effort) -> plain.pack(problem, NO_MORE),
                        over)
                .advise();
    }
}
