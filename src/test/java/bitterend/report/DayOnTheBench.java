package bitterend.report;

import bitterend.catalogue.Construction;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Handling;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.demand.Assembly;
import bitterend.demand.BenchPapers;
import bitterend.demand.Demanded;
import bitterend.demand.EndWork;
import bitterend.demand.Piece;
import bitterend.finding.Finding;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Mass;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.GreedyStrategy;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import bitterend.stock.RisingValue;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A small day that shows everything a page must show: a flaw, a trim, inner wraps, doubt, own rope, too little rope. */
public final class DayOnTheBench {
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private DayOnTheBench() {}

    public static PlanView view() {
        return view("Northgate Loft");
    }

    /** The same day in a shop of another name, its first reel standing in a place of that name, too. */
    public static PlanView view(String name) {
        PackingProblem problem = problem(name.equals("Northgate Loft") ? "bay B3" : name);
        return new PlanView(
                name,
                problem,
                new DayPlanner(new GreedyStrategy()).plan(problem, Effort.of(Duration.ofSeconds(1))),
                Map.of(
                        "DB12",
                        new BeforeCut("tape", "tape tightly and cut through the tape"),
                        "W14",
                        new BeforeCut("2 seizings", "2 seizings on each side, each 14 mm wide, 28 mm apart")),
                List.of(Finding.warning(
                        "orders.csv",
                        "row 2",
                        "quantity",
                        "2 pieces with three-strand-eye, an unverified termination",
                        "splice and measure one before cutting the other 1")));
    }

    /** The same day as it was ordered: whose the pieces of line 1001/1 are, with ends that nobody has checked. */
    public static PlanView ordered() {
        PlanView day = view();
        List<Piece> pieces = day.problem().pieces().stream()
                .filter(piece -> piece.id().startsWith("1001/1."))
                .toList();
        EndWork end = new EndWork("end A", "three-strand-eye", "eye", 0, List.of(), "", false, "", List.of());
        WorkLine line = new WorkLine(
                new Assembly.Ordered(pieces.get(0).source(), "ketch Brambling", "", 2, 1, "jib sheets, a pair"),
                new Demanded(pieces, List.of(), List.of(end), BenchPapers.NONE, List.of(), List.of()));
        return new PlanView(
                day.shop(), day.problem(), day.plan(), day.beforeCut(), day.notes(), List.of(line), PlanMark.NONE);
    }

    /** A day of one reel with two flaws: a coil from before the first is kept, and what lies behind the cut has the second. */
    public static PlanView withCoil() {
        Rope braid = rope("DB12", "Polyester double braid 12 mm", Kinds.DOUBLE_BRAID, Kinds.POLYESTER, 12, 10);
        Reel reel = new Reel(
                "R-1",
                "DB12",
                "P22-118",
                new Reel.Contents(Length.ofMetres(20), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(
                        new Flaw(new Length(4_000), new Length(4_200), Length.ZERO, "join"),
                        new Flaw(new Length(12_200), new Length(12_300), Length.ZERO, "cut yarn")),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                false,
                Reel.Where.UNKNOWN);
        return view(braid, List.of(piece("1001/1.1", "DB12", 6_000, "plain / plain")), List.of(reel));
    }

    /** A matched pair on two reels of one lot, of which each holds one. */
    public static PlanView withSet() {
        Rope braid = rope("DB12", "Polyester double braid 12 mm", Kinds.DOUBLE_BRAID, Kinds.POLYESTER, 12, 10);
        List<Piece> pair = List.of(paired("1001/1.1"), paired("1001/1.2"));
        return view(braid, pair, List.of(shortReel("R-1", "P22-118"), shortReel("R-2", "P22-118")));
    }

    /** Two pieces of one order, each off a reel of another lot. */
    public static PlanView withSplitOrder() {
        Rope braid = rope("DB12", "Polyester double braid 12 mm", Kinds.DOUBLE_BRAID, Kinds.POLYESTER, 12, 10);
        List<Piece> pieces = List.of(
                piece("1001/1.1", "DB12", 16_000, "plain / plain"), piece("1001/1.2", "DB12", 16_000, "plain / plain"));
        return view(braid, pieces, List.of(shortReel("R-1", "P22-118"), shortReel("R-2", "P22-119")));
    }

    /** One reel that may be 3 m shorter: what is left of it for certain is too short to keep, what is left by its label is not. */
    static PlanView withUncertainRest() {
        Rope braid = rope("DB12", "Polyester double braid 12 mm", Kinds.DOUBLE_BRAID, Kinds.POLYESTER, 12, 10);
        Reel reel = new Reel(
                "R-1",
                "DB12",
                "P22-118",
                new Reel.Contents(new Length(20_000), new Length(3_000), Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                false,
                Reel.Where.UNKNOWN);
        return view(braid, List.of(piece("1001/1.1", "DB12", 16_000, "plain / plain")), List.of(reel));
    }

    /** One piece of the first priority, which is not cut today. */
    static PlanView urgent() {
        Rope braid = rope("DB12", "Polyester double braid 12 mm", Kinds.DOUBLE_BRAID, Kinds.POLYESTER, 12, 10);
        Piece piece = piece("1001/1.1", "DB12", 16_000, "plain / plain");
        Piece.Source source = new Piece.Source("1001", "1", piece.source().due(), 1);
        Piece first = new Piece(
                piece.pieceId(), source, piece.choices(), piece.matching(), "", false, piece.finished(), piece.ends());
        return view(braid, List.of(first), List.of(shortReel("R-1", "P22-118")));
    }

    private static Piece paired(String id) {
        Piece piece = piece(id, "DB12", 16_000, "plain / plain");
        return new Piece(
                piece.pieceId(),
                piece.source(),
                piece.choices(),
                new Piece.Matching("jib sheets", Piece.Bond.ONE_LOT),
                "",
                false,
                piece.finished(),
                piece.ends());
    }

    private static Reel shortReel(String id, String lot) {
        return new Reel(
                id,
                "DB12",
                lot,
                new Reel.Contents(new Length(18_000), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                false,
                Reel.Where.UNKNOWN);
    }

    private static PlanView view(Rope braid, List<Piece> pieces, List<Reel> rack) {
        PackingProblem problem = new PackingProblem(
                DAY,
                Map.of("DB12", braid),
                pieces,
                rack,
                Map.of("DB12", value(braid)),
                new Prices(
                        new Cost(200_000), new Cost(80_000), new Cost(50_000), new Cost(90_000), Cost.ZERO, Cost.ZERO),
                List.of(),
                Map.of());
        return new PlanView(
                "Northgate Loft",
                problem,
                new DayPlanner(new GreedyStrategy()).plan(problem, Effort.of(Duration.ofSeconds(1))),
                Map.of(),
                List.of());
    }

    /** A day of many reels, each good for one piece, of long pieces that no reel holds, and of lines that have errors. */
    static PlanView crowded(int reels, int undone, int leftOut) {
        Rope braid = rope("DB12", "Polyester double braid 12 mm", Kinds.DOUBLE_BRAID, Kinds.POLYESTER, 12, 10);
        List<Piece> pieces = new ArrayList<>();
        List<Reel> rack = new ArrayList<>();
        for (int i = 1; i <= reels; i++) {
            pieces.add(piece("20" + i + "/1.1", "DB12", 17_000 + 7L * i, DAY.plusDays((i * 7L) % 23), "plain / plain"));
            rack.add(new Reel(
                    "R-" + i,
                    "DB12",
                    "lot " + i,
                    new Reel.Contents(new Length(18_000), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                    List.of(),
                    Reel.Papers.NONE,
                    Reel.Custody.FREE,
                    false,
                    new Reel.Where("bay " + i % 5, new Mass(i % 2 == 0 ? 40_000 : 9_000), Reel.Draw.OUTSIDE)));
        }
        for (int i = 1; i <= undone; i++) {
            pieces.add(piece("30" + i + "/1.1", "DB12", 50_000 + 100L * i, DAY, "plain / plain"));
        }
        PackingProblem problem = new PackingProblem(
                DAY,
                Map.of("DB12", braid),
                pieces,
                rack,
                Map.of("DB12", value(braid)),
                new Prices(new Cost(200_000), new Cost(80_000), new Cost(50_000), Cost.ZERO, Cost.ZERO, Cost.ZERO),
                List.of(),
                Map.of());
        return new PlanView(
                "Northgate Loft",
                problem,
                new DayPlanner(new GreedyStrategy()).plan(problem, Effort.of(Duration.ofSeconds(1))),
                Map.of("DB12", new BeforeCut("", "", Ratio.ONE, Handling.of(new Mass(23_000)), false, List.of())),
                IntStream.range(0, leftOut)
                        .mapToObj(i -> Finding.error("orders.csv", "row " + (i + 2), "length", "9", "a length " + i)
                                .leavingOut())
                        .toList());
    }

    private static PackingProblem problem(String place) {
        Rope braid = rope("DB12", "Polyester double braid 12 mm", Kinds.DOUBLE_BRAID, Kinds.POLYESTER, 12, 10);
        Rope wire = rope("W14", "Galvanised wire 14 mm", Kinds.WIRE, Kinds.STEEL, 14, 5);
        return new PackingProblem(
                DAY,
                Map.of("DB12", braid, "W14", wire),
                List.of(
                        piece("1001/1.1", "DB12", 12_340, "eye 300 mm / whipped end"),
                        piece("1001/1.2", "DB12", 12_340, "eye 300 mm / whipped end"),
                        piece("1001/2.1", "DB12", 31_000, "eye on thimble T12 / eye on thimble T12"),
                        piece("1002/1.1", "W14", 9_910, "fork-14 / fork-14"),
                        piece("1003/1.1", "DB12", 75_000, "plain / plain")),
                List.of(flawedReel(place), wireReel()),
                Map.of("DB12", value(braid), "W14", value(wire)),
                new Prices(new Cost(200_000), new Cost(80_000), new Cost(50_000), Cost.ZERO, Cost.ZERO, Cost.ZERO),
                List.of(),
                Map.of());
    }

    private static Rope rope(String id, String name, Construction construction, Fibre fibre, int mm, int loss) {
        return new Rope(
                id,
                name,
                new RopeIdentity(
                        construction, fibre, "", "", Diameter.ofMillimetres(mm), Lay.NONE, "", "white", "blue"),
                new LinearMass(110_000),
                new UnitPrice(245_000),
                new Rope.Cutting(new Length(loss), new Length(10)),
                new Rope.Worth(Length.ofMetres(3), Length.ofMetres(40)),
                Length.ofMetres(200));
    }

    private static RisingValue value(Rope rope) {
        return new RisingValue(rope.price(), rope.worth(), Ratio.percent(15), Cost.ZERO);
    }

    private static Piece piece(String id, String rope, long mm, String ends) {
        return piece(id, rope, mm, DAY.plusDays(3), ends);
    }

    private static Piece piece(String id, String rope, long mm, LocalDate due, String ends) {
        String order = id.substring(0, id.indexOf('/'));
        String line = id.substring(id.indexOf('/') + 1, id.indexOf('.'));
        return new Piece(
                id,
                new Piece.Source(order, line, due, 5),
                List.of(new Piece.RopeChoice(rope, new Length(mm))),
                Piece.Matching.NONE,
                "",
                false,
                new Length(mm - 1000),
                ends);
    }

    private static Reel flawedReel(String place) {
        return new Reel(
                "R-104",
                "DB12",
                "P22-118",
                new Reel.Contents(
                        Length.ofMetres(120), new Length(800), new Length(600), new Length(2_000), Reel.Known.COUNTED),
                List.of(new Flaw(new Length(33_000), new Length(33_200), new Length(100), "maker's join")),
                new Reel.Papers("3.1", "4471", LocalDate.of(2031, 1, 31), LocalDate.of(2026, 1, 5)),
                Reel.Custody.FREE,
                false,
                new Reel.Where(place, new Mass(15_400), Reel.Draw.OUTSIDE));
    }

    private static Reel wireReel() {
        return new Reel(
                "R-207",
                "W14",
                "",
                new Reel.Contents(new Length(11_000), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                false,
                Reel.Where.UNKNOWN);
    }
}
