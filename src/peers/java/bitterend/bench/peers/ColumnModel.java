package bitterend.bench.peers;

import bitterend.packing.patterns.Draw;
import bitterend.packing.patterns.RootColumns;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How many reels are cut by each column that our pattern engine comes upon at its root: a set partition. A piece may be cut
 * once too often and is then taken off again, which never costs more. What is proven of it says nothing of other columns.
 */
public final class ColumnModel implements DayModel {
    private final RootColumns columns;
    private final LinearModel model = new LinearModel();

    /** The model of these columns. */
    public ColumnModel(RootColumns columns) {
        this.columns = columns;
        List<LinearModel.Row> items = new ArrayList<>();
        List<LinearModel.Row> kinds = new ArrayList<>();
        for (int item = 0; item < columns.items(); item++) {
            items.add(model.atLeast(columns.demand(item)));
        }
        for (int kind = 0; kind < columns.kinds(); kind++) {
            kinds.add(model.atMost(columns.supply(kind)));
        }
        for (int column = 0; column < columns.size(); column++) {
            int times = model.variable(columns.supply(columns.kind(column)), columns.cost(column));
            kinds.get(columns.kind(column)).plus(1, times);
            for (int item = 0; item < columns.items(); item++) {
                int count = columns.count(column, item);
                if (count > 0) {
                    items.get(item).plus(count, times);
                }
            }
        }
    }

    @Override
    public LinearModel program() {
        return model;
    }

    @Override
    public List<Draw> draws(long[] values) {
        return columns.draws(values);
    }

    @Override
    public long[] start() {
        return IntStream.range(0, columns.size()).mapToLong(columns::start).toArray();
    }

    @Override
    public boolean isWhole() {
        return false;
    }
}
