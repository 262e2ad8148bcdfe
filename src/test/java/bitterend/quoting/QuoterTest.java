package bitterend.quoting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.finding.Finding;
import bitterend.market.Offer;
import bitterend.market.ReelPrice;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.QuoteLine.Asked;
import bitterend.quoting.QuoteLine.Leeway;
import bitterend.shops.PlainShop;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Prices reckoned by hand: rope at a cent a millimetre, nothing lost at a cut, offcuts of 5 m and more kept. */
final class QuoterTest {
    private static final long SCRAP_BELOW = 5_000;

    private static Counter counter() {
        return new Counter(PlainShop.of(0, SCRAP_BELOW)).reel(10_000);
    }

    private static QuotePolicy policy(WasteBasis waste, boolean floor, Ratio overhead, Ratio margin, Money minimum) {
        return new QuotePolicy(
                waste,
                floor,
                new QuotePolicy.Work(new Money(6000), 10, Ratio.percent(10), new Money(30)),
                new QuotePolicy.Surcharges(overhead, margin, minimum),
                PartPrices.NONE,
                30);
    }

    private static List<Finding> findings(Counter counter) {
        return counter.quoter().lacking(counter.request()).stream()
                .flatMap(each -> each.findings().stream())
                .toList();
    }

    private static Money rope(Quote quote, int line) {
        return quote.lines().get(line).buildUp().of(Kind.ROPE);
    }

    private static Money waste(Quote quote, int line) {
        return quote.lines().get(line).buildUp().of(Kind.WASTE);
    }

    @Test
    void wasteAlone_isTheScrapOfNewReels() {
        Quote quote = counter().line("1", 6_000, 1).quote();
        assertEquals(new Money(6_000), rope(quote, 0));
        assertEquals(new Money(4_000), waste(quote, 0));
        assertEquals(new Length(10_000), quote.lines().get(0).drawn());
        assertEquals(new Length(4_000), quote.ropes().get(0).book().scrap());
    }

    /** Three lines at 500.5 coins are not three times 501: together they are 1502, and so says the table of the rope. */
    @Test
    void linesAddUpToWhatTheirRopeSays_toTheCoin() {
        Quote quote = new Counter(PlainShop.of(0, SCRAP_BELOW))
                .offer(new Offer(
                        "half", "", "R", Offer.Made.plain(new Length(10_000)), Offer.Terms.of(new Money(5_000))))
                .line("1", 1_001, 1)
                .line("2", 1_001, 1)
                .line("3", 1_001, 1)
                .quote();
        RopeQuote rope = quote.ropes().get(0);
        Money inPieces = rope(quote, 0).plus(rope(quote, 1)).plus(rope(quote, 2));
        assertEquals(rope.worth().rounded(), inPieces);
        assertEquals(new Money(1_502), inPieces);
        WasteView.Span alone =
                assertInstanceOf(WasteView.Span.class, rope.waste().alone());
        assertEquals(
                rope.inCoins(alone.middle()),
                waste(quote, 0).plus(waste(quote, 1)).plus(waste(quote, 2)));
        assertEquals(rope.charged().total().rounded(), inPieces.plus(rope.inCoins(alone.middle())));
    }

    /** 5.00 for bringing a reel of 10 m: 3.00 of it for the 6 m of the piece, 2.00 for the scrap. */
    @Test
    void freightByReel_isToldApart_forPiecesAndForWaste() {
        Quote quote = new Counter(PlainShop.of(0, SCRAP_BELOW))
                .offer(new Offer(
                        "brought",
                        "",
                        "R",
                        Offer.Made.plain(new Length(10_000)),
                        new Offer.Terms(
                                ReelPrice.of(new Money(9_500)),
                                new Money(500),
                                Offer.Terms.UNLIMITED,
                                1,
                                Offer.Lead.AT_ONCE,
                                LocalDate.MAX)))
                .line("1", 6_000, 1)
                .quote();
        assertEquals(
                new FreightWithin(new Money(300), new Money(200)),
                quote.lines().get(0).within());
        assertEquals(new Money(6_000), rope(quote, 0), "it is in the rope all the same");
    }

    @Test
    void offcutWorthKeeping_isNoWaste() {
        Quote quote = counter().line("1", 4_000, 1).quote();
        assertEquals(Money.ZERO, waste(quote, 0));
        assertEquals(new Length(4_000), quote.lines().get(0).drawn());
    }

    /** Reels of 10, pieces of 6, 6 and 4: the third rides along, unless the shop keeps every line at its rope. */
    @Test
    void stableShare_canBeBelowTheRopeUnlessTheShopSetsAFloor() {
        Counter counter = new Counter(PlainShop.of(0, 1_000_000))
                .reel(10_000)
                .line("a", 6_000, 1)
                .line("b", 6_000, 1)
                .line("c", 4_000, 1);
        Quote quote = counter.quote();
        assertEquals(new Money(-4_000), waste(quote, 2));
        assertEquals(new Money(4_000), waste(quote, 0));
        Quote floored = counter.policy(policy(WasteBasis.ALONE, true, Ratio.ZERO, Ratio.ZERO, Money.ZERO))
                .quote();
        assertEquals(Money.ZERO, waste(floored, 2));
        assertEquals(new Money(2_000), waste(floored, 0));
        assertEquals(new Money(2_000), waste(floored, 1));
    }

    @Test
    void marginalWaste_usesWhatStandsOnTheRack() {
        Quote quote = new Counter(PlainShop.of(0, SCRAP_BELOW).reel("part", 6_000))
                .reel(10_000)
                .line("1", 6_000, 1)
                .quote();
        WasteView.Span marginal = assertInstanceOf(
                WasteView.Span.class, quote.ropes().get(0).waste().marginal());
        assertEquals(Cost.ZERO, marginal.high());
        assertTrue(marginal.isExact(), marginal.toString());
    }

    @Test
    void marginalWaste_fillsWhatTheBookLeavesOver() {
        Quote quote = new Counter(PlainShop.of(0, SCRAP_BELOW).pieces("1001", 6_000, 1))
                .reel(10_000)
                .line("1", 4_000, 1)
                .quote();
        WasteView.Span marginal = assertInstanceOf(
                WasteView.Span.class, quote.ropes().get(0).waste().marginal());
        assertEquals(new Cost(-4_000_000), marginal.high());
    }

    /** Beside 6 m it takes what would be scrap; beside 4 m it opens a reel of its own, whose rest is kept. */
    @Test
    void usualWaste_isTheMeanAndRangeOfPastWeeks() {
        Quote quote =
                counter().line("1", 4_000, 1).week(6_000).week(4_000).week().quote();
        WasteView.Span usual = assertInstanceOf(
                WasteView.Span.class, quote.ropes().get(0).waste().usual());
        assertEquals(2, usual.samples());
        assertEquals(new Cost(-4_000_000), usual.low());
        assertEquals(Cost.ZERO, usual.high());
        assertEquals(new Cost(-2_000_000), usual.middle());
    }

    /** Ten weeks of this time of year, where the piece takes scrap, among thirty of another, where it opens a reel. */
    @Test
    void usualWaste_isOfTheSameTimeOfYear_whereThereAreEnoughWeeks() {
        Counter counter = counter().line("1", 4_000, 1);
        for (int week = 0; week < 30; week++) {
            counter.week(PlainShop.DAY.minusWeeks(94 - week), 4_000);
        }
        for (int week = 0; week < 10; week++) {
            counter.week(PlainShop.DAY.minusWeeks(52 + 5 - week), 6_000);
        }
        WasteView.Span usual = assertInstanceOf(
                WasteView.Span.class, counter.quote().ropes().get(0).waste().usual());
        assertEquals(10, usual.samples());
        assertTrue(usual.weeks().ofSeason());
        assertEquals(PlainShop.DAY.minusWeeks(57), usual.weeks().mondays().get(0));
        assertEquals(new Cost(-4_000_000), usual.high());
    }

    /** The season has but two weeks: all of the past counts, forty weeks of it, the first years too. */
    @Test
    void usualWaste_isOfAllOfThePast_takenEvenly() {
        Counter counter = counter().line("1", 4_000, 1);
        for (int week = 0; week < 160; week++) {
            LocalDate monday = PlainShop.DAY.minusWeeks(160 - week);
            boolean near = Math.abs(monday.getDayOfYear() - PlainShop.DAY.getDayOfYear()) < 100;
            if (!near || week < 2) {
                counter.week(monday, 6_000);
            }
        }
        WasteView.Span usual = assertInstanceOf(
                WasteView.Span.class, counter.quote().ropes().get(0).waste().usual());
        assertEquals(40, usual.samples());
        assertFalse(usual.weeks().ofSeason());
        assertTrue(usual.weeks().outOf() > 60, "" + usual.weeks().outOf());
        assertTrue(usual.weeks().mondays().get(0).isBefore(PlainShop.DAY.minusWeeks(150)));
    }

    @Test
    void withoutHistory_usualWasteIsNotKnownAndAloneIsCharged() {
        Quote quote = counter()
                .line("1", 6_000, 1)
                .policy(policy(WasteBasis.USUAL, false, Ratio.ZERO, Ratio.ZERO, Money.ZERO))
                .quote();
        assertInstanceOf(WasteView.NotKnown.class, quote.ropes().get(0).waste().usual());
        assertEquals(WasteBasis.ALONE, quote.ropes().get(0).charged().basis());
        assertEquals(new Money(4_000), waste(quote, 0));
    }

    /** Two assemblies of 6 m at 100.00 each with 25 minutes at 60.00 an hour; every item once. */
    @Test
    void price_isBuiltUpItemByItem() {
        Asked asked = new Asked(new Money(500), 25, new Money(1_000), Leeway.NONE);
        BuildUp price = counter()
                .line("1", 6_000, 2, asked)
                .policy(policy(WasteBasis.ALONE, false, Ratio.percent(15), Ratio.percent(20), Money.ZERO))
                .quote()
                .lines()
                .get(0)
                .buildUp();
        assertEquals(new Money(12_000), price.of(Kind.ROPE));
        assertEquals(new Money(8_000), price.of(Kind.WASTE));
        assertEquals(new Money(1_000), price.of(Kind.HARDWARE));
        assertEquals(new Money(5_000), price.of(Kind.LABOUR));
        assertEquals(new Money(1_000), price.of(Kind.SETTING_UP));
        assertEquals(new Money(1_000), price.of(Kind.SAMPLES));
        assertEquals(new Money(2_600), price.of(Kind.SPOILAGE));
        assertEquals(new Money(60), price.of(Kind.PACKING));
        assertEquals(new Money(4_599), price.of(Kind.OVERHEAD));
        assertEquals(new Money(8_815), price.of(Kind.MARGIN));
        assertEquals(new Money(44_074), price.price());
        assertEquals(new Money(22_037), price.each());
    }

    @Test
    void price_isNeverBelowTheMinimumNorBelowItsParts() {
        BuildUp price = counter()
                .line("1", 1_000, 3)
                .policy(policy(WasteBasis.ALONE, false, Ratio.ZERO, Ratio.ZERO, new Money(10_000)))
                .quote()
                .lines()
                .get(0)
                .buildUp();
        assertEquals(new Money(3_334), price.each());
        assertEquals(new Money(2), price.of(Kind.ROUNDING));
        assertTrue(price.of(Kind.MINIMUM).minor() > 0);
    }

    @Test
    void pieceLongerThanEveryReel_isRefusedWhereItStands() {
        Counter counter = counter().line("1", 10_001, 1);
        List<Finding> problems = findings(counter);
        assertEquals(1, problems.size());
        assertEquals("row 2", problems.get(0).place());
        assertTrue(problems.get(0).expected().contains("10.000 m"));
    }

    @Test
    void morePiecesThanCanBeWorkedOut_areRefusedWhereTheyStand() {
        assertEquals(
                List.of(),
                counter()
                        .line("1", 5_000, 5_000)
                        .quoter()
                        .lacking(counter().line("1", 5_000, 5_000).request()));
        Counter counter = counter().line("1", 5_000, 2_501).line("2", 5_000, 2_500);
        List<Finding> problems = findings(counter);
        assertEquals(1, problems.size());
        assertEquals("quantity", problems.get(0).field());
        assertEquals("row 2", problems.get(0).place());
        assertTrue(problems.get(0).expected().contains("5000 pieces"), problems.get(0)::toString);
    }

    /** Two of 5.1 m waste nearly a reel; two of 5 m fit one. */
    @Test
    void shorterWithinTheLeeway_isFoundWhereItSavesAReel() {
        Quote quote = new Counter(PlainShop.of(0, 1_000_000))
                .reel(10_000)
                .line("1", 5_100, 2, new Leeway(new Length(200), new Length(200), 0, 0))
                .quote();
        Neighbour found = quote.neighbours().get(0);
        assertEquals(new Length(5_000), found.better().finished().roundedUp());
        assertEquals(Cost.ZERO, found.better().waste());
        assertEquals(new Cost(9_800_000), found.asked().waste());
    }

    /** Within a leeway of forty steps or fewer every step is looked at: 5 m is three of them below 5.003 m. */
    @Test
    void everyStepOfASmallLeeway_isLookedAt() {
        Quote quote = new Counter(PlainShop.of(0, 1_000_000))
                .reel(10_000)
                .line("1", 5_003, 2, new Leeway(new Length(6), new Length(6), 0, 0))
                .quote();
        assertEquals(
                new Length(5_000), quote.neighbours().get(0).better().finished().roundedUp());
    }

    /** Reels of 10 hold three of 3.3 m: with three the reel is full, with four the next is opened for one. */
    @Test
    void quantityWithinTheLeeway_isFoundWhereItFillsTheReel() {
        Quote quote = new Counter(PlainShop.of(0, 1_000_000))
                .reel(10_000)
                .line("1", 3_300, 4, new Leeway(Length.ZERO, Length.ZERO, 3, 5))
                .quote();
        assertEquals(3, quote.neighbours().get(0).better().quantity());
    }

    @Test
    void noLeeway_noNeighbours() {
        assertEquals(List.of(), counter().line("1", 5_100, 2).quote().neighbours());
    }
}
