package bitterend.quoting;

import bitterend.demand.EndWork.Picked;
import bitterend.measure.Diameter;
import bitterend.measure.Money;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the parts of the pick list cost: thimbles, fittings, clips, sleeves, twine.
 *
 * @param rows in any order
 */
public record PartPrices(List<Row> rows) {
    /** A shop that has typed no prices of parts. */
    public static final PartPrices NONE = new PartPrices(List.of());

    private static final Comparator<Row> CLOSEST =
            Comparator.comparing((Row row) -> row.item().length()).thenComparing(row -> row.rope());

    public PartPrices {
        rows = List.copyOf(rows);
    }

    /**
     * The price of one part.
     *
     * @param item as the pick list names it, or the words before a comma in that name
     * @param rope diameter of the rope it is picked for; {@link Diameter#NONE} for every size
     * @param each not negative
     */
    public record Row(String item, Diameter rope, Money each) {
        public Row {
            if (item.isBlank() || each.minor() < 0) {
                throw new IllegalArgumentException("part " + item + " at " + each);
            }
        }

        private boolean isOf(Picked part) {
            boolean named = part.item().equals(item) || part.item().startsWith(item + ",");
            return named && (rope.equals(Diameter.NONE) || rope.equals(part.rope()));
        }
    }

    /** The price of one; of several rows that suit, the one that says more of the name, then the one that states the size. */
    public Optional<Money> each(Picked part) {
        return rows.stream().filter(row -> row.isOf(part)).max(CLOSEST).map(Row::each);
    }

    /** What all of these cost, as far as their prices are known. */
    Money of(List<Picked> parts) {
        return parts.stream()
                .map(part -> each(part).orElse(Money.ZERO).times(part.count()))
                .reduce(Money.ZERO, Money::plus);
    }
}
