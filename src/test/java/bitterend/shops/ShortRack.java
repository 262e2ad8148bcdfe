package bitterend.shops;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;

import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceSketch;
import bitterend.packing.Prices;
import bitterend.packing.Sketch;
import java.util.Random;

/** Shops of one rope whose racks are too short for the work, with matched sets, flaws, lots and all classes of urgency. */
public final class ShortRack {
    private final Random random;
    private final Sketch sketch = new Sketch();
    private final int pieces;
    private long wanted;

    private ShortRack(long seed, int pieces) {
        random = new Random(seed * 7_919 + pieces);
        this.pieces = pieces;
    }

    /** From 5 to 70 pieces, some on a rack of half of what is wanted, some on one that nearly does. */
    public static PackingProblem day(long seed) {
        ShortRack rack = new ShortRack(seed, 0);
        return new ShortRack(seed, 5 + rack.random.nextInt(66)).shop(12);
    }

    /** From 3 to 7 pieces and 1 to 3 reels, so that every way can be tried. */
    public static PackingProblem tiny(long seed) {
        ShortRack rack = new ShortRack(seed, 1);
        return new ShortRack(seed, 3 + rack.random.nextInt(5)).shop(3);
    }

    private PackingProblem shop(int mostReels) {
        long longest = 2_000L + random.nextInt(18_000);
        int setsInTen = random.nextInt(7);
        int made = 0;
        for (int job = 1; made < pieces; job++) {
            boolean set = pieces - made > 1 && random.nextInt(10) < setsInTen;
            int size = set ? Math.min(pieces - made, 2 + random.nextInt(4)) : 1;
            Bond bond = random.nextInt(3) == 0 ? Bond.ONE_REEL : Bond.ONE_LOT;
            for (int i = 0; i < size; i++) {
                long mm = Math.max(200, longest / (1 + random.nextInt(6)) - random.nextInt(3) * 100L);
                PieceSketch one =
                        piece("O" + job + "/1." + (i + 1), mm).order("O" + (1 + job / (1 + random.nextInt(3))));
                hurry(one);
                sketch.with(set ? one.set("S" + job, bond) : one);
                wanted += mm;
                made++;
            }
        }
        rack(mostReels, longest);
        return sketch.prices(prices())
                .value(length -> new Cost(length.mm() < 1_000 ? 0 : 9 * length.mm()))
                .problem();
    }

    private void hurry(PieceSketch piece) {
        piece.priority(1 + random.nextInt(9));
        if (random.nextInt(4) > 0) {
            piece.due(Sketch.DAY.plusDays(random.nextInt(14) - 2));
        }
    }

    private void rack(int mostReels, long longest) {
        long there = wanted * (45 + random.nextInt(60)) / 100;
        int reels = 1 + random.nextInt(mostReels);
        for (int i = 1; i <= reels; i++) {
            long mm = Math.max(500, i == reels ? there : there * (1 + random.nextInt(3)) / (2L + reels - i));
            there -= mm;
            var next = reel("R" + i, Math.min(mm, 40 * longest)).lot("L" + random.nextInt(3));
            sketch.with(random.nextInt(5) == 0 && mm > 1_000 ? next.flaw(mm / 3, mm / 3 + 50) : next);
            if (there < 500) {
                return;
            }
        }
    }

    private Prices prices() {
        Cost each = new Cost(random.nextInt(3) * 40_000L);
        return new Prices(each, each, each, each, Cost.ZERO, Cost.ZERO);
    }
}
