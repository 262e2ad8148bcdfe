package bitterend.serve;

import bitterend.exchange.TableText;
import bitterend.finding.Finding;
import bitterend.work.ShopFound;
import bitterend.work.orders.EditOrders;
import bitterend.work.orders.EditOrders.Book;
import bitterend.work.orders.EditOrders.Edit;
import bitterend.work.orders.EditOrders.Looked;
import bitterend.work.orders.EditOrders.Saved;
import bitterend.work.orders.EditOrders.TakenBack;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The order book as a table to type in, and a field to paste rows of a spreadsheet into. What is typed is looked at by the same
 * code as the file; a save that meets another's changes keeps both or says where they meet.
 */
final class BookScreen implements Screen {
    private static final String UNREADABLE = "orders.csv cannot be read as a table.";

    /** Rows to type a new line in. */
    private static final int BLANK_ROWS = 3;

    private final Loft loft;
    private final Site site;
    private final People people;
    /** The forms that were saved: a second tap is no second save. */
    private final Once saved = new Once();

    BookScreen(Loft loft, Site site, People people) {
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get("/book", this::show);
        config.routes.post("/book", this::save);
        config.routes.post("/book/back", this::takeBack);
        config.routes.post("/book/row", this::row);
    }

    private EditOrders verb() {
        return new EditOrders(loft.access());
    }

    private String unreadable() {
        return verb().isWorkbook()
                ? "The orders are in " + EditOrders.WORKBOOK + ": change them in a spreadsheet program, and save there."
                : UNREADABLE;
    }

    private void show(Context request) {
        Optional<Edit> plain = verb().read().map(book -> new Edit(book, Map.of(), List.of()));
        if (plain.isPresent()) {
            show(request, new LocalCells(plain.get(), List.of()), loft.shelf().read(), List.of());
        } else {
            site.tell(request, unreadable());
        }
    }

    /** What somebody typed, on top of the book as it is now, which others may have changed. */
    private void look(Context request, Edit typed, String told) {
        Looked looked = verb().look(typed).orElse(null);
        if (looked == null) {
            site.tell(request, unreadable());
            return;
        }
        List<String> words = new ArrayList<>();
        if (!looked.places().isEmpty()) {
            words.add("Somebody else has changed the same meanwhile, so nothing was saved: "
                    + String.join("; ", looked.places())
                    + ". What you typed is below, in the book as it is now: saved, it takes the place of theirs.");
        }
        if (!told.isEmpty()) {
            words.add(told);
        }
        boolean isSameBook = looked.onTop().base().digest().equals(typed.base().digest());
        LocalCells cells = LocalCells.of(
                looked.onTop(), loft.typed(), isSameBook ? BookForm.asShown(request, typed.base()) : Set.of());
        show(request, cells, verb().check(cells.edit()), words);
    }

    /** What one row would be, as it is typed: its cut length, how that comes about, and what is wrong; nothing is written. */
    private void row(Context request) {
        Optional<Edit> edit = BookForm.edit(request, verb());
        if (edit.isEmpty() || !Sent.text(request, "row").matches("[0-9]{1,6}")) {
            request.html("");
            return;
        }
        int shown = Integer.parseInt(Sent.text(request, "row"));
        int number = BookForm.inFile(request, edit.get().base(), shown);
        LocalCells cells = LocalCells.of(
                edit.get(), loft.typed(), BookForm.asShown(request, edit.get().base()));
        ShopFound found = verb().check(cells.edit());
        BookRow row = notes(found, cells.wrong()).row(number, List.of());
        String how = found.found()
                .filter(now -> !row.cut().isEmpty())
                .map(now -> new RowDerivation(now, loft.figures(now)).of("row " + (number + 1)))
                .orElse("");
        Map<String, Object> values = new HashMap<>();
        values.put("row", number);
        values.put("at", shown);
        values.put("cut", row.cut());
        values.put("wrong", row.wrong());
        values.put("derivation", how);
        request.html(site.part(request, "serve/rowcut.jte", values));
    }

    private void show(Context request, LocalCells cells, ShopFound found, List<String> told) {
        Edit edit = cells.edit();
        Book book = edit.base();
        Map<String, Object> values = new HashMap<>();
        values.put("columns", BookColumn.shown(edit));
        RowNotes notes = notes(found, cells.wrong());
        values.put("rows", rows(edit, notes));
        values.put("shown", cells.readOtherwise(loft.typed()));
        values.put("causes", notes.causes());
        values.put("lists", loft.now().map(BookLists::of).orElse(Map.of()));
        values.put("digest", book.digest());
        values.put("base", PackedBook.of(book.table()));
        values.put("booking", Keys.random());
        values.put("told", told);
        List<String> before = verb().before();
        values.put("before", before);
        String kept = Sent.asked(request, "saved");
        boolean isLast = !before.isEmpty() && before.get(before.size() - 1).equals(kept);
        String at = kept.replaceFirst("^[0-9-]{10} ([0-9]{2})([0-9]{2}).*", " at $1:$2");
        values.put("saved", isLast ? "Saved" + at + ". The version before it is kept as " + kept + "." : "");
        site.show(request, "Order book", "serve/book.jte", values);
    }

    private List<BookRow> rows(Edit edit, RowNotes notes) {
        TableText table = edit.base().table();
        int order = column(table, "order");
        int line = column(table, "line");
        Optional<BookStates> states = loft.now().map(BookStates::new);
        List<BookRow> rows = new ArrayList<>();
        for (int row = 1; row < table.rows().size(); row++) {
            if (!table.isBlank(row)) {
                List<String> cells = new ArrayList<>(table.cells(row));
                edit.changed().getOrDefault(row, Map.of()).forEach(cells::set);
                BookRow noted = notes.row(row, cells);
                String id = noted.cell(order).strip() + "/" + noted.cell(line).strip();
                rows.add(states.map(known -> noted.standing(known.of(id), known.changed(id)))
                        .orElse(noted));
            }
        }
        int next = table.rows().size();
        for (List<String> cells : edit.added()) {
            rows.add(notes.row(next++, cells));
        }
        for (int blank = 0; blank < BLANK_ROWS; blank++) {
            rows.add(new BookRow(next++, List.of(), "", List.of(), Set.of()));
        }
        return rows;
    }

    /** A cell that could mean two things has no cut length, and no second sentence about what it might mean. */
    private RowNotes notes(ShopFound found, List<Finding> wrong) {
        Set<String> cells =
                wrong.stream().map(each -> each.place() + " " + each.field()).collect(Collectors.toSet());
        Set<String> places = wrong.stream().map(Finding::place).collect(Collectors.toSet());
        RowNotes notes = new RowNotes(
                Stream.concat(
                                wrong.stream(),
                                found.findings().stream()
                                        .filter(each -> !cells.contains(each.place() + " " + each.field())))
                        .toList(),
                EditOrders.FILE);
        found.found().ifPresent(now -> EditOrders.lines(found).stream()
                .filter(line -> !places.contains(line.assembly().origin().place()))
                .forEach(line -> notes.cut(line.assembly().origin().place(), line.demanded(), loft.figures(now))));
        return notes;
    }

    /** Where a column is; beyond the last where the book has none of that name. */
    private static int column(TableText table, String name) {
        List<String> header = table.header();
        int at = 0;
        while (at < header.size() && !header.get(at).strip().equalsIgnoreCase(name)) {
            at++;
        }
        return at;
    }

    private void save(Context request) {
        Optional<Edit> edit = BookForm.edit(request, verb());
        String who = people.who(request);
        if (edit.isEmpty() || who.isEmpty()) {
            site.tell(
                    request,
                    who.isEmpty()
                            ? People.FIRST
                            : "This page does not say what book it was made from: load the order book again.");
            return;
        }
        List<String> unknown = BookForm.pasted(request, edit.get().base()).unknown();
        if (Sent.text(request, "what").equals("look") || !unknown.isEmpty()) {
            look(
                    request,
                    edit.get(),
                    unknown.isEmpty()
                            ? ""
                            : "Nothing was saved: orders.csv has no column " + String.join(", ", unknown)
                                    + ". Name the columns above the pasted rows as it does.");
            return;
        }
        LocalCells cells = LocalCells.of(
                edit.get(), loft.typed(), BookForm.asShown(request, edit.get().base()));
        if (!cells.wrong().isEmpty()) {
            request.status(ReelScreen.NOT_BOOKED);
            look(request, edit.get(), "Nothing was saved: a cell could mean two things, or nothing; see its row.");
            return;
        }
        if (saved.was(Sent.text(request, "booking"))) {
            Back.to(request, "/book");
            return;
        }
        Saved done = verb().save(cells.edit(), who);
        if (done instanceof Saved.Conflict) {
            saved.forget(Sent.text(request, "booking"));
            request.status(409);
            look(request, edit.get(), "");
        } else if (done instanceof Saved.Unreadable) {
            site.tell(request, unreadable() + " Nothing was saved.");
        } else {
            List<String> before = verb().before();
            Back.to(
                    request,
                    done instanceof Saved.Written && !before.isEmpty()
                            ? "/book?saved=" + Sent.path(before.get(before.size() - 1))
                            : "/book");
        }
    }

    private void takeBack(Context request) {
        String who = people.who(request);
        if (who.isEmpty()) {
            site.tell(request, People.FIRST);
            return;
        }
        TakenBack taken = verb().takeBack(Sent.text(request, "version"), Sent.text(request, "digest"), who);
        if (taken == TakenBack.DONE) {
            Back.to(request, "/book");
            return;
        }
        request.status(409);
        site.tell(
                request,
                taken == TakenBack.NONE
                        ? "There is no version before this one."
                        : "The book is not the one that you looked at: look at it again. Nothing was taken back.");
    }
}
