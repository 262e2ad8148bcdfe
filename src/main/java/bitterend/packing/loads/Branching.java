package bitterend.packing.loads;

import java.util.List;
import java.util.Optional;

/**
 * Where to branch: work left undone in part; then a run that is used in part, the largest first; then a set on several
 * holders; then loads that are spread over a run and lots of orders; then the least parts of all these; and copies last.
 */
final class Branching {
    private static final double PART = 0.03;
    /** The same of a run that is used or not: what is left of it may be all that is open. */
    private static final double PART_OF_RUN = 0.003;

    private static final double SMALL = 1e-5;

    private final LoadModel model;
    private final Program program;
    private final Solution solution;
    private final Domain domain;
    /** Values closer to whole ones than this are whole. */
    private double part = PART;

    private double bestScore;
    private Optional<Decision> best = Optional.empty();

    Branching(Program program, Solution solution, Domain domain) {
        this.model = program.model;
        this.program = program;
        this.solution = solution;
        this.domain = domain;
    }

    /** The best statement of the first rule that has any; empty when the solution is a plan. */
    Optional<Decision> choose() {
        List<Runnable> rules = List.of(this::undone, this::used, this::holders, () -> {
            spread();
            lots();
        });
        for (double least : new double[] {PART, SMALL}) {
            part = least;
            for (Runnable rule : rules) {
                rule.run();
                if (best.isPresent()) {
                    return best;
                }
            }
        }
        copies();
        return best;
    }

    private void offer(Decision cut, double score) {
        if (score > bestScore) {
            bestScore = score;
            best = Optional.of(cut);
        }
    }

    private void undone() {
        for (Item item : model.items) {
            int column = program.choices().undoneColumn(item);
            if (column == Program.NO_ROW) {
                continue;
            }
            double value = solution.value(column);
            double rest = value - Math.floor(value);
            boolean open = (int) value >= domain.leastUndone[item.index] && value < domain.mostUndone[item.index];
            if (open && rest > part && rest < 1 - part) {
                long weight = item.set == Item.NONE ? item.weight : model.sets[item.set].weight();
                int count = item.set == Item.NONE ? (int) value : 0;
                offer(new Decision.UndoneAtMost(item.index, count), rest * (1 - rest) * weight);
            }
        }
    }

    private void used() {
        double[] touched = new double[model.runs.length];
        for (Solution.Share share : solution.shares()) {
            RunOfCells[] runs = model.reels[share.pattern().reel].runs;
            for (int j = 0; j < runs.length; j++) {
                touched[runs[j].index] += share.pattern().loads[j] > 0 ? share.value() : 0;
            }
        }
        double least = Math.min(part, PART_OF_RUN);
        for (RunOfCells run : model.runs) {
            double free = 1 - touched[run.index];
            if (free > least && free < 1 - least && domain.least[run.index] == 0) {
                offer(new Decision.LoadAtMost(run.index, 0), free * (1 - free) * run.room);
            }
        }
    }

    private void holders() {
        for (SetOfPieces set : model.sets) {
            double size = set.items.stream()
                    .mapToDouble(item -> (double) item.count() * size(item))
                    .sum();
            int[] columns = program.choices().holderColumns(set);
            for (int h = 0; h < columns.length; h++) {
                double value = solution.value(columns[h]);
                boolean open = (domain.holders[set.index] >> h & 1) != 0
                        && (Long.bitCount(domain.holders[set.index]) > 1 || domain.mayStayUndone(set));
                if (open && value > part && value < 1 - part) {
                    offer(new Decision.SetOn(set.index, h), Math.min(value, 1 - value) * size);
                }
            }
        }
    }

    private static int size(Item item) {
        int size = 0;
        for (int cells : item.cells) {
            size = Math.max(size, cells);
        }
        return size;
    }

    /** Loads of a run: the value that averaging hides, and a little for how far they lie apart. */
    private void spread() {
        double[] sum = new double[model.runs.length];
        double[] mean = new double[model.runs.length];
        double[] drop = new double[model.runs.length];
        double[] apart = new double[model.runs.length];
        for (Solution.Share share : solution.shares()) {
            RunOfCells[] runs = model.reels[share.pattern().reel].runs;
            for (int j = 0; j < runs.length; j++) {
                int load = share.pattern().loads[j];
                sum[runs[j].index] += share.value();
                mean[runs[j].index] += share.value() * load;
                drop[runs[j].index] += share.value() * runs[j].drop[load];
            }
        }
        for (Solution.Share share : solution.shares()) {
            RunOfCells[] runs = model.reels[share.pattern().reel].runs;
            for (int j = 0; j < runs.length; j++) {
                int run = runs[j].index;
                apart[run] += share.value() * Math.abs(share.pattern().loads[j] - mean[run] / sum[run]);
            }
        }
        for (RunOfCells run : model.runs) {
            int j = run.index;
            if (sum[j] > part && apart[j] > 1e-3) {
                double free = Math.max(0, 1 - sum[j]);
                double average = mean[j] / (sum[j] + free);
                int cut = Math.max(domain.least[j], Math.min(domain.most[j] - 1, (int) average));
                double hidden = Math.abs(run.drop[(int) Math.round(average)] - drop[j] / (sum[j] + free));
                if (cut >= domain.least[j] && cut < domain.most[j]) {
                    offer(new Decision.LoadAtMost(j, cut), hidden + 10 * apart[j]);
                }
            }
        }
    }

    private void lots() {
        for (OrderOnLots order : model.orders) {
            int[] columns = program.choices().lotColumns(order);
            for (int l = 0; l < columns.length && columns[l] != Program.NO_ROW; l++) {
                double value = solution.value(columns[l]);
                boolean open = (domain.mayLots[order.index] & ~domain.mustLots[order.index] & 1 << l) != 0;
                if (open && value > part && value < 1 - part) {
                    offer(new Decision.OrderTakes(order.index, l), Math.min(value, 1 - value) * model.split);
                }
            }
        }
    }

    private void copies() {
        double[][] copies = new double[model.runs.length][model.items.length];
        double[][] whole = new double[model.runs.length][model.items.length];
        for (Solution.Share share : solution.shares()) {
            Pattern pattern = share.pattern();
            RunOfCells[] runs = model.reels[pattern.reel].runs;
            for (int t = 0; t < pattern.item.length; t++) {
                int run = runs[pattern.run[t]].index;
                copies[run][pattern.item[t]] += share.value() * pattern.count[t];
                whole[run][pattern.item[t]] =
                        share.value() > 1 - SMALL ? pattern.count[t] : whole[run][pattern.item[t]];
            }
        }
        for (RunOfCells run : model.runs) {
            for (Item item : model.items) {
                double value = copies[run.index][item.index];
                double rest = value - Math.floor(value);
                boolean open = (int) value >= domain.leastCopies(run.index, item)
                        && value < domain.mostCopies(run.index, item);
                if (open && rest > SMALL && rest < 1 - SMALL) {
                    offer(
                            new Decision.CopiesAtMost(item.index, run.index, (int) value),
                            Math.min(rest, 1 - rest) * size(item));
                }
            }
        }
    }
}
