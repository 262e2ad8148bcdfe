package bitterend.packing.check;

import static java.util.Objects.requireNonNull;

import bitterend.packing.proof.FewestProof;
import bitterend.packing.proof.FewestProof.Branch;
import bitterend.packing.proof.FewestProof.Empty;
import bitterend.packing.proof.FewestProof.Leaf;
import bitterend.packing.proof.FewestProof.Line;
import bitterend.packing.proof.FewestProof.Node;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Confirms that so many reels do not hold all pieces: follows the branches of a proof by itself, works out what may be cut from
 * a reel at each leaf, and adds up in numbers of any size. Knows nothing of how the proof was found.
 */
public final class FewestCheck {
    private final int[] size;
    private final int[] count;
    private final int room;
    private final long reels;
    private final int leastLoad;

    private FewestCheck(FewestProof proof, long room) {
        List<Line> lines = proof.lines();
        long step = 0;
        for (Line line : lines) {
            if (line.size() < 1 || line.size() > room || line.count() < 1) {
                throw new ProofRefused("a line of " + line.count() + " pieces of " + line.size() + " mm");
            }
            step = BigInteger.valueOf(step).gcd(BigInteger.valueOf(line.size())).longValueExact();
        }
        size = new int[lines.size()];
        count = new int[lines.size()];
        long sum = 0;
        for (int i = 0; i < size.length; i++) {
            size[i] = Math.toIntExact(lines.get(i).size() / step);
            count[i] = lines.get(i).count();
            sum = Math.addExact(sum, Math.multiplyExact((long) size[i], count[i]));
            if (i > 0 && size[i] > size[i - 1]) {
                throw new ProofRefused("line " + i + " is longer than the one before it");
            }
        }
        this.room = Math.toIntExact(room / Math.max(1, step));
        reels = proof.reels();
        long waste = Math.subtractExact(Math.multiplyExact(reels, (long) this.room), sum);
        leastLoad = (int) Math.max(0, Math.min(this.room + 1L, this.room - waste));
    }

    /** An answer to a question of the proof. */
    record Answer(Branch question, boolean yes) {}

    /**
     * What is wrong with a proof; empty when it shows that the reels do not hold the pieces.
     *
     * @param room of a reel with one cut loss, in mm
     * @param pieces how many there are of each length with one cut loss, in mm
     * @param reels that are asked about
     */
    public static String fault(FewestProof proof, long room, Map<Long, Integer> pieces, long reels) {
        Map<Long, Integer> proven = new TreeMap<>();
        proof.lines().forEach(line -> proven.merge(line.size(), line.count(), Integer::sum));
        if (!proven.equals(new TreeMap<>(pieces))) {
            return "the proof speaks of other pieces";
        }
        if (pieces.isEmpty() || reels < 1) {
            return "nothing is asked";
        }
        if (proof.reels() != reels) {
            return "the proof speaks of " + proof.reels() + " reels, not of " + reels;
        }
        try {
            new FewestCheck(proof, room).follow(proof.root(), List.of());
            return "";
        } catch (ProofRefused refused) {
            return requireNonNull(refused.getMessage());
        }
    }

    private void follow(Node node, List<Answer> path) {
        if (node instanceof Branch branch) {
            boolean sound = branch.leader() >= 0
                    && branch.leader() < branch.line()
                    && branch.line() < size.length
                    && branch.copies() >= 1
                    && count[branch.leader()] == 1;
            if (!sound) {
                throw new ProofRefused("a question about line " + branch.line() + " beside line " + branch.leader());
            }
            follow(branch.yes(), with(path, branch, true));
            follow(branch.no(), with(path, branch, false));
        } else if (node instanceof Leaf leaf) {
            leaf(leaf.prices(), path);
        } else if (!(node instanceof Empty) || !isContradiction(path)) {
            throw new ProofRefused("the proof calls a case empty in which plans may be left");
        }
    }

    private static List<Answer> with(List<Answer> path, Branch branch, boolean yes) {
        List<Answer> longer = new ArrayList<>(path);
        longer.add(new Answer(branch, yes));
        return longer;
    }

    private boolean isContradiction(List<Answer> path) {
        for (Answer answer : path) {
            int leader = answer.question().leader();
            if (answer.yes() && !new ReelsOfLeader(count, path, leader).leavesAny()) {
                return true;
            }
        }
        return false;
    }

    private void leaf(List<Long> prices, List<Answer> path) {
        if (prices.size() != size.length) {
            throw new ProofRefused("a leaf has " + prices.size() + " prices for " + size.length + " lines");
        }
        BigInteger demand = BigInteger.ZERO;
        BigInteger absolute = BigInteger.ZERO;
        for (int i = 0; i < size.length; i++) {
            BigInteger all = BigInteger.valueOf(prices.get(i)).multiply(BigInteger.valueOf(count[i]));
            demand = demand.add(all);
            absolute = absolute.add(all.abs());
        }
        if (absolute.bitLength() > Long.SIZE - 4) {
            throw new ProofRefused("the prices of a leaf are too large");
        }
        long most = leastLoad == 0 ? 0 : ReelsOfLeader.NEVER;
        for (ReelsOfLeader group : ReelsOfLeader.all(count, path)) {
            most = Math.max(most, group.most(size, prices, room, leastLoad));
        }
        boolean none = most == ReelsOfLeader.NEVER;
        if (!none && demand.compareTo(BigInteger.valueOf(most).multiply(BigInteger.valueOf(reels))) <= 0) {
            throw new ProofRefused("the prices of a leaf leave a plan: pieces worth " + demand + ", a reel " + most);
        }
    }
}
