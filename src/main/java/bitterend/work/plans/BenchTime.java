package bitterend.work.plans;

import bitterend.day.BenchDay;
import bitterend.day.BenchDays;
import bitterend.day.BenchHours;
import bitterend.day.BroughtForward;
import bitterend.day.PieceStatus;
import bitterend.demand.Piece;
import bitterend.packing.CutPlan;
import bitterend.packing.Horizon;
import bitterend.packing.PackingProblem;
import bitterend.work.ShopNow;
import bitterend.work.orders.AskOrders;
import java.util.List;

/** What a plan asks of the people at the bench, beside what is cut already and waits for its ends. */
public final class BenchTime {
    private BenchTime() {}

    /** Day by day; nothing for a shop that states no hours. */
    public static List<BenchDay> of(ShopNow shop, PackingProblem problem, CutPlan plan) {
        BenchHours hours = shop.shop().settings().bench().hours();
        return hours.areStated()
                ? new BenchDays(hours, problem, plan.draws(), waiting(shop, problem)).days()
                : List.of();
    }

    /**
     * A plan with reels brought forward, where the hours of a later day would not do.
     *
     * @param brake what is not cut ahead before more rope comes
     */
    static CutPlan spread(ShopNow shop, PackingProblem problem, Horizon brake, CutPlan plan) {
        BenchHours hours = shop.shop().settings().bench().hours();
        return hours.areStated() ? new BroughtForward(hours, problem, brake, waiting(shop, problem)).of(plan) : plan;
    }

    private static List<Piece> waiting(ShopNow shop, PackingProblem problem) {
        return new AskOrders(shop, problem.day())
                .status().orders().stream()
                        .flatMap(order -> order.pieces().stream())
                        .filter(piece -> piece.is(PieceStatus.State.CUT))
                        .flatMap(piece -> shop.book().find(piece.piece()).stream())
                        .toList();
    }
}
