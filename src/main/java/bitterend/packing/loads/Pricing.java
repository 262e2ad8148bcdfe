package bitterend.packing.loads;

import bitterend.packing.effort.Budget;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The best draw from every reel by whole prices; runs on the same terms share a table. */
final class Pricing {
    private final LoadModel model;
    private final LoadTable table = new LoadTable();
    private final Steps steps = new Steps();
    /** Prices of draws count; when weight alone is asked for they do not. */
    private final boolean priced;

    private long states;
    private long pricings;

    Pricing(LoadModel model, boolean priced) {
        this.model = model;
        this.priced = priced;
    }

    /**
     * The best draw from every reel.
     *
     * @param residual how many of each item may be cut
     * @param settled reels that are not asked about; their offers are null
     */
    ReelOffer[] price(Duals duals, Domain domain, int[] residual, boolean[] settled, Budget budget) {
        Map<Steps, List<RunOfCells>> groups = new LinkedHashMap<>();
        RunOffer[] offers = new RunOffer[model.runs.length];
        Arrays.fill(offers, RunOffer.NOTHING);
        for (RunOfCells run : model.runs) {
            if (!settled[run.reel] && domain.most[run.index] > 0) {
                list(run, duals, domain, residual);
                groups.computeIfAbsent(steps.closed(), any -> new ArrayList<>()).add(run);
            }
        }
        groups.forEach((by, runs) -> {
            int largest =
                    runs.stream().mapToInt(run -> domain.most[run.index]).max().orElse(0);
            int[] worth = table.fill(by, largest);
            budget.spend((long) largest * by.count() / 4);
            states += (long) largest * by.copies();
            for (RunOfCells run : runs) {
                offers[run.index] = best(run, worth, domain);
            }
        });
        pricings++;
        ReelOffer[] all = new ReelOffer[model.reels.length];
        for (ReelOfRuns reel : model.reels) {
            if (!settled[reel.index]) {
                RunOffer[] own = new RunOffer[reel.runs.length];
                for (int j = 0; j < own.length; j++) {
                    own[j] = offers[reel.runs[j].index];
                }
                all[reel.index] = new ReelOffer(priced ? reel : reel.free(), own, domain);
            }
        }
        return all;
    }

    /** States of the tables that one pricing takes, on an average. */
    long states() {
        return states / Math.max(1, pricings);
    }

    private RunOffer best(RunOfCells run, int[] worth, Domain domain) {
        int from = Math.max(1, domain.least[run.index]);
        int to = domain.most[run.index];
        int[] drop = priced ? run.drop : model.nothing;
        int most = most(worth, drop, from, to);
        if (most <= LoadTable.REACHED) {
            return RunOffer.NOTHING;
        }
        int load = from;
        while (worth[load] - drop[load] != most) {
            load++;
        }
        return new RunOffer(most, load, table.takes(load));
    }

    private static int most(int[] worth, int[] drop, int from, int to) {
        int most = LoadTable.NEVER;
        for (int c = from; c <= to; c++) {
            most = Math.max(most, worth[c] - drop[c]);
        }
        return most;
    }

    /** Lists what a run may give: orders that are charged first, with their sets in them, then other sets, then the rest. */
    private void list(RunOfCells run, Duals duals, Domain domain, int[] residual) {
        steps.clear();
        for (OrderOnLots order : model.orders) {
            int charge = duals.charge(false, order.index, run.index);
            if (charge > 0) {
                steps.open();
            }
            boolean forced = false;
            for (Item item : order.items) {
                forced |= list(item, run, duals, domain, residual);
            }
            for (SetOfPieces set : order.sets) {
                forced |= list(set, run, duals, domain, residual);
            }
            if (charge > 0) {
                steps.charge(charge, forced);
            }
        }
        for (SetOfPieces set : model.sets) {
            if (set.order == Item.NONE) {
                list(set, run, duals, domain, residual);
            }
        }
        for (Item item : model.items) {
            if (item.order == Item.NONE && item.set == Item.NONE) {
                list(item, run, duals, domain, residual);
            }
        }
    }

    private boolean list(SetOfPieces set, RunOfCells run, Duals duals, Domain domain, int[] residual) {
        int charge = duals.charge(true, set.index, run.index);
        if (charge > 0) {
            steps.open();
        }
        boolean forced = false;
        for (Item item : set.items) {
            forced |= list(item, run, duals, domain, residual);
        }
        if (charge > 0) {
            steps.charge(charge, forced);
        }
        return forced;
    }

    /** Lists an item if it may be cut there; whether some of it must. */
    private boolean list(Item item, RunOfCells run, Duals duals, Domain domain, int[] residual) {
        int size = item.cells[run.reel];
        int least = domain.leastCopies(run.index, item);
        if (!domain.isOpen(item, run.reel) || size > domain.most[run.index]) {
            if (least > 0) {
                steps.item(item.index, run.room + 1, 0, 1, 0);
            }
            return least > 0;
        }
        int price = duals.piece[item.index][item.slot[run.reel]];
        int most = Math.min(residual[item.index], domain.mostCopies(run.index, item));
        boolean useless = price == 0 && least == 0 && isLast(run) && domain.least[run.index] == 0;
        if (!useless && (most > 0 || least > 0)) {
            steps.item(item.index, size, price, least, most);
        }
        return least > 0;
    }

    private boolean isLast(RunOfCells run) {
        return run.place == model.reels[run.reel].runs.length - 1;
    }
}
