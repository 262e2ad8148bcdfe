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

    /** What is saved is what the two figures of waste differ by, as they are printed. */
    @Test
    void rope_thatIsSaved_isTheDifferenceOfTheWastesOnThePage() {
        PlanView view = DayOnTheBench.view();
        CutPlan plan = view.plan();
        long odd = 49 - plan.book().waste().mm() % 100;
        CutPlan more = new CutPlan(
                plan.day(),
                plan.draws(),
                plan.unplanned(),
                plan.book().adding(LengthBook.Account.SCRAP, new Length(4_200 + odd)),
                plan.cost().plus(new Cost(Cost.MILLIS_PER_MINOR)),
                List.of());
        for (Units units : Units.values()) {
            Figures figures = new Figures(units, new MoneyText("EUR", 2));
            Length theirs = more.book().waste();
            Length ours = plan.book().waste();
            String words = new FirstFitWords(view, figures).of(more);
            assertTrue(words.contains(" with " + figures.total(theirs) + " of waste"), words);
            assertTrue(words.endsWith(", " + figures.difference(theirs, ours) + " of rope."), words);
        }
        assertEquals("0.1 m", EURO.difference(new Length(1_250), new Length(1_249)));
        assertEquals("1 in", new Figures(Units.IMPERIAL, EURO.currency()).difference(new Length(39), new Length(37)));
    }

    /** A rest that may be worth keeping is no waste of this plan as its page has it, nor of the other. */
    @Test
    void whatIsProbablyLeft_isCountedAlikeInBoth() {
        PlanView view = DayOnTheBench.withUncertainRest();
        Length probably = view.probably();
        assertTrue(probably.isPositive(), "nothing is to be measured");
        assertEquals(
                view.plan().book().waste().minus(probably),
                view.book(view.plan()).waste());
        assertEquals(view.book(), view.book(view.plan()));
        String words = new FirstFitWords(view, EURO).of(view.plan());
        assertTrue(words.contains(" with " + EURO.total(view.book().waste()) + " of waste"), words);
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
