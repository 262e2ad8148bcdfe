package bitterend.packing.search;

import bitterend.packing.model.PieceToCut;
import bitterend.packing.model.RunOfReel;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Puts one piece on another run, mostly one that is cut already. */
final class Change implements MoveKind {
    private static final int UNTOUCHED_IN = 4;

    @Override
    public @Nullable PlaceMove draw(Snapshot bench, Random random) {
        PieceToCut piece = bench.anyPiece(random);
        RunOfReel run = random.nextInt(UNTOUCHED_IN) == 0
                ? bench.anyHome(piece, random)
                : bench.anyPiece(random).getRun();
        if (run == null || run == piece.getRun() || !Snapshot.suits(piece, run)) {
            return null;
        }
        return bench.free(run) < piece.sizeOn(run) ? null : PlaceMove.of(piece, run);
    }
}
