package bitterend.buying.steady;

import bitterend.buying.RackWorth;
import bitterend.buying.Share;
import bitterend.buying.Study;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.ReelPrice;
import bitterend.measure.Cost;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.PastCuts;
import java.time.LocalDate;
import java.util.List;

/** A rope of 3.10 a metre whose cuts lose 10 mm, and whoever offers it. */
final class SteadyStall {
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    static final Ratio INTEREST = Ratio.percent(12);
    static final Cost ROOM = new Cost(10_000);

    private SteadyStall() {}

    static Rope rope() {
        return new Rope(
                "P12",
                "Polyester double braid 12 mm",
                new RopeIdentity(
                        Kinds.DOUBLE_BRAID,
                        Kinds.POLYESTER,
                        "",
                        "",
                        Diameter.ofMillimetres(12),
                        Lay.NONE,
                        "",
                        "white",
                        ""),
                new LinearMass(110_000),
                WeekPackerTest.PRICE,
                new Rope.Cutting(new Length(WeekPackerTest.LOSS), new Length(10)),
                new Rope.Worth(Length.ofMetres(2), Length.ofMetres(100)),
                new Length(WeekPackerTest.REEL));
    }

    /** Reels of so many metres at so many coins, there after so many days. */
    static Offer offer(String id, long metres, long price, int days) {
        Offer.Terms terms = new Offer.Terms(
                ReelPrice.of(new Money(price)),
                Money.ZERO,
                Offer.Terms.UNLIMITED,
                1,
                new Offer.Lead(days, 0),
                LocalDate.MAX);
        return new Offer(id, "", "P12", Offer.Made.plain(Length.ofMetres(metres)), terms);
    }

    static Offer limited(Offer offer, int supply, int minimum) {
        Offer.Terms terms = offer.terms();
        return new Offer(
                offer.id(),
                offer.supplier(),
                offer.rope(),
                offer.made(),
                new Offer.Terms(terms.price(), terms.freight(), supply, minimum, terms.lead(), terms.validUntil()));
    }

    static SteadyStudy study(PastWeeks past, List<Offer> offers, Study.Size size) {
        Keeping keeping = new Keeping(
                WeekPackerTest.LOSS,
                new Cost(WeekPackerTest.OPENING),
                new Cost(WeekPackerTest.CHANGING),
                INTEREST,
                ROOM);
        return study(past, offers, size, keeping, SteadyStudy.Goal.USUAL);
    }

    static SteadyStudy study(
            PastWeeks past, List<Offer> offers, Study.Size size, Keeping keeping, SteadyStudy.Goal goal) {
        return SteadyStudy.of(
                rope(),
                past,
                new SteadyStudy.Terms(
                        offer -> worth(past, offer, keeping),
                        offer -> new LeadTime(
                                offer.terms().lead().days(),
                                offer.terms().lead().spread(),
                                0),
                        new Market(DAY, offers, List.of(), java.util.Map.of()),
                        keeping,
                        goal,
                        size,
                        DAY));
    }

    private static RackWorth worth(PastWeeks past, Offer offer, Keeping keeping) {
        List<Length> cuts = past.cuts().stream().flatMap(List::stream).toList();
        CoilTerms.Holding holding = new CoilTerms.Holding(keeping.interest(), keeping.room(), Length.ZERO);
        return RackWorth.of(CoilValue.of(
                PastCuts.of(cuts, new Length(keeping.loss()), past.count(), PastCuts.Source.HISTORY),
                CoilTerms.of(offer.byMetre(), offer.usable(), offer.usable(), holding),
                Length.ZERO));
    }

    static SteadySimulation simulation(SteadyStudy study) {
        return new SteadySimulation(study, 2, () -> false, (done, all) -> {});
    }

    static SteadyVerdict verdict(SteadyStudy study) {
        SteadySimulation simulation = simulation(study);
        List<Way> ways = simulation.ways();
        return SteadyVerdict.of(study, ways, simulation.scenarios(ways, Share.ALL));
    }

    static WayFound of(SteadyVerdict verdict, String... offers) {
        return verdict.found().stream()
                .filter(each -> each.way().offers().equals(List.of(offers)))
                .findFirst()
                .orElseThrow();
    }
}
