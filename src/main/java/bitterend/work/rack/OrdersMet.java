package bitterend.work.rack;

import bitterend.day.Receipt.Apart;
import bitterend.day.Receipt.Ordered;
import bitterend.exchange.ReceiptCsv.Row;
import bitterend.finding.NaturalOrder;
import bitterend.market.OnOrder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Orders of reels while a list of what came is held against them, row by row. */
final class OrdersMet {
    private final List<OnOrder> onOrder;
    /** How many of each order that the list names are still to come. */
    private final Map<String, Integer> toCome = new TreeMap<>(NaturalOrder.IDS);

    OrdersMet(List<OnOrder> onOrder) {
        this.onOrder = List.copyOf(onOrder);
    }

    /**
     * What was ordered, of a row that names its order; a row that cannot be booked is none of its reels.
     *
     * @param apart why the row is set apart; one more than was ordered is told there
     */
    Ordered meet(Row row, List<Apart> apart) {
        Optional<OnOrder> found = find(row.onOrder());
        if (found.isEmpty()) {
            return Ordered.NONE;
        }
        OnOrder order = found.get();
        boolean isOfIt = order.rope().equals(row.reel().rope());
        int left = toCome.merge(order.id(), order.quantity(), (before, all) -> before);
        if (isOfIt && apart.isEmpty() && left > 0) {
            toCome.put(order.id(), left - 1);
        } else if (isOfIt && apart.isEmpty()) {
            apart.add(Apart.never("no more of order " + order.id()
                    + " are to come; without its number it is received as a reel that was not ordered"));
        }
        return isOfIt ? ordered(order, 1) : Ordered.NONE;
    }

    /** Reels of these orders that are not on the list. */
    List<Ordered> missing() {
        return toCome.entrySet().stream()
                .filter(each -> each.getValue() > 0)
                .map(each -> ordered(find(each.getKey()).orElseThrow(), each.getValue()))
                .toList();
    }

    private Optional<OnOrder> find(String number) {
        return onOrder.stream().filter(order -> order.id().equals(number)).findFirst();
    }

    private static Ordered ordered(OnOrder order, int quantity) {
        return new Ordered(order.id(), order.rope(), order.written(), quantity);
    }
}
