package bitterend.serve;

import bitterend.finding.Unseen;
import bitterend.work.orders.EditOrders;
import bitterend.work.orders.EditOrders.Book;
import bitterend.work.orders.EditOrders.Edit;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a browser sends of the order book: the cells, and the rows that were pasted. A row behind the last that is left blank is none. */
final class BookForm {
    /** What the page showed in a cell, before its row and column. */
    static final String SHOWN = "shown";

    private BookForm() {}

    /** What was typed into the cells, and the rows that were pasted; nothing when the book it was typed into is not known. */
    static Optional<Edit> edit(Context request, EditOrders verb) {
        String digest = Sent.text(request, "digest");
        Book base = PackedBook.read(request.formParam("base"))
                .map(table -> new Book(table, digest))
                .or(() -> verb.read().filter(book -> book.digest().equals(digest)))
                .orElse(null);
        if (base == null) {
            return Optional.empty();
        }
        Map<Integer, Map<Integer, String>> changed = new TreeMap<>();
        List<List<String>> added = new ArrayList<>();
        int there = base.table().rows().size();
        SortedMap<Integer, Map<Integer, String>> typed = TypedCells.of(request);
        typed.headMap(there)
                .forEach((row, cells) -> cells.forEach((column, is) -> {
                    if (row > 0
                            && column < base.table().cells(row).size()
                            && !is.equals(asShown(base.table().cells(row).get(column)))) {
                        changed.computeIfAbsent(row, any -> new TreeMap<>()).put(column, is);
                    }
                }));
        int width = base.table().header().size();
        typed.tailMap(there).values().stream()
                .filter(BookForm::isFilled)
                .forEach(cells -> added.add(PastedRows.whole(cells, width)));
        added.addAll(pasted(request, base).rows());
        return Optional.of(new Edit(base, changed, added));
    }

    /** Where a row of the page comes to stand in the book: the blank ones before it are none. */
    static int inFile(Context request, Book base, int row) {
        int there = base.table().rows().size();
        return row <= there
                ? row
                : there
                        + (int) TypedCells.of(request).subMap(there, row).values().stream()
                                .filter(BookForm::isFilled)
                                .count();
    }

    /**
     * Cells that are still as this page showed them, though as typed here they would be read otherwise: {@code row.column} of
     * the book. They are in the form of the file.
     */
    static Set<String> asShown(Context request, Book base) {
        Set<String> same = new HashSet<>();
        TypedCells.of(request)
                .forEach((row, cells) -> cells.forEach((column, is) -> {
                    String was = request.formParam(SHOWN + row + "." + column);
                    if (was != null && is.equals(Sent.oneLine(was))) {
                        same.add(inFile(request, base, row) + "." + column);
                    }
                }));
        return same;
    }

    private static boolean isFilled(Map<Integer, String> cells) {
        return cells.values().stream().anyMatch(cell -> !cell.isBlank());
    }

    static PastedRows pasted(Context request, Book book) {
        return PastedRows.of(request.formParam("paste"), book.table().header(), List.of("order", "rope"));
    }

    /** A cell as a browser sends it back when nobody has touched it: without line ends, unseen characters by their names. */
    private static String asShown(String raw) {
        return Sent.oneLine(Unseen.shownOnPage(raw).replaceAll("[\\r\\n]", ""));
    }
}
