package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import java.util.List;
import java.util.stream.Stream;

/**
 * One rope of the catalogue.
 *
 * @param id the shop's short name for it, as orders and reels use it
 * @param name the name printed for people
 * @param identity what makes it the same rope
 * @param mass mass by length, zero when not known
 * @param price replacement price by length
 * @param cutting what a cut costs in rope
 * @param worth from which lengths a remnant is worth keeping
 * @param usualReel the reel length usually bought
 * @param layLength one turn of a strand; zero where it is not typed
 */
public record Rope(
        String id,
        String name,
        RopeIdentity identity,
        LinearMass mass,
        UnitPrice price,
        Cutting cutting,
        Worth worth,
        Length usualReel,
        FineLength layLength) {

    /** A rope whose lay is not typed. */
    public Rope(
            String id,
            String name,
            RopeIdentity identity,
            LinearMass mass,
            UnitPrice price,
            Cutting cutting,
            Worth worth,
            Length usualReel) {
        this(id, name, identity, mass, price, cutting, worth, usualReel, FineLength.ZERO);
    }

    /**
     * What cutting does to this rope.
     *
     * @param loss rope lost at each cut: tape, fused end, pair of whippings
     * @param toNearest cut lengths are rounded up to a multiple of this, half an inch being a half inch and not 13 mm,
     *     and then to the millimetre; positive
     */
    public record Cutting(Length loss, FineLength toNearest) {
        /** Rounded up to a whole number of millimetres. */
        public Cutting(Length loss, Length toNearest) {
            this(loss, toNearest.fine());
        }

        public Cutting {
            if (loss.isNegative() || !toNearest.isPositive()) {
                throw new IllegalArgumentException("loss " + loss + ", to nearest " + toNearest);
            }
        }

        /**
         * The multiple of {@code toNearest} that became this cut length in whole millimetres: 12,650 mm cut to the next half
         * inch are 41 ft 6 in. A length that no multiple became is as it is.
         */
        public FineLength exactly(Length cut) {
            FineLength multiple = toNearest.times(Math.floorDiv(cut.fine().units(), toNearest.units()));
            return multiple.roundedUp().equals(cut) ? multiple : cut.fine();
        }
    }

    /**
     * Two lengths between which the value of a remnant grows to that of new rope.
     *
     * @param keepFrom shorter is scrap; positive
     * @param asGoodAsNew from here a metre is worth its price; not shorter than {@code keepFrom}
     */
    public record Worth(Length keepFrom, Length asGoodAsNew) {
        public Worth {
            if (!keepFrom.isPositive() || asGoodAsNew.isShorterThan(keepFrom)) {
                throw new IllegalArgumentException("keep from " + keepFrom + ", as good as new " + asGoodAsNew);
            }
        }
    }

    public Construction construction() {
        return identity.construction();
    }

    public Fibre fibre() {
        return identity.fibre();
    }

    public Diameter diameter() {
        return identity.diameter();
    }

    public boolean isWire() {
        return construction().form().wire();
    }

    /** What to know of such rope whenever it is cut, of its construction, make-up and fibre. */
    public List<String> cautions() {
        Ratio shrinks = fibre().water().shrinks();
        List<String> wetted = shrinks.isPositive()
                ? List.of("Such rope shrinks up to "
                        + shrinks.times(Ratio.of(100)).timesRoundedUp(1)
                        + " % when it is first wetted: soak and measure a sample where its length counts wet.")
                : List.of();
        return Stream.of(construction().cautions(), identity.makeUp().cautions(), fibre().cautions(), wetted)
                .flatMap(List::stream)
                .distinct()
                .toList();
    }

    /** The same rope under another id. */
    public Rope named(String other) {
        return new Rope(other, name, identity, mass, price, cutting, worth, usualReel, layLength);
    }
}
