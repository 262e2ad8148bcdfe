package bitterend.report;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.CutPlan;
import bitterend.packing.Unplanned;
import java.util.Set;
import java.util.stream.Collectors;

/** What the plan saves against first fit, the rule of thumb by which a rack is cut without planning. */
final class FirstFitWords {
    private static final String RULE = "First fit, the longest piece first on the first reel that holds it, ";

    private final PlanView view;
    private final Figures figures;

    FirstFitWords(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
    }

    /**
     * Money and metres of waste, what is probably left counted alike in both, where both cut the same pieces; else what
     * first fit leaves undone.
     */
    String of(CutPlan other) {
        Set<String> undone = undone(other);
        Set<String> oursUndone = undone(view.plan());
        if (!undone.equals(oursUndone)) {
            long only =
                    undone.stream().filter(piece -> !oursUndone.contains(piece)).count();
            return RULE + "leaves " + FindingsPage.count((int) only, "piece")
                    + " of the same orders undone that this plan" + " cuts.";
        }
        int reels = other.draws().size() - view.plan().draws().size();
        Length theirs = view.book(other).waste();
        Length ours = view.book(view.plan()).waste();
        Cost cost = other.cost().minus(view.plan().cost());
        return RULE + "would cut the same pieces from "
                + FindingsPage.count(other.draws().size(), "reel") + " with "
                + figures.total(theirs) + " of waste for " + figures.money(other.cost()) + ": this plan "
                + (cost.millis() > 0 ? "saves " + figures.money(cost) : "costs the same")
                + (reels > 0 ? ", " + FindingsPage.count(reels, "reel") : "")
                + (theirs.isLongerThan(ours) && !figures.total(theirs).equals(figures.total(ours))
                        ? ", " + figures.difference(theirs, ours) + " of rope"
                        : "")
                + ".";
    }

    private static Set<String> undone(CutPlan plan) {
        return plan.unplanned().stream().map(Unplanned::piece).collect(Collectors.toSet());
    }
}
