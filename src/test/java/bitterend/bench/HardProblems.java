package bitterend.bench;

import java.io.PrintWriter;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * Draws problems whose best plan takes a reel more than the linear program says, or seems to: the sub-command {@code hard}
 * of {@code .ci/bench}, in the form that {@code one} reads. By the published construction: fifteen pieces of which three
 * reels cannot be filled though averages of them can (the edges of the Petersen graph, each as long as its two ends: A.
 * Caprara, M. Dell'Amico, J. C. Diaz Diaz, M. Iori, R. Rizzi, "Friendly bin packing instances without integer round-up
 * property", Mathematical Programming 150 (2015) 5-17), and then three pieces at a time that fill a reel (M. Delorme, M.
 * Iori, S. Martello, "Bin packing and cutting stock problems: mathematical models and exact algorithms", European Journal
 * of Operational Research 255 (2016) 1-20). Ours: of three pieces one is filled up by the two others alone, out of all that
 * were there before, so that no plan without waste exists by construction; that one is taken which leaves most sums free.
 */
@Command(name = "hard")
public final class HardProblems implements Callable<Integer> {
    private static final int VERTICES = 10;
    private static final int EDGES = 15;
    private static final int PERFECT = 5;
    private static final int TRIES = 40_000;
    private static final int CANDIDATES = 30;
    private static final int ATTEMPTS = 4_000;

    /** What is drawn. */
    public enum Kind {
        /** One reel more than the linear program says. */
        GAP,
        /** The same with one piece cut in two, so that nothing is wasted. */
        SPLIT,
        /** Pieces by lot, where hardly anything may be wasted. */
        TIGHT
    }

    @Option(names = "--kind")
    private Kind kind = Kind.GAP;

    @Option(names = "--pieces")
    private int pieces = 201;

    @Option(names = "--length")
    private int length = 2500;

    @Option(names = "--count")
    private int count = 50;

    @Option(names = "--seed")
    private long seed;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Override
    public Integer call() {
        Benchmarks.positive(spec, "--pieces", pieces);
        Benchmarks.positive(spec, "--count", count);
        Benchmarks.positive(spec, "--length", length);
        PrintWriter out = spec.commandLine().getOut();
        for (int n = 0; n < count; n++) {
            out.println(drawn(kind, pieces, length, seed + n));
        }
        return 0;
    }

    /** One problem as a line that {@link Instance#read} understands. */
    public static String drawn(Kind kind, int pieces, int length, long seed) {
        Random random = new Random(seed);
        String name = kind.name().toLowerCase(java.util.Locale.ROOT) + "_" + pieces + "_" + length + "_" + seed;
        if (kind == Kind.TIGHT) {
            return tight(name, pieces, length, random);
        }
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            List<Integer> core = core(length, random);
            List<Integer> whole = new ArrayList<>(core);
            if (core.isEmpty() || !grown(whole, pieces, length, random)) {
                continue;
            }
            int reels = whole.size() / 3 - EDGES / 3 + 3;
            if (kind == Kind.GAP) {
                return line(name, length, reels + 1, reels + 1, whole);
            }
            if (split(whole, core)) {
                return line(name, length, reels, reels, whole);
            }
        }
        throw new IllegalArgumentException("no room for " + pieces + " such pieces in reels of " + length);
    }

    private static String line(String name, int length, int lower, int upper, List<Integer> pieces) {
        Map<Integer, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
        pieces.forEach(piece -> counts.merge(piece, 1, Integer::sum));
        return name + "\t" + length + "\t" + lower + "\t" + upper + "\t"
                + counts.entrySet().stream()
                        .map(entry -> entry.getKey() + ":" + entry.getValue())
                        .collect(Collectors.joining(" "));
    }

    /** The edges of the Petersen graph as pairs of vertices. */
    private static int[][] edges() {
        int[][] edges = new int[EDGES][];
        for (int i = 0; i < PERFECT; i++) {
            edges[3 * i] = new int[] {i, (i + 1) % PERFECT};
            edges[3 * i + 1] = new int[] {i, i + PERFECT};
            edges[3 * i + 2] = new int[] {PERFECT + i, PERFECT + (i + 2) % PERFECT};
        }
        return edges;
    }

    /** Fifteen pieces as long as three reels that do not fill them; empty where the lot fell otherwise. */
    private static List<Integer> core(int length, Random random) {
        int[] vertex = new int[VERTICES];
        int left = length;
        for (int v = 0; v < VERTICES - 1; v++) {
            vertex[v] = length / VERTICES + random.nextInt(length / 50 + 1) - length / 100;
            left -= vertex[v];
        }
        vertex[VERTICES - 1] = left;
        List<Integer> pieces = new ArrayList<>();
        for (int[] edge : edges()) {
            pieces.add(vertex[edge[0]] + vertex[edge[1]]);
        }
        boolean usable = left > length / 20 && pieces.stream().allMatch(piece -> piece > 0);
        return usable && !fillThree(pieces, length) ? pieces : List.of();
    }

    private static boolean fillThree(List<Integer> pieces, int length) {
        List<Integer> full = new ArrayList<>();
        int all = (1 << pieces.size()) - 1;
        for (int mask = 1; mask <= all; mask++) {
            int sum = 0;
            for (int p = 0; p < pieces.size(); p++) {
                sum += (mask >> p & 1) * pieces.get(p);
            }
            if (sum == length) {
                full.add(mask);
            }
        }
        for (int a : full) {
            for (int b : full) {
                if ((a & b) == 0 && full.contains(all ^ a ^ b)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Adds three pieces at a time that can only lie together, in a plan without waste; false where none are left to add. */
    private static boolean grown(List<Integer> pieces, int most, int length, Random random) {
        BigInteger room = BigInteger.ONE.shiftLeft(length + 1).subtract(BigInteger.ONE);
        BigInteger sums = BigInteger.ONE;
        for (int piece : pieces) {
            sums = with(sums, piece, room);
        }
        while (pieces.size() + 3 <= most) {
            List<Integer> best = List.of();
            BigInteger after = room;
            int found = 0;
            for (int t = 0; t < TRIES && found < CANDIDATES; t++) {
                int one = 2 + random.nextInt(length / 3);
                int other = 2 + random.nextInt(length / 3);
                if (sums.testBit(one) || sums.testBit(other) || sums.testBit(one + other)) {
                    continue;
                }
                found++;
                int third = length - one - other;
                BigInteger next = with(with(with(sums, one, room), other, room), third, room);
                if (best.isEmpty() || next.bitCount() < after.bitCount()) {
                    best = List.of(one, other, third);
                    after = next;
                }
            }
            if (best.isEmpty()) {
                return false;
            }
            pieces.addAll(best);
            sums = after;
        }
        return true;
    }

    private static BigInteger with(BigInteger sums, int piece, BigInteger room) {
        return sums.or(sums.shiftLeft(piece)).and(room);
    }

    /** Two full reels share a piece; another of the core as long as that and something more is cut there. */
    private static boolean split(List<Integer> whole, List<Integer> core) {
        int[][] edges = edges();
        List<Integer> perfect = new ArrayList<>();
        for (int mask = 0; mask < 1 << EDGES; mask++) {
            int seen = 0;
            for (int e = 0; e < EDGES; e++) {
                int ends = 1 << edges[e][0] | 1 << edges[e][1];
                seen = (mask >> e & 1) == 0 ? seen : (seen & ends) == 0 ? seen | ends : -1;
            }
            if (seen == (1 << VERTICES) - 1) {
                perfect.add(mask);
            }
        }
        int first = perfect.get(0);
        int second = perfect.get(1);
        int shared = Integer.numberOfTrailingZeros(first & second);
        for (int e = 0; e < EDGES; e++) {
            if (((first | second) >> e & 1) == 0 && core.get(e) > core.get(shared)) {
                whole.remove(core.get(e));
                whole.add(core.get(shared));
                whole.add(core.get(e) - core.get(shared));
                return true;
            }
        }
        return false;
    }

    /** Of up to four fifths of a reel, so that less than a hundredth of a reel may be wasted in all. */
    private static String tight(String name, int pieces, int length, Random random) {
        while (true) {
            List<Integer> drawn = new ArrayList<>();
            long sum = 0;
            for (int p = 0; p < pieces; p++) {
                int piece = 1 + random.nextInt(length * 4 / 5);
                drawn.add(piece);
                sum += piece;
            }
            int reels = (int) -Math.floorDiv(-sum, length);
            if (reels * (long) length - sum < length / 100 && mayFit(drawn, length, reels)) {
                return line(name, length, reels, reels + 1, drawn);
            }
        }
    }

    /** Whether pieces that cannot lie together leave room for the rest (S. Martello, P. Toth, "Knapsack Problems", chapter 8). */
    private static boolean mayFit(List<Integer> pieces, int length, int reels) {
        for (int least = 1; 2 * least <= length; least++) {
            long alone = 0;
            long together = 0;
            long left = 0;
            for (int piece : pieces) {
                boolean half = 2 * piece > length;
                alone += piece > length - least ? 1 : 0;
                together += half && piece <= length - least ? 1 : 0;
                left += half && piece <= length - least ? length - piece : 0;
                left -= !half && piece >= least ? piece : 0;
            }
            if (alone + together + Math.max(0, -Math.floorDiv(left, length)) > reels) {
                return false;
            }
        }
        return true;
    }
}
