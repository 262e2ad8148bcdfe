package bitterend.serve;

import bitterend.exchange.TypedText;
import bitterend.finding.Finding;
import bitterend.measure.Parsed;
import bitterend.work.orders.EditOrders;
import bitterend.work.orders.EditOrders.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What was typed into the order book, by what is typed where the shop is, in the form of the file; a cell that could mean two
 * things stays as it was typed, and is an error.
 *
 * @param edit the cells in the form of the file
 * @param wrong cells of which nobody knows what they mean
 */
record LocalCells(Edit edit, List<Finding> wrong) {
    LocalCells {
        wrong = List.copyOf(wrong);
    }

    static LocalCells of(Edit edit, TypedText typed) {
        List<String> header = edit.base().table().header();
        List<Finding> wrong = new ArrayList<>();
        Map<Integer, Map<Integer, String>> changed = new TreeMap<>();
        edit.changed().forEach((row, cells) -> {
            Map<Integer, String> read = new TreeMap<>();
            new TreeMap<>(cells)
                    .forEach((column, text) -> read.put(column, cell(typed, header.get(column), text, row, wrong)));
            changed.put(row, read);
        });
        List<List<String>> added = new ArrayList<>();
        int next = edit.base().table().rows().size();
        for (List<String> cells : edit.added()) {
            List<String> read = new ArrayList<>();
            for (int column = 0; column < cells.size(); column++) {
                read.add(cell(typed, header.get(column), cells.get(column), next, wrong));
            }
            added.add(read);
            next++;
        }
        return new LocalCells(new Edit(edit.base(), changed, added), wrong);
    }

    private static String cell(TypedText typed, String column, String text, int row, List<Finding> wrong) {
        Parsed<String> read = typed.cell(column, text);
        read.refusal()
                .ifPresent(expected ->
                        wrong.add(Finding.error(EditOrders.FILE, "row " + (row + 1), column.strip(), text, expected)));
        return read.value().orElse(text);
    }
}
