package bitterend.front;

import bitterend.exchange.Shop;
import bitterend.measure.Units;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.report.BeforeCut;
import bitterend.report.PlanMark;
import bitterend.report.PlanView;
import bitterend.report.WorkLine;
import bitterend.work.plans.PlanNotes;

/** Gathers what a reader must know to follow a plan. */
public final class PlanViews {
    private PlanViews() {}

    public static PlanView of(Shop shop, PackingProblem problem, CutPlan plan, Units units) {
        return new PlanView(
                shop.settings().name(),
                problem,
                plan,
                BeforeCut.ofAll(shop.catalogue(), units),
                PlanNotes.of(shop, units),
                shop.orders().stream()
                        .map(line -> new WorkLine(line.assembly().ordered(), line.demanded()))
                        .toList(),
                PlanMark.NONE);
    }
}
