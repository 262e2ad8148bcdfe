package bitterend.demand;

import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import java.util.List;

/**
 * One order line: what the customer wants, before anything is worked out.
 *
 * @param origin where it was read, so that problems can be located
 * @param ordered who wants how many, and when
 * @param ropes ids of the ropes it may be made of, the ordered one first, then allowed substitutes; never empty
 * @param make what one leg looks like when finished
 * @param terms what the rope of its pieces must satisfy
 * @param membership what it is a part of, when a standard product has several
 */
public record Assembly(
        Origin origin, Ordered ordered, List<String> ropes, Make make, Terms terms, Membership membership) {
    public Assembly {
        ropes = List.copyOf(ropes);
        if (ropes.isEmpty()) {
            throw new IllegalArgumentException("no rope for " + ordered);
        }
    }

    /** A line that states everything itself. */
    public Assembly(Origin origin, Ordered ordered, List<String> ropes, Make make, Terms terms) {
        this(origin, ordered, ropes, make, terms, Membership.ALONE);
    }

    /** The same of one rope alone. */
    public Assembly of(String rope) {
        return new Assembly(origin, ordered, List.of(rope), make, terms, membership);
    }

    /**
     * Where an order line was read.
     *
     * @param file file name inside the shop folder
     * @param place {@code row 12} or a JSON pointer, as in a finding
     */
    public record Origin(String file, String place) {}

    /**
     * Who wants how many, and when.
     *
     * @param source order, line, due day and priority
     * @param customer name of the customer; empty when not stated
     * @param product name of the standard product; empty when the line states rope and ends itself
     * @param quantity how many assemblies; at least 1
     * @param legs pieces of rope in each assembly, all alike; at least 1
     * @param note what the order says besides, in its own words; empty for nothing
     * @param quote the line of a kept quote that it came of, such as {@code Q-2601/1/2}; empty for none
     */
    public record Ordered(
            Piece.Source source, String customer, String product, int quantity, int legs, String note, String quote) {
        /** Of no quote that is known. */
        public Ordered(Piece.Source source, String customer, String product, int quantity, int legs, String note) {
            this(source, customer, product, quantity, legs, note, "");
        }

        /** Without a note. */
        public Ordered(Piece.Source source, String customer, String product, int quantity, int legs) {
            this(source, customer, product, quantity, legs, "");
        }

        public Ordered {
            if (quantity < 1 || legs < 1) {
                throw new IllegalArgumentException("quantity " + quantity + ", legs " + legs);
            }
        }

        /** Pieces of rope in all of them. */
        public int pieces() {
            return Math.multiplyExact(quantity, legs);
        }
    }

    /**
     * What one leg looks like when finished.
     *
     * @param finished finished length as the order states it; positive
     * @param measuring how that length is measured
     * @param endA the end that is cut first
     * @param endB the other end
     * @param extras rope wanted beyond the assembly
     * @param asked how near it must come, and where it is to be marked
     * @param hang how it hangs, of a leg of a sling
     */
    public record Make(
            Written finished, Measuring measuring, EndSpec endA, EndSpec endB, Extras extras, Asked asked, Hang hang) {
        /** The order does not say how it hangs. */
        public Make(Written finished, Measuring measuring, EndSpec endA, EndSpec endB, Extras extras, Asked asked) {
            this(finished, measuring, endA, endB, extras, asked, Hang.NOT_STATED);
        }

        /** Without tolerances and marks. */
        public Make(Written finished, Measuring measuring, EndSpec endA, EndSpec endB, Extras extras) {
            this(finished, measuring, endA, endB, extras, Asked.NOTHING);
        }

        public Make {
            if (!finished.exact().isPositive()) {
                throw new IllegalArgumentException("finished length must be positive: " + finished);
            }
        }
    }

    /**
     * Rope wanted beyond the assembly.
     *
     * @param spare added to every piece
     * @param sample added to the first piece of the line and cut off it afterwards, for a break test
     * @param along knots and loops along every piece
     */
    public record Extras(Written spare, Written sample, List<Along> along) {
        public static final Extras NONE = new Extras(Written.NOTHING, Written.NOTHING);

        /** Nothing along the piece. */
        public Extras(Written spare, Written sample) {
            this(spare, sample, List.of());
        }

        public Extras {
            along = List.copyOf(along);
            if (spare.exact().isNegative() || sample.exact().isNegative()) {
                throw new IllegalArgumentException("spare " + spare + ", sample " + sample);
            }
        }
    }

    /**
     * Knots or loops of one kind along a piece.
     *
     * @param count how many
     * @param spec one of them, as an end is stated
     */
    public record Along(int count, EndSpec spec) {
        public Along {
            if (count < 1) {
                throw new IllegalArgumentException("along " + count);
            }
        }
    }

    /**
     * How near a leg must come, and where it is to be marked.
     *
     * @param finished of the finished length, either way
     * @param eye of the length of an eye, either way
     * @param set between the longest and the shortest of a matched set
     * @param marks places to mark on the finished assembly
     * @param accepted what somebody accepts although a rule advises against it
     */
    public record Asked(
            Tolerance finished, Tolerance eye, Tolerance set, List<WantedMark> marks, List<Accepted> accepted) {
        public static final Asked NOTHING = new Asked(Tolerance.NONE, Tolerance.NONE, Tolerance.NONE, List.of());

        public Asked {
            marks = List.copyOf(marks);
            accepted = List.copyOf(accepted);
        }

        /** With nothing accepted. */
        public Asked(Tolerance finished, Tolerance eye, Tolerance set, List<WantedMark> marks) {
            this(finished, eye, set, marks, List.of());
        }

        /** Who accepted it; empty when nobody did. */
        public String acceptedBy(String what) {
            return accepted.stream()
                    .filter(each -> each.what().equals(what))
                    .map(Accepted::by)
                    .findFirst()
                    .orElse("");
        }
    }

    /**
     * A place to mark, from the bearing point of end A.
     *
     * @param name the middle, a quarter, a distance
     * @param part part of the finished length; from 0 to 1
     * @param from distance added to that part
     */
    public record WantedMark(String name, Ratio part, FineLength from) {}

    /**
     * What a line of a standard product is a part of.
     *
     * @param part its name within the assembly; empty for the main part
     * @param hardware parts to pick for one assembly besides those of its ends
     * @param inherited what the line took over from the product, in words
     */
    public record Membership(String part, List<EndWork.Picked> hardware, List<String> inherited) {
        public static final Membership ALONE = new Membership("", List.of(), List.of());

        public Membership {
            hardware = List.copyOf(hardware);
            inherited = List.copyOf(inherited);
        }
    }

    /**
     * What the rope of the pieces must satisfy.
     *
     * @param matching the matched set; a bond without a name makes a set of its own of each assembly
     * @param certificate kind of certificate the reel must carry; empty when none is asked for
     * @param ownRope whether it must come off the customer's own rope
     * @param use what the assembly is for
     * @param code the region's code that holds for it; empty for the shop's
     */
    public record Terms(Piece.Matching matching, String certificate, boolean ownRope, Use use, String code) {
        public static final Terms USUAL = new Terms(Piece.Matching.NONE, "", false, Use.GENERAL);

        /** Under the shop's code. */
        public Terms(Piece.Matching matching, String certificate, boolean ownRope, Use use) {
            this(matching, certificate, ownRope, use, "");
        }
    }

    /** What an assembly is for. */
    public enum Use {
        GENERAL,
        /** Slings and other lifting: stricter on throat angle and on ends. */
        LIFTING,
        /** Lifting where the load can turn. */
        TURNING;

        /** Whether something is lifted. */
        public boolean isLifting() {
            return this != GENERAL;
        }
    }
}
