package bitterend.work.imports;

import bitterend.exchange.mapping.Change;
import java.util.List;
import java.util.Map;

/**
 * A file of the shop with the rows of a sheet in it.
 *
 * @param text of the file as it would be
 * @param changes what becomes of each row, in the order of the sheet
 * @param places where each row of the sheet is in the file, as findings say it
 * @param columns names of columns that the file did not have
 */
record TableDraft(String text, List<Change> changes, Map<String, String> places, List<String> columns) {
    TableDraft {
        changes = List.copyOf(changes);
        places = Map.copyOf(places);
        columns = List.copyOf(columns);
    }
}
