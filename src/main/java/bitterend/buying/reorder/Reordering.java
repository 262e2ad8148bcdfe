package bitterend.buying.reorder;

import bitterend.buying.reorder.Line.Why;
import bitterend.buying.steady.PastWeeks;
import bitterend.catalogue.Rope;
import bitterend.finding.NaturalOrder;
import bitterend.history.History;
import bitterend.market.Bill;
import bitterend.market.LeftOut;
import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.UsualLateness;
import bitterend.measure.Money;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Which ropes are to be ordered again now, bundled by supplier against freight and minimum order, within a budget. */
public final class Reordering {
    private static final int WEEKS_OF_A_YEAR = 52;
    private static final int DAYS_OF_A_WEEK = 7;

    /** What is ordered within so many days anyway may be ordered now. Our own choice, no source. */
    public static final int SOON = 28;

    private final Market market;
    private final UsualLateness lateness;
    private final Terms terms;

    public Reordering(Market market, UsualLateness lateness, Terms terms) {
        this.market = market;
        this.lateness = lateness;
        this.terms = terms;
    }

    /**
     * What to order now.
     *
     * @param positions of each rope of the shop, by its id
     * @param history of the shop; may be empty
     */
    public Proposal propose(List<Rope> ropes, Map<String, Position> positions, History history) {
        Choices choices = new Choices(terms, lateness, market.day());
        Set<String> used = history.ropes();
        List<Line> all = new ArrayList<>();
        Map<String, Line> least = new HashMap<>();
        List<Proposal.Booked> booked = new ArrayList<>();
        List<String> unoffered = new ArrayList<>();
        for (Rope rope : ropes) {
            Position position = positions.getOrDefault(rope.id(), Position.NOTHING);
            List<Offer> offers = holding(position, market.offered(rope.id()));
            boolean beyond = position.beyond().isPositive();
            if (offers.isEmpty() && beyond) {
                booked.add(new Proposal.Booked(rope.id(), position));
            } else if (offers.isEmpty() && used.contains(rope.id())) {
                unoffered.add(rope.id());
            } else if (used.contains(rope.id())) {
                choices.chosen(rope, PastWeeks.of(history, rope.id()), position, offers)
                        .ifPresent(chosen -> {
                            all.add(chosen.line());
                            least.put(rope.id(), chosen.least());
                        });
            } else if (beyond) {
                choices.booked(rope.id(), position, offers).ifPresent(all::add);
            }
        }
        all.sort(Comparator.comparing(Line::orderBy)
                .thenComparing(line -> line.need().rope(), NaturalOrder.IDS));
        return bundled(all, least, booked, unoffered);
    }

    /** Of rope that the rack is short of the offers whose reels hold the longest piece booked; all where none does. */
    private static List<Offer> holding(Position position, List<Offer> offers) {
        List<Offer> holding = offers.stream()
                .filter(offer -> !offer.usable().isShorterThan(position.longest()))
                .toList();
        return holding.isEmpty() || !position.beyond().isPositive() ? offers : holding;
    }

    private Proposal bundled(
            List<Line> all, Map<String, Line> least, List<Proposal.Booked> booked, List<String> unoffered) {
        List<Line> now = new ArrayList<>();
        bySupplier(all).values().forEach(ofOne -> now.addAll(bundle(ofOne)));
        List<Line> unpaid = new ArrayList<>();
        List<Line> paid = affordable(now, least, unpaid);
        Set<String> ropes = new HashSet<>();
        now.forEach(line -> ropes.add(line.need().rope()));
        List<Line> later = all.stream()
                .filter(line -> !ropes.contains(line.need().rope()))
                .filter(line -> !line.orderBy().equals(LocalDate.MAX))
                .toList();
        later.forEach(line -> ropes.add(line.need().rope()));
        booked.forEach(each -> ropes.add(each.rope()));
        ropes.addAll(unoffered);
        List<LeftOut> leftOut = market.leftOut().stream()
                .filter(each -> ropes.contains(each.offer().rope()))
                .toList();
        return new Proposal(market.day(), paid, bill(paid), later, unpaid, booked, unoffered, leftOut, terms);
    }

    private static Map<String, List<Line>> bySupplier(List<Line> lines) {
        Map<String, List<Line>> bySupplier = new TreeMap<>(NaturalOrder.IDS);
        lines.forEach(line -> bySupplier
                .computeIfAbsent(line.offer().supplier(), any -> new ArrayList<>())
                .add(line));
        return bySupplier;
    }

    /** What is due of one supplier, with what would be ordered soon and goes along; nothing where nothing is due. */
    private List<Line> bundle(List<Line> ofOne) {
        List<Line> now = new ArrayList<>(
                ofOne.stream().filter(line -> line.need().isDue()).toList());
        if (now.isEmpty()) {
            return List.of();
        }
        LocalDate soon = market.day().plusDays(SOON);
        for (Line line : ofOne) {
            if (!line.need().isDue() && !line.orderBy().isAfter(soon)) {
                if (isBelowMinimum(now)) {
                    now.add(line.because(Why.MINIMUM_ORDER));
                } else if (saves(now, line)) {
                    now.add(line.because(Why.SAVES_FREIGHT));
                }
            }
        }
        return now;
    }

    private boolean isBelowMinimum(List<Line> lines) {
        return bill(lines).objections().stream()
                .anyMatch(objection -> objection instanceof Bill.Objection.BelowMinimumOrder);
    }

    /** Whether the freight of both together, and what it costs to pay and to hold one of them earlier, is less than two ways. */
    private boolean saves(List<Line> now, Line soon) {
        List<Line> both = new ArrayList<>(now);
        both.add(soon);
        Money apart = bill(now).freight().plus(bill(List.of(soon)).freight());
        Money saved = apart.minus(bill(both).freight());
        return saved.fine().millis() > earlier(soon);
    }

    /** Interest and room until it would have been ordered, in 1/1000 of the smallest coin. */
    private long earlier(Line soon) {
        long days = ChronoUnit.DAYS.between(market.day(), soon.orderBy());
        long goods = soon.each().times(soon.reels()).fine().millis();
        long interest = terms.interest().timesRoundedUp(goods) * days / (WEEKS_OF_A_YEAR * DAYS_OF_A_WEEK);
        return interest + terms.room().millis() * soon.reels() * days / DAYS_OF_A_WEEK;
    }

    /**
     * What the budget pays for. What was pulled in goes first; then ropes are bought for the least that is paid now, those
     * where that saves most before the others; then goes what is left longest.
     */
    private List<Line> affordable(List<Line> now, Map<String, Line> least, List<Line> unpaid) {
        List<Line> paid = new ArrayList<>(now);
        leave(paid, line -> !line.isDue());
        Comparator<Line> bySaving = Comparator.comparing(line ->
                line.paid().minus(least.getOrDefault(line.need().rope(), line).paid()));
        while (isBeyondBudget(paid)) {
            Line dearest = paid.stream().max(bySaving).orElseThrow();
            Line instead = least.getOrDefault(dearest.need().rope(), dearest);
            if (instead.paid().compareTo(dearest.paid()) >= 0) {
                break;
            }
            paid.set(paid.indexOf(dearest), instead.because(Line.Why.WITHIN_BUDGET));
        }
        unpaid.addAll(leave(paid, line -> true));
        return paid;
    }

    /** Takes lines out until the budget pays for the rest, what is left longest first; those taken out, in the order of need. */
    private List<Line> leave(List<Line> paid, Predicate<Line> may) {
        List<Line> left = new ArrayList<>();
        while (isBeyondBudget(paid) && paid.stream().anyMatch(may)) {
            Line longest = paid.stream()
                    .filter(may)
                    .max(Comparator.comparing((Line line) -> line.need().usedUp(market.day()))
                            .thenComparing(line -> line.need().rope()))
                    .orElseThrow();
            paid.remove(longest);
            left.add(0, longest);
        }
        return left;
    }

    private boolean isBeyondBudget(List<Line> lines) {
        return bill(lines).sum().compareTo(terms.budget()) > 0;
    }

    private Bill bill(List<Line> lines) {
        Map<String, Integer> reels = new LinkedHashMap<>();
        lines.forEach(line -> reels.merge(line.offer().id(), line.reels(), Integer::sum));
        return market.bill(reels);
    }
}
