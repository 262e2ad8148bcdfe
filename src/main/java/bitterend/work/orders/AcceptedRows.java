package bitterend.work.orders;

import bitterend.day.CutPieces;
import bitterend.exchange.OrderLine;
import bitterend.exchange.TableText;
import bitterend.finding.Finding;
import bitterend.finding.Severity;
import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import bitterend.work.DraftShop;
import bitterend.work.ShopAccess;
import bitterend.work.ShopFound;
import bitterend.work.orders.EditOrders.Book;
import bitterend.work.orders.EditOrders.Edit;
import bitterend.work.orders.EditOrders.Saved;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * The rows of the order book that come of an accepted quote: they are written below the others, each with the line of the quote
 * it came of, and taken out again with the acceptance. The versions of the book before are kept.
 */
public final class AcceptedRows {
    /** A fact of the event: SHA-256 of the order book after the rows were written. */
    public static final String BOOK = "order book";
    /** A fact of the event: the order that came of the quote. */
    public static final String ORDER = "of order";
    /** A fact of the event: the quote, with its revision. */
    public static final String QUOTE = "quote";

    /** The column of the order book that says of which line of which quote a line came. */
    private static final String COLUMN = "quote";

    private static final String ORDER_COLUMN = "order";
    private static final String LINE = "line";

    private final ShopAccess shop;
    private final EditOrders orders;

    public AcceptedRows(ShopAccess shop) {
        this.shop = shop;
        orders = new EditOrders(shop);
    }

    /**
     * What is to be written.
     *
     * @param quote the quote with its revision, such as {@code Q-2601/2}
     * @param order number of the order
     * @param rows its lines, what is filled by column; columns that no order book has are left out
     */
    public record Accepted(String quote, String order, List<Map<String, String>> rows) {
        public Accepted {
            rows = rows.stream().map(Map::copyOf).toList();
        }
    }

    /** What an event of the ledger says was accepted; its rows are not in it. */
    public static Accepted of(Event event) {
        return new Accepted(event.fact(QUOTE), event.fact(ORDER), List.of());
    }

    /**
     * Writes the rows; SHA-256 of the book afterwards.
     *
     * @throws LedgerException.Refused when the book cannot take them; nothing was written
     */
    public String write(Accepted accepted, String who) {
        if (orders.isWorkbook()) {
            throw new LedgerException.Refused(
                    "the orders are in a workbook, which is changed where it was made; save it as orders.csv first");
        }
        Book book = orders.read()
                .orElseThrow(() -> new LedgerException.Refused(
                        "orders.csv cannot be added to: its first row must have the plain names of its columns"));
        Edit edit = edit(book, accepted);
        refuseWrongRows(edit, book.table().rows().size());
        if (!(orders.save(edit, who) instanceof Saved.Written)) {
            throw new LedgerException.Refused("orders.csv was changed by somebody else; try again");
        }
        return orders.read().map(Book::digest).orElse("");
    }

    private static Edit edit(Book book, Accepted accepted) {
        List<String> plain = book.table().plainHeader();
        Set<String> columns = new LinkedHashSet<>();
        accepted.rows().forEach(row -> columns.addAll(new TreeSet<>(row.keySet())));
        columns.add(COLUMN);
        columns.retainAll(OrderLine.columns());
        columns.removeAll(plain);
        List<String> all = new ArrayList<>(plain);
        all.addAll(columns);
        List<List<String>> added = accepted.rows().stream()
                .map(row ->
                        all.stream().map(column -> cell(column, row, accepted)).toList())
                .toList();
        boolean taken =
                rowsOf(book.table(), ORDER_COLUMN, accepted.order()::equals).isEmpty();
        if (!taken) {
            throw new LedgerException.Refused(
                    "there is an order " + accepted.order() + " in orders.csv; name another with --order");
        }
        return new Edit(book, Map.of(), added, List.copyOf(columns));
    }

    private static String cell(String column, Map<String, String> row, Accepted accepted) {
        return switch (column) {
            case ORDER_COLUMN -> accepted.order();
            case COLUMN -> accepted.quote() + "/" + row.getOrDefault(LINE, "");
            default -> row.getOrDefault(column, "");
        };
    }

    private void refuseWrongRows(Edit edit, int before) {
        ShopFound checked = orders.check(edit);
        List<Finding> wrong = checked.findings().stream()
                .filter(each -> each.severity() != Severity.WARNING
                        && each.file().equals(EditOrders.FILE)
                        && row(each.place()) > before)
                .toList();
        if (!wrong.isEmpty() || checked.found().isEmpty()) {
            throw new LedgerException.Refused("its lines cannot be ordered as the shop is now: "
                    + (wrong.isEmpty()
                            ? "the files of the shop have errors"
                            : wrong.get(0).field() + ": found \"" + wrong.get(0).found() + "\", expected "
                                    + wrong.get(0).expected()));
        }
    }

    private static int row(String place) {
        String digits = place.replaceAll("\\D", "");
        return digits.isEmpty() ? 0 : Integer.parseInt(digits);
    }

    /**
     * Takes the rows out again: where nobody changed the book since, the version before is the book again.
     *
     * @param accepted what was accepted; its rows need not be known
     * @param digest SHA-256 of the book as it was after they were written
     * @return what was done, in sentences
     * @throws LedgerException.Refused when pieces of them are cut
     */
    public List<String> takeOut(Accepted accepted, String digest, String who) {
        synchronized (EditOrders.SAVING) {
            Book book = orders.read()
                    .orElseThrow(() -> new LedgerException.Refused("orders.csv cannot be read as a table"));
            List<String> before = orders.before();
            if (book.digest().equals(digest) && !before.isEmpty()) {
                refuseCut(book.table(), accepted);
                orders.takeBack(before.get(before.size() - 1), digest, who);
                return List.of("orders.csv is as it was before");
            }
            refuseCut(book.table(), accepted);
            return withoutRows(book.table(), accepted, who);
        }
    }

    private List<String> withoutRows(TableText table, Accepted accepted, String who) {
        List<Integer> rows = rowsOf(table, COLUMN, cell -> cell.startsWith(accepted.quote() + "/"));
        if (rows.isEmpty()) {
            return List.of("orders.csv has no line of it any more");
        }
        TableText left = table;
        for (int i = rows.size() - 1; i >= 0; i--) {
            left = left.without(rows.get(i));
        }
        if (new DraftShop(shop)
                .with(Map.of(EditOrders.FILE, left.text()))
                .found()
                .isEmpty()) {
            throw new LedgerException.Refused("without its lines orders.csv would have errors");
        }
        orders.write(left.text(), who);
        return List.of((rows.size() == 1 ? "its line is" : "its " + rows.size() + " lines are") + " out of orders.csv");
    }

    private void refuseCut(TableText table, Accepted accepted) {
        if (!shop.keepsLedger()) {
            return;
        }
        List<String> lines = rowsOf(table, COLUMN, cell -> cell.startsWith(accepted.quote() + "/")).stream()
                .map(row -> cell(table, row, ORDER_COLUMN) + "/" + cell(table, row, LINE) + ".")
                .toList();
        List<String> cut = shop.reading(ledger -> ledger.read(stock -> new CutPieces(stock)
                .cuts().keySet().stream()
                        .filter(piece -> lines.stream().anyMatch(piece::startsWith))
                        .sorted()
                        .toList()));
        if (!cut.isEmpty()) {
            throw new LedgerException.Refused("pieces of it are cut: " + String.join(", ", cut)
                    + "; take those back first with stock undo, or take the lines out of the order book by hand");
        }
    }

    private static List<Integer> rowsOf(TableText table, String column, Predicate<String> which) {
        List<Integer> rows = new ArrayList<>();
        for (int row = 1; row < table.rows().size(); row++) {
            if (which.test(cell(table, row, column))) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static String cell(TableText table, int row, String column) {
        int at = table.plainHeader().indexOf(column);
        List<String> cells = table.cells(row);
        return at < 0 || at >= cells.size() ? "" : cells.get(at).strip();
    }
}
