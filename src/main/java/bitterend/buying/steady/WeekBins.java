package bitterend.buying.steady;

import java.util.Arrays;

/** The coils and reels of one week and the pieces that are put on them, as numbers: lengths in millimetres, costs in 1/1000 minor unit. */
final class WeekBins {
    static final int NOWHERE = -1;

    private final int loss;
    private final long opening;
    private final long changing;

    private int bins;
    private int[] length = new int[32];
    private boolean[] full = new boolean[32];
    private int[] size = new int[32];
    private int[] room = new int[32];
    private int[] held = new int[32];
    private long[] whole = new long[32];
    private long[] fixed = new long[32];

    private int pieces;
    private int[] need = new int[32];
    private int[] place = new int[32];
    private CoilTable worth;

    /** The loss of a cut; what opening a reel and fetching one costs. */
    WeekBins(int loss, long opening, long changing, CoilTable worth) {
        this.loss = loss;
        this.opening = opening;
        this.changing = changing;
        this.worth = worth;
    }

    /** An empty rack, on a day with this curve. */
    void rack(CoilTable today) {
        worth = today;
        bins = 0;
        pieces = 0;
    }

    /** A coil of so many millimetres. */
    void coil(int mm) {
        add(mm, false, NOWHERE, worth.of(mm), changing);
    }

    /** A whole reel of a size, for which so much was paid. */
    void reel(int mm, int ofSize, long paid) {
        add(mm, true, ofSize, Math.max(paid, worth.of(mm)), changing + opening);
    }

    private void add(int mm, boolean whole, int ofSize, long value, long fixedCost) {
        if (bins == length.length) {
            grow();
        }
        length[bins] = mm;
        full[bins] = whole;
        size[bins] = ofSize;
        this.whole[bins] = value;
        fixed[bins] = fixedCost;
        room[bins] = mm + loss;
        held[bins] = 0;
        bins++;
    }

    private void grow() {
        int more = 2 * length.length;
        length = Arrays.copyOf(length, more);
        full = Arrays.copyOf(full, more);
        size = Arrays.copyOf(size, more);
        room = Arrays.copyOf(room, more);
        held = Arrays.copyOf(held, more);
        whole = Arrays.copyOf(whole, more);
        fixed = Arrays.copyOf(fixed, more);
    }

    /** The pieces of the week, on nothing yet. */
    void pieces(int[] cuts, int count) {
        pieces = count;
        if (need.length < count) {
            need = new int[2 * count];
            place = new int[2 * count];
        }
        for (int i = 0; i < count; i++) {
            need[i] = cuts[i] + loss;
            place[i] = NOWHERE;
        }
    }

    int pieces() {
        return pieces;
    }

    int placeOf(int piece) {
        return place[piece];
    }

    /** What a piece takes, the loss of its cut in it. */
    int needOf(int piece) {
        return need[piece];
    }

    /** Where it costs least to cut a piece, one coil or reel left out; {@link #NOWHERE} where none holds it. */
    int cheapest(int piece, int but) {
        int found = NOWHERE;
        long least = Long.MAX_VALUE;
        for (int bin = 0; bin < bins; bin++) {
            boolean alike = bin > 0
                    && full[bin]
                    && held[bin] == 0
                    && full[bin - 1]
                    && held[bin - 1] == 0
                    && size[bin] == size[bin - 1]
                    && bin - 1 != but;
            if (bin == but || alike || room[bin] < need[piece]) {
                continue;
            }
            long more = more(bin, piece);
            if (more < least) {
                least = more;
                found = bin;
            }
        }
        return found;
    }

    /** What a piece costs more on a coil or reel. */
    long more(int bin, int piece) {
        return cost(bin, room[bin] - need[piece], held[bin] + 1) - cost(bin, room[bin], held[bin]);
    }

    /** What a coil or reel would cost less without one of its pieces. */
    long saved(int piece) {
        int bin = place[piece];
        return cost(bin, room[bin], held[bin]) - cost(bin, room[bin] + need[piece], held[bin] - 1);
    }

    /** Lets two pieces on different coils change places where both fit and it saves; whether it did. */
    boolean swap(int one, int other) {
        int a = place[one];
        int b = place[other];
        int longer = need[other] - need[one];
        if (a == b || longer == 0 || a == NOWHERE || b == NOWHERE || room[a] < longer || room[b] < -longer) {
            return false;
        }
        long now = worth.of(left(room[a])) + worth.of(left(room[b]));
        long then = worth.of(left(room[a] - longer)) + worth.of(left(room[b] + longer));
        if (then <= now) {
            return false;
        }
        place[one] = b;
        place[other] = a;
        room[a] -= longer;
        room[b] += longer;
        return true;
    }

    /** Puts pieces where they were. */
    void restore(int[] places) {
        for (int i = 0; i < pieces; i++) {
            if (place[i] != places[i]) {
                take(i);
            }
        }
        for (int i = 0; i < pieces; i++) {
            if (place[i] != places[i]) {
                put(i, places[i]);
            }
        }
    }

    /** Notes where the pieces are. */
    void note(int[] places) {
        System.arraycopy(place, 0, places, 0, pieces);
    }

    private long cost(int bin, int roomLeft, int pieces) {
        return pieces == 0 ? 0 : fixed[bin] + whole[bin] - worth.of(left(roomLeft));
    }

    private int left(int roomLeft) {
        return Math.max(0, roomLeft - loss);
    }

    /** Puts a piece on a coil or reel, or nowhere. */
    void put(int piece, int bin) {
        place[piece] = bin;
        if (bin != NOWHERE) {
            room[bin] -= need[piece];
            held[bin]++;
        }
    }

    /** Takes a piece off again. */
    void take(int piece) {
        int bin = place[piece];
        if (bin != NOWHERE) {
            room[bin] += need[piece];
            held[bin]--;
            place[piece] = NOWHERE;
        }
    }

    /** What the week costs so far: worth of what is taken, opening and fetching, in 1/1000 minor unit. */
    long total() {
        long total = 0;
        for (int bin = 0; bin < bins; bin++) {
            total += cost(bin, room[bin], held[bin]);
        }
        return total;
    }

    /** Whether a piece found no rope. */
    boolean isLate(int piece) {
        return place[piece] == NOWHERE;
    }

    /** Coils and reels, in the order in which they were added. */
    int bins() {
        return bins;
    }

    boolean isUsed(int bin) {
        return held[bin] > 0;
    }

    boolean isReel(int bin) {
        return full[bin];
    }

    int sizeOf(int bin) {
        return size[bin];
    }

    /** Millimetres that are left of a coil or reel; the whole of it when nothing was cut. */
    int leftOf(int bin) {
        return held[bin] == 0 ? length[bin] : left(room[bin]);
    }

    long fixedOf(int bin) {
        return fixed[bin];
    }
}
