package bitterend.demand;

import bitterend.measure.Diameter;
import bitterend.measure.LengthsInWords;
import bitterend.measure.Sentence;
import java.util.List;

/**
 * What one end of every piece of an order line asks of the splicer.
 *
 * @param end {@code end A} or {@code end B}
 * @param termination id of the termination
 * @param name its name, as printed
 * @param minutes labour for one such end; 0 when not known
 * @param parts what one such end uses up besides rope, hardware that legs share apart
 * @param caution what to read before making it; empty for nothing
 * @param verified whether its numbers were checked, here or by who published them
 * @param unchecked which of its numbers are from memory, a sentence; empty for none
 * @param hardware what hangs on one such end, from the rope outwards
 */
public record EndWork(
        String end,
        String termination,
        String name,
        int minutes,
        List<Picked> parts,
        String caution,
        boolean verified,
        String unchecked,
        List<HungHardware> hardware) {
    public EndWork {
        parts = List.copyOf(parts);
        hardware = List.copyOf(hardware);
    }

    /** Whether its labour is known: minutes are stated, or there is nothing to make. */
    public boolean isTimed() {
        return minutes > 0 || termination.equals("plain");
    }

    /** Hardware that the legs of an assembly share, with its count for an assembly of so many. */
    public List<Picked> shared(int legs) {
        return hardware.stream()
                .filter(each -> each.hardware().kind().isShared() && each.countFor(legs) > 0)
                .map(each -> new Picked(each.picked().item(), each.countFor(legs)))
                .toList();
    }

    /**
     * Parts to pick for one end.
     *
     * @param item what
     * @param rope diameter of the rope it is picked for: clips and twine come in sizes; {@link Diameter#NONE} where the item
     *     names its own size
     * @param count how many; at least 1
     */
    public record Picked(String item, Diameter rope, int count) {
        /** Of an item that names its own size. */
        public Picked(String item, int count) {
            this(item, Diameter.NONE, count);
        }

        /** The item with its size; lengths in its name as they were written. */
        public Sentence words() {
            Sentence name = LengthsInWords.sentence(item);
            return rope.equals(Diameter.NONE)
                    ? name
                    : name.and(", for ").and(rope).and(" rope");
        }
    }
}
