package bitterend.packing.search;

import bitterend.packing.model.PieceToCut;
import bitterend.packing.model.RunOfReel;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Two pieces change places; one of them may come from outside the plan and send the other out. */
final class Swap implements MoveKind {
    private static final int UNPLANNED_IN = 8;

    @Override
    public @Nullable PlaceMove draw(Snapshot bench, Random random) {
        PieceToCut one = bench.anyPiece(random);
        PieceToCut other = !bench.unplanned().isEmpty() && random.nextInt(UNPLANNED_IN) == 0
                ? bench.unplanned().get(random.nextInt(bench.unplanned().size()))
                : bench.anyPiece(random);
        RunOfReel oneRun = one.getRun();
        RunOfReel otherRun = other.getRun();
        if (oneRun == otherRun || one.kind() == other.kind()) {
            return null;
        }
        if (!fits(bench, one, otherRun, other) || !fits(bench, other, oneRun, one)) {
            return null;
        }
        return new PlaceMove(new PieceToCut[] {one, other}, new @Nullable RunOfReel[] {otherRun, oneRun});
    }

    /** Whether a piece may come to a run that another one leaves. */
    private static boolean fits(Snapshot bench, PieceToCut piece, @Nullable RunOfReel run, PieceToCut leaving) {
        if (run == null) {
            return Snapshot.maySpare(piece);
        }
        return Snapshot.suits(piece, run) && piece.sizeOn(run) <= bench.free(run) + leaving.sizeOn(run);
    }
}
