package bitterend.market;

import bitterend.packing.ShopCalendar;
import bitterend.packing.ShopCalendar.Ahead;
import bitterend.packing.WorkingDays;
import bitterend.stock.Delivery;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * From when rope that is on order is counted on: later than its supplier says, by what that supplier is usually late. What the
 * shop says of the supplier counts, else what its deliveries tell once there are {@link #ENOUGH}, else what the shop says of
 * all. Four deliveries of five came no later than that.
 */
public final class UsualLateness {
    /** Two working days. Our own choice, no source: with known receipts the shop can type what it sees. */
    public static final Ahead USUAL = new Ahead(2, true);

    /** Fewer deliveries tell nothing about the next. Our own choice, no source. */
    public static final int ENOUGH = 5;

    /** Older deliveries than so many are not looked at. Our own choice, no source. */
    public static final int LATEST = 20;

    private final WorkingDays working;
    private final Ahead typed;
    private final Map<String, Known> bySupplier = new HashMap<>();

    /** Where it comes from. */
    public enum Source {
        /** The shop says it of all suppliers. */
        OF_ALL,
        /** The shop says it of this supplier. */
        OF_SUPPLIER,
        /** Deliveries tell. */
        DELIVERIES
    }

    /**
     * What is known of a supplier.
     *
     * @param late how late its reels usually come
     * @param deliveries how many deliveries tell, where they do
     */
    public record Known(Ahead late, Source source, int deliveries) {}

    /** @param typed how late reels usually come, as the shop says */
    public UsualLateness(ShopCalendar calendar, Ahead typed) {
        this(calendar, typed, Map.of(), List.of());
    }

    /**
     * With what is known of suppliers.
     *
     * @param said what the shop says of a supplier, by name
     * @param deliveries what came, the oldest first
     */
    public UsualLateness(ShopCalendar calendar, Ahead typed, Map<String, Ahead> said, List<Delivery> deliveries) {
        working = new WorkingDays(calendar);
        this.typed = typed;
        seen(deliveries).forEach((supplier, late) -> {
            if (late.size() >= ENOUGH && !supplier.isEmpty()) {
                bySupplier.put(
                        supplier,
                        new Known(
                                new Ahead(Math.min(Ahead.MOST, fourOfFive(late)), true),
                                Source.DELIVERIES,
                                late.size()));
            }
        });
        said.forEach((supplier, late) -> bySupplier.put(supplier, new Known(late, Source.OF_SUPPLIER, 0)));
    }

    /** By supplier how many working days late its latest deliveries were; what came of an order on one day is one. */
    private Map<String, List<Integer>> seen(List<Delivery> deliveries) {
        Map<String, Map<String, Delivery>> each = new HashMap<>();
        deliveries.stream().sorted(Comparator.comparing(Delivery::day)).forEach(came -> each.computeIfAbsent(
                        came.promised().supplier(), any -> new LinkedHashMap<>())
                .putIfAbsent(came.promised().order() + " " + came.day(), came));
        Map<String, List<Integer>> late = new HashMap<>();
        each.forEach((supplier, all) -> late.put(
                supplier,
                all.values().stream()
                        .skip(Math.max(0, all.size() - LATEST))
                        .map(this::workingDaysLate)
                        .toList()));
        return late;
    }

    /** How many working days after the day it was expected a delivery came; none where it came in time. */
    public int workingDaysLate(Delivery came) {
        return working.between(working.firstFrom(came.promised().expected()), came.day());
    }

    private static int fourOfFive(List<Integer> late) {
        List<Integer> sorted = new ArrayList<>(late);
        sorted.sort(Comparator.naturalOrder());
        return sorted.get((sorted.size() * 4 + 4) / 5 - 1);
    }

    /** How late a supplier usually is; one that nothing is known of as all. */
    public Known of(String supplier) {
        return bySupplier.getOrDefault(supplier, new Known(typed, Source.OF_ALL, 0));
    }

    /**
     * The first working day on which an order of reels is counted on: the day it is expected and what its supplier is
     * usually late. What is later than that already is expected anew from {@code today}, and never before the working day after
     * it, since it is not in the house.
     */
    public LocalDate from(OnOrder order, LocalDate today) {
        Ahead usual = of(order.supplier()).late();
        LocalDate late = after(order.expected(), usual);
        LocalDate next = working.after(today, 1);
        if (late.isAfter(today)) {
            return late;
        }
        LocalDate anew = after(today, usual);
        return anew.isBefore(next) ? next : anew;
    }

    /** The first working day on which a reel is counted on that its supplier says comes on a day. */
    public LocalDate usual(String supplier, LocalDate expected) {
        return after(expected, of(supplier).late());
    }

    private LocalDate after(LocalDate expected, Ahead late) {
        return working.firstFrom(working.ahead(working.firstFrom(expected), late));
    }
}
