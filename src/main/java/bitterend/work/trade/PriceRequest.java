package bitterend.work.trade;

import bitterend.catalogue.Rope;
import bitterend.demand.DemandModel;
import bitterend.demand.calibration.EndMinutes;
import bitterend.exchange.MeasuredCsv;
import bitterend.exchange.Shop;
import bitterend.finding.Finding;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.FullStrategy;
import bitterend.quoting.EndTime;
import bitterend.quoting.Lacking;
import bitterend.quoting.Quote;
import bitterend.quoting.QuoteBasis;
import bitterend.quoting.QuoteBasis.PastWeek;
import bitterend.quoting.QuoteRequest;
import bitterend.quoting.Quoter;
import bitterend.quoting.sharing.NewReel;
import bitterend.quoting.sharing.NewRope;
import bitterend.stock.StockValue;
import bitterend.threads.SideBySide;
import bitterend.work.ComingReels;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongSupplier;

/** What a request costs with the waste it causes, and its price: a question that writes nothing. */
public final class PriceRequest {
    /** Work for each piece of a large packing, in units of the engine. */
    private static final long LARGE = 2_500;

    /** The same of one of the many small packings of a quote. */
    private static final long SMALL = 500;

    private final ShopNow now;
    private final int threads;
    private final LongSupplier nanos;

    /** On all cores. */
    public PriceRequest(ShopNow shop) {
        this(shop, SideBySide.cores());
    }

    /** @param threads so many at most; the price is the same with any number of them */
    public PriceRequest(ShopNow shop, int threads) {
        this(shop, threads, System::nanoTime);
    }

    /** @param nanos the clock that the time is held against, in nanoseconds */
    public PriceRequest(ShopNow shop, int threads, LongSupplier nanos) {
        now = shop;
        this.threads = threads;
        this.nanos = nanos;
    }

    /** What comes of it. */
    public sealed interface Result {
        /** Its price, built up line by line, of the lines that have one. */
        record Priced(Quote quote) implements Result {}

        /** No line of it can be priced. */
        record NotPriced(List<Finding> problems) implements Result {
            public NotPriced {
                problems = List.copyOf(problems);
            }
        }
    }

    /**
     * The price.
     *
     * @param day the day of the quote
     * @param time pack no longer than this at a time, though the work is not done: what is done in time is the same each time
     * @param watcher who waits
     */
    public Result price(QuoteRequest request, LocalDate day, Duration time, Watcher watcher) {
        return price(request, day, time, List.of(), watcher);
    }

    /**
     * The price.
     *
     * @param quantities how often each line is priced besides, as often as that
     */
    public Result price(QuoteRequest request, LocalDate day, Duration time, List<Integer> quantities, Watcher watcher) {
        PackingProblem book = now.open(day);
        FixedWork packer = new FixedWork(FullStrategy.patternsAlone(), nanos);
        Quoter quoter = new Quoter(
                now.shop().settings().quote(),
                basis(book),
                packer,
                effort(time, LARGE, watcher),
                effort(time, SMALL, watcher));
        List<EndTime> booked = booked();
        QuoteRequest timed = request.of(
                request.lines().stream().map(line -> line.with(booked)).toList());
        List<Lacking> lacking = quoter.lacking(timed);
        boolean any = timed.lines().stream()
                .anyMatch(line -> !line.isAlternative()
                        && lacking.stream().noneMatch(each -> each.line().equals(line.name())));
        if (!any) {
            return new Result.NotPriced(
                    lacking.stream().flatMap(each -> each.findings().stream()).toList());
        }
        Quote quote = quoter.quote(timed, quantities);
        DeliveryDay delivery =
                new DeliveryDay(now.shop().settings().bench().hours(), ComingReels.with(book, now.shop()));
        return new Result.Priced(quote.delivered(delivery.of(quote)).cutShort(packer.isCutShort()));
    }

    /** Minutes of ends as splicers booked them; none where what was measured cannot be read. */
    private List<EndTime> booked() {
        MeasuredCsv.Reading measured = MeasuredCsv.read(now.at().folder(), now.shop());
        if (measured.findings().stream().anyMatch(Finding::isError)) {
            return List.of();
        }
        return EndMinutes.of(new DemandModel(now.shop().catalogue()), measured.assemblies()).stream()
                .map(end -> new EndTime(end.termination(), end.rope(), end.mean(), end.ends()))
                .toList();
    }

    private Effort effort(Duration time, long work, Watcher watcher) {
        return new Effort(time, work, 0, threads, watcher.stop(), watcher.progress());
    }

    /** A day's open work and rack, every rope on the new reels that suppliers offer, and the past weeks. */
    private QuoteBasis basis(PackingProblem book) {
        Shop shop = now.shop();
        Map<String, NewRope> usual = new TreeMap<>();
        for (Rope rope : shop.catalogue().ropes()) {
            StockValue value = book.values().getOrDefault(rope.id(), StockValue.NOTHING);
            NewReel reel = NewReel.at(rope.price(), rope.usualReel());
            usual.put(rope.id(), new NewRope(rope, value, shop.settings().prices(), List.of(reel)));
        }
        DemandModel model = new DemandModel(shop.catalogue());
        List<PastWeek> past = shop.supplies().history().weeks().stream()
                .map(week -> new PastWeek(week.monday(), week.pieces()))
                .toList();
        return new QuoteBasis(book, shop.market(book.day()), usual, past, model::pieces);
    }
}
