package bitterend.serve;

import bitterend.exchange.TableText;
import bitterend.finding.Finding;
import bitterend.finding.Unseen;
import bitterend.work.ShopFound;
import bitterend.work.orders.EditOrders;
import bitterend.work.orders.EditOrders.Book;
import bitterend.work.orders.EditOrders.Edit;
import bitterend.work.orders.EditOrders.Saved;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The order book as a table to type in, and a field to paste rows of a spreadsheet into. What is typed is looked at by the same
 * code as the file; a save that meets another's changes keeps both or says where they meet.
 */
final class BookScreen implements Screen {
    private static final int MOST_BOOKS = 16;
    /** Columns that are always shown; of the others those that somebody uses. */
    private static final List<String> USUAL =
            List.of("order", "line", "customer", "rope", "length", "end a", "end b", "quantity", "due", "note");

    private final Loft loft;
    private final Site site;
    private final People people;
    private final Set<String> saved = new HashSet<>();
    private final Map<String, Book> looked = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Book> eldest) {
            return size() > MOST_BOOKS;
        }
    };

    BookScreen(Loft loft, Site site, People people) {
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get("/book", request -> show(request, Optional.empty(), List.of()));
        config.routes.post("/book", this::save);
        config.routes.post("/book/back", this::takeBack);
    }

    private EditOrders verb() {
        return new EditOrders(loft.access());
    }

    private Optional<Book> read() {
        Optional<Book> book = verb().read();
        book.ifPresent(each -> {
            synchronized (looked) {
                looked.put(each.digest(), each);
            }
        });
        return book;
    }

    private void show(Context request, Optional<Edit> typed, List<String> told) {
        Book book = typed.map(Edit::base).or(this::read).orElse(null);
        if (book == null) {
            site.tell(request, "orders.csv cannot be read as a table.");
            return;
        }
        LocalCells cells = LocalCells.of(typed.orElse(new Edit(book, Map.of(), List.of())), loft.typed());
        Edit edit = cells.edit();
        ShopFound found = typed.isPresent() ? verb().check(edit) : loft.shelf().read();
        Map<String, Object> values = new HashMap<>();
        values.put("columns", shown(book.table(), edit));
        values.put("rows", rows(edit, found, cells.wrong()));
        values.put("digest", book.digest());
        values.put("booking", Keys.random());
        values.put("told", told);
        values.put("before", verb().before());
        site.show(request, "Order book", "serve/book.jte", values);
    }

    private static List<BookColumn> shown(TableText table, Edit edit) {
        List<BookColumn> columns = new ArrayList<>();
        List<String> header = table.header();
        for (int column = 0; column < header.size(); column++) {
            String name = header.get(column).strip();
            if (USUAL.contains(name.toLowerCase(Locale.ROOT)) || isUsed(table, column) || isUsed(edit, column)) {
                columns.add(new BookColumn(column, name));
            }
        }
        return columns;
    }

    private static boolean isUsed(Edit edit, int column) {
        return edit.added().stream().anyMatch(row -> !row.get(column).isBlank());
    }

    private static boolean isUsed(TableText table, int column) {
        for (int row = 1; row < table.rows().size(); row++) {
            List<String> cells = table.cells(row);
            if (column < cells.size() && !cells.get(column).isBlank()) {
                return true;
            }
        }
        return false;
    }

    private List<BookRow> rows(Edit edit, ShopFound found, List<Finding> wrong) {
        TableText table = edit.base().table();
        RowNotes notes = new RowNotes(
                Stream.concat(wrong.stream(), found.findings().stream()).toList(), EditOrders.FILE);
        found.found().ifPresent(now -> EditOrders.lines(found)
                .forEach(line -> notes.cut(line.assembly().origin().place(), line.demanded(), loft.figures(now))));
        List<BookRow> rows = new ArrayList<>();
        for (int row = 1; row < table.rows().size(); row++) {
            if (!table.isBlank(row)) {
                List<String> cells = new ArrayList<>(table.cells(row));
                edit.changed().getOrDefault(row, Map.of()).forEach(cells::set);
                rows.add(notes.row(row, cells));
            }
        }
        int next = table.rows().size();
        for (List<String> cells : edit.added()) {
            rows.add(notes.row(next++, cells));
        }
        return rows;
    }

    private void save(Context request) {
        Optional<Edit> edit = edit(request);
        String who = people.who(request);
        if (edit.isEmpty() || who.isEmpty()) {
            site.tell(
                    request,
                    who.isEmpty()
                            ? People.FIRST
                            : "The book has changed since this page was made, and the program was started anew: load it again.");
            return;
        }
        List<String> unknown = pasted(request, edit.get().base()).unknown();
        if (Sent.text(request, "what").equals("look") || !unknown.isEmpty()) {
            show(
                    request,
                    edit,
                    unknown.isEmpty()
                            ? List.of()
                            : List.of("Nothing was saved: orders.csv has no column " + String.join(", ", unknown)
                                    + ". Name the columns above the pasted rows as it does."));
            return;
        }
        LocalCells cells = LocalCells.of(edit.get(), loft.typed());
        if (!cells.wrong().isEmpty()) {
            request.status(ReelScreen.NOT_BOOKED);
            show(request, edit, List.of("Nothing was saved: a cell could mean two things, or nothing; see its row."));
            return;
        }
        if (wasSaved(Sent.text(request, "booking"))) {
            Back.to(request, "/book");
            return;
        }
        Saved saved = verb().save(cells.edit(), who);
        if (saved instanceof Saved.Conflict conflict) {
            forget(Sent.text(request, "booking"));
            request.status(409);
            show(
                    request,
                    edit,
                    List.of("Somebody else has changed the same meanwhile, so nothing was saved: "
                            + String.join("; ", conflict.places())
                            + ". Load the book again to see theirs."));
        } else if (saved instanceof Saved.Unreadable) {
            site.tell(request, "orders.csv cannot be read as a table. Nothing was saved.");
        } else {
            Back.to(request, "/book");
        }
    }

    private @Nullable Book looked(Context request) {
        synchronized (looked) {
            return looked.get(Sent.text(request, "digest"));
        }
    }

    /** What was typed into the cells, and the rows that were pasted. */
    private Optional<Edit> edit(Context request) {
        Book base = looked(request);
        if (base == null) {
            return Optional.empty();
        }
        Map<Integer, Map<Integer, String>> changed = new TreeMap<>();
        List<List<String>> added = new ArrayList<>();
        int there = base.table().rows().size();
        TreeMap<Integer, Map<Integer, String>> typed = TypedCells.of(request);
        typed.headMap(there)
                .forEach((row, cells) -> cells.forEach((column, is) -> {
                    if (row > 0
                            && column < base.table().cells(row).size()
                            && !is.equals(asShown(base.table().cells(row).get(column)))) {
                        changed.computeIfAbsent(row, any -> new TreeMap<>()).put(column, is);
                    }
                }));
        int width = base.table().header().size();
        typed.tailMap(there).values().forEach(cells -> added.add(PastedRows.whole(cells, width)));
        added.addAll(pasted(request, base).rows());
        return Optional.of(new Edit(base, changed, added));
    }

    private static PastedRows pasted(Context request, Book book) {
        return PastedRows.of(request.formParam("paste"), book.table().header(), List.of("order", "rope"));
    }

    /** Whether this very form was saved before: a second tap is no second save. */
    private boolean wasSaved(String form) {
        synchronized (looked) {
            return !form.isEmpty() && !saved.add(form);
        }
    }

    private void forget(String form) {
        synchronized (looked) {
            saved.remove(form);
        }
    }

    /** A cell as a browser sends it back when nobody has touched it: without line ends, unseen characters by their names. */
    private static String asShown(String raw) {
        return Sent.oneLine(Unseen.shownOnPage(raw).replaceAll("[\\r\\n]", ""));
    }

    private void takeBack(Context request) {
        String who = people.who(request);
        if (who.isEmpty()) {
            site.tell(request, People.FIRST);
        } else if (verb().takeBack(who).isEmpty()) {
            site.tell(request, "There is no version before this one.");
        } else {
            Back.to(request, "/book");
        }
    }
}
