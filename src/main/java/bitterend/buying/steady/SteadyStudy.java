package bitterend.buying.steady;

import bitterend.buying.RackWorth;
import bitterend.buying.Study;
import bitterend.catalogue.Rope;
import bitterend.market.LeftOut;
import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The question which reels of one rope suit a shop that goes on as it did. Pieces stand alone in it: matched sets, certificates
 * and substitutes are not looked at.
 *
 * @param rope the rope
 * @param demand what its past says
 * @param sizes what can be bought again and again, the shortest first; each holds every piece
 * @param worth what coils are worth where this offer is bought, by offer
 * @param keeping what work, money and place cost
 * @param goal what the shop asks of its rack
 * @param size how many futures of how many weeks, and from which seed
 * @param day futures begin after it
 * @param notBought offers that are no way to supply the shop, and why
 * @param leftOut offers of it that nobody can order
 * @param unheld cut lengths that no size holds, the longest first; they are left out
 * @param start the rack that futures start from
 */
public record SteadyStudy(
        Rope rope,
        Demand demand,
        List<SizeOnOffer> sizes,
        Map<String, RackWorth> worth,
        Keeping keeping,
        Goal goal,
        Study.Size size,
        LocalDate day,
        List<NotBought> notBought,
        List<LeftOut> leftOut,
        List<Length> unheld,
        StartingRack start) {
    /** Half a year. */
    static final int LEAST_WARM_UP = 26;

    private static final int LEADS_TO_WARM_UP = 2;

    public SteadyStudy {
        sizes = List.copyOf(sizes);
        worth = Map.copyOf(worth);
        notBought = List.copyOf(notBought);
        leftOut = List.copyOf(leftOut);
        unheld = List.copyOf(unheld);
    }

    /**
     * What a shop asks of its rack.
     *
     * @param service share of the pieces for which there is rope in the week of their order; below 1
     * @param mostWeeks the most weeks of use that one order may bring
     */
    public record Goal(Ratio service, int mostWeeks) {
        /** Our own choice, no source: 97 pieces of 100 in time, no order for more than a year. */
        public static final Goal USUAL = new Goal(Ratio.percent(97), PastWeeks.PLACES);

        public Goal {
            if (service.isNegative() || service.compareTo(Ratio.ONE) >= 0 || mostWeeks < 1) {
                throw new IllegalArgumentException("service " + service + ", most weeks " + mostWeeks);
            }
        }

        /** Late pieces in ten thousand that are allowed. */
        long mostLate() {
            return Ratio.ONE.minus(service).timesRoundedUp(SteadyVerdict.PER_TEN_THOUSAND);
        }
    }

    /** An offer that is no way to supply the shop. */
    public record NotBought(Offer offer, Why why) {}

    /** Why an offer is no way to supply a shop. */
    public enum Why {
        /** The longest past piece does not fit. */
        TOO_SHORT,
        /** There are fewer reels of it than a year uses. */
        TOO_FEW
    }

    /**
     * What is fixed for a rope.
     *
     * @param worth what coils of it are worth where an offer is bought
     * @param lead how long reels of an offer are on their way
     * @param market what an order comes to
     */
    public record Terms(
            Function<Offer, RackWorth> worth,
            Function<Offer, LeadTime> lead,
            Market market,
            Keeping keeping,
            Goal goal,
            Study.Size size,
            LocalDate day) {}

    /** Every offer that can be had, bought or not: the sizes first. */
    public List<Offer> offers() {
        return Stream.concat(
                        sizes.stream().map(SizeOnOffer::offer),
                        notBought.stream().map(NotBought::offer))
                .toList();
    }

    /** The study of what the market offers of one rope; it has no size where none of it can supply the shop. */
    public static SteadyStudy of(Rope rope, PastWeeks past, Terms terms) {
        List<Offer> offers = terms.market().offered(rope.id());
        long year = Arrays.stream(past.sums(rope.cutting().loss())).sum() / past.count() * PastWeeks.PLACES;
        Predicate<Offer> lasts =
                offer -> offer.terms().supply() >= year / offer.usable().mm();
        Length held = offers.stream().filter(lasts).map(Offer::usable).reduce(Length.ZERO, Length::max);
        List<List<Length>> cuts = past.cuts();
        Length longest = cuts.stream()
                .flatMap(List::stream)
                .filter(cut -> !cut.isLongerThan(held))
                .reduce(Length.ZERO, Length::max);
        Predicate<Offer> holds = offer -> !longest.isLongerThan(offer.usable());
        List<Offer> bought = offers.stream()
                .filter(lasts.and(holds))
                .sorted(Comparator.comparing(Offer::usable).thenComparing(Offer::id))
                .toList();
        PastWeeks makeable = past.with(
                order -> order.stream().filter(cut -> !cut.isLongerThan(held)).toList());
        return new SteadyStudy(
                rope,
                new Demand(makeable, DemandShape.of(makeable)),
                bought.stream()
                        .map(offer -> new SizeOnOffer(offer, terms.lead().apply(offer), terms.market()))
                        .toList(),
                bought.stream().collect(Collectors.toMap(Offer::id, terms.worth())),
                terms.keeping(),
                terms.goal(),
                terms.size(),
                terms.day(),
                offers.stream()
                        .filter(lasts.and(holds).negate())
                        .map(offer -> new NotBought(offer, lasts.test(offer) ? Why.TOO_SHORT : Why.TOO_FEW))
                        .toList(),
                terms.market().leftOut(rope.id()),
                cuts.stream()
                        .flatMap(List::stream)
                        .filter(cut -> cut.isLongerThan(held))
                        .sorted(Comparator.reverseOrder())
                        .toList(),
                StartingRack.WARMS_UP);
    }

    /** The same from another rack; what waits there and fits on nothing is left out. */
    public SteadyStudy from(StartingRack other) {
        Length longest = sizes.stream().map(size -> size.offer().usable()).reduce(Length.ZERO, Length::max);
        return new SteadyStudy(
                rope,
                demand,
                sizes,
                worth,
                keeping,
                goal,
                size,
                day,
                notBought,
                leftOut,
                unheld,
                other.makeable(longest));
    }

    /** A way to buy from its note; nothing is known of other offers. */
    public Way way(WayNote note) {
        return new Way(note.rules().stream()
                .map(rule -> new Way.Rule(sizeOf(rule.offer()), rule.point(), rule.reels()))
                .toList());
    }

    private SizeOnOffer sizeOf(String offer) {
        return sizes.stream()
                .filter(size -> size.offer().id().equals(offer))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no size " + offer));
    }

    /** Whether every offer that a note names can be bought. */
    public boolean knows(WayNote note) {
        return note.rules().stream().allMatch(rule -> sizes.stream()
                .anyMatch(size -> size.offer().id().equals(rule.offer())));
    }

    /** Metres a week uses on the average at the level of today, the loss of cuts in it, rounded down. */
    public Length weekly() {
        return demand.weekly(rope.cutting().loss());
    }

    /**
     * Weeks before anything counts, so that a rack forgets how it began: half a year, and twice the longest lead with its spread
     * where that is more, since orders of the first weeks must have come and been used; none from the rack there is.
     */
    public int warmUp() {
        return start.today()
                ? 0
                : sizes.stream()
                        .mapToInt(size -> LEADS_TO_WARM_UP * size.lead().mostWeeks())
                        .reduce(LEAST_WARM_UP, Math::max);
    }
}
