package bitterend.packing.check;

import bitterend.packing.check.FewestCheck.Answer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * What the answers above a leaf leave of the reels that one line leads, or of all reels whose leaders no answer speaks of: how
 * many pieces of each line such a reel holds at least and at most. Where a leader's reel must hold so many, it is a reel's
 * longest piece, lies in no other, and the others share what is left.
 */
final class ReelsOfLeader {
    static final long NEVER = Long.MIN_VALUE / 4;
    private static final int ANY = -1;

    private final int leader;
    private final int[] least;
    private final int[] most;
    private final boolean[] leads;

    ReelsOfLeader(int[] count, List<Answer> path, int leader) {
        this.leader = leader;
        int[][] held = new int[count.length][];
        for (Answer answer : path) {
            int whose = answer.question().leader();
            if (answer.yes()) {
                held[whose] = held[whose] == null ? new int[count.length] : held[whose];
                int line = answer.question().line();
                held[whose][line] =
                        Math.max(held[whose][line], answer.question().copies());
            }
        }
        most = count.clone();
        for (int whose = 0; whose < count.length; whose++) {
            if (held[whose] != null && whose != leader) {
                most[whose] = 0;
                for (int line = 0; line < count.length; line++) {
                    most[line] = Math.max(0, most[line] - held[whose][line]);
                }
            }
        }
        for (Answer answer : path) {
            if (!answer.yes() && answer.question().leader() == leader) {
                int line = answer.question().line();
                most[line] = Math.min(most[line], answer.question().copies() - 1);
            }
        }
        least = leader == ANY || held[leader] == null ? new int[count.length] : held[leader];
        leads = new boolean[count.length];
        if (leader == ANY) {
            Arrays.fill(leads, true);
            path.forEach(answer -> leads[answer.question().leader()] = false);
        } else {
            leads[leader] = true;
        }
    }

    /** Of each leader that an answer speaks of, and of all others together. */
    static List<ReelsOfLeader> all(int[] count, List<Answer> path) {
        List<ReelsOfLeader> all = new ArrayList<>();
        all.add(new ReelsOfLeader(count, path, ANY));
        TreeSet<Integer> leaders = new TreeSet<>();
        path.forEach(answer -> leaders.add(answer.question().leader()));
        leaders.forEach(leader -> all.add(new ReelsOfLeader(count, path, leader)));
        return all;
    }

    /** Whether a reel can hold what it must, as far as numbers go. */
    boolean leavesAny() {
        for (int line = 0; line < most.length; line++) {
            if (least[line] > most[line]) {
                return false;
            }
        }
        return leader == ANY || most[leader] > 0;
    }

    /** The most that such a reel's pieces are worth, loaded with at least so much; {@link #NEVER} where there is no such load. */
    long most(int[] size, List<Long> prices, int room, int leastLoad) {
        long[] worth = new long[room + 1];
        Arrays.fill(worth, NEVER);
        for (int line = Math.max(0, leader); line < size.length; line++) {
            worth = with(worth, line, size[line], prices.get(line));
        }
        long best = NEVER;
        for (int load = Math.max(1, leastLoad); load <= room; load++) {
            best = Math.max(best, worth[load]);
        }
        return best < NEVER / 2 ? NEVER : best;
    }

    /** Loads once pieces of a line are cut beside longer ones, or lead. */
    private long[] with(long[] worth, int line, int size, long price) {
        boolean behind = line != leader;
        long[] next = new long[worth.length];
        Arrays.fill(next, NEVER);
        for (int copies = behind ? least[line] : 1; copies <= most[line]; copies++) {
            long shift = (long) copies * size;
            if (shift >= worth.length) {
                break;
            }
            if (behind) {
                add(worth, (int) shift, copies * price, next);
            }
            if (copies > 0 && leads[line]) {
                next[(int) shift] = Math.max(next[(int) shift], copies * price);
            }
        }
        return next;
    }

    private static void add(long[] worth, int shift, long price, long[] next) {
        for (int load = shift; load < next.length; load++) {
            next[load] = Math.max(next[load], worth[load - shift] + price);
        }
    }
}
