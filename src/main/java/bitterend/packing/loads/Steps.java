package bitterend.packing.loads;

import java.util.Arrays;

/**
 * What a table of a run is worked out by, item after item: a list of whole numbers, so that runs on the same terms find
 * each other. An order or set that is charged for its first piece opens a group and closes it again with its charge.
 */
final class Steps {
    static final int ITEM = 0;
    static final int OPEN = 1;
    static final int CHARGE = 2;
    /** Numbers of each step: kind, then item, cells, price, least and most copies; or the charge and whether it is forced. */
    static final int WIDTH = 6;

    private int[] numbers = new int[WIDTH * 16];
    private int size;
    private int hash;

    void clear() {
        size = 0;
    }

    void item(int item, int cells, int price, int least, int most) {
        add(ITEM, item, cells, price, least, most);
    }

    void open() {
        add(OPEN, 0, 0, 0, 0, 0);
    }

    /** @param forced something of the group is cut in any case */
    void charge(int price, boolean forced) {
        add(CHARGE, price, forced ? 1 : 0, 0, 0, 0);
    }

    private void add(int kind, int a, int b, int c, int d, int e) {
        if (size + WIDTH > numbers.length) {
            numbers = Arrays.copyOf(numbers, numbers.length * 2);
        }
        numbers[size] = kind;
        numbers[size + 1] = a;
        numbers[size + 2] = b;
        numbers[size + 3] = c;
        numbers[size + 4] = d;
        numbers[size + 5] = e;
        size += WIDTH;
    }

    int count() {
        return size / WIDTH;
    }

    /** All copies of all items. */
    int copies() {
        int sum = 0;
        for (int s = 0; s < count(); s++) {
            sum += at(s, 0) == ITEM ? at(s, 5) : 1;
        }
        return sum;
    }

    int at(int step, int field) {
        return numbers[step * WIDTH + field];
    }

    /** Keeps what was listed. */
    Steps closed() {
        Steps closed = new Steps();
        closed.numbers = Arrays.copyOf(numbers, size);
        closed.size = size;
        closed.hash = Arrays.hashCode(closed.numbers);
        return closed;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Steps that && Arrays.equals(numbers, that.numbers);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
