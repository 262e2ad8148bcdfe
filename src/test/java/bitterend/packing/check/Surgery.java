package bitterend.packing.check;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Bound;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.Unplanned;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Changes one thing in a plan; totals follow, so that nothing else is wrong with it. */
final class Surgery {
    private Surgery() {}

    static CutPlan draws(CutPlan plan, List<ReelDraw> draws) {
        Cost across = plan.cost().minus(sum(plan.draws()));
        LengthBook book = draws.stream().map(ReelDraw::book).reduce(LengthBook.EMPTY, LengthBook::plus);
        return new CutPlan(plan.day(), draws, plan.unplanned(), book, sum(draws).plus(across), plan.bounds());
    }

    private static Cost sum(List<ReelDraw> draws) {
        return draws.stream().map(ReelDraw::cost).reduce(Cost.ZERO, Cost::plus);
    }

    static CutPlan draw(CutPlan plan, String reel, UnaryOperator<ReelDraw> change) {
        return draws(
                plan,
                plan.draws().stream()
                        .map(draw -> draw.reel().equals(reel) ? change.apply(draw) : draw)
                        .toList());
    }

    static CutPlan run(CutPlan plan, String reel, int run, UnaryOperator<RunDraw> change) {
        return draw(
                plan,
                reel,
                draw -> runs(
                        draw,
                        draw.runs().stream()
                                .map(each -> each.run() == run ? change.apply(each) : each)
                                .toList()));
    }

    static CutPlan cut(CutPlan plan, String piece, UnaryOperator<Cut> change) {
        return draws(
                plan,
                plan.draws().stream()
                        .map(draw -> runs(
                                draw,
                                draw.runs().stream()
                                        .map(run -> cuts(
                                                run,
                                                run.cuts().stream()
                                                        .map(cut -> cut.piece().equals(piece) ? change.apply(cut) : cut)
                                                        .toList()))
                                        .toList()))
                        .toList());
    }

    static Cut moved(Cut cut, long fromBy, long toBy) {
        return new Cut(
                cut.piece(), cut.from().plus(new Length(fromBy)), cut.to().plus(new Length(toBy)));
    }

    static RunDraw cuts(RunDraw run, List<Cut> cuts) {
        return new RunDraw(run.run(), run.from(), run.to(), cuts, run.left(), run.rest());
    }

    /** The same pieces in another order, each behind the one before and a cut loss. */
    static RunDraw inOrder(RunDraw run, long loss, String... pieces) {
        Map<String, Length> lengths = new HashMap<>();
        run.cuts().forEach(cut -> lengths.put(cut.piece(), cut.length()));
        List<Cut> cuts = new ArrayList<>();
        Length at = run.cuts().get(0).from();
        for (String piece : pieces) {
            Length end = at.plus(lengths.getOrDefault(piece, Length.ZERO));
            cuts.add(new Cut(piece, at, end));
            at = end.plus(new Length(loss));
        }
        return cuts(run, cuts);
    }

    static ReelDraw runs(ReelDraw draw, List<RunDraw> runs) {
        return new ReelDraw(draw.reel(), draw.leadTrim(), runs, draw.leftOnReel(), draw.book(), draw.cost());
    }

    static ReelDraw cost(ReelDraw draw, long byMillis) {
        Cost cost = draw.cost().plus(new Cost(byMillis));
        return new ReelDraw(draw.reel(), draw.leadTrim(), draw.runs(), draw.leftOnReel(), draw.book(), cost);
    }

    static ReelDraw book(ReelDraw draw, LengthBook book) {
        return new ReelDraw(draw.reel(), draw.leadTrim(), draw.runs(), draw.leftOnReel(), book, draw.cost());
    }

    static CutPlan cost(CutPlan plan, long byMillis) {
        return new CutPlan(
                plan.day(),
                plan.draws(),
                plan.unplanned(),
                plan.book(),
                plan.cost().plus(new Cost(byMillis)),
                plan.bounds());
    }

    static CutPlan unplanned(CutPlan plan, List<Unplanned> unplanned) {
        return new CutPlan(plan.day(), plan.draws(), unplanned, plan.book(), plan.cost(), plan.bounds());
    }

    static CutPlan bounds(CutPlan plan, Bound... bounds) {
        return new CutPlan(plan.day(), plan.draws(), plan.unplanned(), plan.book(), plan.cost(), List.of(bounds));
    }

    static <T> List<T> swapped(List<T> list, int one, int other) {
        List<T> swapped = new ArrayList<>(list);
        swapped.set(one, list.get(other));
        swapped.set(other, list.get(one));
        return swapped;
    }

    static <T> List<T> with(List<T> list, T more) {
        List<T> longer = new ArrayList<>(list);
        longer.add(more);
        return longer;
    }
}
