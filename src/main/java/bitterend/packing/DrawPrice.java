package bitterend.packing;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import bitterend.stock.StockValue;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * The price of what one reel gives, for the engines: the value that leaves the rack, the opening, changing and handling.
 * The checker prices a draw by code of its own.
 */
public final class DrawPrice {
    private final StockValue value;
    private final List<Run> runs;
    private final Cost[] wholeRun;
    private final Length loss;
    private final Cost fixed;
    private final Cost handling;

    public DrawPrice(PackingProblem problem, Reel reel) {
        value = problem.valueOn(reel);
        runs = reel.runs();
        wholeRun = runs.stream().map(run -> value.of(run.length())).toArray(Cost[]::new);
        loss = problem.ropeOn(reel).cutting().loss();
        fixed = fixedCost(problem, reel);
        handling = problem.prices().handling();
    }

    /**
     * What touching a reel costs whatever comes off it: opening when it is full, with what its rope loses by that alone,
     * changing, less the credit for its full years on the rack; never negative.
     */
    public static Cost fixedCost(PackingProblem problem, Reel reel) {
        return fetching(problem, reel).plus(lostOnOpening(problem, reel));
    }

    /** What a full reel is worth unopened beyond what its runs are worth as coils. */
    public static Cost lostOnOpening(PackingProblem problem, Reel reel) {
        StockValue value = problem.valueOn(reel);
        return !reel.full()
                ? Cost.ZERO
                : reel.runs().stream()
                        .map(run -> value.unopened(run.length()).minus(value.of(run.length())))
                        .reduce(Cost.ZERO, Cost::plus);
    }

    private static Cost fetching(PackingProblem problem, Reel reel) {
        Prices prices = problem.prices();
        Cost fixed = reel.full() ? prices.opening().plus(prices.changing()) : prices.changing();
        if (reel.papers().received().equals(java.time.LocalDate.MIN)) {
            return fixed;
        }
        long years = Math.max(0, ChronoUnit.YEARS.between(reel.papers().received(), problem.day()));
        Cost credit = prices.ageCredit().times(years);
        return credit.compareTo(fixed) >= 0 ? Cost.ZERO : fixed.minus(credit);
    }

    /** The sound runs of the reel, in physical order. */
    public List<Run> runs() {
        return runs;
    }

    /** Rope lost at each cut. */
    public Length loss() {
        return loss;
    }

    /** The value of one run that leaves the rack under a load. */
    public Cost drop(int run, RunLoad load) {
        return load.isEmpty()
                ? Cost.ZERO
                : wholeRun[run].minus(value.of(load.leftOf(runs.get(run).length(), loss)));
    }

    /**
     * What a draw costs more when one of its runs carries more.
     *
     * @param loads of all runs, as they are
     * @param deepest the last run that is cut, from zero; -1 for a reel that is not touched
     * @param run whose load grows
     * @param then its load then
     */
    public Cost growth(RunLoad[] loads, int deepest, int run, RunLoad then) {
        if (run > deepest) {
            Cost fetched = deepest < 0 ? fixed : Cost.ZERO;
            return fetched.plus(handling.times(run - deepest - 1L)).plus(drop(run, then));
        }
        return drop(run, then).minus(loads[run].isEmpty() ? handling : drop(run, loads[run]));
    }

    /** The price of the whole draw, one load for each run; zero for a reel that is not touched. */
    public Cost of(RunLoad[] loads) {
        int deepest = loads.length - 1;
        while (deepest >= 0 && loads[deepest].isEmpty()) {
            deepest--;
        }
        if (deepest < 0) {
            return Cost.ZERO;
        }
        Cost sum = fixed;
        for (int run = 0; run <= deepest; run++) {
            sum = sum.plus(loads[run].isEmpty() ? handling : drop(run, loads[run]));
        }
        return sum;
    }
}
