package bitterend.quoting;

import bitterend.measure.Money;
import java.util.List;

/**
 * How the price of a line comes about, in whole coins. The items add up to the price.
 *
 * @param items in the order in which they are added, those of nothing left out
 * @param each price of one assembly
 * @param quantity how many
 */
public record BuildUp(List<Item> items, Money each, int quantity) {
    public BuildUp {
        items = List.copyOf(items);
        Money sum = items.stream().map(Item::amount).reduce(Money.ZERO, Money::plus);
        if (!sum.equals(each.times(quantity))) {
            throw new IllegalArgumentException("items " + items + " do not add up to " + quantity + " at " + each);
        }
    }

    /**
     * One item.
     *
     * @param kind what it is for
     * @param amount may be negative
     */
    public record Item(Kind kind, Money amount) {}

    /** What an item is for. */
    public enum Kind {
        ROPE("rope in the pieces"),
        WASTE("waste and reel handling"),
        FREIGHT("freight by order"),
        HARDWARE("hardware"),
        LABOUR("labour"),
        SETTING_UP("setting up"),
        SAMPLES("samples and tests"),
        SPOILAGE("spoilage"),
        PACKING("packing"),
        OVERHEAD("overhead"),
        MARGIN("margin"),
        MINIMUM("up to the minimum charge"),
        ROUNDING("to a whole price each");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The price of the line. */
    public Money price() {
        return each.times(quantity);
    }

    /** The amount of an item; nothing when it is not there. */
    public Money of(Kind kind) {
        return items.stream()
                .filter(item -> item.kind() == kind)
                .map(Item::amount)
                .reduce(Money.ZERO, Money::plus);
    }
}
