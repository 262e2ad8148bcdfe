package bitterend.packing.search;

import bitterend.packing.Undone;
import bitterend.packing.model.PieceToCut;
import bitterend.packing.model.RunOfReel;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** One piece changes places with two of another run. */
final class OneForTwo implements MoveKind {
    @Override
    public @Nullable PlaceMove draw(Snapshot bench, Random random) {
        PieceToCut one = bench.anyPiece(random);
        RunOfReel oneRun = one.getRun();
        RunOfReel twoRun = bench.anyPiece(random).getRun();
        if (twoRun == null || twoRun == oneRun || bench.count(twoRun) < 2 || !Snapshot.suits(one, twoRun)) {
            return null;
        }
        int first = random.nextInt(bench.count(twoRun));
        int second = (first + 1 + random.nextInt(bench.count(twoRun) - 1)) % bench.count(twoRun);
        PieceToCut a = bench.pieceOn(twoRun, first);
        PieceToCut b = bench.pieceOn(twoRun, second);
        if (one.sizeOn(twoRun) > bench.free(twoRun) + a.sizeOn(twoRun) + b.sizeOn(twoRun)
                || !twoFit(bench, a, b, oneRun, one)) {
            return null;
        }
        return new PlaceMove(new PieceToCut[] {one, a, b}, new @Nullable RunOfReel[] {twoRun, oneRun, oneRun});
    }

    private static Undone leaves(PieceToCut piece) {
        return Undone.of(piece.urgency(), piece.weight());
    }

    private static boolean twoFit(
            Snapshot bench, PieceToCut a, PieceToCut b, @Nullable RunOfReel run, PieceToCut leaving) {
        if (run == null) {
            return Snapshot.maySpare(a)
                    && Snapshot.maySpare(b)
                    && !leaves(leaving).isLessThan(leaves(a).plus(leaves(b)));
        }
        return Snapshot.suits(a, run)
                && Snapshot.suits(b, run)
                && a.sizeOn(run) + b.sizeOn(run) <= bench.free(run) + leaving.sizeOn(run);
    }
}
