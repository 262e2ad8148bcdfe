package bitterend.bench;

import bitterend.buying.RackWorth;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.demand.Piece.Matching;
import bitterend.exchange.RulePrice;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import bitterend.stock.RisingValue;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.PastCuts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * A day of one rope and its substitute in a loft that has been at work for a while: a rack of part reels and some full
 * ones, orders of a few equal pieces, now and then a matched set, a certificate, a flaw, a reel that is kept for an order.
 * Enough rope for all but sets and certificates that ask too much. The same seed and kind give the same day.
 */
public final class RealDay {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final long METRE = 1_000;
    private static final Cost MINUTE = new Cost(70_000);
    private static final String WHITE = "white-12";
    private static final String NAVY = "navy-12";
    /** A rack has only so many places for coils: what large days want besides comes off full reels. */
    private static final int PART_REELS = 80;

    private static final int WEEKS_PAST = 104;
    /** Up to so many different lengths lie on a grid of 10 mm; more need one of 1 mm. */
    private static final int LENGTHS_ON_THE_GRID = 1_000;

    private final SplittableRandom random;
    private final DayKind kind;
    private final List<Product> products = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Reel> reels = new ArrayList<>();

    private RealDay(long seed, DayKind kind) {
        random = new SplittableRandom(seed);
        this.kind = kind;
    }

    /** What a line of an order asks for. */
    private record Product(long mm, boolean navy, boolean either, String certificate) {}

    /** A usual day of so many pieces. */
    public static PackingProblem of(long seed, int pieces) {
        return of(seed, DayKind.usual(pieces));
    }

    static PackingProblem of(long seed, DayKind kind) {
        RealDay day = new RealDay(seed * 1_000_003 + kind.pieces(), kind);
        day.listProducts();
        day.takeOrders(kind.pieces());
        day.fillRack();
        return day.problem();
    }

    /** None where every line has a length of its own. */
    private void listProducts() {
        Set<Long> lengths = new HashSet<>();
        while (lengths.size() < kind.lengths()) {
            Product product = anyProduct();
            if (lengths.add(product.mm())) {
                products.add(product);
            }
        }
    }

    private Product anyProduct() {
        return new Product(
                pieceMm(), random.nextInt(4) == 0, random.nextInt(5) == 0, random.nextInt(12) == 0 ? "2.2" : "");
    }

    private PackingProblem problem() {
        Rope white = rope(WHITE, "white", 260_000);
        Rope navy = rope(NAVY, "navy", 290_000);
        Map<String, StockValue> values = Map.of(WHITE, value(white), NAVY, value(navy));
        return new PackingProblem(
                DAY, Map.of(WHITE, white, NAVY, navy), pieces, reels, values, prices(), List.of(), Map.of());
    }

    /** What a shop pays that states nothing but its labour, 42.00 an hour: opening is worth 0.8 m of this rope. */
    private Prices prices() {
        return new Prices(
                price(RulePrice.OPENING),
                price(RulePrice.CHANGING),
                price(RulePrice.HANDLING),
                kind.plain() ? Cost.ZERO : price(RulePrice.SPLIT_ORDER),
                price(RulePrice.MOVED_PIECE),
                MINUTE);
    }

    private static Cost price(RulePrice price) {
        return new Cost(MINUTE.millis() * price.seconds() / 60);
    }

    private Rope rope(String id, String colour, long price) {
        return new Rope(
                id,
                "12 mm double braid, " + colour,
                new RopeIdentity(
                        Kinds.DOUBLE_BRAID,
                        Kinds.POLYESTER,
                        "",
                        "",
                        Diameter.ofMillimetres(12),
                        Lay.NONE,
                        "",
                        colour,
                        ""),
                new LinearMass(100_000),
                new UnitPrice(price),
                new Rope.Cutting(new Length(10), new Length(10)),
                kind.worth(),
                new Length(200 * METRE));
    }

    private StockValue value(Rope rope) {
        if (kind.coilCurve()) {
            return coilCurve(rope);
        }
        return new RisingValue(rope.price(), rope.worth(), Ratio.percent(15), MINUTE);
    }

    /** By two years of one such day a week, and the coils that lie there. */
    private StockValue coilCurve(Rope rope) {
        List<Length> past = new ArrayList<>();
        for (int n = 0; n < kind.pieces() * WEEKS_PAST; n++) {
            past.add(new Length(pieceMm()));
        }
        Length metres = reels.stream()
                .filter(reel -> reel.rope().equals(rope.id()) && !reel.full())
                .map(Reel::length)
                .reduce(Length.ZERO, Length::plus);
        CoilTerms.Holding holding =
                new CoilTerms.Holding(Ratio.percent(SteadyRack.INTEREST_PERCENT), SteadyRack.ROOM, Length.ZERO);
        CoilValue value = CoilValue.of(
                PastCuts.of(past, rope.cutting().loss(), WEEKS_PAST, PastCuts.Source.HISTORY),
                CoilTerms.of(rope.price(), rope.usualReel(), rope.usualReel(), holding),
                metres);
        return RackWorth.of(value).on(metres);
    }

    private void takeOrders(int wanted) {
        int taken = 0;
        for (int order = 1; pieces.size() < wanted; order++) {
            int lines = 1 + random.nextInt(2);
            for (int line = 1; line <= lines && pieces.size() < wanted; line++) {
                int quantity = Math.min(quantity(), kind.mostOfALine());
                takeLine("A" + order, line, Math.min(wanted - pieces.size(), quantity), product(taken++));
            }
        }
    }

    /** Every product once, then any. */
    private Product product(int taken) {
        return products.isEmpty()
                ? anyProduct()
                : products.get(taken < products.size() ? taken : random.nextInt(products.size()));
    }

    private void takeLine(String order, int line, int quantity, Product product) {
        String rope = product.navy() ? NAVY : WHITE;
        Length length = new Length(product.mm());
        boolean set = quantity > 1 && random.nextInt(8) < kind.sets();
        Bond bond = set ? (random.nextInt(3) == 0 ? Bond.ONE_REEL : Bond.ONE_LOT) : Bond.NONE;
        Piece.Source source =
                new Piece.Source(order, "" + line, DAY.plusDays(random.nextInt(20)), 1 + random.nextInt(9));
        List<Piece.RopeChoice> choices = new ArrayList<>();
        choices.add(new Piece.RopeChoice(rope, length));
        if (product.either()) {
            choices.add(new Piece.RopeChoice(product.navy() ? WHITE : NAVY, length));
        }
        for (int i = 1; i <= quantity; i++) {
            pieces.add(new Piece(
                    order + "/" + line + "." + i,
                    source,
                    choices,
                    set && !kind.plain() ? new Matching(order + "-" + line, bond) : Matching.NONE,
                    product.certificate(),
                    false,
                    new Length(product.mm() - 700),
                    "eye, plain"));
        }
    }

    private int quantity() {
        return random.nextInt(3) == 0 ? 1 : 1 + random.nextInt(8);
    }

    /** Short ones more often, unless all are long. */
    private long pieceMm() {
        int decimetres = 1 + (int) (kind.longest().minus(kind.shortest()).mm() / 100);
        int over = random.nextInt(kind.longPieces() ? decimetres : 1 + random.nextInt(decimetres));
        long grid = kind.lengths() > LENGTHS_ON_THE_GRID ? 1 : 10;
        return kind.shortest().mm() + 100L * over + random.nextInt((int) (100 / grid)) * grid;
    }

    private void fillRack() {
        long white = 0;
        long navy = 0;
        for (Piece piece : pieces) {
            if (piece.orderedRope().equals(WHITE)) {
                white += piece.cut().mm();
            } else {
                navy += piece.cut().mm();
            }
        }
        stock(WHITE, white);
        stock(NAVY, navy);
    }

    /** Part reels for about half of what is wanted as far as there is room, full reels for all of it. */
    private void stock(String rope, long wanted) {
        long parts = 0;
        for (int coils = 0; isToAdd(coils, parts, wanted); coils++) {
            long mm = 3 * METRE + random.nextLong(120 * METRE) / 10 * 10;
            parts += mm;
            reels.add(reel(rope, mm, false));
        }
        for (long full = 0; full < wanted + 200 * METRE; full += 200 * METRE) {
            reels.add(reel(rope, 200 * METRE, true));
        }
    }

    private boolean isToAdd(int coils, long parts, long wanted) {
        return kind.coils() == DayKind.ANY ? parts < wanted / 2 && coils < PART_REELS : coils < kind.coils();
    }

    private Reel reel(String rope, long mm, boolean full) {
        int number = reels.size() + 1;
        boolean certified = random.nextInt(4) == 0;
        List<Flaw> flaws = new ArrayList<>();
        if (random.nextInt(6) == 0) {
            long at = random.nextLong(mm);
            flaws.add(new Flaw(new Length(at), new Length(Math.min(mm, at + 300)), new Length(100), "join"));
        }
        long uncertainty = full ? 0 : random.nextInt(3) * mm / 200;
        return new Reel(
                "K" + number,
                rope,
                "L" + (1 + random.nextInt(6)),
                new Reel.Contents(
                        new Length(mm),
                        new Length(uncertainty),
                        Length.ZERO,
                        Length.ZERO,
                        full ? Reel.Known.METERED : Reel.Known.GAUGED),
                flaws,
                new Reel.Papers(
                        certified ? "2.2" : "",
                        certified ? "C" + number : "",
                        LocalDate.MAX,
                        DAY.minusDays(random.nextInt(900))),
                random.nextInt(25) == 0 ? new Reel.Custody("", Reel.State.RESERVED, "A1") : Reel.Custody.FREE,
                full,
                Reel.Where.UNKNOWN);
    }
}
