package bitterend.buying;

import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
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
    private final Covers covers;
    private final List<TooLong> tooLong;

    /** With no limit to what may be spent, and nothing known of the past. */
    public Buyer(Orders orders, Packer packer, Effort effort) {
        this(orders, packer, effort, Spending.UNLIMITED, Map.of());
    }

    /**
     * @param spending how far the shop may go
     * @param weekly what work took of a rope in a week of the past, by its id; ropes without a past are not named
     */
    public Buyer(Orders all, Packer packer, Effort effort, Spending spending, Map<String, Length> weekly) {
        this.packer = packer;
        this.effort = effort;
        this.spending = spending;
        covers = new Covers(all, weekly);
        tooLong = new LongReels(all, covers, spending).all();
        orders = all.offering(all.offers().stream()
                .filter(offer -> tooLong.stream()
                        .noneMatch(
                                each -> each.piece().isEmpty() && each.offer().equals(offer)))
                .toList());
    }

    /** What to buy. */
    public Advice advise() {
        List<Orders> parts = IndependentRopes.of(orders);
        long pieces = Math.max(
                1, parts.stream().mapToLong(part -> part.day().pieces().size()).sum());
        List<PartBuyer> buyers = parts.stream()
                .map(part -> new PartBuyer(
                        part, packer, share(effort.time(), part.day().pieces().size(), pieces)))
                .toList();
        List<PartFound> found = found(buyers, parts);
        found = new LeastOrders(parts, buyers).reached(new Combination(orders.market(), found), found);
        return new Choice(orders, buyers, found).advice();
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

    /** The ways that are made of what was found. */
    private final class Choice {
        private final List<PartBuyer> buyers;
        private final List<PartFound> found;
        private final Combination all;
        private final Map<Aim, List<Purchase>> byAim = new EnumMap<>(Aim.class);
        private final List<Tie> ties = new ArrayList<>();

        Choice(Orders orders, List<PartBuyer> buyers, List<PartFound> found) {
            this.buyers = buyers;
            this.found = found;
            all = new Combination(orders.market(), found);
            byAim.put(Aim.LEAST_PAID, all.best(Aim.LEAST_PAID));
            byAim.put(Aim.LEAST_COST, all.tied(all.best(Aim.LEAST_COST), ties));
            byAim.put(Aim.BETWEEN, between());
        }

        /** Where the least cost is over what may be spent, the least cost within it; else what weighs both by halves. */
        private List<Purchase> between() {
            List<Purchase> cost = of(Aim.LEAST_COST);
            if (!isWithin(all.together(cost))) {
                List<Purchase> within =
                        new Combination(orders.market(), found, Buyer.this::isWithin).best(Aim.LEAST_COST);
                if (isWithin(all.together(within))) {
                    return within;
                }
            }
            return all.between(cost);
        }

        private boolean isWithin(Purchase purchase) {
            return Buyer.this.isWithin(purchase.set(), purchase.paid());
        }

        private List<Purchase> of(Aim aim) {
            return byAim.getOrDefault(aim, List.of());
        }

        Advice advice() {
            Proven proven = new Proven(orders, found, all.together(of(Aim.LEAST_PAID)));
            needs();
            List<Way> ways = ways(proven);
            List<Unheld> unheld =
                    found.stream().flatMap(part -> part.unheld().stream()).toList();
            List<String> late = found.stream()
                    .flatMap(part -> part.late().stream())
                    .sorted(NaturalOrder.IDS)
                    .toList();
            return new Advice(
                    ways,
                    recommended(ways),
                    proven.paid(),
                    ties,
                    next(),
                    unheld,
                    late,
                    tooLong,
                    unpaid(ways.get(0), unheld, late),
                    buyers.stream().allMatch(PartBuyer::allCompared));
        }

        /** Every purchase with what each of its reels is needed for. */
        private void needs() {
            List<Callable<Map<ReelSet, Purchase>>> tasks = new ArrayList<>();
            for (int part = 0; part < buyers.size(); part++) {
                int number = part;
                tasks.add(() -> buyers.get(number)
                        .needed(byAim.values().stream()
                                .map(each -> each.get(number))
                                .toList()));
            }
            List<Map<ReelSet, Purchase>> needed = SideBySide.all(tasks, effort.threads());
            byAim.replaceAll((aim, chosen) -> {
                List<Purchase> told = new ArrayList<>();
                for (int part = 0; part < chosen.size(); part++) {
                    Purchase purchase = chosen.get(part);
                    told.add(needed.get(part).getOrDefault(purchase.set(), purchase));
                }
                return told;
            });
        }

        private List<Way> ways(Proven proven) {
            List<Way> ways = new ArrayList<>();
            for (Aim aim : Aim.values()) {
                Purchase purchase = all.together(of(aim)).boundedBy(proven.cost());
                int same = 0;
                while (same < ways.size() && !ways.get(same).purchase().set().equals(purchase.set())) {
                    same++;
                }
                if (same == ways.size()) {
                    ways.add(way(aim, purchase));
                } else {
                    ways.set(same, ways.get(same).also(aim));
                }
            }
            return ways;
        }

        /** The nearest sets to the least cost, one part changed in each. */
        private List<Purchase> next() {
            List<Purchase> best = of(Aim.LEAST_COST);
            Purchase least = all.together(best);
            List<Purchase> next = new ArrayList<>();
            for (int part = 0; part < found.size(); part++) {
                for (Purchase other : found.get(part).next()) {
                    List<Purchase> changed = new ArrayList<>(best);
                    changed.set(part, other);
                    Purchase whole = all.together(changed);
                    if (!whole.set().equals(least.set()) && whole.cost().compareTo(least.cost()) >= 0) {
                        next.add(whole);
                    }
                }
            }
            next.sort(Comparator.comparing(Purchase::cost));
            return next.stream().limit(Advice.MOST_NEXT).toList();
        }
    }

    /** What has no rope within the budget, where even the least paid is above it. */
    private List<String> unpaid(Way least, List<Unheld> unheld, List<String> late) {
        if (least.overBudget().millis() <= 0) {
            return List.of();
        }
        List<String> anyway = new ArrayList<>(least.purchase().unplanned());
        unheld.forEach(piece -> anyway.add(piece.piece()));
        return new Unpaid(orders, packer, effort, anyway, late)
                .pieces(spending.budget().fine());
    }

    private Way way(Aim aim, Purchase purchase) {
        return new Way(
                List.of(aim),
                purchase,
                orders.market().bill(purchase.set().counts()),
                covers.of(purchase.set()),
                overBudget(purchase.paid()),
                overWeeks(purchase.set()));
    }

    private boolean isWithin(ReelSet set, Cost paid) {
        return overBudget(paid).millis() <= 0 && overWeeks(set).isEmpty();
    }

    private Cost overBudget(Cost paid) {
        return spending.hasBudget() && paid.compareTo(spending.budget().fine()) > 0
                ? paid.minus(spending.budget().fine())
                : Cost.ZERO;
    }

    private List<String> overWeeks(ReelSet set) {
        return !spending.hasMostWeeks()
                ? List.of()
                : covers.of(set).stream()
                        .filter(cover -> cover.isAbove(spending.mostWeeks()))
                        .map(Cover::rope)
                        .toList();
    }

    /** Of the ways within what may be spent the one of least cost; where all last too long, the least paid within the budget. */
    private static int recommended(List<Way> ways) {
        int chosen = -1;
        for (int i = 0; i < ways.size(); i++) {
            Purchase purchase = ways.get(i).purchase();
            boolean better = ways.get(i).isWithin()
                    && (chosen < 0 || purchase.isBetterThan(ways.get(chosen).purchase(), Aim.LEAST_COST));
            chosen = better ? i : chosen;
        }
        boolean tooLong = ways.stream().noneMatch(way -> way.overWeeks().isEmpty());
        return chosen < 0 && tooLong && ways.get(0).overBudget().millis() <= 0 ? 0 : chosen;
    }
}
