package bitterend.quoting;

import bitterend.catalogue.Rope;
import bitterend.demand.Assembly;
import bitterend.demand.BenchPapers;
import bitterend.demand.Demanded;
import bitterend.demand.EndSpec;
import bitterend.demand.Measuring;
import bitterend.demand.Piece;
import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.Supplier;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.FullStrategy;
import bitterend.quoting.QuoteBasis.PastWeek;
import bitterend.quoting.QuoteLine.Asked;
import bitterend.quoting.QuoteLine.Leeway;
import bitterend.quoting.sharing.NewReel;
import bitterend.quoting.sharing.NewRope;
import bitterend.shops.PlainShop;
import bitterend.stock.StockValue;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A counter where prices are asked for: one rope at a cent a millimetre, plain ends, cut length as finished. */
final class Counter {
    private final PackingProblem book;
    private final List<Offer> offers = new ArrayList<>();
    private final List<Supplier> suppliers = new ArrayList<>();
    private final List<QuoteLine> lines = new ArrayList<>();
    private final List<PastWeek> weeks = new ArrayList<>();
    private QuotePolicy policy = new QuotePolicy(
            WasteBasis.ALONE,
            false,
            new QuotePolicy.Work(new Money(6000), 0, Ratio.ZERO, Money.ZERO),
            new QuotePolicy.Surcharges(Ratio.ZERO, Ratio.ZERO, Money.ZERO),
            PartPrices.NONE,
            30);

    Counter(PlainShop shop) {
        book = shop.problem();
    }

    /** A reel at a cent a millimetre, as many as are wanted. */
    Counter reel(long mm) {
        return offer(new Offer("reel " + mm, "", "R", Offer.Made.plain(new Length(mm)), Offer.Terms.of(new Money(mm))));
    }

    Counter offer(Offer offer) {
        offers.add(offer);
        return this;
    }

    Counter supplier(Supplier supplier) {
        suppliers.add(supplier);
        return this;
    }

    Counter policy(QuotePolicy newPolicy) {
        policy = newPolicy;
        return this;
    }

    Counter line(String name, long mm, int quantity) {
        return line(name, mm, quantity, Asked.NOTHING);
    }

    Counter line(String name, long mm, int quantity, Leeway leeway) {
        return line(name, mm, quantity, new Asked(Money.ZERO, Asked.BY_THE_ENDS, Money.ZERO, leeway));
    }

    Counter line(String name, long mm, int quantity, Asked asked) {
        Assembly assembly = new Assembly(
                new Assembly.Origin("request.csv", "row " + (lines.size() + 2)),
                new Assembly.Ordered(new Piece.Source("Q", name, PlainShop.DAY.plusDays(30), 5), "", "", quantity, 1),
                List.of("R"),
                new Assembly.Make(
                        Written.worked(new Length(mm)),
                        Measuring.USUAL,
                        EndSpec.of("plain"),
                        EndSpec.of("plain"),
                        Assembly.Extras.NONE),
                Assembly.Terms.USUAL);
        lines.add(new QuoteLine(assembly, demanded(assembly), asked));
        return this;
    }

    Counter week(long... cuts) {
        return week(PlainShop.DAY.minusWeeks(60).plusWeeks(weeks.size()), cuts);
    }

    Counter week(LocalDate monday, long... cuts) {
        weeks.add(new PastWeek(
                monday,
                IntStream.range(0, cuts.length)
                        .mapToObj(i -> piece("W" + weeks.size(), "1", i + 1, cuts[i]))
                        .toList()));
        return this;
    }

    QuoteRequest request() {
        return new QuoteRequest("Q", "", PlainShop.DAY, lines);
    }

    Quote quote() {
        return quoter().quote(request());
    }

    Quoter quoter() {
        Rope rope = book.rope("R");
        NewRope usual = new NewRope(
                rope,
                book.values().getOrDefault("R", StockValue.NOTHING),
                book.prices(),
                List.of(NewReel.at(rope.price(), rope.usualReel())));
        Market market = new Market(PlainShop.DAY, offers, suppliers, Map.of("R", rope.mass()));
        QuoteBasis basis = new QuoteBasis(book, market, Map.of("R", usual), weeks, Counter::demanded);
        Effort effort = Effort.of(Duration.ofSeconds(2));
        return new Quoter(policy, basis, FullStrategy.patternsAlone(), effort, effort);
    }

    private static Demanded demanded(Assembly assembly) {
        Assembly.Ordered ordered = assembly.ordered();
        List<Piece> pieces = IntStream.rangeClosed(1, ordered.quantity())
                .mapToObj(n -> piece(
                        ordered.source().order(),
                        ordered.source().line(),
                        n,
                        assembly.make().finished().roundedUp().mm()))
                .toList();
        return new Demanded(pieces, List.of(), List.of(), BenchPapers.NONE, List.of(), List.of());
    }

    private static Piece piece(String order, String line, int number, long mm) {
        return new Piece(
                order + "/" + line + "." + number,
                new Piece.Source(order, line, PlainShop.DAY.plusDays(30), 5),
                List.of(new Piece.RopeChoice("R", new Length(mm))),
                Piece.Matching.NONE,
                "",
                false,
                new Length(mm),
                "plain / plain");
    }
}
