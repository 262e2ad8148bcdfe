package bitterend.exchange;

import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of an order and what it asks of the bench.
 *
 * @param assembly the line as ordered
 * @param demanded its pieces with their derivations
 */
public record OrderLine(Assembly assembly, Demanded demanded) {
    /** The columns of an order book, those that every line has first. */
    public static List<String> columns() {
        List<String> columns = new ArrayList<>(OrdersCsv.COLUMNS.required());
        columns.addAll(OrdersCsv.COLUMNS.optional());
        return columns;
    }
}
