package bitterend.cli;

import bitterend.exchange.PlanFolder;
import bitterend.exchange.Shop;
import bitterend.finding.Findings;
import bitterend.packing.PackingProblem;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.work.IssuedWork;
import bitterend.work.IssuedWork.OnTheBench;
import bitterend.work.Plans;
import java.util.List;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** What a new plan does with sheets that are issued and not posted: it leaves them, unless they are called back. */
final class OnTheBenchOption {
    @Option(
            names = "--withdraw",
            description = "Call issued sheets back: what is issued and not cut is planned anew, too.")
    private boolean withdraw;

    private List<OnTheBench> reels = List.of();

    /** Tells what lies on the bench, and holds the day to it unless it is called back. */
    PackingProblem held(PackingProblem day, Terminal terminal, GateTold gate, Plans plans, Shop shop, Figures figures) {
        reels = new IssuedWork(plans, kept -> gate.verdict(kept, shop), day).reels();
        if (reels.isEmpty()) {
            return day;
        }
        terminal.err().println("issued and not posted:");
        for (OnTheBench reel : reels) {
            String ends = reel.holds()
                    ? withdraw ? ": called back" : ""
                    : ": its sheet no longer holds: " + figures.sentence(reel.broken());
            terminal.err()
                    .println("  plan " + reel.plan() + ", reel " + reel.reel() + ", "
                            + FindingsPage.count(reel.pieces().size(), "piece") + " to cut" + ends);
        }
        if (withdraw) {
            return day;
        }
        terminal.err()
                .println(
                        reels.stream().allMatch(OnTheBench::holds)
                                ? "They stay as they are issued. To plan them anew, call the sheets back with --withdraw."
                                : "What no longer holds is planned anew: take that sheet off the bench."
                                        + (reels.stream().anyMatch(OnTheBench::holds)
                                                ? " The others stay as they are issued."
                                                : ""));
        return IssuedWork.pinned(day, reels);
    }

    /** Writes down what was called back, once another plan is in force. */
    void calledBack(Plans plans, BiConsumer<PlanFolder.Kept, List<String>> withdrawn) {
        if (withdraw) {
            TreeMap<Integer, List<String>> byPlan = reels.stream()
                    .collect(Collectors.groupingBy(
                            OnTheBench::plan, TreeMap::new, Collectors.mapping(OnTheBench::reel, Collectors.toList())));
            byPlan.forEach((number, called) ->
                    plans.read(number, new Findings()).ifPresent(plan -> withdrawn.accept(plan, called)));
        }
    }
}
