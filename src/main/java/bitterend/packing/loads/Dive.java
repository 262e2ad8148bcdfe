package bitterend.packing.loads;

import bitterend.packing.Packing;
import bitterend.packing.effort.Budget;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** From the values of the program to a plan: sets choose their holders, then one reel after the other is settled. */
final class Dive {
    private static final int ROUNDS = 4;
    private static final double CERTAIN = 0.999;
    /** Less of an item than this left undone is as good as none. */
    private static final double UNDONE = 0.05;

    private final LoadModel model;
    private final Program program;
    private final Pricing pricing;
    private final Random random;
    private final double noise;
    private final Domain domain;
    private final boolean[] settled;
    private final int[] residual;
    private final List<Pattern> draws = new ArrayList<>();

    /** @param noise how much chance has a say in what is settled first, 0 for none */
    Dive(Program program, Pricing pricing, Domain from, Random random, double noise) {
        this.model = program.model;
        this.program = program;
        this.pricing = pricing;
        this.random = random;
        this.noise = noise;
        domain = from.copy();
        settled = new boolean[model.reels.length];
        residual = Arrays.stream(model.items).mapToInt(Item::count).toArray();
    }

    /** The plan that comes of it; empty when the budget ended first or nothing was left. */
    Optional<Packing> run(Solution from, Budget budget) {
        Optional<Solution> solution = Optional.of(from);
        while (solution.isPresent()) {
            boolean any = chooseHolder(solution.get()) || chooseUndone(solution.get()) || settle(solution.get());
            if (!any || !domain.spread()) {
                return Optional.of(DrawsToPacking.packing(model, draws));
            }
            solution = solve(budget);
        }
        return Optional.empty();
    }

    private boolean exceeds(Pattern pattern) {
        for (int t = 0; t < pattern.item.length; t++) {
            if (pattern.count[t] > residual[pattern.item[t]]) {
                return true;
            }
        }
        return false;
    }

    private Optional<Solution> solve(Budget budget) {
        program.enter(domain, settled, draws, this::exceeds, budget);
        for (int round = 0; round < ROUNDS; round++) {
            if (budget.over() || !program.solve(budget)) {
                return Optional.empty();
            }
            double[] y = program.y();
            int added = 0;
            for (ReelOffer offer : pricing.price(program.duals(y), domain, residual, settled, budget)) {
                if (offer != null && offer.worth() > ReelOffer.IMPOSSIBLE) {
                    Pattern pattern = offer.pattern();
                    added += program.reduced(pattern, y) < -1e-7 && program.add(pattern) ? 1 : 0;
                }
            }
            if (added == 0) {
                break;
            }
        }
        return program.solve(budget) ? Optional.of(program.solution()) : Optional.empty();
    }

    /** One set takes the holder that the values like best, or stays undone; false when all have chosen. */
    private boolean chooseHolder(Solution solution) {
        SetOfPieces chosen = null;
        int holder = -1;
        double best = -1;
        for (SetOfPieces set : model.sets) {
            boolean mayStay = domain.mayStayUndone(set);
            if (domain.mustStayUndone(set) || Long.bitCount(domain.holders[set.index]) + (mayStay ? 1 : 0) <= 1) {
                continue;
            }
            int[] columns = program.choices().holderColumns(set);
            for (int h = -1; h < columns.length; h++) {
                int column = h < 0 ? program.choices().undoneColumn(set.items.get(0)) : columns[h];
                boolean open = h < 0 ? mayStay : (domain.holders[set.index] >> h & 1) != 0;
                double value = open && column != Program.NO_ROW ? shaken(solution.value(column)) : -1;
                if (value > best) {
                    best = value;
                    chosen = set;
                    holder = h;
                }
            }
        }
        if (chosen == null) {
            return false;
        }
        if (holder < 0) {
            chosen.items.forEach(item -> domain.leastUndone[item.index] = item.count());
        } else {
            new Decision.SetOn(chosen.index, holder).narrow(domain, true, model);
        }
        return true;
    }

    /** One item stays undone in whole pieces, the largest first; false when all that is left undone is whole. */
    private boolean chooseUndone(Solution solution) {
        Item chosen = null;
        double most = UNDONE;
        for (Item item : model.items) {
            int column = program.choices().undoneColumn(item);
            if (column == Program.NO_ROW || item.set != Item.NONE) {
                continue;
            }
            double more = solution.value(column) - domain.leastUndone[item.index];
            if (domain.mostUndone[item.index] > domain.leastUndone[item.index] && shaken(more) > most) {
                most = shaken(more);
                chosen = item;
            }
        }
        if (chosen == null) {
            return false;
        }
        int pieces = (int) Math.max(1, Math.round(most));
        domain.leastUndone[chosen.index] =
                Math.min(domain.mostUndone[chosen.index], domain.leastUndone[chosen.index] + pieces);
        return true;
    }

    private double shaken(double value) {
        return noise == 0 ? value : value * (1 - noise * random.nextDouble());
    }

    /** Settles the reels that are as good as certain, else the one that is most so; false when none is left. */
    private boolean settle(Solution solution) {
        Pattern best = null;
        double most = 0;
        boolean any = false;
        for (Solution.Share share : solution.shares()) {
            Pattern pattern = share.pattern();
            if (settled[pattern.reel] || !pattern.isIn(domain, model)) {
                continue;
            }
            if (share.value() > CERTAIN && !exceeds(pattern)) {
                take(pattern);
                any = true;
            } else {
                double value = shaken(share.value());
                if (value > most) {
                    most = value;
                    best = pattern;
                }
            }
        }
        if (!any && best != null) {
            take(best);
            any = true;
        }
        return any;
    }

    private void take(Pattern pattern) {
        settled[pattern.reel] = true;
        draws.add(pattern);
        for (int t = 0; t < pattern.item.length; t++) {
            residual[pattern.item[t]] = Math.max(0, residual[pattern.item[t]] - pattern.count[t]);
        }
    }
}
