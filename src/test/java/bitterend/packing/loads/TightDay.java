package bitterend.packing.loads;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;

import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceSketch;
import bitterend.packing.Prices;
import bitterend.packing.ReelSketch;
import bitterend.packing.Sketch;
import java.util.Random;

/** A random day so small that every plan of it can be looked at: few reels, some with a flaw, some alike, sets, lots, substitutes. */
public final class TightDay {
    private TightDay() {}

    /** Up to so many pieces. */
    public static PackingProblem of(long seed, int most) {
        Random random = new Random(seed * 7919 + 13);
        Sketch shop = new Sketch().loss(random.nextBoolean() ? 0 : 10);
        shop.prices(new Prices(
                money(random, 60),
                money(random, 30),
                money(random, 20),
                random.nextInt(4) == 0 ? Cost.ZERO : money(random, 40),
                Cost.ZERO,
                Cost.ZERO));
        long keepFrom = 100L * random.nextInt(5);
        long price = 50L + random.nextInt(100);
        shop.value(length -> new Cost(length.mm() < keepFrom ? 0 : price * length.mm()));
        addReels(shop, random);
        addPieces(shop, random, 2 + random.nextInt(most - 1));
        return shop.problem();
    }

    private static Cost money(Random random, int most) {
        return new Cost(1000L * random.nextInt(most));
    }

    private static void addReels(Sketch shop, Random random) {
        int reels = 2 + random.nextInt(2);
        long alike = 100L * (4 + random.nextInt(9));
        boolean oneLot = random.nextInt(3) == 0;
        for (int r = 1; r <= reels; r++) {
            long mm = random.nextInt(3) == 0 ? alike : 100L * (4 + random.nextInt(9));
            ReelSketch reel = reel("K" + r, mm).lot(oneLot ? "L1" : "L" + (1 + random.nextInt(2)));
            if (random.nextInt(4) == 0) {
                reel.of(Sketch.OTHER_ROPE);
            }
            if (random.nextInt(4) == 0) {
                long at = 100L * (1 + random.nextInt((int) (mm / 100) - 1));
                reel.flaw(at, Math.min(mm, at + 20));
            }
            if (random.nextInt(3) == 0) {
                reel.full();
            }
            if (random.nextInt(5) == 0) {
                reel.certificate("2.2");
            }
            shop.with(reel);
        }
    }

    private static void addPieces(Sketch shop, Random random, int pieces) {
        int made = 0;
        for (int line = 1; made < pieces; line++) {
            int quantity = Math.min(pieces - made, 1 + random.nextInt(3));
            long mm = 100L * (1 + random.nextInt(6)) - (random.nextInt(3) == 0 ? 10 : 0);
            boolean other = random.nextInt(5) == 0;
            boolean either = random.nextInt(4) == 0;
            int set = quantity > 1 ? random.nextInt(4) : 0;
            int priority = 1 + random.nextInt(9);
            int days = random.nextInt(14) - 1;
            String order = "A" + (1 + random.nextInt(2));
            for (int q = 1; q <= quantity; q++) {
                String id = order + "/" + line + "." + q;
                PieceSketch piece = other ? PieceSketch.ofRope(id, Sketch.OTHER_ROPE, mm) : piece(id, mm);
                if (either) {
                    piece.or(other ? Sketch.ROPE : Sketch.OTHER_ROPE, mm);
                }
                piece.order(order).priority(priority).due(Sketch.DAY.plusDays(days));
                if (set > 1) {
                    piece.set("S" + line, set == 2 ? Bond.ONE_LOT : Bond.ONE_REEL);
                }
                shop.with(piece);
            }
            made += quantity;
        }
    }
}
