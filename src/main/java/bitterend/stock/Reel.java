package bitterend.stock;

import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.measure.Written;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A package of one rope: a full reel, a part reel or a loose coil. Positions are measured from the working end.
 *
 * @param id the shop's number for it
 * @param rope id of the rope on it
 * @param lot production run; empty when not known
 * @param contents how much rope, and how far it can be used
 * @param flaws stretches to avoid, by position
 * @param papers certificate and dates
 * @param custody whose rope it is and whether it may be cut
 * @param full whether nothing was ever cut from it: opening it costs once
 * @param where where it stands and what it weighs
 */
public record Reel(
        String id,
        String rope,
        String lot,
        Contents contents,
        List<Flaw> flaws,
        Papers papers,
        Custody custody,
        boolean full,
        Where where) {

    public Reel {
        flaws = flaws.stream()
                .sorted(java.util.Comparator.comparing(Flaw::avoidFrom).thenComparing(Flaw::avoidTo))
                .toList();
    }

    /**
     * How much rope is on a reel.
     *
     * @param written booked length, as it was typed until something was cut
     * @param uncertainty how much shorter it may really be
     * @param leadTrim worn outer end to cut off before the first piece
     * @param innerWraps innermost rope that cannot be used
     * @param known how the length is known
     * @param held rope at the inner end that is not to be cut in the question at hand, since it is held for others; zero on
     *     the rack, where {@link Custody#held} says what is spoken for
     */
    public record Contents(
            Written written, Length uncertainty, Length leadTrim, Length innerWraps, Known known, Length held) {
        public Contents {
            Length length = written.roundedDown();
            if (!length.isPositive()
                    || uncertainty.isNegative()
                    || leadTrim.isNegative()
                    || innerWraps.isNegative()
                    || held.isNegative()) {
                throw new IllegalArgumentException("length " + length + ", uncertainty " + uncertainty + ", lead trim "
                        + leadTrim + ", inner wraps " + innerWraps + ", held " + held);
            }
        }

        /** Of which nothing is held. */
        public Contents(Written written, Length uncertainty, Length leadTrim, Length innerWraps, Known known) {
            this(written, uncertainty, leadTrim, innerWraps, known, Length.ZERO);
        }

        /** Of a length that was worked out. */
        public Contents(Length length, Length uncertainty, Length leadTrim, Length innerWraps, Known known) {
            this(Written.worked(length), uncertainty, leadTrim, innerWraps, known);
        }

        /** Booked length in whole millimetres, rounded down. */
        public Length length() {
            return written.roundedDown();
        }

        /** The same of a length that was worked out: whole millimetres, however they were typed. */
        public Contents worked() {
            return new Contents(Written.worked(length()), uncertainty, leadTrim, innerWraps, known, held);
        }

        /** The same with so much held at the inner end. */
        Contents holding(Length other) {
            return new Contents(written, uncertainty, leadTrim, innerWraps, known, other);
        }

        /** Where the rope ends that can be counted on, from the working end; may lie before the lead trim. */
        public Length certainEnd() {
            return length().minus(uncertainty).minus(innerWraps);
        }

        /** Where the rope ends that may be cut: before what is held. */
        Length usableEnd() {
            return certainEnd().minus(held);
        }
    }

    /** How a length is known. */
    public enum Known {
        METERED("metered"),
        METERED_UNDER_TENSION("metered under tension"),
        NOMINAL("nominal"),
        WEIGHED("weighed"),
        GAUGED("gauged"),
        COUNTED("counted");

        private final String word;

        Known(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * Papers that come with a reel.
     *
     * @param certificate kind of certificate; empty when none
     * @param number its number; empty when none
     * @param useBy last day it may be cut; {@link LocalDate#MAX} when it has none
     * @param received day it came; {@link LocalDate#MIN} when not known
     */
    public record Papers(String certificate, String number, LocalDate useBy, LocalDate received) {
        public static final Papers NONE = new Papers("", "", LocalDate.MAX, LocalDate.MIN);
    }

    /**
     * Whose rope it is and whether it may be cut. A customer's own rope is always kept for an order; the shop's rope is kept
     * for one when it is reserved, and stays so while it is on hold. One that an older ledger has as reserved for no order
     * serves none.
     *
     * @param owner the customer whose own rope it is; empty when it is the shop's
     * @param state free, reserved or on hold
     * @param order the order it is kept for; empty when for none
     * @param held how much of it is spoken for, whom for and until when; the first comes first where it is short
     */
    public record Custody(String owner, State state, String order, List<Held> held) {
        public static final Custody FREE = new Custody("", State.FREE, "");

        /** Of which nothing is spoken for. */
        public Custody(String owner, State state, String order) {
            this(owner, state, order, List.of());
        }

        public Custody {
            held = List.copyOf(held);
            if (!owner.isEmpty() && order.isEmpty()) {
                throw new IllegalArgumentException(owner + "'s own rope is kept for no order");
            }
            if (owner.isEmpty() && state == State.FREE && !order.isEmpty()) {
                throw new IllegalArgumentException("free, and kept for order " + order);
            }
        }

        public boolean isCustomersOwn() {
            return !owner.isEmpty();
        }

        public boolean isOnHold() {
            return state == State.ON_HOLD;
        }

        /** Whether it is the shop's rope and kept for one order, on hold or not. */
        public boolean isReserved() {
            return owner.isEmpty() && (state == State.RESERVED || !order.isEmpty());
        }

        /** Why it may not be sold to just anybody, after the words "reel W1 is"; nothing when it may. */
        public Optional<String> notForSale() {
            return isCustomersOwn()
                    ? Optional.of(owner + "'s own rope, for order " + order)
                    : isReserved()
                            ? Optional.of("kept for order " + order + ": stock release it first")
                            : Optional.empty();
        }

        /** Not to be cut; whom it is kept for stays. */
        public Custody onHold() {
            return new Custody(owner, State.ON_HOLD, order, held);
        }

        /** Of the shop's rope: kept for one order. A hold stays. */
        public Custody reservedFor(String other) {
            return new Custody(owner, isOnHold() ? State.ON_HOLD : State.RESERVED, other, held);
        }

        /** Without its hold, still kept for whom it was; without its reservation where it was not on hold. */
        public Custody released() {
            return isOnHold() && isReserved()
                    ? new Custody(owner, State.RESERVED, order, held)
                    : new Custody(owner, State.FREE, isCustomersOwn() ? order : "", held);
        }

        /** The same with other rope of it spoken for. */
        public Custody holding(List<Held> others) {
            return new Custody(owner, state, order, others);
        }

        /** What of it is held on a day. */
        public List<Held> heldOn(LocalDate day) {
            return held.stream().filter(each -> each.isOn(day)).toList();
        }

        /** Of a coil that comes off the reel: what is held stays on the reel. */
        Custody ofACoil() {
            return holding(List.of());
        }

        /** Behind a piece that was cut off rope that is held for it: what it took of the first such hold is held no longer. */
        public Custody served(Predicate<Held> forIt, Length taken) {
            List<Held> left = new java.util.ArrayList<>();
            boolean served = false;
            for (Held each : held) {
                boolean serves = !served && forIt.test(each);
                left.addAll(serves ? each.less(taken) : List.of(each));
                served |= serves;
            }
            return holding(left);
        }
    }

    /** Whether a reel may be cut. */
    public enum State {
        FREE,
        RESERVED,
        ON_HOLD
    }

    /**
     * Where a reel stands, and what is to be known of it.
     *
     * @param place rack, bay, shed; empty when not known
     * @param mass mass of rope and reel; zero when not known
     * @param draw which end is the working end
     * @param note what is to be known of it, in the shop's words; may be empty
     */
    public record Where(String place, Mass mass, Draw draw, String note) {
        public static final Where UNKNOWN = new Where("", Mass.ZERO, Draw.OUTSIDE);

        /** Without a note. */
        public Where(String place, Mass mass, Draw draw) {
            this(place, mass, draw, "");
        }

        /** The same reel at another place. */
        public Where at(String other) {
            return new Where(other, mass, draw, note);
        }
    }

    /** From which side the rope is drawn. */
    public enum Draw {
        OUTSIDE,
        INSIDE
    }

    public Length length() {
        return contents.length();
    }

    public Reel withContents(Contents other) {
        return new Reel(id, rope, lot, other, flaws, papers, custody, full, where);
    }

    public Reel withFlaws(List<Flaw> others) {
        return new Reel(id, rope, lot, contents, others, papers, custody, full, where);
    }

    public Reel withCustody(Custody other) {
        return new Reel(id, rope, lot, contents, flaws, papers, other, full, where);
    }

    public Reel withWhere(Where other) {
        return new Reel(id, rope, lot, contents, flaws, papers, custody, full, other);
    }

    /** The same reel in a question that leaves so much rope at its inner end alone. */
    public Reel holding(Length held) {
        return held.equals(contents.held()) ? this : withContents(contents.holding(held));
    }

    /** Sound stretches in the order in which they come off; see {@link Run}. */
    public List<Run> runs() {
        return Run.runsOf(this);
    }

    /** The same as they are if all the rope of the booked length is there. */
    public List<Run> possibleRuns() {
        return Run.runsOf(withContents(new Contents(
                contents.written(),
                Length.ZERO,
                contents.leadTrim(),
                contents.innerWraps(),
                contents.known(),
                contents.held())));
    }
}
