package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What planning saves against the rule of thumb is said only where both cut the same pieces. */
final class FirstFitWordsTest {
    private static final Figures EURO = new Figures(Units.METRIC, new MoneyText("EUR", 2));

    @Test
    void samePieces_areComparedInMoneyReelsAndMetres() {
        PlanView view = DayOnTheBench.view();
        CutPlan plan = view.plan();
        CutPlan dearer = new CutPlan(
                plan.day(),
                plan.draws(),
                plan.unplanned(),
                plan.book().adding(LengthBook.Account.SCRAP, new Length(4_200)),
                plan.cost().plus(new Cost(1_250 * Cost.MILLIS_PER_MINOR)),
                List.of());
        String words = new FirstFitWords(view, EURO).of(dearer);
        assertTrue(words.endsWith(": this plan saves 12.50 EUR, 4.2 m of rope."), words);
        assertTrue(new FirstFitWords(view, EURO).of(plan).endsWith(": this plan costs the same."));
    }

    @Test
    void moreLeftUndone_isCountedAndNoMoneyIsNamed() {
        PlanView few = DayOnTheBench.crowded(3, 0, 0);
        CutPlan short_ = DayOnTheBench.crowded(3, 2, 0).plan();
        assertEquals(
                "First fit, the longest piece first on the first reel that holds it, leaves 2 pieces of the same orders"
                        + " undone that this plan cuts.",
                new FirstFitWords(few, EURO).of(short_));
    }
}
