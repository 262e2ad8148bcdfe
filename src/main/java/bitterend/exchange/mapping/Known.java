package bitterend.exchange.mapping;

import bitterend.catalogue.Catalogue;
import bitterend.exchange.form.LocalForm;
import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import java.util.List;
import java.util.Map;

/**
 * What the shop knows already, for a sheet to be read by.
 *
 * @param catalogue its ropes and ends
 * @param units what it measures in
 * @param money its currency
 * @param form how it types days and figures, where that is stated
 * @param headers the columns of its tables as they are
 * @param lengths finished lengths that were ordered, and lengths of reels, in whole mm
 */
public record Known(
        Catalogue catalogue,
        Units units,
        MoneyText money,
        LocalForm form,
        Map<Table, List<String>> headers,
        Map<Table, List<Length>> lengths) {
    public Known {
        headers = Map.copyOf(headers);
        lengths = Map.copyOf(lengths);
    }

    /** The lengths that the shop has of the kind that a table is about; none where nothing is known. */
    List<Length> lengths(Table table) {
        return lengths.getOrDefault(table, List.of());
    }
}
