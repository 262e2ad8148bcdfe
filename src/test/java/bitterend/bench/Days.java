package bitterend.bench;

import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.search.Profile;
import bitterend.packing.search.Search;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.time.Duration;

/** What the engines save on generated real days. */
public final class Days {
    private Days() {}

    public static void main(String[] args) {
        int pieces = Integer.parseInt(args[0]);
        int days = Integer.parseInt(args[1]);
        long cpu = Long.parseLong(args[2]) * 1_000_000;
        for (int a = 3; a < args.length; a++) {
            Findings findings = new Findings();
            Profile profile = Profile.read(Path.of(args[a]), findings).orElse(null);
            findings.sorted().forEach(System.out::println);
            if (profile == null) {
                return;
            }
            long total = 0;
            long weight = 0;
            StringBuilder line = new StringBuilder();
            for (int seed = 0; seed < days; seed++) {
                PackingProblem problem = RealDay.of(seed, pieces);
                PlanPrice price = new PlanPrice(problem);
                GreedyPacker greedy = new GreedyPacker(problem);
                Packing start = greedy.best();
                ThreadMXBean threads = ManagementFactory.getThreadMXBean();
                long me = Thread.currentThread().getId();
                long from = threads.getThreadCpuTime(me);
                Effort effort = new Effort(
                        Duration.ofMinutes(10),
                        Long.MAX_VALUE,
                        seed,
                        1,
                        () -> threads.getThreadCpuTime(me) - from > cpu,
                        progress -> {});
                Packing found = Search.improve(problem, start, effort, profile, Cost.ZERO);
                weight += price.unplannedWeight(found);
                total += price.of(start).millis() - price.of(found).millis();
                line.append(' ').append(show(price, found));
            }
            System.out.println(args[a] + " weight " + weight + " saved " + total / 1000 + line);
        }
    }

    private static String show(PlanPrice price, Packing packing) {
        return price.unplannedWeight(packing) + "/" + price.of(packing).millis() / 1000;
    }
}
