package bitterend.report;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.packing.Bound;
import bitterend.packing.Packing;
import bitterend.packing.PlanPrice;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunId;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** What is proven of a plan, in plain words: how much of its cost could be avoided at the very most. */
public final class Proof {
    /** Costs that differ by less than one minor unit are the same money. */
    private static final Cost SMALLEST_STEP = new Cost(Cost.MILLIS_PER_MINOR);

    private static final String NOT_KNOWN = "not known";

    private final PlanView view;
    private final Figures figures;
    private final PlanPrice prices;

    public Proof(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
        prices = new PlanPrice(view.problem());
    }

    /**
     * What is proven for ropes that were packed together, as printed.
     *
     * @param ropes their ids
     * @param cost what their draws cost
     * @param bound what no plan that leaves no more undone in any class costs less than; or {@code not known}
     * @param avoidable the difference in money; {@code proven best} when there is none and the proof is written down,
     *     {@code best by search} when there is none and it is not; or {@code not known}
     * @param metres the same as rope; empty when there is none
     * @param gap the same in per cent of the rope in their pieces; empty when there is none
     */
    public record Row(String ropes, String cost, String bound, String avoidable, String metres, String gap) {}

    /** One row for each group of ropes packed together; none when nothing is proven. */
    public List<Row> rows() {
        return view.plan().bounds().stream().map(this::row).toList();
    }

    /** A bound of nothing on rope that costs something says nothing. */
    private boolean isKnown(Bound bound) {
        return bound.best().compareTo(Cost.ZERO) > 0 || isNothing(cost(bound.ropes()));
    }

    /** What is proven of the whole plan, in plain words. */
    public String sentence() {
        List<Bound> known = view.plan().bounds().stream().filter(this::isKnown).toList();
        List<String> others = view.plan().bounds().stream()
                .filter(bound -> !isKnown(bound))
                .flatMap(bound -> bound.ropes().stream())
                .toList();
        if (known.isEmpty()) {
            return "Nothing is proven about how much less another plan could cost.";
        }
        String open = others.isEmpty()
                ? ""
                : " For " + String.join(", ", others) + " it is not known how much less another plan could cost.";
        return ofThese(known, others.isEmpty()) + open;
    }

    private String ofThese(List<Bound> bounds, boolean all) {
        Cost best = sum(bounds, Bound::best);
        Cost cost = all ? view.plan().cost() : sum(bounds, bound -> cost(bound.ropes()));
        Cost avoidable = cost.minus(best);
        String plans =
                view.plan().unplanned().isEmpty() ? "No plan" : "No plan that leaves no more undone in any class";
        String ropes = all ? "" : " of the other ropes";
        Cost shown = sum(bounds, Bound::shown);
        if (isNothing(avoidable)) {
            String less = plans.toLowerCase(Locale.ROOT) + ropes + " costs less";
            return isNothing(cost.minus(shown))
                    ? "Proven best: " + less + "."
                    : "Best by search: " + less + ". A proof that can be worked out again reaches "
                            + figures.atLeast(shown) + ".";
        }
        return plans + ropes + " can cost less than " + figures.atLeast(best) + ". This one costs "
                + figures.money(cost)
                + ": at the very most " + figures.atMost(avoidable) + " could be avoided, a gap of "
                + figures.percentAtMost(
                        avoidable.millis(),
                        sum(bounds, bound -> worth(bound.ropes())).millis(),
                        2)
                + " % of the rope in the pieces." + reaching(best, shown);
    }

    /** What a bound that rests on the search in part is worth by its proof alone. */
    private String reaching(Cost best, Cost shown) {
        return isNothing(best.minus(shown))
                ? ""
                : " A proof that can be worked out again reaches " + figures.atLeast(shown) + ".";
    }

    private static Cost sum(List<Bound> bounds, Function<Bound, Cost> part) {
        return bounds.stream().map(part).reduce(Cost.ZERO, Cost::plus);
    }

    private Row row(Bound bound) {
        Cost cost = cost(bound.ropes());
        String ropes = String.join(", ", bound.ropes());
        if (!isKnown(bound)) {
            return new Row(ropes, figures.bare(cost.rounded()), NOT_KNOWN, NOT_KNOWN, "", "");
        }
        Cost avoidable = cost.minus(bound.best());
        boolean best = isNothing(avoidable);
        return new Row(
                ropes,
                figures.bare(cost.rounded()),
                figures.bare(bound.best().roundedDown()),
                best ? bestOf(cost, bound) : figures.bare(avoidable.roundedUp()),
                best ? "" : metres(bound, avoidable),
                best
                        ? ""
                        : figures.percentAtMost(
                                avoidable.millis(), worth(bound.ropes()).millis(), 2));
    }

    private static String bestOf(Cost cost, Bound bound) {
        return isNothing(cost.minus(bound.shown())) ? "proven best" : "best by search";
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

    /** Draws of these ropes, orders split over their lots, and pieces moved to them. */
    private Cost cost(List<String> ropes) {
        Map<String, RunId> places = new HashMap<>();
        Cost cost = Cost.ZERO;
        for (ReelDraw draw : view.plan().draws()) {
            if (ropes.contains(view.rope(draw).id())) {
                cost = cost.plus(draw.cost());
                draw.runs().forEach(run -> run.cuts()
                        .forEach(cut -> places.put(cut.piece(), new RunId(draw.reel(), run.run()))));
            }
        }
        return cost.plus(prices.acrossReels(new Packing(places)));
    }

    private Cost worth(List<String> ropes) {
        return view.plan().draws().stream()
                .filter(draw -> ropes.contains(view.rope(draw).id()))
                .map(draw -> view.worth(draw, draw.book().pieces()))
                .reduce(Cost.ZERO, Cost::plus);
    }
}
