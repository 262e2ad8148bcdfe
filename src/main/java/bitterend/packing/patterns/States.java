package bitterend.packing.patterns;

import java.util.Arrays;

/**
 * Every number of pieces of each item up to the demand, as one index: the item's counts are the digits of a number whose
 * bases are the demands plus one. Adding two states adds their indices wherever no digit runs over.
 */
final class States {
    private final int[] demand;
    private final int[] digits;
    private final int size;

    private States(int[] demand, int size) {
        this.demand = demand;
        this.size = size;
        int items = demand.length;
        digits = new int[size * items];
        for (int s = 0; s < size; s++) {
            int rest = s;
            for (int i = 0; i < items; i++) {
                digits[s * items + i] = rest % (demand[i] + 1);
                rest /= demand[i] + 1;
            }
        }
    }

    /** How many states a demand has, or more than {@code most}. */
    static long count(int[] demand, long most) {
        long count = 1;
        for (int each : demand) {
            count *= each + 1L;
            if (count > most) {
                return most + 1;
            }
        }
        return count;
    }

    static States of(int[] demand) {
        return new States(demand, Math.toIntExact(count(demand, Integer.MAX_VALUE)));
    }

    int size() {
        return size;
    }

    int count(int state, int item) {
        return digits[state * demand.length + item];
    }

    /** Whether the sum of two states is a state. */
    boolean addable(int a, int b) {
        int items = demand.length;
        for (int i = 0; i < items; i++) {
            if (digits[a * items + i] + digits[b * items + i] > demand[i]) {
                return false;
            }
        }
        return true;
    }

    /** The load of a state on a kind, or {@link ReelType#NEVER} when it holds an item that may not be cut from it. */
    long load(int state, long[] load) {
        long sum = 0;
        for (int i = 0; i < demand.length; i++) {
            int count = count(state, i);
            if (count > 0) {
                if (load[i] >= ReelType.NEVER) {
                    return ReelType.NEVER;
                }
                sum += count * load[i];
            }
        }
        return sum;
    }

    /** What a state leaves of the demand. */
    int[] left(int state) {
        int[] left = Arrays.copyOf(demand, demand.length);
        for (int i = 0; i < left.length; i++) {
            left[i] -= count(state, i);
        }
        return left;
    }
}
