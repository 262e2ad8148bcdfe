package bitterend.packing.check;

import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import java.util.Set;
import java.util.TreeSet;

/** Whether the worth of coils that a plan was made with follows from the past, the settings and the morning's rack. */
final class CurveCheck {
    /** Two ways of adding up round differently in the last place. */
    private static final double ROUNDING = 1.01;

    /** An own price may lie so much of the price below the one that just pays for a reel. */
    private static final double OWN_PRICE_STEP = 1.0 / 1024;

    private final Facts facts;
    private final Faults faults;

    CurveCheck(Facts facts, Faults faults) {
        this.facts = facts;
        this.faults = faults;
    }

    void check() {
        Set<String> ropes = new TreeSet<>();
        facts.problem().reels().forEach(reel -> ropes.add(reel.rope()));
        for (String rope : ropes) {
            StockValue value = facts.problem().values().get(rope);
            if (value instanceof CoilValue coils) {
                check(rope, coils);
            }
        }
    }

    private void check(String rope, CoilValue coils) {
        CoilTerms terms = coils.terms();
        boolean freeToHold = !terms.interest().isPositive() && terms.room().millis() == 0;
        faults.unless(!freeToHold, Check.CURVE, rope, "neither interest nor room is counted");
        CurveFormula formula = new CurveFormula(coils.past(), terms);
        checkOwnPrice(rope, coils, formula);
        double[] worth = formula.worth((double) coils.own().millisPerMetre(), coils.rack());
        long[] stated = coils.steps();
        for (int step = 0; step < stated.length; step++) {
            double off = worth[step] - stated[step];
            if (off < -ROUNDING || off > ROUNDING) {
                faults.add(
                        Check.CURVE,
                        rope,
                        Faults.says(
                                "worth of " + terms.grid().times(step), "" + stated[step], "" + (long) worth[step]));
                return;
            }
        }
    }

    /** An empty rack values the usual reel at its price, or the price is the dearest there may be. */
    private void checkOwnPrice(String rope, CoilValue coils, CurveFormula formula) {
        CoilTerms terms = coils.terms();
        long price = terms.price().millisPerMetre();
        long own = coils.own().millisPerMetre();
        double paid = terms.reel().mm() / 1e3 * price;
        int reel =
                (int) Math.min(terms.steps(), terms.reel().mm() / terms.grid().mm());
        boolean within = own >= price && own <= price + price / 2;
        boolean paysNoMore = own == price || formula.worth((double) own, bitterend.measure.Length.ZERO)[reel] <= paid;
        double next = own + Math.max(1, price * OWN_PRICE_STEP);
        boolean paysAsMuch =
                own == price + price / 2 || formula.worth(next, bitterend.measure.Length.ZERO)[reel] > paid;
        faults.unless(
                within && paysNoMore && paysAsMuch,
                Check.CURVE,
                rope,
                "the own price " + own + " does not value a reel on an empty rack at its price");
    }
}
