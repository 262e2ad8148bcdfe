package bitterend.buying;

import bitterend.finding.NaturalOrder;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;

/**
 * Finds the least-cost set of reels for the orders in hand: price paid less the value of what is left. Ropes that have
 * nothing to do with one another are looked at side by side; ropes that nobody offers are left out of the money.
 */
public final class Buyer {
    private final Orders orders;
    private final Packer packer;
    private final Effort effort;

    public Buyer(Orders orders, Packer packer, Effort effort) {
        this.orders = orders;
        this.packer = packer;
        this.effort = effort;
    }

    /** What to buy. */
    public Advice advise() {
        List<Orders> parts = IndependentRopes.of(orders);
        long pieces = Math.max(
                1, parts.stream().mapToLong(part -> part.day().pieces().size()).sum());
        List<Callable<Advice>> tasks = new ArrayList<>();
        for (Orders part : parts) {
            long share = part.day().pieces().size();
            tasks.add(() -> new PartBuyer(part, packer, share(share, pieces)).advise());
        }
        List<Advice> advices = SideBySide.all(tasks, effort.threads());
        return together(advices);
    }

    /** A part's share of the effort, by its pieces; never more than the whole. */
    private Effort share(long share, long all) {
        long threads = Math.max(1, effort.threads());
        Duration time =
                effort.time().multipliedBy(Math.min(all, share * threads)).dividedBy(all);
        return new Effort(time, effort.work(), effort.seed(), 1, effort.cancelled(), effort.progress());
    }

    private static Advice together(List<Advice> advices) {
        Purchase best = advices.stream().map(Advice::best).reduce(Purchase.NONE, Purchase::plus);
        List<Purchase> next = new ArrayList<>();
        for (Advice advice : advices) {
            for (Purchase other : advice.next()) {
                next.add(best.exchanging(advice.best(), other));
            }
        }
        next.sort(Comparator.comparing(Purchase::cost));
        return new Advice(
                best,
                next.stream().limit(Advice.MOST_NEXT).toList(),
                advices.stream().flatMap(each -> each.unheld().stream()).toList(),
                advices.stream()
                        .flatMap(each -> each.late().stream())
                        .sorted(NaturalOrder.IDS)
                        .toList(),
                advices.stream().allMatch(Advice::allCompared));
    }
}
