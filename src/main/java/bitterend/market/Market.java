package bitterend.market;

import bitterend.finding.NaturalOrder;
import bitterend.market.LeftOut.Why;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Mass;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What suppliers offer on one day: the one answer to what can be had, of whom, when and for how much. Whoever plans with
 * reels that would have to be bought asks here, so that nobody prices a reel that nobody sells.
 */
public final class Market {
    private final LocalDate day;
    private final List<Offer> offered = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();
    private final Map<String, Offer> offers = new TreeMap<>();
    private final SortedMap<String, Supplier> suppliers = new TreeMap<>(NaturalOrder.IDS);
    private final Map<String, LinearMass> masses;

    /**
     * @param day the day on which reels are ordered
     * @param offers every offer, each id once
     * @param suppliers those whose terms are known; an offer may name another
     * @param masses of each rope whose mass by length is known, by id
     */
    public Market(LocalDate day, List<Offer> offers, List<Supplier> suppliers, Map<String, LinearMass> masses) {
        this.day = day;
        this.masses = Map.copyOf(masses);
        suppliers.forEach(supplier -> this.suppliers.put(supplier.name(), supplier));
        offers.stream()
                .sorted(Comparator.comparing(Offer::id, NaturalOrder.IDS))
                .forEach(offer -> {
                    this.offers.put(offer.id(), offer);
                    findWhyNot(offer)
                            .ifPresentOrElse(why -> leftOut.add(new LeftOut(offer, why)), () -> offered.add(offer));
                });
    }

    /** Where nobody offers anything. */
    public static Market empty(LocalDate day) {
        return new Market(day, List.of(), List.of(), Map.of());
    }

    private Optional<Why> findWhyNot(Offer offer) {
        Offer.Terms terms = offer.terms();
        if (offer.made().joined()) {
            return Optional.of(Why.JOINED);
        }
        if (day.isAfter(terms.validUntil())) {
            return Optional.of(Why.NO_LONGER_VALID);
        }
        if (terms.supply() == 0) {
            return Optional.of(Why.NOTHING_LEFT);
        }
        return terms.supply() < terms.minimum() ? Optional.of(Why.SUPPLY_BELOW_MINIMUM) : Optional.empty();
    }

    /** The day on which reels are ordered. */
    public LocalDate day() {
        return day;
    }

    /** The offers that can be had and planned with, by id: one length, still valid, and at least its minimum there. */
    public List<Offer> offered() {
        return List.copyOf(offered);
    }

    /** Those of one rope. */
    public List<Offer> offered(String rope) {
        return offered.stream().filter(offer -> offer.rope().equals(rope)).toList();
    }

    /** The others, each with its reason, by id. */
    public List<LeftOut> leftOut() {
        return List.copyOf(leftOut);
    }

    /** Those of one rope. */
    public List<LeftOut> leftOut(String rope) {
        return leftOut.stream().filter(each -> each.offer().rope().equals(rope)).toList();
    }

    /** An offer, whether it can be had or not; an unknown id is a caller's bug. */
    public Offer offer(String id) {
        Offer offer = offers.get(id);
        if (offer == null) {
            throw new IllegalArgumentException("no offer " + id);
        }
        return offer;
    }

    /** Why an offer is left out; nothing where it can be had. */
    public Optional<LeftOut> findLeftOut(String id) {
        return leftOut.stream().filter(each -> each.offer().id().equals(id)).findFirst();
    }

    /** The suppliers whose terms are known, by name. */
    public List<Supplier> suppliers() {
        return List.copyOf(suppliers.values());
    }

    /** The terms of a supplier; of one that is not known, his name alone, no freight by order and no minimum order. */
    public Supplier supplier(String name) {
        return suppliers.getOrDefault(name, Supplier.named(name));
    }

    /** The offer of a rope that is cheapest by the metre in its smallest order, freight by reel included; the first by id. */
    public Optional<Offer> cheapest(String rope) {
        return Offer.cheapest(rope, offered);
    }

    /** The mass of the rope on so many reels, as sold; nothing where the mass of the rope is not known. */
    public Optional<Mass> mass(Offer offer, int reels) {
        Length all = offer.made().length().times(reels);
        return Optional.ofNullable(masses.get(offer.rope()))
                .filter(mass -> mass.milligramsPerMetre() > 0)
                .map(mass -> mass.of(all));
    }

    /**
     * What is paid for so many reels of each offer, ordered today, one order to each supplier, and what forbids it.
     *
     * @param reels by offer id; none negative, and none of 0 is billed
     */
    public Bill bill(Map<String, Integer> reels) {
        return new Billing(this).bill(reels);
    }
}
