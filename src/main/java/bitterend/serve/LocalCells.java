package bitterend.serve;

import bitterend.exchange.TypedText;
import bitterend.finding.Finding;
import bitterend.measure.Parsed;
import bitterend.work.orders.EditOrders;
import bitterend.work.orders.EditOrders.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
        return of(edit, typed, Set.of());
    }

    /** @param asFile cells that are in the form of the file already, {@code row.column} */
    static LocalCells of(Edit edit, TypedText typed, Set<String> asFile) {
        List<String> header = edit.base().table().header();
        List<Finding> wrong = new ArrayList<>();
        Map<Integer, Map<Integer, String>> changed = new TreeMap<>();
        new TreeMap<>(edit.changed()).forEach((row, cells) -> {
            Map<Integer, String> read = new TreeMap<>();
            new TreeMap<>(cells)
                    .forEach((column, text) -> read.put(
                            column,
                            asFile.contains(row + "." + column)
                                    ? text
                                    : cell(typed, header.get(column), text, row, wrong)));
            changed.put(row, read);
        });
        List<List<String>> added = new ArrayList<>();
        int next = edit.base().table().rows().size();
        for (List<String> cells : edit.added()) {
            List<String> read = new ArrayList<>();
            for (int column = 0; column < cells.size(); column++) {
                read.add(
                        asFile.contains(next + "." + column)
                                ? cells.get(column)
                                : cell(typed, header.get(column), cells.get(column), next, wrong));
            }
            added.add(read);
            next++;
        }
        return new LocalCells(new Edit(edit.base(), changed, added), wrong);
    }

    /** The cells that are shown in the form of the file, and would be read otherwise if somebody typed them here. */
    Map<String, String> readOtherwise(TypedText typed) {
        Map<String, String> shown = new TreeMap<>();
        edit.changed().forEach((row, cells) -> cells.forEach((column, text) -> note(typed, row, column, text, shown)));
        int next = edit.base().table().rows().size();
        for (List<String> cells : edit.added()) {
            for (int column = 0; column < cells.size(); column++) {
                note(typed, next, column, cells.get(column), shown);
            }
            next++;
        }
        return shown;
    }

    private void note(TypedText typed, int row, int column, String text, Map<String, String> shown) {
        String name = edit.base().table().header().get(column);
        boolean same = typed.cell(name, text).value().filter(text::equals).isPresent();
        boolean isWrong = wrong.stream()
                .anyMatch(each ->
                        each.place().equals("row " + (row + 1)) && each.field().equals(name.strip()));
        if (!same && !isWrong) {
            shown.put(row + "." + column, text);
        }
    }

    private static String cell(TypedText typed, String column, String text, int row, List<Finding> wrong) {
        Parsed<String> read = typed.cell(column, text);
        read.refusal()
                .ifPresent(expected ->
                        wrong.add(Finding.error(EditOrders.FILE, "row " + (row + 1), column.strip(), text, expected)));
        return read.value().orElse(text);
    }
}
