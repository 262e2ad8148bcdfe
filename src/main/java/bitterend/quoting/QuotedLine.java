package bitterend.quoting;

import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.quoting.BuildUp.Item;
import bitterend.quoting.BuildUp.Kind;
import java.util.List;

/**
 * What a quote that was filed said about one of its lines.
 *
 * @param name the line, and which part of a product it is
 * @param what what is made, how many times
 * @param cut all cut lengths together
 * @param drawn rope drawn for it
 * @param minutes labour for one assembly, setting up apart
 * @param ends what its two ends are and the labour each of one piece was counted at; empty in a quote of an older version
 * @param items the parts of its price
 * @param price all of it
 */
public record QuotedLine(
        String name, What what, Length cut, Length drawn, int minutes, List<End> ends, List<Item> items, Money price) {
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
     */
    public record What(String rope, String finished, String ends, int legs, int quantity, boolean ownRope) {}

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

    /** Labour of the whole line, setting up apart. */
    public long allMinutes() {
        return (long) minutes * what.quantity();
    }
}
