package bitterend.market;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.measure.Written;
import bitterend.stock.Reel;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A reel that a supplier offers, as often as the terms allow.
 *
 * @param id the shop's short name for the offer
 * @param supplier who offers it; empty when not stated
 * @param rope id of the rope on it
 * @param made what is on the reel
 * @param terms what it costs and when it comes
 */
public record Offer(String id, String supplier, String rope, Made made, Terms terms) {

    /**
     * What is on a reel.
     *
     * @param written length as sold; positive
     * @param tolerance how much shorter it may come, as a share of the length; from 0, below 1
     * @param known how the supplier knows the length
     * @param joined whether the reel may hold several lengths joined; such an offer is not planned for
     * @param certificate kind of certificate that comes with it; empty when none
     * @param oneLot whether all reels of one order come from one lot
     */
    public record Made(
            Written written, Ratio tolerance, Reel.Known known, boolean joined, String certificate, boolean oneLot) {
        public Made {
            Length length = written.roundedDown();
            if (!length.isPositive() || tolerance.isNegative() || tolerance.compareTo(Ratio.ONE) >= 0) {
                throw new IllegalArgumentException("length " + length + ", tolerance " + tolerance);
            }
        }

        /** The length as sold in whole millimetres, rounded down. */
        public Length length() {
            return written.roundedDown();
        }

        /** The length that can be counted on, rounded down. */
        public Length usable() {
            return length().minus(new Length(tolerance.timesRoundedUp(length().mm())));
        }

        /** One length, as metered, without papers. */
        public static Made plain(Length length) {
            return new Made(Written.worked(length), Ratio.ZERO, Reel.Known.METERED, false, "", false);
        }
    }

    /**
     * What a reel costs and when it comes.
     *
     * @param price of a reel, by how many are taken in one order
     * @param freight of a reel
     * @param supply most reels to be had
     * @param minimum fewest reels in an order; at least 1
     * @param lead how long it takes
     * @param validUntil last day on which it can be ordered so; {@link LocalDate#MAX} where none is stated
     */
    public record Terms(ReelPrice price, Money freight, int supply, int minimum, Lead lead, LocalDate validUntil) {
        public static final int UNLIMITED = Integer.MAX_VALUE;

        public Terms {
            if (price.one().minor() < 0 || freight.minor() < 0 || supply < 0 || minimum < 1) {
                throw new IllegalArgumentException(
                        "price " + price + ", freight " + freight + ", supply " + supply + ", minimum " + minimum);
            }
        }

        /** As many as are wanted, at once, freight paid. */
        public static Terms of(Money price) {
            return new Terms(ReelPrice.of(price), Money.ZERO, UNLIMITED, 1, Lead.AT_ONCE, LocalDate.MAX);
        }
    }

    /**
     * How long it takes from the order to the rack, in calendar days.
     *
     * @param days as the supplier says
     * @param spread so many days later than he says nearly every order of the past was there: what is promised to a customer
     *     counts on {@code days + spread}
     */
    public record Lead(int days, int spread) {
        public static final Lead AT_ONCE = new Lead(0, 0);

        public Lead {
            if (days < 0 || spread < 0) {
                throw new IllegalArgumentException("lead " + days + " days, spread " + spread);
            }
        }

        /** Days after which a reel is counted on. */
        public int countedOn() {
            return days + spread;
        }
    }

    /** The same under another id. */
    public Offer as(String other) {
        return new Offer(other, supplier, rope, made, terms);
    }

    /** The same at another price, however many are taken. */
    public Offer costing(Money price) {
        return new Offer(
                id,
                supplier,
                rope,
                made,
                new Terms(
                        ReelPrice.of(price),
                        terms.freight(),
                        terms.supply(),
                        terms.minimum(),
                        terms.lead(),
                        terms.validUntil()));
    }

    /** The same with another kind of certificate; empty for none. */
    public Offer certified(String certificate) {
        return new Offer(
                id,
                supplier,
                rope,
                new Made(made.written(), made.tolerance(), made.known(), made.joined(), certificate, made.oneLot()),
                terms);
    }

    /** Price and freight of a reel in the smallest order there is of it. */
    public Cost paid() {
        return paid(terms.minimum());
    }

    /** Price and freight of a reel in an order of so many; what its supplier charges by order or by mass is left out. */
    public Cost paid(int reels) {
        return terms.price().at(reels).plus(terms.freight()).fine();
    }

    /** The length that can be counted on, rounded down. */
    public Length usable() {
        return made.usable();
    }

    /** What is {@linkplain #paid() paid} by the metre that can be counted on, rounded down. */
    public UnitPrice byMetre() {
        return new UnitPrice(BigInteger.valueOf(paid().millis())
                .multiply(BigInteger.valueOf(1000))
                .divide(BigInteger.valueOf(usable().mm()))
                .longValueExact());
    }

    /** The day a reel ordered on this day is on the rack, as its supplier says. */
    public LocalDate arrives(LocalDate ordered) {
        return ordered.plusDays(terms.lead().days());
    }

    /** The day from which a reel ordered on this day is counted on: what its orders are usually later is in it. */
    public LocalDate countedOn(LocalDate ordered) {
        return ordered.plusDays(terms.lead().countedOn());
    }

    /** Whether the offer can be planned for on the day it was made: one length, and there is at least one. */
    public boolean plannable() {
        return !made.joined() && terms.supply() > 0 && terms.supply() >= terms.minimum();
    }

    /** The id that reels and ropes of this offer carry inside a packing; no rope of a shop has a colon in its id. */
    public String marking() {
        return rope + ": offer " + id;
    }

    /** The offer of a rope that can be planned for and is cheapest by the metre; the first by id of several. */
    public static Optional<Offer> cheapest(String rope, List<Offer> offers) {
        return offers.stream()
                .filter(offer -> offer.rope().equals(rope) && offer.plannable())
                .min(Comparator.comparingLong((Offer offer) -> offer.byMetre().millisPerMetre())
                        .thenComparing(Offer::id));
    }
}
