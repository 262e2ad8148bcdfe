package bitterend.bench;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.stock.Reel;
import bitterend.stock.RisingValue;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * One rope over many days: pieces come in every morning, what is left of the reels goes back on the rack, and a new reel
 * is bought whenever a plan opens one. The same seed brings the same pieces whoever plans them.
 */
final class RollingStock {
    private static final LocalDate FIRST_DAY = LocalDate.of(2026, 3, 2);
    private static final Length REEL = Length.ofMetres(200);
    private static final UnitPrice PRICE = new UnitPrice(260_000);
    private static final int NEW_REELS_AT_HAND = 12;

    private final SplittableRandom random;
    private final Rope rope = rope();
    private final StockValue value;
    private final Prices prices;
    private List<Reel> rack = new ArrayList<>();
    private int day;
    private int names;
    private int bought;
    private Length scrap = Length.ZERO;

    /**
     * @param seed of the pieces
     * @param openingCm what opening a full reel costs, in hundredths of a metre of this rope
     */
    RollingStock(long seed, int openingCm) {
        random = new SplittableRandom(seed);
        Cost coil = new Cost(30_000);
        value = new RisingValue(PRICE, rope.worth(), Ratio.percent(15), coil);
        Cost opening = PRICE.of(new Length(openingCm * 10L));
        prices = new Prices(opening, new Cost(50_000), new Cost(50_000), Cost.ZERO, Cost.ZERO, new Cost(10_000));
    }

    /** The next morning: 10 to 24 pieces, the rack, and new reels that cost their opening when touched. */
    PackingProblem morning() {
        day++;
        List<Piece> pieces = new ArrayList<>();
        int lines = 4 + random.nextInt(4);
        for (int line = 1; line <= lines; line++) {
            long mm = (15L + random.nextInt(1 + random.nextInt(386))) * 100 + random.nextInt(10) * 10L;
            int quantity = 1 + random.nextInt(4);
            for (int i = 1; i <= quantity; i++) {
                pieces.add(piece("D" + day, line, i, mm));
            }
        }
        List<Reel> reels = new ArrayList<>(rack);
        for (int i = 1; i <= NEW_REELS_AT_HAND; i++) {
            reels.add(reel("N" + day + "-" + i, REEL, true));
        }
        return new PackingProblem(
                today(), Map.of("W", rope), pieces, reels, Map.of("W", value), prices, List.of(), Map.of());
    }

    /** Cuts what was planned. */
    void evening(PackingProblem problem, CutPlan plan) {
        Map<String, ReelDraw> draws = new java.util.HashMap<>();
        plan.draws().forEach(draw -> draws.put(draw.reel(), draw));
        List<Reel> next = new ArrayList<>();
        for (Reel reel : problem.reels()) {
            ReelDraw draw = draws.get(reel.id());
            if (draw == null) {
                if (!reel.full()) {
                    next.add(reel);
                }
                continue;
            }
            bought += reel.full() ? 1 : 0;
            if (draw.leftOnReel().isPositive()) {
                next.add(reel("C" + ++names, draw.leftOnReel(), false));
            }
            for (RunDraw run : draw.runs()) {
                if (run.rest() == RunDraw.Rest.REMNANT) {
                    next.add(reel("C" + ++names, run.left(), false));
                }
            }
        }
        scrap = scrap.plus(plan.book().scrap());
        rack = next;
    }

    int bought() {
        return bought;
    }

    Length scrap() {
        return scrap;
    }

    int coils() {
        return rack.size();
    }

    /** What was paid for reels less what the rack is worth in the end. */
    Cost cost() {
        Cost paid = PRICE.of(REEL).times(bought);
        return rack.stream().map(reel -> value.of(reel.length())).reduce(paid, Cost::minus);
    }

    private LocalDate today() {
        return FIRST_DAY.plusDays(day);
    }

    private Piece piece(String order, int line, int number, long mm) {
        return new Piece(
                order + "/" + line + "." + number,
                new Piece.Source(order, "" + line, today().plusDays(3), 5),
                List.of(new Piece.RopeChoice("W", new Length(mm))),
                Piece.Matching.NONE,
                "",
                false,
                new Length(mm),
                "plain, plain");
    }

    private Reel reel(String id, Length length, boolean full) {
        return new Reel(
                id,
                "W",
                id,
                new Reel.Contents(length, Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                new Reel.Papers("", "", LocalDate.MAX, today()),
                Reel.Custody.FREE,
                full,
                Reel.Where.UNKNOWN);
    }

    private static Rope rope() {
        return new Rope(
                "W",
                "12 mm double braid, white",
                new RopeIdentity(
                        Kinds.DOUBLE_BRAID,
                        Kinds.POLYESTER,
                        "",
                        "",
                        Diameter.ofMillimetres(12),
                        Lay.NONE,
                        "",
                        "white",
                        ""),
                new LinearMass(100_000),
                PRICE,
                new Rope.Cutting(new Length(10), new Length(10)),
                new Rope.Worth(Length.ofMetres(2), Length.ofMetres(25)),
                REEL);
    }
}
