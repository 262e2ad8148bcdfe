package bitterend.serve;

import io.javalin.http.Context;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The cells of a table as a browser sends them: {@code c3.1} is the second column of the fourth row. */
final class TypedCells {
    private TypedCells() {}

    /** What was sent, by row and column, each as one line. */
    static SortedMap<Integer, Map<Integer, String>> of(Context request) {
        SortedMap<Integer, Map<Integer, String>> cells = new TreeMap<>();
        for (String field : request.formParamMap().keySet()) {
            if (field.matches("c[0-9]{1,6}[.][0-9]{1,3}")) {
                int row = Integer.parseInt(field.substring(1, field.indexOf('.')));
                int column = Integer.parseInt(field.substring(field.indexOf('.') + 1));
                cells.computeIfAbsent(row, any -> new TreeMap<>()).put(column, Sent.oneLine(request.formParam(field)));
            }
        }
        return cells;
    }
}
