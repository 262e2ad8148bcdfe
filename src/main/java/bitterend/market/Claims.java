package bitterend.market;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.stock.Delivery;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What suppliers delivered otherwise than it was ordered.
 *
 * @param suppliers each with what it delivered, by name
 */
public record Claims(List<OfSupplier> suppliers) {
    public Claims {
        suppliers = List.copyOf(suppliers);
    }

    /**
     * What one supplier delivered.
     *
     * @param supplier its name; empty where orders of reels state none
     * @param deliveries every reel that came, by day
     * @param usual how late it usually is
     */
    public record OfSupplier(String supplier, List<Delivery> deliveries, UsualLateness.Known usual) {
        public OfSupplier {
            deliveries = List.copyOf(deliveries);
        }

        /** Reels that came shorter than they were ordered. */
        public List<Delivery> shorter() {
            return deliveries.stream()
                    .filter(came -> came.shortBy().isPositive())
                    .toList();
        }

        /** Reels that came after the day they were expected. */
        public List<Delivery> late() {
            return deliveries.stream().filter(came -> came.daysLate() > 0).toList();
        }

        /** How much shorter its reels came than they were ordered; longer ones make up for nothing. */
        public Length shortBy() {
            return deliveries.stream().map(Delivery::shortBy).reduce(Length.ZERO, Length::plus);
        }

        /** How much of that is more than it may send short. */
        public Length beyond() {
            return deliveries.stream().map(Delivery::beyond).reduce(Length.ZERO, Length::plus);
        }

        /** What was paid for all that is short. */
        public Cost paidForShort() {
            return deliveries.stream().map(came -> came.paidFor(came.shortBy())).reduce(Cost.ZERO, Cost::plus);
        }

        /** What was paid for what is more than it may send short: to be claimed. */
        public Cost claim() {
            return deliveries.stream().map(came -> came.paidFor(came.beyond())).reduce(Cost.ZERO, Cost::plus);
        }
    }

    /**
     * What came from a day to another.
     *
     * @param from the first day; {@link LocalDate#MIN} for all
     * @param until the last day; {@link LocalDate#MAX} for all
     */
    public static Claims of(List<Delivery> deliveries, LocalDate from, LocalDate until, UsualLateness lateness) {
        Map<String, List<Delivery>> bySupplier = new TreeMap<>();
        deliveries.stream()
                .filter(came -> !came.day().isBefore(from) && !came.day().isAfter(until))
                .forEach(came -> bySupplier
                        .computeIfAbsent(came.promised().supplier(), any -> new ArrayList<>())
                        .add(came));
        return new Claims(bySupplier.entrySet().stream()
                .map(each -> new OfSupplier(
                        each.getKey(),
                        each.getValue().stream()
                                .sorted(Comparator.comparing(Delivery::day)
                                        .thenComparing(Delivery::event)
                                        .thenComparing(Delivery::reel))
                                .toList(),
                        lateness.of(each.getKey())))
                .toList());
    }

    /** The same of one supplier alone. */
    public Claims of(String supplier) {
        return new Claims(suppliers.stream()
                .filter(each -> each.supplier().equals(supplier))
                .toList());
    }

    /** Reels that came. */
    public int reels() {
        return suppliers.stream().mapToInt(each -> each.deliveries().size()).sum();
    }

    /** What is to be claimed of all of them. */
    public Cost claim() {
        return suppliers.stream().map(OfSupplier::claim).reduce(Cost.ZERO, Cost::plus);
    }
}
