package bitterend.buying;

import bitterend.measure.Length;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * Finds which reels to buy for the orders in hand: for the least money paid now, for the least cost, and between both. Ropes
 * that have nothing to do with one another are looked at side by side; ropes that nobody offers are left out of the money.
 */
public final class Buyer {
    private final Orders orders;
    private final Packer packer;
    private final Effort effort;
    private final Spending spending;
    private final Map<String, Length> weekly;
    private final CoverLimit weeks;

    /** With no limit to what may be spent, and nothing known of the past. */
    public Buyer(Orders orders, Packer packer, Effort effort) {
        this(orders, packer, effort, Spending.UNLIMITED, Map.of());
    }

    /**
     * @param spending how far the shop may go
     * @param weekly what work took of a rope in a week of the past, by its id; ropes without a past are not named
     */
    public Buyer(Orders orders, Packer packer, Effort effort, Spending spending, Map<String, Length> weekly) {
        this.packer = packer;
        this.effort = effort;
        this.spending = spending;
        this.orders = orders;
        this.weekly = Map.copyOf(weekly);
        weeks = new CoverLimit(new Covers(orders, weekly), spending);
    }

    /** What to buy. */
    public Advice advise() {
        List<Orders> parts = IndependentRopes.of(orders);
        long pieces = Math.max(
                1, parts.stream().mapToLong(part -> part.day().pieces().size()).sum());
        List<PartBuyer> buyers = parts.stream()
                .map(part -> new PartBuyer(
                        part, packer, share(effort.time(), part.day().pieces().size(), pieces), weeks))
                .toList();
        List<PartFound> found = found(buyers, parts);
        found = new LeastOrders(parts, buyers).reached(new Combination(orders.market(), found), found);
        return new WaysChosen(orders, buyers, found, new WaysChosen.Bounds(weekly, spending, effort.threads()))
                .advice(this::affordable);
    }

    /** What is to be bought is looked for in the time that the ropes leave of which nothing is. */
    private List<PartFound> found(List<PartBuyer> buyers, List<Orders> parts) {
        long begun = System.nanoTime();
        List<Optional<PartFound>> first = SideBySide.all(
                buyers.stream()
                        .<Callable<Optional<PartFound>>>map(buyer -> buyer::withoutBuying)
                        .toList(),
                effort.threads());
        long pieces = 0;
        for (int i = 0; i < parts.size(); i++) {
            pieces += first.get(i).isPresent() ? 0 : parts.get(i).day().pieces().size();
        }
        Duration left = effort.time().minusNanos(System.nanoTime() - begun);
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
        Duration positive = whole.isNegative() ? Duration.ZERO : whole;
        Duration time = positive.multipliedBy(Math.min(all, share * threads)).dividedBy(all);
        return new Effort(time, effort.work(), effort.seed(), 1, effort.cancelled(), effort.progress());
    }

    private Affordable affordable(List<String> anyway, List<String> late) {
        return new Affordable(orders, packer, effort, weeks, anyway, late);
    }
}
