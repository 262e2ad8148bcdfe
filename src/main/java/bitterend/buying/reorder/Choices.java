package bitterend.buying.reorder;

import bitterend.buying.steady.Demand;
import bitterend.buying.steady.DemandShape;
import bitterend.buying.steady.LeadTime;
import bitterend.buying.steady.PastWeeks;
import bitterend.buying.steady.ReorderPoint;
import bitterend.catalogue.Rope;
import bitterend.market.Offer;
import bitterend.market.UsualLateness;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import java.math.BigInteger;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Which offer of a rope to order, and how many reels: of those that come before what is left is used up the one that costs least
 * by the metre, with freight by reel, and with interest and room until half of it is used; where none comes in time the first to come.
 */
final class Choices {
    private static final int DAYS_OF_A_WEEK = 7;
    private static final int WEEKS_OF_A_YEAR = 52;

    private final Terms terms;
    private final UsualLateness lateness;
    private final LocalDate today;

    Choices(Terms terms, UsualLateness lateness, LocalDate today) {
        this.terms = terms;
        this.lateness = lateness;
        this.today = today;
    }

    /** So many reels of an offer, by their cost of a metre. */
    private record Choice(Line line, LocalDate there, Cost byMetre, boolean tooMany) {}

    /**
     * What is ordered of a rope.
     *
     * @param line at the least cost by the metre
     * @param least for the least that is paid now
     */
    record Chosen(Line line, Line least) {}

    /** What to order of a rope with a past, now or later; nothing where nobody offers it. */
    Optional<Chosen> chosen(Rope rope, PastWeeks past, Position position, List<Offer> offers) {
        DemandShape shape = DemandShape.of(past);
        Demand demand = new Demand(past, shape);
        List<Choice> all = new ArrayList<>();
        for (Offer offer : offers) {
            Need need = need(rope, demand, position, offer);
            if (need.weekly().isPositive() || need.isDue()) {
                quantities(offer, need).forEach(reels -> all.add(choice(offer, reels, need)));
            }
        }
        boolean someFit = all.stream().anyMatch(choice -> !choice.tooMany());
        List<Choice> fitting =
                all.stream().filter(choice -> !someFit || !choice.tooMany()).toList();
        List<Choice> inTime = fitting.stream()
                .filter(choice -> !choice.there().isAfter(choice.line().need().usedUp(today)))
                .toList();
        Comparator<Choice> cheapest = Comparator.comparing(Choice::byMetre)
                .thenComparing(choice -> choice.line().offer().id())
                .thenComparing(choice -> choice.line().reels());
        if (inTime.isEmpty()) {
            return fitting.stream()
                    .min(Comparator.comparing(Choice::there).thenComparing(cheapest))
                    .map(soonest -> new Chosen(soonest.line(), soonest.line()));
        }
        Line best = inTime.stream().min(cheapest).orElseThrow().line();
        Line least = inTime.stream()
                .map(Choice::line)
                .min(Comparator.comparing(Line::paid))
                .orElseThrow();
        return Optional.of(new Chosen(best, least.paid().compareTo(best.paid()) < 0 ? least : best));
    }

    /**
     * What to order of a rope without a past of which more is booked than there is: the least that is paid so that every piece
     * that is booked has its rope, where one offer can, else for as much rope; of what comes before it is wanted; the first to come where nothing does. Nothing where nobody offers it.
     */
    Optional<Line> booked(String rope, Position position, List<Offer> offers) {
        Need need = Need.booked(rope, position);
        List<Line> all = new ArrayList<>();
        for (Offer offer : offers) {
            holding(offer, position, quantities(offer, need))
                    .forEach(reels -> all.add(
                            new Line(offer, reels, today, offer.arrives(today), there(offer), Line.Why.DUE, need)));
        }
        for (Predicate<Line> does : List.<Predicate<Line>>of(Choices::covers, Line::holdsWhatIsBooked)) {
            if (all.stream().anyMatch(does)) {
                all.removeIf(does.negate());
            }
        }
        Comparator<Line> least = Comparator.comparing(Line::paid)
                .thenComparing(Line::expected)
                .thenComparing(line -> line.offer().id());
        return all.stream()
                .filter(line -> !there(line.offer()).isAfter(position.shortFrom()))
                .min(least)
                .or(() -> all.stream()
                        .min(Comparator.comparing((Line line) -> there(line.offer()))
                                .thenComparing(least)));
    }

    /** The fewest reels with which all that is booked can be cut, and the breaks above; as many as are asked for where none do. */
    private List<Integer> holding(Offer offer, Position position, List<Integer> asked) {
        OptionalInt fewest =
                position.waiting().fewest(asked.get(0), offer.terms().supply(), offer.usable(), there(offer));
        return fewest.isEmpty()
                ? asked
                : Stream.concat(Stream.of(fewest.getAsInt()), asked.stream().filter(reels -> reels > fewest.getAsInt()))
                        .toList();
    }

    private static boolean covers(Line line) {
        return !line.offer()
                .usable()
                .times(line.reels())
                .isShorterThan(line.need().position().beyond());
    }

    /** The day from which reels of an offer that are ordered today are counted on. */
    private LocalDate there(Offer offer) {
        LocalDate usual = lateness.usual(offer.supplier(), offer.arrives(today));
        LocalDate spread = offer.countedOn(today);
        return usual.isAfter(spread) ? usual : spread;
    }

    private Need need(Rope rope, Demand demand, Position position, Offer offer) {
        LocalDate comes = offer.arrives(today);
        long late = ChronoUnit.DAYS.between(comes, lateness.usual(offer.supplier(), comes));
        LeadTime lead = LeadTime.of(offer.terms().lead(), Math.toIntExact(late));
        ReorderPoint point = ReorderPoint.of(
                demand,
                rope.cutting().loss(),
                new ReorderPoint.Terms(offer.usable(), offer.terms().minimum(), lead, terms.service()),
                today,
                terms.seed());
        return new Need(
                rope.id(), position, today.plusDays((long) point.weeks() * DAYS_OF_A_WEEK), point, demand.shape());
    }

    /** As many as bring what is left up to the point, one order at least; and the breaks above that. */
    private static List<Integer> quantities(Offer offer, Need need) {
        Length lacking = need.point().point().minus(need.left());
        long fill = -Math.floorDiv(-Math.max(0, lacking.mm()), offer.usable().mm());
        int least = (int) Math.max(Math.max(need.point().reels(), offer.terms().minimum()), Math.min(fill, 1_000));
        TreeSet<Integer> all =
                new TreeSet<>(offer.terms().price().breaks().tailMap(least).keySet());
        all.add(least);
        all.removeIf(reels -> reels > offer.terms().supply());
        return all.isEmpty() ? List.of(offer.terms().supply()) : List.copyOf(all);
    }

    private Choice choice(Offer offer, int reels, Need need) {
        Length rope = offer.usable().times(reels);
        Cost goods = offer.terms()
                .price()
                .at(reels)
                .plus(offer.terms().freight())
                .times(reels)
                .fine();
        long weekly = Math.max(1, need.weekly().mm());
        long weeks = rope.mm() / weekly;
        long interest = terms.interest().timesRoundedUp(goods.millis()) / WEEKS_OF_A_YEAR / 2 * weeks;
        long room = terms.room().millis() * reels / 2 * weeks;
        Cost byMetre = new Cost(perMetre(goods.millis() + interest + room, rope));
        LocalDate comes = offer.arrives(today);
        Line line = new Line(offer, reels, need.orderBy(today), comes, there(offer), Line.Why.DUE, need);
        Length then = need.isDue() ? need.left() : need.enough();
        long cover = Math.max(0, then.plus(rope).mm()) / weekly;
        return new Choice(line, there(offer), byMetre, cover > terms.mostWeeks());
    }

    private static long perMetre(long millis, Length rope) {
        return BigInteger.valueOf(millis)
                .multiply(BigInteger.valueOf(1000))
                .divide(BigInteger.valueOf(rope.mm()))
                .longValueExact();
    }
}
