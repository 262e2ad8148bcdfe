package bitterend.buying.steady;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Divides a week's pieces among the coils and reels of a rack, quickly: the longest first, each where it costs least by the
 * coil curve of the day; then single pieces are moved, pairs change places, and coils and reels that were begun are spared, as
 * long as that saves. The engines of the day find at most a little better (see its test).
 */
final class WeekPacker {
    private static final int ROUNDS = 40;
    private static final int STARTS = 3;
    private static final int NOWHERE = -1;

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
    private int[] best = new int[32];
    private int[] kept = new int[32];
    private int[] turn = new int[32];
    private CoilTable worth;

    /** The loss of a cut in millimetres; what opening a reel and fetching one costs in 1/1000 minor unit. */
    WeekPacker(int loss, long opening, long changing, CoilTable worth) {
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

    /** Divides pieces, which come first to last; those that find no rope stay {@linkplain #isLate late}. */
    void pack(int[] cuts, int count) {
        pieces = count;
        if (need.length < count) {
            need = new int[2 * count];
            place = new int[2 * count];
            best = new int[2 * count];
            kept = new int[2 * count];
            turn = new int[2 * count];
        }
        for (int i = 0; i < count; i++) {
            need[i] = cuts[i] + loss;
            place[i] = NOWHERE;
            turn[i] = i;
        }
        for (int i = 0; i < count; i++) {
            put(i, cheapest(i, NOWHERE));
        }
        improve();
        again();
    }

    /** Other orders of the pieces that are held, each tried from the start; the cheapest is kept. */
    private void again() {
        long least = total();
        System.arraycopy(place, 0, kept, 0, pieces);
        SplittableRandom dice = new SplittableRandom(pieces);
        for (int start = 0; start < STARTS && pieces > 1; start++) {
            boolean allHeld = true;
            for (int i = 0; i < pieces; i++) {
                take(i);
            }
            for (int n = 0; n < pieces; n++) {
                int other = n + dice.nextInt(Math.min(pieces - n, 1 + pieces / 2));
                int piece = order(n, other);
                if (kept[piece] != NOWHERE) {
                    int to = cheapest(piece, NOWHERE);
                    allHeld &= to != NOWHERE;
                    put(piece, to);
                }
            }
            if (allHeld) {
                improve();
                long total = total();
                if (total < least) {
                    least = total;
                    System.arraycopy(place, 0, kept, 0, pieces);
                }
            }
        }
        restore(kept);
    }

    /** The piece that comes next when another takes the place of the one in turn. */
    private int order(int n, int other) {
        int piece = turn[other];
        turn[other] = turn[n];
        turn[n] = piece;
        return piece;
    }

    private void restore(int[] places) {
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

    private void improve() {
        for (int round = 0; round < ROUNDS; round++) {
            if (!(moved() | swapped() | spared())) {
                return;
            }
        }
    }

    private boolean moved() {
        boolean moved = false;
        for (int i = 0; i < pieces; i++) {
            int at = place[i];
            if (at == NOWHERE) {
                continue;
            }
            long saved = cost(at, room[at], held[at]) - cost(at, room[at] + need[i], held[at] - 1);
            int to = cheapest(i, at);
            if (to != NOWHERE && more(to, i) < saved) {
                take(i);
                put(i, to);
                moved = true;
            }
        }
        return moved;
    }

    private boolean swapped() {
        boolean swapped = false;
        for (int i = 0; i < pieces; i++) {
            for (int j = i + 1; j < pieces; j++) {
                int a = place[i];
                int b = place[j];
                int longer = need[j] - need[i];
                if (a == b || longer == 0 || a == NOWHERE || b == NOWHERE || room[a] < longer || room[b] < -longer) {
                    continue;
                }
                long now = worth.of(left(room[a])) + worth.of(left(room[b]));
                long then = worth.of(left(room[a] - longer)) + worth.of(left(room[b] + longer));
                if (then > now) {
                    place[i] = b;
                    place[j] = a;
                    room[a] -= longer;
                    room[b] += longer;
                    swapped = true;
                }
            }
        }
        return swapped;
    }

    /** Each coil or reel that is used is tried without: its pieces go where they cost least. */
    private boolean spared() {
        boolean spared = false;
        for (int bin = 0; bin < bins; bin++) {
            if (held[bin] > 0) {
                spared |= spare(bin);
            }
        }
        return spared;
    }

    private boolean spare(int bin) {
        long before = total();
        System.arraycopy(place, 0, best, 0, pieces);
        boolean allHeld = true;
        for (int i = 0; i < pieces; i++) {
            if (best[i] == bin) {
                take(i);
            }
        }
        for (int i = 0; i < pieces && allHeld; i++) {
            if (best[i] == bin) {
                int to = cheapest(i, bin);
                allHeld = to != NOWHERE;
                put(i, to);
            }
        }
        if (allHeld && total() < before) {
            return true;
        }
        restore(best);
        return false;
    }

    private int cheapest(int piece, int but) {
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

    private long more(int bin, int piece) {
        return cost(bin, room[bin] - need[piece], held[bin] + 1) - cost(bin, room[bin], held[bin]);
    }

    private long cost(int bin, int roomLeft, int pieces) {
        return pieces == 0 ? 0 : fixed[bin] + whole[bin] - worth.of(left(roomLeft));
    }

    private int left(int roomLeft) {
        return Math.max(0, roomLeft - loss);
    }

    private void put(int piece, int bin) {
        place[piece] = bin;
        if (bin != NOWHERE) {
            room[bin] -= need[piece];
            held[bin]++;
        }
    }

    private void take(int piece) {
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
