package bitterend.serve;

import bitterend.exchange.QuoteRequestFile;
import bitterend.exchange.QuoteRequestReading;
import bitterend.exchange.TableText;
import bitterend.exchange.TypedText;
import bitterend.work.ShopNow;
import bitterend.work.orders.EditOrders.Book;
import bitterend.work.orders.EditOrders.Edit;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A request for a quote as it was typed.
 *
 * @param number its number; empty for none
 * @param customer who asks; empty where the lines say so, or nobody does
 * @param accept who accepts that minutes or prices are missing; empty for nobody
 * @param lines a cell for each of the {@link #COLUMNS}
 */
record TypedRequest(String number, String customer, String accept, List<List<String>> lines) {
    /** Columns that are always shown; of the others those that somebody uses. */
    static final List<String> USUAL =
            List.of("line", "rope", "length", "end a", "end b", "quantity", "hardware", "note");

    /** The usual ones in front, so that rows are pasted in the order in which they are seen. */
    static final List<String> COLUMNS = Stream.concat(
                    USUAL.stream(), QuoteRequestFile.columnNames().stream().filter(name -> !USUAL.contains(name)))
            .toList();

    static final TypedRequest NOTHING = new TypedRequest("", "", "", List.of());

    TypedRequest {
        lines = List.copyOf(lines);
    }

    static TypedRequest of(Context request, PastedRows pasted) {
        List<List<String>> lines = new ArrayList<>();
        TypedCells.of(request).values().forEach(cells -> lines.add(PastedRows.whole(cells, COLUMNS.size())));
        lines.addAll(pasted.rows());
        lines.removeIf(line -> line.stream().allMatch(String::isBlank));
        return new TypedRequest(
                Sent.text(request, "number"), Sent.text(request, "customer"), Sent.text(request, "accept"), lines);
    }

    /** The lines as they are typed where the shop is, in the form of a file. */
    LocalCells inFileForm(TypedText typed, EarlierQuote earlier) {
        Book none = new Book(new TableText(',', "\n", List.of()).plus(COLUMNS), "");
        return LocalCells.of(new Edit(none, Map.of(), lines), typed, earlier.asFile(lines));
    }

    /** The same with the lines in the form of a file. */
    TypedRequest of(LocalCells cells) {
        return new TypedRequest(number, customer, accept, cells.edit().added());
    }

    /** Read as a file of these lines would be, each for the customer where it names no other. */
    QuoteRequestReading reading(ShopNow now) {
        TableText table = new TableText(',', "\n", List.of()).plus(COLUMNS);
        int at = COLUMNS.indexOf("customer");
        for (List<String> line : lines) {
            List<String> cells = new ArrayList<>(line);
            if (cells.get(at).isEmpty()) {
                cells.set(at, customer);
            }
            table = table.plus(cells);
        }
        return QuoteRequestFile.typed(
                number.isEmpty() ? "quote" : number, table, now.at().folder(), now.shop(), Loft.day(now));
    }
}
