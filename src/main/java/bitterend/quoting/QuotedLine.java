package bitterend.quoting;

import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.quoting.BuildUp.Item;
import bitterend.quoting.BuildUp.Kind;
import java.util.List;
import java.util.Optional;

/**
 * What a quote that was filed said about one of its lines.
 *
 * @param name the line, and which part of a product it is
 * @param what what is made, how many times
 * @param cut all cut lengths together
 * @param drawn rope drawn for it
 * @param minutes labour for one assembly, setting up apart
 * @param ends what its two ends are and the labour each of one piece was counted at; empty in a quote of an older version
 * @param within freight by reel and by weight that is in its rope; nothing in a quote of an older version
 * @param items the parts of its price
 * @param price all of it
 */
public record QuotedLine(
        String name,
        What what,
        Length cut,
        Length drawn,
        int minutes,
        List<End> ends,
        Optional<FreightWithin> within,
        List<Item> items,
        Money price) {
    public QuotedLine {
        ends = List.copyOf(ends);
        items = List.copyOf(items);
    }

    /**
     * What is made.
     *
     * @param rope id of the rope
     * @param finished finished length, as text that says it exactly
     * @param ends both ends in the words of an order
     * @param legs pieces of rope in each assembly
     * @param quantity how many assemblies
     * @param ownRope whether the rope is the customer's
     * @param sample rope in its longest piece that is cut off for a test, and counted with the samples; nothing in a quote of
     *     an older version
     */
    public record What(
            String rope, String finished, String ends, int legs, int quantity, boolean ownRope, Length sample) {
        /** Pieces of rope in all of them. */
        public int pieces() {
            return Math.multiplyExact(quantity, legs);
        }
    }

    /**
     * One end of every piece.
     *
     * @param name name of the termination
     * @param minutes labour for one; 0 where none is stated
     */
    public record End(String name, int minutes) {}

    /** The amount of an item; nothing when it is not there. */
    public Money of(Kind kind) {
        return items.stream()
                .filter(item -> item.kind() == kind)
                .map(Item::amount)
                .reduce(Money.ZERO, Money::plus);
    }

    /** Hardware of one assembly, rounded down to a whole coin. */
    public Money hardwareEach() {
        return new Money(of(Kind.HARDWARE).minor() / what.quantity());
    }

    /** The same with all freight among the freight, as it is booked, and none in the rope; as filed in an older version. */
    public Money withoutFreightInRope(Kind kind) {
        FreightWithin freight = within.orElse(FreightWithin.NONE);
        return switch (kind) {
            case ROPE -> of(kind).minus(freight.rope());
            case WASTE -> of(kind).minus(freight.waste());
            case FREIGHT -> of(kind).plus(freight.all());
            default -> of(kind);
        };
    }

    /** Labour of the whole line, setting up apart. */
    public long allMinutes() {
        return (long) minutes * what.quantity();
    }
}
