package bitterend.exchange.mapping;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The first few values of each column, before and after, for people to see what was understood. */
final class Samples {
    private static final int MOST = 3;

    private final Map<Integer, Map<String, Column.Sample>> byColumn = new HashMap<>();

    void add(Column column, String before, String after) {
        Map<String, Column.Sample> some = byColumn.computeIfAbsent(column.at(), any -> new LinkedHashMap<>());
        if (some.size() < MOST) {
            some.putIfAbsent(before, new Column.Sample(before, after));
        }
    }

    List<Column.Sample> of(int column) {
        return List.copyOf(byColumn.getOrDefault(column, Map.of()).values());
    }
}
