package bitterend.report;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.packing.Bound;
import bitterend.packing.Packing;
import bitterend.packing.PlanPrice;
import bitterend.packing.ReelDraw;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What is proven of a plan, in plain words: how much of its cost could be avoided at the very most. Ropes of which nothing is
 * planned cost nothing, and are not counted.
 */
public final class Proof {
    /** Costs that differ by less than one minor unit are the same money. */
    private static final Cost SMALLEST_STEP = new Cost(Cost.MILLIS_PER_MINOR);

    private static final String PROVEN = "proven best";
    private static final String SEARCHED = "best by search";
    private static final String NOT_KNOWN = "not known";

    private final PlanView view;
    private final Figures figures;
    private final PlanPrice prices;
    private final Set<String> cut;
    private final List<Bound> bounds;

    public Proof(PlanView view, Figures figures) {
        this.view = view;
        this.figures = figures;
        prices = new PlanPrice(view.problem());
        cut = view.plan().draws().stream().map(draw -> view.rope(draw).id()).collect(Collectors.toSet());
        bounds = view.plan().bounds().stream()
                .filter(bound -> bound.ropes().stream().anyMatch(cut::contains))
                .toList();
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

    /** One row for each group of ropes packed together of which anything is planned; none when nothing is proven. */
    public List<Row> rows() {
        return bounds.stream().map(this::row).toList();
    }

    /** A bound of nothing on rope that costs something says nothing. */
    private boolean isKnown(Bound bound) {
        return bound.best().compareTo(Cost.ZERO) > 0 || isNothing(cost(bound.ropes()));
    }

    /** What is proven of the whole plan, in plain words. */
    public String sentence() {
        if (view.plan().draws().isEmpty() && !view.plan().bounds().isEmpty()) {
            return "Nothing is planned.";
        }
        List<Bound> known = bounds.stream().filter(this::isKnown).toList();
        List<String> unknown =
                ropes(bounds.stream().filter(bound -> !isKnown(bound)).toList());
        if (known.isEmpty()) {
            return "Whether another plan costs less is not known.";
        }
        List<Bound> best = known.stream().filter(this::isBest).toList();
        List<Bound> open = known.stream().filter(bound -> !best.contains(bound)).toList();
        List<String> said = new ArrayList<>();
        if (!best.isEmpty()) {
            said.add(nothingBetter(best));
        }
        if (!open.isEmpty()) {
            said.add(saved(open, best.isEmpty()));
        }
        if (!unknown.isEmpty()) {
            said.add("not known for " + String.join(", ", unknown));
        }
        return LengthsPage.sentence(String.join("; ", said) + undone())
                + new ProofGap(view, prices).why(open)
                + reaching(sum(known, Bound::best), sum(known, Bound::shown));
    }

    /** The same without money, for the bench; empty where it would say nothing. */
    public String forTheBench() {
        List<Bound> best =
                bounds.stream().filter(this::isKnown).filter(this::isBest).toList();
        return best.isEmpty() ? "" : LengthsPage.sentence(nothingBetter(best) + undone());
    }

    /** Whether no plan costs less for these ropes. */
    private boolean isBest(Bound bound) {
        return isNothing(cost(bound.ropes()).minus(bound.best()));
    }

    private String nothingBetter(List<Bound> best) {
        int all = ropes(bounds).size();
        int settled = ropes(best).size();
        return (settled == all
                        ? "nothing better exists"
                        : "nothing better exists for " + settled + " of " + FindingsPage.count(all, "rope"))
                + kinds(best);
    }

    /** How many of them are proven and how many are the best that was found; empty where all are proven. */
    private String kinds(List<Bound> best) {
        int proven = ropes(best.stream().filter(this::isShown).toList()).size();
        int searched = ropes(best).size() - proven;
        if (searched == 0) {
            return "";
        }
        return proven == 0
                ? " (" + SEARCHED + ")"
                : " (" + proven + " " + PROVEN + ", " + searched + " " + SEARCHED + ")";
    }

    /** Whether what is written down proves that no plan costs less for these ropes. */
    private boolean isShown(Bound bound) {
        return isNothing(cost(bound.ropes()).minus(bound.shown()));
    }

    private String saved(List<Bound> open, boolean alone) {
        Cost avoidable = sum(open, bound -> cost(bound.ropes()).minus(bound.best()));
        int ropes = ropes(open).size();
        boolean all = ropes == ropes(bounds).size();
        return "at most " + figures.atMost(avoidable) + " could be saved"
                + (all ? "" : " on " + (alone ? FindingsPage.count(ropes, "rope") : ropes + " more")) + ", "
                + figures.percentAtMost(
                        avoidable.millis(),
                        sum(open, bound -> worth(bound.ropes())).millis(),
                        1)
                + " % of the rope in their pieces";
    }

    /** Among which plans nothing is better, where not all work is done. */
    private String undone() {
        return view.plan().unplanned().isEmpty() ? "" : ", among plans that leave no more undone";
    }

    /** Those of which something is planned. */
    private List<String> ropes(List<Bound> some) {
        return some.stream()
                .flatMap(bound -> bound.ropes().stream())
                .filter(cut::contains)
                .toList();
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
                best ? (isShown(bound) ? PROVEN : SEARCHED) : figures.bare(avoidable.roundedUp()),
                best ? "" : metres(bound, avoidable),
                best
                        ? ""
                        : figures.percentAtMost(
                                avoidable.millis(), worth(bound.ropes()).millis(), 1));
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
        List<ReelDraw> draws = view.plan().draws().stream()
                .filter(draw -> ropes.contains(view.rope(draw).id()))
                .toList();
        Cost cost = draws.stream().map(ReelDraw::cost).reduce(Cost.ZERO, Cost::plus);
        return cost.plus(prices.acrossReels(Packing.of(draws)));
    }

    private Cost worth(List<String> ropes) {
        return view.plan().draws().stream()
                .filter(draw -> ropes.contains(view.rope(draw).id()))
                .map(draw -> view.worth(draw, draw.book().pieces()))
                .reduce(Cost.ZERO, Cost::plus);
    }
}
