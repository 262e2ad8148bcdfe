package bitterend.work.imports;

import bitterend.exchange.NewRope;
import bitterend.exchange.RopeRows;
import bitterend.exchange.TableText;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.mapping.Change;
import bitterend.exchange.mapping.MappingsJson;
import bitterend.exchange.mapping.Table;
import bitterend.exchange.mapping.Understood;
import bitterend.finding.Finding;
import bitterend.work.orders.EditOrders;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;

/** The files of a shop that sheets go into, and how rows are put into each. */
final class ShopTables {
    private static final String REELS = "reels.csv";
    private static final String ROPES = "ropes.csv";
    private static final String ROPES_JSON = "ropes.json";
    private static final String USUAL_REEL = "usual reel";

    /** Files in the order in which they are taken over; the book of orders comes last, as it has its own versions. */
    static final List<String> ORDER = List.of(ROPES, ROPES_JSON, REELS, MappingsJson.NAME, EditOrders.FILE);

    private final Path folder;

    ShopTables(Path folder) {
        this.folder = folder;
    }

    /** The name of the file: the catalogue of ropes is a table or not. */
    String file(Table table) {
        return switch (table) {
            case ORDERS -> EditOrders.FILE;
            case REELS -> REELS;
            case ROPES -> Files.exists(folder.resolve(ROPES_JSON)) ? ROPES_JSON : ROPES;
        };
    }

    /** What is wrong with a file that rows cannot be put into, a workbook in its place by its name. */
    Finding refusal(String file) {
        String book = InputFile.workbook(file);
        return Files.exists(folder.resolve(book)) && !Files.exists(folder.resolve(file))
                ? Finding.error(
                        book,
                        "",
                        "",
                        "a workbook in place of " + file,
                        "the table saved as " + file
                                + ", the workbook out of the shop folder: no import writes a workbook")
                : Finding.error(file, "", "", "", "a table that begins with its plain headings, in UTF-8");
    }

    /** The columns of those that are tables and hold a row. */
    Map<Table, List<String>> headers() {
        Map<Table, List<String>> headers = new EnumMap<>(Table.class);
        for (Table table : Table.values()) {
            TableText.find(folder, file(table), key(table))
                    .filter(found -> found.table().rows().size() > 1)
                    .ifPresent(found -> headers.put(table, found.table().header()));
        }
        return headers;
    }

    /** The members that name a row. */
    static List<String> key(Table table) {
        return switch (table) {
            case ORDERS -> List.of("order", "line");
            case REELS -> List.of("reel");
            case ROPES -> List.of("id");
        };
    }

    /** Each row once: a second one of a name is told. */
    static List<Understood.Row> once(Understood understood, Table table, List<Finding> findings) {
        Map<String, String> places = new HashMap<>();
        List<Understood.Row> rows = new ArrayList<>();
        for (Understood.Row row : understood.rows()) {
            String name = String.join("/", key(table).stream().map(row::text).toList());
            String first = places.putIfAbsent(name, row.place());
            if (first == null) {
                rows.add(row);
            } else {
                findings.add(Finding.error(
                        understood.file(),
                        row.place(),
                        String.join(", ", key(table)),
                        name,
                        "a name of its own; this one is in " + first));
            }
        }
        return rows;
    }

    /**
     * Puts rows into the text of a file; nothing where the file in the folder is no table that the program writes.
     *
     * @param used whether an order or a reel is of a rope
     */
    Optional<TableDraft> put(Table table, String text, List<Understood.Row> rows, Predicate<String> used) {
        String file = file(table);
        CsvDraft draft = new CsvDraft(key(table));
        if (file.equals(ROPES_JSON)) {
            return RopeRows.of(text).map(ropes -> RopesDraft.of(ropes, rows, used));
        }
        if (table == Table.ORDERS) {
            return TableText.find(folder, file).map(any -> draft.of(TableText.of(text), rows));
        }
        return TableText.find(folder, file, key(table))
                .filter(lying ->
                        lying.table().plainHeader().stream().noneMatch(heading -> heading.matches(".*[(\\[].*")))
                .map(any -> table == Table.REELS
                        ? draft.of(TableText.of(text), rows)
                        : ropes(draft, TableText.of(text), rows, used));
    }

    /** The examples that a new shop begins with go, where nothing is of them. */
    private static TableDraft ropes(
            CsvDraft draft, TableText there, List<Understood.Row> rows, Predicate<String> used) {
        int id = there.plainHeader().indexOf("id");
        int note = there.plainHeader().indexOf("note");
        TableText table = there;
        List<Change> gone = new ArrayList<>();
        for (int row = there.rows().size() - 1; row > 0 && note >= 0 && !rows.isEmpty(); row--) {
            List<String> cells = there.cells(row);
            boolean example = note < cells.size() && cells.get(note).equals(NewRope.NOTE) && !used.test(cells.get(id));
            if (example && rows.stream().noneMatch(each -> each.text("id").equals(cells.get(id)))) {
                table = table.without(row);
                gone.add(0, new Change("", cells.get(id), Change.Kind.GONE, List.of()));
            }
        }
        TableDraft put = draft.of(table, rows.stream().map(ShopTables::ofTable).toList());
        List<Change> changes = new ArrayList<>(gone);
        changes.addAll(put.changes());
        return new TableDraft(put.text(), changes, put.places(), put.columns());
    }

    /** The usual reel has a name of two words in a table. */
    private static Understood.Row ofTable(Understood.Row row) {
        Map<String, String> members = new TreeMap<>(row.members());
        String usual = members.remove("usualReel");
        if (usual != null) {
            members.put(USUAL_REEL, usual);
        }
        return new Understood.Row(row.place(), members);
    }
}
