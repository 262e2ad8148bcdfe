package bitterend.catalogue;

import bitterend.measure.Diameter;
import java.util.List;
import java.util.Optional;

/**
 * Clips that hold a tail to its standing part.
 *
 * @param item what to pick; empty for no clips
 * @param count how many
 * @param saddle the base of a saddle along the rope
 * @param torques torque of their nuts by rope, thinnest first; empty where the clip maker states it
 */
public record Clips(String item, PartCount count, Allowance saddle, List<Torque> torques) {
    public static final Clips NONE = new Clips("", PartCount.of(0), Allowance.NOTHING, List.of());

    public Clips {
        torques = List.copyOf(torques);
    }

    /**
     * The torque for ropes up to a limit.
     *
     * @param limit the ropes
     * @param torque as its source writes it, with its unit
     * @param provenance where it comes from
     */
    public record Torque(DiameterLimit limit, String torque, Provenance provenance) {}

    public boolean isNone() {
        return item.isEmpty();
    }

    /** The torque for a rope; nothing where the clip maker states it. */
    public Optional<Torque> torque(Diameter rope) {
        return torques.stream().filter(step -> step.limit().admits(rope)).findFirst();
    }
}
