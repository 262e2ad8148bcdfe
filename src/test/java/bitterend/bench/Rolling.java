package bitterend.bench;

import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.order.CuttingOrder;
import bitterend.packing.strategy.EffortLevel;
import bitterend.packing.strategy.FullStrategy;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Sixty days on one stock, planned by best fit and by everything we have, for several prices of opening a reel: reels
 * bought, scrap, coils left, cost. The default prices were chosen by this table.
 */
@Command(name = "rolling")
final class Rolling implements Callable<Integer> {
    private static final int DAYS = 60;
    private static final int[] OPENING_CM = {10, 50, 100, 200, 500};

    @Parameters(index = "0", arity = "0..1", paramLabel = "SEEDS")
    private int seeds = 5;

    @Parameters(index = "1", arity = "0..1", paramLabel = "SECONDS")
    private long seconds = 2;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Override
    public Integer call() {
        Benchmarks.positive(spec, "SEEDS", seeds);
        Benchmarks.positive(spec, "SECONDS", seconds);
        out().println(DAYS + " days, " + seeds + " seeds, means");
        out().println("opening_m planner reels scrap_m coils cost");
        for (int opening : OPENING_CM) {
            row(opening, "best-fit", Rolling::bestFit);
            row(opening, "full", FullStrategy.at(EffortLevel.QUICK));
        }
        return 0;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private void row(int openingCm, String name, Packer packer) {
        double reels = 0;
        double scrap = 0;
        double coils = 0;
        double cost = 0;
        for (int seed = 1; seed <= seeds; seed++) {
            RollingStock stock = sixtyDays(seed, openingCm, packer, seconds);
            reels += stock.bought();
            scrap += stock.scrap().mm() / 1000.0;
            coils += stock.coils();
            cost += stock.cost().millis() / 100_000.0;
        }
        out().printf(
                        Locale.ROOT,
                        "%.1f %s %.2f %.2f %.2f %.2f%n",
                        openingCm / 100.0,
                        name,
                        reels / seeds,
                        scrap / seeds,
                        coils / seeds,
                        cost / seeds);
    }

    private static RollingStock sixtyDays(long seed, int openingCm, Packer packer, long seconds) {
        RollingStock stock = new RollingStock(seed, openingCm);
        for (int day = 0; day < DAYS; day++) {
            PackingProblem problem = stock.morning();
            Packing packing =
                    packer.pack(problem, Effort.of(Duration.ofSeconds(seconds))).packing();
            CutPlan plan = new CuttingOrder(problem).plan(packing);
            if (!plan.unplanned().isEmpty()) {
                throw new IllegalStateException("day " + day + " leaves work undone: " + plan.unplanned());
            }
            stock.evening(problem, plan);
        }
        return stock;
    }

    private static Packer.Result bestFit(PackingProblem problem, Effort effort) {
        Packing packing = new GreedyPacker(problem).bestFit();
        return new Packer.Result(packing, new PlanPrice(problem).of(packing), List.of());
    }
}
