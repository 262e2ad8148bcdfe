package bitterend.demand;

import bitterend.catalogue.Hardware;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;

/**
 * Hardware on an end as the order states it: {@code SB12}, {@code TB8 half open}, {@code shared ML16},
 * {@code shackle inside 48 mm +/- 2 mm mass 0.4 kg}.
 *
 * @param what the row of the catalogue, or the thing itself
 * @param shared whether another line counts it: it is measured here, and picked, priced and weighed there
 */
public record HardwareSpec(What what, boolean shared) {
    /** A row of the catalogue, or the thing itself. */
    public sealed interface What {}

    /**
     * A row of the catalogue.
     *
     * @param id its id
     * @param setting how far it is open
     */
    public record Row(String id, Setting setting) implements What {}

    /**
     * Stated outright.
     *
     * @param hardware without an id
     */
    public record Stated(Hardware hardware) implements What {}

    /** How far a turnbuckle is open. */
    public sealed interface Setting {
        /** The order does not say. */
        Setting NOT_STATED = new NotStated();
    }

    /** The order does not say. */
    public record NotStated() implements Setting {}

    /**
     * Open by a part of its travel.
     *
     * @param part 0 for closed, 1 for open
     * @param words as the order says it
     */
    public record Open(Ratio part, String words) implements Setting {}

    /**
     * Set to a length.
     *
     * @param inside bearing to bearing
     */
    public record At(FineLength inside) implements Setting {}
}
