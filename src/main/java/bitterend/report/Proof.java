package bitterend.report;

import bitterend.catalogue.Rope;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.packing.Bound;
import bitterend.packing.ReelDraw;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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

    /** A sentence for each group of ropes, and one for all of them. */
    public List<String> sentences() {
        List<Bound> bounds = view.plan().bounds();
        if (bounds.isEmpty()) {
            return List.of("Nothing is proven about how much less another plan could cost.");
        }
        List<String> sentences = new ArrayList<>(bounds.stream().map(this::line).toList());
        if (bounds.size() > 1) {
            sentences.add(total(bounds));
        }
        return sentences;
    }

    private String line(Bound bound) {
        Cost cost = cost(bound.ropes());
        String claim = bound.unplannedWeight() == 0
                ? "no plan costs less than "
                : "no plan that leaves no more unplanned costs less than ";
        return String.join(" and ", bound.ropes()) + ": " + claim + figures.money(bound.best())
                + ", and this one costs " + figures.money(cost) + ". "
                + verdict(cost.minus(bound.best()), worth(bound.ropes()), metres(bound, cost));
    }

    private String total(List<Bound> bounds) {
        Cost best = bounds.stream().map(Bound::best).reduce(Cost.ZERO, Cost::plus);
        Cost cost = view.plan().cost();
        Cost worth = bounds.stream().map(bound -> worth(bound.ropes())).reduce(Cost.ZERO, Cost::plus);
        return "In all: " + verdict(cost.minus(best), worth, "");
    }

    private String verdict(Cost avoidable, Cost worth, String metres) {
        if (avoidable.compareTo(SMALLEST_STEP) < 0) {
            return "Proven best.";
        }
        return "Avoidable at most " + figures.money(avoidable) + metres + ", a gap of "
                + figures.percent(avoidable.millis(), worth.millis(), 3) + " % of the rope in the pieces.";
    }

    /** The avoidable cost as rope of the cheapest of these ropes, rounded up. */
    private String metres(Bound bound, Cost cost) {
        UnitPrice price = bound.ropes().stream()
                .map(view.problem()::rope)
                .map(Rope::price)
                .min(Comparator.comparingLong(UnitPrice::millisPerMetre))
                .orElse(new UnitPrice(0));
        long avoidable = cost.minus(bound.best()).millis();
        if (price.millisPerMetre() == 0 || avoidable <= 0) {
            return "";
        }
        BigInteger divisor = BigInteger.valueOf(price.millisPerMetre());
        long mm = BigInteger.valueOf(avoidable)
                .multiply(BigInteger.valueOf(1000))
                .add(divisor.subtract(BigInteger.ONE))
                .divide(divisor)
                .longValueExact();
        return ", the price of " + figures.length(new Length(mm));
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
