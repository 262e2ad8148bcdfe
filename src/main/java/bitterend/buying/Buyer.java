package bitterend.buying;

import bitterend.measure.Length;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.threads.SideBySide;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Finds which reels to buy for the orders in hand: for the least money paid now, for the least cost, and between both. Ropes
 * that have nothing to do with one another are looked at side by side; ropes that nobody offers are left out of the money.
 */
public final class Buyer {
    /** Of the time: to see what each reel is needed for. */
    private static final int NEEDS = 5;

    /** Of the time, where there is a budget: to see what it can pay for, should it not pay for all. */
    private static final int AFFORDABLE = 30;

    private final Orders orders;
    private final Packer packer;
    private final Effort effort;
    private final Spending spending;
    private final Map<String, Length> weekly;
    private final CoverLimit weeks;
    private final LongSupplier clock;

    /** With no limit to what may be spent, and nothing known of the past. */
    public Buyer(Orders orders, Packer packer, Effort effort) {
        this(orders, packer, effort, Spending.UNLIMITED, Map.of());
    }

    /**
     * @param spending how far the shop may go
     * @param weekly what work took of a rope in a week of the past, by its id; ropes without a past are not named
     */
    public Buyer(Orders orders, Packer packer, Effort effort, Spending spending, Map<String, Length> weekly) {
        this(orders, packer, effort, spending, weekly, System::nanoTime);
    }

    /** @param clock by which the phases share the time, in nanoseconds */
    Buyer(
            Orders orders,
            Packer packer,
            Effort effort,
            Spending spending,
            Map<String, Length> weekly,
            LongSupplier clock) {
        this.clock = clock;
        this.packer = packer;
        this.effort = effort;
        this.spending = spending;
        this.orders = orders;
        this.weekly = Map.copyOf(weekly);
        weeks = new CoverLimit(new Covers(orders, weekly), spending);
    }

    /** What to buy; the ways, what their reels are needed for and what a budget can pay for share the time. */
    public Advice advise() {
        SharedTime time = new SharedTime(effort.time(), clock);
        int affordable = spending.hasBudget() ? AFFORDABLE : 0;
        List<Orders> parts = IndependentRopes.of(orders);
        Duration ways = time.keeping(NEEDS + affordable);
        long pieces = Math.max(1, pieces(parts));
        List<PartBuyer> buyers = parts.stream()
                .map(part -> new PartBuyer(
                        part, packer, share(ways, part.day().pieces().size(), pieces), weeks))
                .toList();
        List<PartFound> found = found(buyers, parts, () -> time.keeping(NEEDS + affordable));
        found = new LeastOrders(parts, buyers).reached(new Combination(orders.market(), found), found);
        return new WaysChosen(orders, buyers, found, new WaysChosen.Bounds(weekly, spending, effort.threads()))
                .advice(
                        buying -> share(time.keeping(affordable), 1, buying),
                        (anyway, late) -> new Affordable(
                                orders, packer, within(time.left(), effort.threads()), weeks, anyway, late));
    }

    private static long pieces(List<Orders> parts) {
        return parts.stream().mapToLong(part -> part.day().pieces().size()).sum();
    }

    /** What is to be bought is looked for in the time that the ropes leave of which nothing is. */
    private List<PartFound> found(List<PartBuyer> buyers, List<Orders> parts, Supplier<Duration> time) {
        List<Optional<PartFound>> first = SideBySide.all(
                buyers.stream()
                        .<Callable<Optional<PartFound>>>map(buyer -> buyer::withoutBuying)
                        .toList(),
                effort.threads());
        long pieces = 0;
        for (int i = 0; i < parts.size(); i++) {
            pieces += first.get(i).isPresent() ? 0 : parts.get(i).day().pieces().size();
        }
        Duration left = time.get();
        List<Callable<PartFound>> tasks = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            PartBuyer buyer = buyers.get(i);
            Effort share = share(left, parts.get(i).day().pieces().size(), Math.max(1, pieces));
            Optional<PartFound> known = first.get(i);
            tasks.add(() -> known.isPresent() ? known.get() : buyer.search(share));
        }
        return SideBySide.all(tasks, effort.threads());
    }

    /** A part's share of the effort, by its pieces; never more than the whole. */
    private Effort share(Duration whole, long share, long all) {
        long threads = Math.max(1, effort.threads());
        return within(whole.multipliedBy(Math.min(all, share * threads)).dividedBy(all), 1);
    }

    private Effort within(Duration time, int threads) {
        return new Effort(time, effort.work(), effort.seed(), threads, effort.cancelled(), effort.progress());
    }
}
