package bitterend.demand;

import bitterend.catalogue.Grade;
import bitterend.catalogue.Hardware;
import bitterend.catalogue.Hardware.Kind;
import bitterend.catalogue.Provenance;
import bitterend.demand.EndWork.Picked;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Mass;
import bitterend.measure.Sentence;

/**
 * A piece of hardware as it hangs on an end.
 *
 * @param hardware what hangs there
 * @param inside bearing to bearing as it is set; positive
 * @param setting how it is set, in words; empty for hardware of one length
 * @param shared whether another line counts it
 * @param inLength whether the finished length is measured over it
 */
public record HungHardware(Hardware hardware, FineLength inside, String setting, boolean shared, boolean inLength) {
    private static final Provenance OF_THE_SHOP = new Provenance("the shop's thimbles.json", Grade.SHOP, true);

    /** The same in a finished length, or beyond it. */
    HungHardware measured(boolean within) {
        return new HungHardware(hardware, inside, setting, shared, within);
    }

    /** The word for it, its id, how it is set: {@code turnbuckle TB8, half open}. */
    public String name() {
        return hardware.name() + (setting.isEmpty() ? "" : ", " + setting);
    }

    /** As the pick list names it. */
    public Picked picked() {
        return new Picked(
                hardware.id().isEmpty() ? hardware.name() + ", inside " + LengthText.exact(inside) : hardware.name(),
                1);
    }

    /** How many of it an assembly of so many legs takes; none where another line counts it. */
    public int countFor(int legs) {
        Kind kind = hardware.kind();
        return shared ? 0 : kind.countFor(legs);
    }

    /** Its mass for an assembly of so many legs; zero when not known. */
    Mass massFor(int legs) {
        return new Mass(Math.multiplyExact(hardware.mass().grams(), countFor(legs)));
    }

    /** Where its length is from. */
    Provenance provenance() {
        return hardware.id().isEmpty() ? Provenance.ORDER : OF_THE_SHOP;
    }

    /** Its inside length with what that may be off. */
    Sentence length() {
        Sentence words = Sentence.of(setting.isEmpty() ? "inside length" : "inside length, " + setting);
        return hardware.tolerance().isPositive() ? words.and(", +/- ").and(hardware.tolerance()) : words;
    }
}
