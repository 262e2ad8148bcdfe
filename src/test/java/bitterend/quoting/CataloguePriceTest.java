package bitterend.quoting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.market.Offer;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.packing.LengthBook;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.QuoteLine.Asked;
import bitterend.shops.PlainShop;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * What the catalogue says that a rope costs, and what it comes to on the reels that can be had. Random shops with offers below
 * and above the catalogue.
 */
final class CataloguePriceTest {
    private static final int SHOPS = Integer.getInteger("shops", 60) / 3;
    private static final long NOTHING_IS_KEPT = 10_000_000;

    private static final QuotePolicy FLOORED = new QuotePolicy(
            WasteBasis.ALONE,
            true,
            new QuotePolicy.Work(new Money(6000), 10, Ratio.percent(10), new Money(30)),
            new QuotePolicy.Surcharges(Ratio.percent(15), Ratio.percent(20), Money.ZERO),
            PartPrices.NONE,
            30);

    /** A shop whose catalogue says so many tenths of a cent a millimetre. */
    private static Quote quote(long seed, long keepFrom, long tenths) {
        SplittableRandom dice = new SplittableRandom(seed);
        Counter counter = new Counter(PlainShop.of(0, keepFrom, new UnitPrice(tenths * 100_000))).policy(FLOORED);
        int sizes = dice.nextInt(1, 4);
        for (int i = 0; i < sizes; i++) {
            long mm = dice.nextInt(8, 30) * 1_000L;
            Money price = new Money(mm * dice.nextInt(6, 17) / 10);
            counter.offer(new Offer("reel " + i, "", "R", Offer.Made.plain(new Length(mm)), Offer.Terms.of(price)));
        }
        int lines = dice.nextInt(1, 4);
        for (int i = 1; i <= lines; i++) {
            counter.line("" + i, dice.nextInt(5, 80) * 100L, dice.nextInt(1, 5), Asked.NOTHING);
        }
        return counter.quote();
    }

    private static long waste(LineQuote line) {
        return line.buildUp().of(Kind.WASTE).minor();
    }

    @Test
    void noLine_paysLessThanItsRopeAtWhatItCanBeHadFor() {
        for (long seed = 0; seed < SHOPS; seed++) {
            for (LineQuote line : quote(seed, 2_000, 10).lines()) {
                assertTrue(
                        waste(line) >= -1,
                        "shop " + seed + ", line " + line.line().name() + ": " + line.buildUp());
            }
        }
    }

    @Test
    void whereNothingIsKept_theCatalogueMovesNoPrice() {
        for (long seed = 0; seed < SHOPS; seed++) {
            Quote cheap = quote(seed, NOTHING_IS_KEPT, 5);
            Quote dear = quote(seed, NOTHING_IS_KEPT, 15);
            for (int i = 0; i < cheap.lines().size(); i++) {
                assertEquals(
                        cheap.lines().get(i).buildUp(), dear.lines().get(i).buildUp(), "shop " + seed + ", line " + i);
            }
        }
    }

    /** What is paid less for the rope is no more than what its leftovers are worth more. */
    @Test
    void aDearerCatalogue_movesTheCreditForLeftoversAlone() {
        for (long seed = 0; seed < SHOPS; seed++) {
            RopeQuote cheap = quote(seed, 2_000, 8).ropes().get(0);
            RopeQuote dear = quote(seed, 2_000, 12).ropes().get(0);
            long less = cheap.shares().cost().millis() - dear.shares().cost().millis();
            long more = new UnitPrice(400_000)
                    .of(dear.book().of(LengthBook.Account.KEPT).plus(dear.book().of(LengthBook.Account.LEFT)))
                    .millis();
            assertTrue(less >= 0 && less <= more + 1_000, "shop " + seed + ": " + less + " of " + more);
        }
    }
}
