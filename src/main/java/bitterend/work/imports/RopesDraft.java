package bitterend.work.imports;

import bitterend.exchange.RopeRows;
import bitterend.exchange.mapping.Change;
import bitterend.exchange.mapping.Understood;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Puts rows of a sheet into the catalogue of ropes; the example that a new shop begins with goes. */
final class RopesDraft {
    private RopesDraft() {}

    /** @param used whether an order or a reel is of a rope */
    static TableDraft of(RopeRows there, List<Understood.Row> rows, Predicate<String> used) {
        List<Change> changes = new ArrayList<>();
        RopeRows ropes = there;
        Optional<Integer> example = ropes.example().filter(row -> !used.test(there.text(row, "id")));
        boolean replaced = example.isPresent()
                && rows.stream().noneMatch(row -> row.text("id").equals(there.text(example.get(), "id")))
                && !rows.isEmpty();
        if (replaced) {
            changes.add(new Change("", there.text(example.get(), "id"), Change.Kind.GONE, List.of()));
            ropes = ropes.without(example.get());
        }
        Map<String, String> places = new HashMap<>();
        for (Understood.Row row : rows) {
            RopeRows now = ropes;
            int at = now.find(row.text("id")).orElse(now.size());
            places.put("/ropes/" + at, row.place());
            if (at == now.size()) {
                changes.add(Change.of(row, row.text("id")));
            } else {
                List<Change.Cell> cells = row.members().entrySet().stream()
                        .filter(each -> !Change.isSame(each.getKey(), now.text(at, each.getKey()), each.getValue()))
                        .map(each -> new Change.Cell(each.getKey(), now.text(at, each.getKey()), each.getValue()))
                        .toList();
                changes.add(new Change(
                        row.place(), row.text("id"), cells.isEmpty() ? Change.Kind.SAME : Change.Kind.CHANGED, cells));
            }
            ropes = now.with(at, row.members());
        }
        return new TableDraft(ropes.text(), changes, places, List.of());
    }
}
