package bitterend.catalogue;

import bitterend.measure.FineLength;
import bitterend.measure.Mass;
import bitterend.measure.Ratio;
import java.util.Arrays;
import java.util.List;

/**
 * What hangs between the end of a rope and the point that a finished length runs to: shackle, hook, link, turnbuckle, ring.
 *
 * @param id the shop's short name for it; empty for one that an order states outright
 * @param kind what it is
 * @param inside bearing to bearing, of a turnbuckle when it is closed; positive
 * @param opened the same of a turnbuckle when it is open, not below {@code inside}; of any other as {@code inside}
 * @param tolerance how far the inside length may be off, either way; not negative
 * @param mass of one; zero when not known
 */
public record Hardware(String id, Kind kind, FineLength inside, FineLength opened, FineLength tolerance, Mass mass) {
    public Hardware {
        if (!inside.isPositive() || opened.compareTo(inside) < 0 || tolerance.isNegative()) {
            throw new IllegalArgumentException(
                    kind.word() + " " + id + ": inside " + inside + ", open " + opened + ", tolerance " + tolerance);
        }
    }

    /** Hardware of one length. */
    public static Hardware fixed(String id, Kind kind, FineLength inside, FineLength tolerance, Mass mass) {
        return new Hardware(id, kind, inside, inside, tolerance, mass);
    }

    /** The word for it and its id: {@code shackle SB12}. */
    public String name() {
        return id.isEmpty() ? kind.word() : kind.word() + " " + id;
    }

    /** Whether its length can be set. */
    public boolean isAdjustable() {
        return opened.compareTo(inside) > 0;
    }

    /** Inside length when it is open by this part of its travel, from 0 to 1; rounded up to 0.0001 mm. */
    public FineLength openBy(Ratio part) {
        return inside.plus(opened.minus(inside).times(part));
    }

    /** What it is, by the word of the trade. */
    public enum Kind {
        SHACKLE("shackle", 1),
        HOOK("hook", 1),
        RING("ring", 1),
        SWIVEL("swivel", 1),
        LINK("link", 1),
        /** All legs of a sling hang from one. */
        MASTER_LINK("master link", Integer.MAX_VALUE),
        /** Two legs hang from one. */
        INTERMEDIATE_LINK("intermediate link", 2),
        TURNBUCKLE("turnbuckle", 1);

        private final String word;
        private final int legs;

        Kind(String word, int legs) {
            this.word = word;
            this.legs = legs;
        }

        /** The word of the trade. */
        public String word() {
            return word;
        }

        /** How many an assembly of so many legs takes. */
        public int countFor(int legsOfOne) {
            return legs == Integer.MAX_VALUE ? 1 : (legsOfOne + legs - 1) / legs;
        }

        /** Whether legs share one. */
        public boolean isShared() {
            return legs > 1;
        }

        /** Every word. */
        public static List<String> words() {
            return Arrays.stream(values()).map(Kind::word).toList();
        }
    }
}
