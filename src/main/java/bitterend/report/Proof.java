package bitterend.report;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.packing.Bound;
import bitterend.packing.ReelDraw;
import java.util.List;
import java.util.Locale;

/** What is proven of a plan, in plain words: how much of its cost could be avoided at the very most. */
public final class Proof {
    /** Costs that differ by less than one minor unit are the same money. */
    private static final Cost SMALLEST_STEP = new Cost(Cost.MILLIS_PER_MINOR);

    private final PlanView view;
    private final Figures figures;

    public Proof(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
    }

    /**
     * What is proven for ropes that were packed together, as printed.
     *
     * @param ropes their ids
     * @param cost what their draws cost
     * @param bound what no plan that leaves no more unplanned costs less than
     * @param avoidable the difference in money; {@code proven best} when there is none
     * @param metres the same as rope; empty when there is none
     * @param gap the same in per cent of the rope in their pieces; empty when there is none
     */
    public record Row(String ropes, String cost, String bound, String avoidable, String metres, String gap) {}

    /** One row for each group of ropes packed together; none when nothing is proven. */
    public List<Row> rows() {
        return view.plan().bounds().stream().map(this::row).toList();
    }

    /** What is proven of the whole plan, in plain words. */
    public String sentence() {
        List<Bound> bounds = view.plan().bounds();
        if (bounds.isEmpty()) {
            return "Nothing is proven about how much less another plan could cost.";
        }
        Cost best = bounds.stream().map(Bound::best).reduce(Cost.ZERO, Cost::plus);
        Cost avoidable = view.plan().cost().minus(best);
        boolean all = view.plan().unplanned().isEmpty();
        String plans = all ? "No plan" : "No plan that leaves no more unplanned";
        if (isNothing(avoidable)) {
            return "Proven best: " + plans.toLowerCase(Locale.ROOT) + " costs less.";
        }
        Cost worth = bounds.stream().map(bound -> worth(bound.ropes())).reduce(Cost.ZERO, Cost::plus);
        return plans + " can cost less than " + figures.money(best) + ". This one costs "
                + figures.money(view.plan().cost()) + ": at the very most " + figures.money(avoidable)
                + " could be avoided, a gap of " + figures.percent(avoidable.millis(), worth.millis(), 2)
                + " % of the rope in the pieces.";
    }

    private Row row(Bound bound) {
        Cost cost = cost(bound.ropes());
        Cost avoidable = cost.minus(bound.best());
        boolean best = isNothing(avoidable);
        return new Row(
                String.join(", ", bound.ropes()),
                figures.bare(cost.rounded()),
                figures.bare(bound.best().rounded()),
                best ? "proven best" : figures.bare(avoidable.rounded()),
                best ? "" : metres(bound, avoidable),
                best
                        ? ""
                        : figures.percent(
                                avoidable.millis(), worth(bound.ropes()).millis(), 2));
    }

    private static boolean isNothing(Cost avoidable) {
        return avoidable.compareTo(SMALLEST_STEP) < 0;
    }

    /** The avoidable cost as rope of the cheapest of these ropes, rounded up. */
    private String metres(Bound bound, Cost avoidable) {
        long price = bound.ropes().stream()
                .map(view.problem()::rope)
                .mapToLong(rope -> rope.price().millisPerMetre())
                .min()
                .orElse(0);
        return price == 0 ? "" : figures.bare(new Length(new Ratio(1000, price).timesRoundedUp(avoidable.millis())));
    }

    private Cost cost(List<String> ropes) {
        return view.plan().draws().stream()
                .filter(draw -> ropes.contains(view.rope(draw).id()))
                .map(ReelDraw::cost)
                .reduce(Cost.ZERO, Cost::plus);
    }

    private Cost worth(List<String> ropes) {
        return view.plan().draws().stream()
                .filter(draw -> ropes.contains(view.rope(draw).id()))
                .map(draw -> view.worth(draw, draw.book().pieces()))
                .reduce(Cost.ZERO, Cost::plus);
    }
}
