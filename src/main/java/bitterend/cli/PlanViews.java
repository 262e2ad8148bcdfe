package bitterend.cli;

import bitterend.catalogue.Rope;
import bitterend.exchange.Shop;
import bitterend.finding.Finding;
import bitterend.measure.Units;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.report.BeforeCut;
import bitterend.report.PlanView;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Gathers what a reader must know to follow a plan. */
final class PlanViews {
    private PlanViews() {}

    static PlanView of(Shop shop, PackingProblem problem, CutPlan plan, Units units) {
        return new PlanView(shop.settings().name(), problem, plan, beforeCut(shop, units), notes(shop));
    }

    private static Map<String, BeforeCut> beforeCut(Shop shop, Units units) {
        Map<String, BeforeCut> byRope = new TreeMap<>();
        for (Rope rope : shop.catalogue().ropes()) {
            shop.catalogue()
                    .splices()
                    .findPreparation(rope)
                    .ifPresent(
                            found -> byRope.put(rope.id(), new BeforeCut(found.brief(rope), found.words(rope, units))));
        }
        return byRope;
    }

    /** What the demand model has to say about the work, as far as it does not stop it. */
    private static List<Finding> notes(Shop shop) {
        return shop.orders().stream()
                .flatMap(order -> order.demanded().findings().stream())
                .toList();
    }
}
