package bitterend.report;

import bitterend.day.CutPlace;
import bitterend.day.OrderStatus;
import bitterend.day.PieceStatus;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is still to be cut, line by line: by which day, and on which day and off which reel the plan in force cuts it. */
final class ToBeCutTable {
    private final LocalDate today;

    ToBeCutTable(LocalDate today) {
        this.today = today;
    }

    /** Pieces of one line that are cut off one reel. */
    private record Row(String line, LocalDate cutBy, CutPlace place) {}

    /** The rows, what must be cut first in front; no row where all is cut. */
    List<TableRows> of(List<OrderStatus> orders) {
        Map<Row, List<PieceStatus>> rows = new LinkedHashMap<>();
        orders.stream()
                .flatMap(order -> order.pieces().stream())
                .filter(PieceStatus::isToBeCut)
                .forEach(piece -> rows.computeIfAbsent(row(piece), row -> new ArrayList<>())
                        .add(piece));
        if (rows.isEmpty()) {
            return List.of();
        }
        TableRows table = new TableRows(
                Column.words("line"),
                Column.figure("pieces"),
                Column.words("cut by"),
                Column.words("is cut on"),
                Column.words("reel"),
                Column.words(""));
        rows.entrySet().stream()
                .sorted(Comparator.comparing(row -> row.getKey().cutBy()))
                .forEach(row -> write(table, row.getKey(), row.getValue()));
        return List.of(table);
    }

    private static Row row(PieceStatus piece) {
        return new Row(piece.line(), piece.cutBy(), piece.place());
    }

    private void write(TableRows table, Row row, List<PieceStatus> pieces) {
        CutPlace place = row.place();
        table.row(
                row.line(),
                Integer.toString(pieces.size()),
                day(row.cutBy()),
                place.isPlanned() ? day(place.on()) : "not planned",
                place.reel(),
                words(row, pieces.get(0)));
    }

    private String words(Row row, PieceStatus piece) {
        List<String> words = new ArrayList<>();
        if (piece.isLate(today)) {
            words.add("late");
        }
        if (row.place().isOut()) {
            words.add("issued");
        }
        if (piece.isAhead()) {
            words.add("cut ahead");
        }
        if (row.place().isOnOrder()) {
            words.add("rides on order " + row.place().onOrder() + ", counted on from "
                    + DueWords.named(row.place().from()));
        }
        return String.join(", ", words);
    }

    private static String day(LocalDate day) {
        return day.equals(LocalDate.MAX) ? "any day" : DueWords.named(day);
    }
}
