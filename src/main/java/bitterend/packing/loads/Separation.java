package bitterend.packing.loads;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Rows that the values of a program break, those that are broken most first. */
final class Separation {
    private static final double BROKEN = 0.01;

    private record Row(double over, Runnable add) {}

    private final List<Row> rows = new ArrayList<>();

    /**
     * @param over by how much of a share it is broken
     * @param add puts it into the program
     */
    void offer(double over, Runnable add) {
        if (over > BROKEN) {
            rows.add(new Row(over, add));
        }
    }

    /** Adds so many at most; how many. */
    int add(int most) {
        rows.sort(Comparator.comparingDouble(Row::over).reversed());
        rows.stream().limit(most).forEach(row -> row.add().run());
        return Math.min(most, rows.size());
    }
}
