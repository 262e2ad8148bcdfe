package bitterend.packing.check;

import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.demand.Piece.Matching;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Ratio;
import bitterend.measure.Sentence;
import bitterend.measure.UnitPrice;
import bitterend.packing.Arrival;
import bitterend.packing.CutPlan;
import bitterend.packing.Horizon;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.Prices;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.ShopCalendar;
import bitterend.packing.Unplanned;
import bitterend.shops.PlanWriter;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import bitterend.stock.RisingValue;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One day with every rule in it, and a sound plan of it, for faults to be planted in. */
final class PlantedDay {
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static final Reel.Custody KEPT = new Reel.Custody("", Reel.State.RESERVED, "B9");
    private static final Reel.Custody HELD = new Reel.Custody("", Reel.State.ON_HOLD, "");
    private static final Reel.Custody OWNED = new Reel.Custody("a customer", Reel.State.FREE, "C1");
    private static final Reel.Papers CERTIFIED =
            new Reel.Papers("works", "W-1", LocalDate.MAX, LocalDate.of(2023, 3, 2));
    private static final Reel.Papers EXPIRED = new Reel.Papers("works", "W-2", LocalDate.of(2026, 3, 1), LocalDate.MIN);

    private PlantedDay() {}

    static PackingProblem problem() {
        return new PackingProblem(
                DAY,
                Map.of("braid", rope("braid"), "laid", rope("laid")),
                pieces(),
                reels(),
                Map.of("braid", value(rope("braid")), "laid", value(rope("laid"))),
                new Prices(
                        new Cost(300_000),
                        new Cost(200_000),
                        new Cost(50_000),
                        new Cost(70_000),
                        new Cost(60_000),
                        new Cost(10_000)),
                List.of(new Pin("D1/1.1", "K2"), new Pin("F1/2.1", "K7a", 3)),
                Map.of("A4/1.1", "K1", "D1/1.1", "K2"),
                ShopCalendar.USUAL,
                Horizon.ALL,
                Map.of("P-88:1", new Arrival("P-88", DAY.plusDays(1), DAY.plusDays(2))));
    }

    /** A customer's reel of 5 m, of which 100 mm are uncertain and all the rest goes into one piece. */
    static PackingProblem allOfTheCustomersRope() {
        Reel.Contents contents = new Reel.Contents(mm(5_000), mm(100), Length.ZERO, Length.ZERO, Reel.Known.WEIGHED);
        Reel reel = new Reel("K6", "braid", "L1", contents, List.of(), CERTIFIED, OWNED, false, Reel.Where.UNKNOWN);
        PackingProblem day = problem();
        return new PackingProblem(
                DAY,
                day.ropes(),
                List.of(piece("C1/1.1", "braid", 4_900, Matching.NONE, "", true)),
                List.of(reel),
                day.values(),
                Prices.NONE,
                List.of(),
                Map.of());
    }

    static Map<String, RunId> places() {
        Map<String, RunId> places = new HashMap<>();
        places.put("A1/1.1", new RunId("K1", 1));
        places.put("A1/1.2", new RunId("K1", 1));
        places.put("A1/2.1", new RunId("K1", 2));
        places.put("A1/2.2", new RunId("K1", 2));
        places.put("A1/3.1", new RunId("K8", 1));
        places.put("A1/3.2", new RunId("K8", 1));
        places.put("A4/1.1", new RunId("K2", 1));
        places.put("B9/1.1", new RunId("K5", 1));
        places.put("C1/1.1", new RunId("K6", 1));
        places.put("D1/1.1", new RunId("K2", 1));
        places.put("F1/1.1", new RunId("K7", 1));
        places.put("F1/2.1", new RunId("K7a", 1));
        return places;
    }

    /** The sound plan. */
    static CutPlan plan() {
        return plan(places());
    }

    /** The plan with pieces taken off their runs and put on another. */
    static CutPlan with(String reel, int run, String... pieces) {
        Map<String, RunId> places = places();
        for (String piece : pieces) {
            places.put(piece, new RunId(reel, run));
        }
        return plan(places);
    }

    static CutPlan without(String piece) {
        Map<String, RunId> places = places();
        places.remove(piece);
        return plan(places);
    }

    private static CutPlan plan(Map<String, RunId> places) {
        CutPlan plan = PlanWriter.write(problem(), new Packing(places));
        return Surgery.unplanned(
                plan,
                plan.unplanned().stream()
                        .map(piece -> piece.piece().equals("E1/1.1") ? tooLong() : piece)
                        .toList());
    }

    private static Unplanned tooLong() {
        return new Unplanned(
                "E1/1.1", new Reason(Rule.FITS_THE_RUN, "it is longer than every run"), Sentence.of("a longer reel"));
    }

    private static List<Piece> pieces() {
        Matching lot = new Matching("slings", Bond.ONE_LOT);
        Matching reel = new Matching("pair", Bond.ONE_REEL);
        CutMate cut = new CutMate("B9/1.2", "braid", "L1", List.of("K5"));
        Matching begun = new Matching("berths", Bond.ONE_REEL, List.of(cut), "");
        return List.of(
                piece("A1/1.1", "braid", 6_000, Matching.NONE, "works", false),
                piece("A1/1.2", "braid", 6_000, Matching.NONE, "works", false),
                piece("A1/2.1", "braid", 4_000, lot, "", false),
                piece("A1/2.2", "braid", 4_000, lot, "", false),
                piece("A1/3.1", "braid", 3_000, reel, "", false),
                piece("A1/3.2", "braid", 3_000, reel, "", false),
                piece("A4/1.1", "braid", 5_000, Matching.NONE, "", false),
                piece("B9/1.1", "braid", 5_000, begun, "", false),
                piece("C1/1.1", "braid", 2_000, Matching.NONE, "", true),
                piece("D1/1.1", "braid", 2_000, Matching.NONE, "", false),
                piece("E1/1.1", "braid", 60_000, Matching.NONE, "", false),
                piece("F1/1.1", "laid", 3_000, Matching.NONE, "", false),
                piece("F1/2.1", "laid", 2_000, Matching.NONE, "", false));
    }

    private static List<Reel> reels() {
        Reel.Contents worn = new Reel.Contents(mm(50_000), mm(400), mm(500), mm(800), Reel.Known.METERED);
        Flaw join = new Flaw(mm(20_000), mm(20_300), mm(100), "maker's join");
        return List.of(
                new Reel(
                        "K1",
                        "braid",
                        "L1",
                        worn,
                        List.of(join),
                        CERTIFIED,
                        Reel.Custody.FREE,
                        false,
                        Reel.Where.UNKNOWN),
                reel("K2", "braid", "L2", 30_000, Reel.Papers.NONE, Reel.Custody.FREE, true),
                reel("K3", "braid", "L1", 30_000, EXPIRED, Reel.Custody.FREE, false),
                reel("K4", "braid", "L1", 30_000, CERTIFIED, HELD, false),
                reel("K5", "braid", "L1", 30_000, CERTIFIED, KEPT, false),
                reel("K6", "braid", "L1", 9_000, CERTIFIED, OWNED, false),
                reel("K7", "laid", "L5", 30_000, CERTIFIED, Reel.Custody.FREE, false),
                reel("K7a", "laid", "L5", 30_000, CERTIFIED, Reel.Custody.FREE, false),
                reel("K8", "braid", "L1", 11_039, CERTIFIED, Reel.Custody.FREE, false),
                reel("P-88:1", "braid", "", 30_000, Reel.Papers.NONE, Reel.Custody.FREE, true));
    }

    private static Reel reel(
            String id, String rope, String lot, long length, Reel.Papers papers, Reel.Custody custody, boolean full) {
        Reel.Contents contents =
                new Reel.Contents(mm(length), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED);
        return new Reel(id, rope, lot, contents, List.of(), papers, custody, full, Reel.Where.UNKNOWN);
    }

    private static Piece piece(
            String id, String rope, long cut, Matching matching, String certificate, boolean ownRope) {
        String order = id.substring(0, id.indexOf('/'));
        Piece.Source source = new Piece.Source(order, id.substring(id.indexOf('/') + 1, id.indexOf('.')), DAY, 5);
        List<Piece.RopeChoice> choices = List.of(new Piece.RopeChoice(rope, mm(cut)));
        return new Piece(id, source, choices, matching, certificate, ownRope, mm(cut), "plain, plain");
    }

    private static Rope rope(String id) {
        return new Rope(
                id,
                "12 mm " + id,
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
                new LinearMass(110_000),
                new UnitPrice(250_000),
                new Rope.Cutting(mm(20), mm(10)),
                new Rope.Worth(mm(1_000), mm(10_000)),
                mm(200_000));
    }

    private static StockValue value(Rope rope) {
        return new RisingValue(rope.price(), rope.worth(), Ratio.percent(15), new Cost(10_000));
    }

    static Length mm(long mm) {
        return new Length(mm);
    }
}
