package bitterend.packing.patterns.fewest;

import bitterend.bench.HardProblems;
import bitterend.bench.Instance;
import bitterend.packing.patterns.Item;
import bitterend.packing.patterns.ReelKind;
import bitterend.packing.proof.FewestProof;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Small questions drawn by lot, and their answers by trying all ways. */
final class Questions {
    private Questions() {}

    /** Pieces drawn by lot for reels of 20 to 60 steps; so many reels that their waste is little, if that is possible. */
    static ReelQuestion drawn(Random random, int mostPieces) {
        int room = 20 + random.nextInt(41);
        Map<Integer, Integer> counts = new TreeMap<>((a, b) -> b - a);
        int pieces = 3 + random.nextInt(mostPieces - 2);
        int sum = 0;
        for (int p = 0; p < pieces; p++) {
            int size = 1 + random.nextInt(room * 2 / 3);
            counts.merge(size, 1, Integer::sum);
            sum += size;
        }
        return of(counts, room, -Math.floorDiv(-sum, room));
    }

    static ReelQuestion of(Map<Integer, Integer> counts, int room, int reels) {
        int[] size = counts.keySet().stream().mapToInt(Integer::intValue).toArray();
        int[] count = counts.values().stream().mapToInt(Integer::intValue).toArray();
        return new ReelQuestion(size, count, room, reels);
    }

    /** Fifteen pieces that three reels hold in the mean only. */
    static ReelQuestion graph(long seed) {
        Instance instance = Instance.of(HardProblems.drawn(HardProblems.Kind.GAP, 15, 5000, seed));
        ReelKind reel = instance.problem().reels().get(0);
        int[] size = reel.lengths().stream().mapToInt(Math::toIntExact).toArray();
        int[] count = instance.problem().items().stream().mapToInt(Item::demand).toArray();
        int room = Math.toIntExact(reel.runs().get(0).length());
        return new ReelQuestion(size, count, room, (int) instance.lower() - 1);
    }

    static ReelQuestion with(ReelQuestion question, int reels) {
        return new ReelQuestion(question.size, question.count, question.room, reels);
    }

    /** Fewest reels that hold all pieces, by a state for every set of pieces. */
    static int fewest(ReelQuestion question) {
        int[] pieces = pieces(question);
        int all = 1 << pieces.length;
        long[] best = new long[all];
        Arrays.fill(best, Long.MAX_VALUE);
        best[0] = 0;
        for (int mask = 0; mask < all; mask++) {
            for (int p = 0; p < pieces.length; p++) {
                if ((mask >> p & 1) == 0) {
                    long reels = best[mask] >> 32;
                    long left = best[mask] & 0xFFFFFFFFL;
                    long next = left >= pieces[p]
                            ? reels << 32 | (left - pieces[p])
                            : (reels + 1) << 32 | (question.room - pieces[p]);
                    // More room left is better: the key counts it from the other end.
                    best[mask | 1 << p] = better(best[mask | 1 << p], next);
                }
            }
        }
        return (int) (best[all - 1] >> 32);
    }

    private static long better(long a, long b) {
        if (a == Long.MAX_VALUE) {
            return b;
        }
        boolean fewer = a >> 32 < b >> 32 || (a >> 32 == b >> 32 && (a & 0xFFFFFFFFL) >= (b & 0xFFFFFFFFL));
        return fewer ? a : b;
    }

    /** The leaves of a proof, those that are empty among them. */
    static int leaves(FewestProof.Node node) {
        return node instanceof FewestProof.Branch branch ? leaves(branch.yes()) + leaves(branch.no()) : 1;
    }

    static int[] pieces(ReelQuestion question) {
        return IntStream.range(0, question.items())
                .flatMap(i -> IntStream.generate(() -> question.size[i]).limit(question.count[i]))
                .toArray();
    }

    /** Every pattern that is loaded as much as the question wants. */
    static List<Column> patterns(ReelQuestion question) {
        List<Column> all = new ArrayList<>();
        extend(question, 0, 0, new int[question.items()], all);
        return all;
    }

    private static void extend(ReelQuestion question, int item, int load, int[] counts, List<Column> all) {
        if (item == counts.length) {
            if (load > 0 && load >= question.leastLoad()) {
                all.add(Column.of(counts));
            }
            return;
        }
        for (int c = 0; c <= question.count[item] && load + c * question.size[item] <= question.room; c++) {
            counts[item] = c;
            extend(question, item + 1, load + c * question.size[item], counts, all);
        }
        counts[item] = 0;
    }

    static long worth(Column column, int[] price) {
        long worth = 0;
        for (int t = 0; t < column.item.length; t++) {
            worth += (long) price[column.item[t]] * column.count[t];
        }
        return worth;
    }

    /** Decisions drawn by lot, answered by lot. */
    static Limits limits(ReelQuestion question, Random random) {
        Limits limits = new Limits(question);
        for (int n = random.nextInt(4); n > 0; n--) {
            Decision decision = decision(question, random);
            limits = decision == null ? limits : limits.with(decision, random.nextBoolean());
        }
        return limits;
    }

    static @Nullable Decision decision(ReelQuestion question, Random random) {
        int leader = random.nextInt(question.items());
        if (question.count[leader] > 1 || leader == question.items() - 1) {
            return null;
        }
        int item = leader + 1 + random.nextInt(question.items() - leader - 1);
        return new Decision(leader, item, 1 + random.nextInt(question.count[item]));
    }
}
