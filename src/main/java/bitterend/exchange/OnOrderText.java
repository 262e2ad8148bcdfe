package bitterend.exchange;

import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Readings;
import bitterend.market.NewOrder;
import bitterend.measure.MoneyText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** {@code on-order.csv} as its text: orders are added below its last row, all else stays as it is written. */
public final class OnOrderText {
    /** The file of reels on order. */
    public static final String FILE = OnOrderCsv.NAME;

    private static final String NUMBER = "number";
    private static final List<String> ALL =
            List.of(NUMBER, "rope", "length", "quantity", "expected", "certificate", "supplier", "price", "note");

    private OnOrderText() {}

    /**
     * The table of a folder, one that is empty but for its header where there is none; nothing where the file cannot be added
     * to, such as a workbook in its place.
     */
    public static Optional<TableText> find(Path folder) {
        if (Files.exists(folder.resolve(InputFile.workbook(FILE)))) {
            return Optional.empty();
        }
        return Files.exists(folder.resolve(FILE))
                ? TableText.find(folder, FILE, List.of(NUMBER)).map(TableText.Lying::table)
                : Optional.of(TableText.of(String.join(",", ALL) + "\n"));
    }

    /** The numbers of its rows, from above. */
    public static List<String> numbers(TableText table) {
        int column = table.plainHeader().indexOf(NUMBER);
        return IntStream.range(1, table.rows().size())
                .mapToObj(table::cells)
                .filter(cells -> column < cells.size())
                .map(cells -> cells.get(column).strip())
                .filter(number -> !number.isEmpty())
                .toList();
    }

    /** The same with these lines below the last row. */
    public static TableText with(TableText table, List<NewOrder.Line> lines, MoneyText money) {
        List<String> header = table.header().stream().map(Readings::plain).toList();
        List<String> more = ALL.stream().filter(name -> !header.contains(name)).toList();
        TableText wide = table.widened(more);
        List<String> names = wide.header().stream().map(Readings::plain).toList();
        for (NewOrder.Line line : lines) {
            Map<String, String> cells = cells(line, money);
            wide = wide.plus(
                    names.stream().map(name -> cells.getOrDefault(name, "")).toList());
        }
        return wide;
    }

    private static Map<String, String> cells(NewOrder.Line line, MoneyText money) {
        Map<String, String> cells = new TreeMap<>();
        cells.put(NUMBER, line.number());
        cells.put("rope", line.offer().rope());
        cells.put("length", line.offer().made().written().kept());
        cells.put("quantity", "" + line.reels());
        cells.put("expected", line.expected().toString());
        cells.put("certificate", line.offer().made().certificate());
        cells.put("supplier", line.offer().supplier());
        cells.put("price", money.print(line.offer().terms().price().at(line.reels())));
        cells.put("note", line.note());
        return cells;
    }
}
