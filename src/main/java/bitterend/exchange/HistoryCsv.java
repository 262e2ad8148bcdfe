package bitterend.exchange;

import bitterend.demand.Assembly;
import bitterend.demand.DemandModel;
import bitterend.demand.Demanded;
import bitterend.demand.Piece;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Readings;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.history.History;
import bitterend.history.PastOrder;
import bitterend.measure.Units;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Reads {@code history.csv}: the columns of {@code orders.csv} and the day each order was placed. What can no longer be
 * made, its rope gone from the catalogue or its ends refused today, is told as a warning and left out.
 */
final class HistoryCsv {
    static final String NAME = "history.csv";
    private static final String PLACED = "placed";

    private final Ropes ropes;
    private final OrdersCsv lines;
    private final DemandModel model;
    private final Units units;
    private final Findings findings;

    HistoryCsv(Ropes ropes, Products products, DemandModel model, Units units, Findings findings) {
        this.ropes = ropes;
        this.model = model;
        this.units = units;
        this.findings = findings;
        lines = new OrdersCsv(new Ropes(ropes.sound(), ropes.stated(), false, ropes.file()), products, findings);
    }

    /** The past, week by week. */
    History read(InputFile file) {
        Map<String, LocalDate> days = new TreeMap<>();
        Map<String, List<Piece>> pieces = new HashMap<>();
        Map<String, String> ids = new HashMap<>();
        for (Fields row : new CsvTable(file, OrdersCsv.columnsWith(PLACED), findings).rows()) {
            LocalDate placed = row.require(PLACED, Readings::dayOfTable, LocalDate.EPOCH);
            List<Assembly> assemblies = lines.assemblies(row, ids);
            String order = row.text("order").orElse("");
            LocalDate before = days.getOrDefault(order, placed);
            if (!assemblies.isEmpty() && !before.equals(placed)) {
                row.error(PLACED, "one day for all lines of an order; an earlier line has " + before);
            } else if (!assemblies.isEmpty()) {
                days.put(order, placed);
                List<Piece> all = pieces.computeIfAbsent(order, id -> new ArrayList<>());
                assemblies.forEach(assembly -> all.addAll(pieces(assembly)));
            }
        }
        return History.of(days.entrySet().stream()
                .map(entry ->
                        new PastOrder(entry.getKey(), entry.getValue(), pieces.getOrDefault(entry.getKey(), List.of())))
                .toList());
    }

    private List<Piece> pieces(Assembly assembly) {
        Assembly.Origin origin = assembly.origin();
        String rope = assembly.ropes().get(0);
        if (ropes.find(rope).isEmpty()) {
            if (!ropes.stated().contains(rope) && ropes.readable()) {
                findings.add(Finding.warning(
                        origin.file(),
                        origin.place(),
                        "rope",
                        rope,
                        "a rope of " + ropes.file() + "; this line is left out"));
            }
            return List.of();
        }
        Assembly asOrdered = new Assembly(
                origin, assembly.ordered(), List.of(rope), assembly.make(), assembly.terms(), assembly.membership());
        Demanded demanded = model.pieces(asOrdered);
        demanded.findings().stream()
                .filter(Finding::isError)
                .map(error -> error.in(units))
                .map(error -> Finding.warning(
                        error.file(),
                        error.place(),
                        error.field(),
                        error.found(),
                        error.expected() + "; this line is left out"))
                .forEach(findings::add);
        return demanded.pieces();
    }
}
