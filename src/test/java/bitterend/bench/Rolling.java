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
import java.time.Duration;
import java.util.List;
import java.util.Locale;

/**
 * Sixty days on one stock, planned by best fit and by everything we have, for several prices of opening a reel: reels
 * bought, scrap, coils left, cost. The default prices were chosen by this table.
 */
public final class Rolling {
    private static final int DAYS = 60;
    private static final int[] OPENING_CM = {10, 50, 100, 200, 500};

    private Rolling() {}

    /** Arguments: how many seeds (default 5), seconds a day (default 2). */
    public static void main(String[] args) {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 5;
        long seconds = args.length > 1 ? Long.parseLong(args[1]) : 2;
        System.out.println(DAYS + " days, " + seeds + " seeds, means");
        System.out.println("opening_m planner reels scrap_m coils cost");
        for (int opening : OPENING_CM) {
            row(opening, "best-fit", seeds, Rolling::bestFit, seconds);
            row(opening, "full", seeds, FullStrategy.at(EffortLevel.QUICK), seconds);
        }
    }

    private static void row(int openingCm, String name, int seeds, Packer packer, long seconds) {
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
        System.out.printf(
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
