package bitterend.packing.check;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.LongUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * All loads of at least one piece that no other load beats in both size and worth, by a plain list of states, or a table where they are many: one kind of
 * piece after the other, its number in powers of two (Martello and Toth 1990, chapter 3). Sizes count one cut loss per
 * piece.
 */
final class BestLoads {
    private static final int BLOCK = 32;

    /** A table of every load is used up to so many cells, and from the time that the list fills a fourth of them. */
    private static final int MOST_CELLS = 4_000_000;

    private static final int FOURTH = 4;
    private static final long NEVER = Long.MIN_VALUE / 2;

    private final long room;
    /** Divides every size. */
    private final long step;

    private final boolean mayBeTable;
    private long[] sizes = {};
    private long[] worths = {};
    /** The greatest worth of each load, in steps, once the list has grown too long. */
    private long @Nullable [] table;

    private long work;

    private BestLoads(List<Kind> kinds, long room) {
        this.room = room;
        long divisor = 0;
        BigInteger all = BigInteger.ZERO;
        for (Kind kind : kinds) {
            divisor = BigInteger.valueOf(divisor)
                    .gcd(BigInteger.valueOf(kind.size()))
                    .longValueExact();
            all = all.add(BigInteger.valueOf(kind.worth()).multiply(BigInteger.valueOf(kind.count())));
        }
        step = Math.max(1, divisor);
        mayBeTable = room / step < MOST_CELLS && all.bitLength() < Long.SIZE - 2;
    }

    /**
     * Pieces that are alike for the bound.
     *
     * @param size cut length and cut loss, in mm
     * @param worth dual of one piece, not negative
     * @param count how many there are
     */
    record Kind(long size, long worth, long count) {}

    /** The loads up to a size; empty when more states than allowed would have to be looked at. */
    static Optional<BestLoads> of(List<Kind> kinds, long room, long work) {
        BestLoads loads = new BestLoads(kinds, room);
        for (Kind kind : kinds) {
            long most = Math.min(kind.count(), room / kind.size());
            for (long bundle = 1; most > 0; bundle *= 2) {
                long taken = Math.min(bundle, most);
                loads.take(Math.multiplyExact(taken, kind.size()), Math.multiplyExact(taken, kind.worth()));
                most -= taken;
                if (loads.work > work) {
                    return Optional.empty();
                }
            }
        }
        loads.gather();
        return Optional.of(loads);
    }

    long work() {
        return work;
    }

    private void take(long size, long worth) {
        if (table == null && mayBeTable && sizes.length > room / step / FOURTH) {
            spread();
        }
        if (table == null) {
            list(size, worth, room);
        } else {
            work += table.length / FOURTH;
            table = with(table, (int) (size / step), worth);
        }
    }

    /** From the list to the table. */
    private void spread() {
        long[] cells = new long[(int) (room / step) + 1];
        Arrays.fill(cells, NEVER);
        cells[0] = 0;
        for (int i = 0; i < sizes.length; i++) {
            cells[(int) (sizes[i] / step)] = worths[i];
        }
        table = cells;
    }

    private static long[] with(long[] cells, int size, long worth) {
        long[] next = cells.clone();
        for (int i = size; i < next.length; i++) {
            next[i] = Math.max(cells[i], cells[i - size] + worth);
        }
        return next;
    }

    /** From the table back to the list of loads that no other beats. */
    private void gather() {
        long[] cells = table;
        if (cells == null) {
            return;
        }
        sizes = new long[cells.length];
        worths = new long[cells.length];
        int count = 0;
        for (int i = 1; i < cells.length; i++) {
            if (cells[i] >= 0 && (count == 0 || cells[i] > worths[count - 1])) {
                sizes[count] = i * step;
                worths[count++] = cells[i];
            }
        }
        sizes = Arrays.copyOf(sizes, count);
        worths = Arrays.copyOf(worths, count);
        table = null;
    }

    /** Every load so far with and without the bundle, and the bundle by itself. */
    private void list(long size, long worth, long room) {
        int old = sizes.length;
        work += old + 1;
        long[] newSizes = new long[2 * old + 1];
        long[] newWorths = new long[2 * old + 1];
        int count = 0;
        int without = 0;
        int with = -1;
        while (true) {
            boolean more = with < old && size(with, size) <= room;
            if (!more && without >= old) {
                break;
            }
            boolean plain = without < old && (!more || sizes[without] <= size(with, size));
            long nextSize = plain ? sizes[without] : size(with, size);
            long nextWorth = plain ? worths[without] : with < 0 ? worth : Math.addExact(worths[with], worth);
            if (plain) {
                without++;
            } else {
                with++;
            }
            if (count > 0 && nextWorth <= newWorths[count - 1]) {
                continue;
            }
            if (count > 0 && newSizes[count - 1] == nextSize) {
                count--;
            }
            newSizes[count] = nextSize;
            newWorths[count] = nextWorth;
            count++;
        }
        sizes = Arrays.copyOf(newSizes, count);
        worths = Arrays.copyOf(newWorths, count);
    }

    /** The size of the bundle by itself, or on top of an old load. */
    private long size(int with, long bundle) {
        return with < 0 ? bundle : sizes[with] + bundle;
    }

    /**
     * The greatest worth of a load up to a size and the value of what is left beside it; {@link Long#MIN_VALUE} when
     * nothing fits.
     *
     * @param leftValue value of what a load of so many mm leaves; never rises with the load
     */
    long most(long room, LongUnaryOperator leftValue) {
        long most = Long.MIN_VALUE;
        int fitting = Arrays.binarySearch(sizes, room);
        int end = fitting >= 0 ? fitting + 1 : -fitting - 1;
        for (int from = 0; from < end; from += BLOCK) {
            int to = Math.min(end, from + BLOCK);
            long atMost = Math.addExact(worths[to - 1], leftValue.applyAsLong(sizes[from]));
            for (int i = from; i < to && atMost > most; i++) {
                most = Math.max(most, Math.addExact(worths[i], leftValue.applyAsLong(sizes[i])));
            }
        }
        return most;
    }
}
