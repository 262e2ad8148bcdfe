package bitterend.buying.steady;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Divides a week's pieces among the coils and reels of a rack, quickly: the longest first, each where it costs least by the
 * coil curve of the day; then single pieces are moved, pairs change places, and coils and reels that were begun are spared, as
 * long as that saves; and the same from some other orders of the pieces. The engines of the day find at most a little better
 * (see its test).
 */
final class WeekPacker {
    private static final int ROUNDS = 40;
    private static final int STARTS = 10;
    private static final int NOWHERE = WeekBins.NOWHERE;

    private final WeekBins bins;
    private int pieces;
    private int[] best = new int[32];
    private int[] kept = new int[32];
    private int[] turn = new int[32];

    WeekPacker(WeekBins bins) {
        this.bins = bins;
    }

    /** Divides the pieces of the week, those that come first being served first; some may find no rope. */
    void pack() {
        pieces = bins.pieces();
        if (best.length < pieces) {
            best = new int[2 * pieces];
            kept = new int[2 * pieces];
            turn = new int[2 * pieces];
        }
        Arrays.setAll(turn, i -> i);
        for (int i = 0; i < pieces; i++) {
            bins.put(i, bins.cheapest(i, NOWHERE));
        }
        improve();
        again();
    }

    /** Other orders of the pieces that are held, each tried from the start; the cheapest is kept. */
    private void again() {
        long least = bins.total();
        bins.note(kept);
        SplittableRandom dice = new SplittableRandom(pieces);
        for (int start = 0; start < STARTS && pieces > 1; start++) {
            if (started(dice)) {
                improve();
                long total = bins.total();
                if (total < least) {
                    least = total;
                    bins.note(kept);
                }
            }
        }
        bins.restore(kept);
    }

    /** Whether all that were held are held again. */
    private boolean started(SplittableRandom dice) {
        boolean allHeld = true;
        for (int i = 0; i < pieces; i++) {
            bins.take(i);
        }
        for (int n = 0; n < pieces; n++) {
            int piece = next(n, n + dice.nextInt(Math.min(pieces - n, 1 + pieces / 2)));
            if (kept[piece] != NOWHERE) {
                int to = bins.cheapest(piece, NOWHERE);
                allHeld &= to != NOWHERE;
                bins.put(piece, to);
            }
        }
        return allHeld;
    }

    /** The piece that comes next when another takes the place of the one in turn. */
    private int next(int n, int other) {
        int piece = turn[other];
        turn[other] = turn[n];
        turn[n] = piece;
        return piece;
    }

    private void improve() {
        for (int round = 0; round < ROUNDS; round++) {
            boolean moved = moved();
            boolean swapped = swapped();
            boolean spared = spared();
            if (!moved && !swapped && !spared) {
                return;
            }
        }
    }

    private boolean moved() {
        boolean moved = false;
        for (int i = 0; i < pieces; i++) {
            int at = bins.placeOf(i);
            if (at == NOWHERE) {
                continue;
            }
            int to = bins.cheapest(i, at);
            if (to != NOWHERE && bins.more(to, i) < bins.saved(i)) {
                bins.take(i);
                bins.put(i, to);
                moved = true;
            }
        }
        return moved;
    }

    private boolean swapped() {
        boolean swapped = false;
        for (int i = 0; i < pieces; i++) {
            for (int j = i + 1; j < pieces; j++) {
                swapped |= bins.swap(i, j);
            }
        }
        return swapped;
    }

    /** Each coil or reel that is used is tried without: its pieces go where they cost least. */
    private boolean spared() {
        boolean spared = false;
        for (int bin = 0; bin < bins.bins(); bin++) {
            if (bins.isUsed(bin)) {
                spared |= spare(bin);
            }
        }
        return spared;
    }

    private boolean spare(int bin) {
        long before = bins.total();
        bins.note(best);
        boolean allHeld = true;
        for (int i = 0; i < pieces; i++) {
            if (best[i] == bin) {
                bins.take(i);
            }
        }
        for (int i = 0; i < pieces && allHeld; i++) {
            if (best[i] == bin) {
                int to = bins.cheapest(i, bin);
                allHeld = to != NOWHERE;
                bins.put(i, to);
            }
        }
        if (allHeld && bins.total() < before) {
            return true;
        }
        bins.restore(best);
        return false;
    }
}
