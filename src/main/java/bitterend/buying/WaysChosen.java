package bitterend.buying;

import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Effort;
import bitterend.threads.SideBySide;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The ways to buy that are made of what was found for each group of ropes, and which of them is recommended. */
final class WaysChosen {
    private final Orders orders;
    private final List<PartBuyer> buyers;
    private final List<PartFound> found;
    private final Bounds bounds;
    private final Combination all;
    private final Map<Aim, List<Purchase>> byAim = new EnumMap<>(Aim.class);
    private final List<Tie> ties = new ArrayList<>();

    /** What work took of ropes in a week, how far the shop may go, and how many ropes are looked at side by side. */
    record Bounds(Map<String, Length> weekly, Spending spending, int threads) {
        boolean isWithin(Cost paid) {
            return over(paid).millis() <= 0;
        }

        Cost over(Cost paid) {
            return spending.hasBudget() && paid.compareTo(spending.budget().fine()) > 0
                    ? paid.minus(spending.budget().fine())
                    : Cost.ZERO;
        }

        /** @param orders the work that is served */
        Way way(Orders orders, Aim aim, Purchase purchase) {
            Covers covers = new Covers(orders, weekly);
            CoverLimit weeks = new CoverLimit(covers, spending);
            return new Way(
                    List.of(aim),
                    purchase,
                    orders.market().bill(purchase.set().counts()),
                    covers.of(purchase.set()),
                    over(purchase.paid()),
                    weeks.over(purchase.set()).stream().map(Cover::rope).toList());
        }
    }

    WaysChosen(Orders orders, List<PartBuyer> buyers, List<PartFound> found, Bounds bounds) {
        this.orders = orders;
        this.buyers = buyers;
        this.found = found;
        this.bounds = bounds;
        all = new Combination(orders.market(), found);
        byAim.put(Aim.LEAST_PAID, all.best(Aim.LEAST_PAID));
        List<Purchase> taken = all.tied(all.best(Aim.LEAST_COST), ties);
        byAim.put(Aim.LEAST_COST, taken);
        byAim.put(Aim.BETWEEN, between(new Combination(orders.market(), settled(taken))));
    }

    /** Where a tie was settled nothing that pays more is looked at any more: it would cost less than the least cost. */
    private List<PartFound> settled(List<Purchase> taken) {
        Set<ReelSet> tied = ties.stream().map(Tie::taken).collect(Collectors.toSet());
        List<PartFound> settled = new ArrayList<>();
        for (int part = 0; part < found.size(); part++) {
            Purchase chosen = taken.get(part);
            settled.add(
                    tied.contains(chosen.set())
                            ? found.get(part)
                                    .with(found.get(part).found().stream()
                                            .filter(each -> each.paid().compareTo(chosen.paid()) <= 0)
                                            .toList())
                            : found.get(part));
        }
        return settled;
    }

    /** Where the least cost is above the budget, the least cost within it; else what weighs both by halves. */
    private List<Purchase> between(Combination settled) {
        List<Purchase> cost = of(Aim.LEAST_COST);
        if (!bounds.isWithin(all.together(cost).paid())) {
            List<Purchase> within = settled.within(bounds.spending().budget().fine());
            if (bounds.isWithin(all.together(within).paid())) {
                return within;
            }
        }
        return settled.between(of(Aim.LEAST_PAID), cost);
    }

    private List<Purchase> of(Aim aim) {
        return byAim.getOrDefault(aim, List.of());
    }

    /**
     * What is to be told.
     *
     * @param toNeeds the effort of seeing what the reels of one group of ropes are needed for, of so many
     * @param affordable what serves the most urgent work alone, by pieces that have no rope anyway and pieces that are late
     */
    Advice advice(IntFunction<Effort> toNeeds, BiFunction<List<String>, List<String>, Affordable> affordable) {
        Proven proven = new Proven(orders, found, all.together(of(Aim.LEAST_PAID)));
        needs(toNeeds);
        List<Way> ways = ways(proven);
        List<Unheld> unheld =
                found.stream().flatMap(part -> part.unheld().stream()).toList();
        List<String> late = found.stream()
                .flatMap(part -> part.late().stream())
                .sorted(NaturalOrder.IDS)
                .toList();
        Affordable.@Nullable Found paid = null;
        if (ways.get(0).overBudget().millis() > 0) {
            List<String> anyway = Stream.concat(
                            ways.get(0).purchase().unplanned().stream(),
                            unheld.stream().map(Unheld::piece))
                    .toList();
            paid = affordable
                    .apply(anyway, late)
                    .within(bounds.spending().budget().fine());
        }
        return new Advice(
                ways,
                recommended(ways),
                proven.paid(),
                ties,
                next(),
                unheld,
                late,
                found.stream().flatMap(part -> part.tooLong().stream()).toList(),
                paid == null ? null : bounds.way(paid.served(), Aim.LEAST_PAID, paid.purchase()),
                paid == null ? List.of() : paid.left(),
                buyers.stream().allMatch(PartBuyer::allCompared) && (paid == null || !paid.ranOut()));
    }

    /** Every purchase with what each of its reels is needed for: what takes no time first, so that the others share it. */
    private void needs(IntFunction<Effort> toNeeds) {
        byAim.replaceAll((aim, chosen) -> IntStream.range(0, chosen.size())
                .mapToObj(part -> buyers.get(part).neededAtOnce(chosen.get(part)))
                .toList());
        long open = IntStream.range(0, buyers.size())
                .filter(part -> chosen(part).stream()
                        .flatMap(each -> each.lines().stream())
                        .anyMatch(line -> !line.need().known()))
                .count();
        Effort each = toNeeds.apply((int) Math.max(1, open));
        List<Callable<Map<ReelSet, Purchase>>> tasks = new ArrayList<>();
        for (int part = 0; part < buyers.size(); part++) {
            int number = part;
            tasks.add(() -> buyers.get(number).needed(chosen(number), each));
        }
        List<Map<ReelSet, Purchase>> needed = SideBySide.all(tasks, bounds.threads());
        byAim.replaceAll((aim, chosen) -> {
            List<Purchase> told = new ArrayList<>();
            for (int part = 0; part < chosen.size(); part++) {
                Purchase purchase = chosen.get(part);
                told.add(needed.get(part).getOrDefault(purchase.set(), purchase));
            }
            return told;
        });
    }

    /** What was chosen of one group of ropes. */
    private List<Purchase> chosen(int part) {
        return byAim.values().stream().map(each -> each.get(part)).toList();
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
                ways.add(bounds.way(orders, aim, purchase));
            } else {
                ways.set(same, ways.get(same).also(aim));
            }
        }
        return ways;
    }

    /** The nearest sets to the least cost, one part changed in each: other sizes, and not only more of them. */
    private List<Purchase> next() {
        List<Purchase> best = of(Aim.LEAST_COST);
        Purchase least = all.together(best);
        List<Purchase> next = new ArrayList<>();
        for (int part = 0; part < found.size(); part++) {
            Set<String> sizes = best.get(part).set().sizes();
            for (Purchase other : found.get(part).next()) {
                List<Purchase> changed = new ArrayList<>(best);
                changed.set(part, other);
                Purchase whole = all.together(changed);
                if (!other.set().sizes().containsAll(sizes) && whole.cost().compareTo(least.cost()) >= 0) {
                    next.add(whole);
                }
            }
        }
        next.sort(Comparator.comparing(Purchase::cost));
        return next.stream().limit(Advice.MOST_NEXT).toList();
    }

    /** Of the ways within the budget the one of least cost; -1 where there is none. */
    private static int recommended(List<Way> ways) {
        int chosen = -1;
        for (int i = 0; i < ways.size(); i++) {
            Purchase purchase = ways.get(i).purchase();
            boolean better = ways.get(i).overBudget().millis() <= 0
                    && (chosen < 0 || purchase.isBetterThan(ways.get(chosen).purchase(), Aim.LEAST_COST));
            chosen = better ? i : chosen;
        }
        return chosen;
    }
}
