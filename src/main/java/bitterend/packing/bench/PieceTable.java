package bitterend.packing.bench;

import bitterend.demand.Piece;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceKind;
import bitterend.packing.Urgency;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** The pieces of a problem in numbers: their kinds, which runs are open to each kind, and what it takes of each. */
final class PieceTable {
    /** A reel of an earlier plan that is not there any more. */
    private static final int GONE = -2;

    /** Pieces of one kind may come off the same runs and take the same of each. */
    final int[] kindOf;

    final int[] urgency;
    final long[] weight;
    final boolean[] pinned;
    /** Number of the order, or {@link Workbench#NONE} where it cannot be split. */
    final int[] orderOf;
    /** How many pieces each order has that can be split. */
    final int[] piecesOfOrder;
    /** Reel of an earlier plan, or {@link Workbench#NONE}; a number of no reel for one that is not there any more. */
    final int[] earlier;

    private final PackingProblem problem;
    private final RunTable runTable;
    private final Eligibility rules;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<BitSet> isHome = new ArrayList<>();
    private final List<long[]> sizes = new ArrayList<>();
    private final Numbering<List<Long>> sizeNumbers = new Numbering<>();
    private final List<Integer> sizeNumber = new ArrayList<>();

    PieceTable(PackingProblem problem, RunTable runTable) {
        this.problem = problem;
        this.runTable = runTable;
        rules = new Eligibility(problem);
        int pieces = problem.pieces().size();
        Urgency urgencies = new Urgency(problem);
        Numbering<PieceKind> kinds = new Numbering<>();
        kindOf = new int[pieces];
        urgency = new int[pieces];
        weight = new long[pieces];
        pinned = new boolean[pieces];
        for (int p = 0; p < pieces; p++) {
            Piece piece = problem.pieces().get(p);
            numbers.put(piece.id(), p);
            PieceKind kind = rules.kindOf(piece);
            kindOf[p] = kinds.of(kind);
            if (kindOf[p] == sizes.size()) {
                addKind(piece);
            }
            urgency[p] = urgencies.classOf(piece);
            weight[p] = urgencies.weightOf(piece);
            pinned[p] = kind.isPinned();
        }
        orderOf = orders();
        piecesOfOrder = new int[IntStream.of(orderOf).max().orElse(Workbench.NONE) + 1];
        IntStream.of(orderOf).filter(order -> order != Workbench.NONE).forEach(order -> piecesOfOrder[order]++);
        earlier = earlierReels();
    }

    private void addKind(Piece piece) {
        long[] size = new long[runTable.ropes];
        BitSet bits = new BitSet(runTable.runs);
        for (int r = 0; r < runTable.reels; r++) {
            Reel reel = problem.reels().get(r);
            long cut = piece.lengthOn(reel.rope()).map(there -> there.mm()).orElse(Long.MAX_VALUE);
            size[runTable.ropeOfReel[r]] = cut;
            if (cut < Long.MAX_VALUE && rules.allows(piece, reel)) {
                for (int run = runTable.firstRun[r]; run < runTable.firstRun[r + 1]; run++) {
                    bits.set(run, cut <= runTable.length[run]);
                }
            }
        }
        isHome.add(bits);
        sizes.add(size);
        sizeNumber.add(sizeNumbers.of(LongStream.of(size).boxed().toList()));
    }

    private int[] orders() {
        Map<String, Long> sizeOfOrder =
                problem.pieces().stream().collect(Collectors.groupingBy(Piece::order, Collectors.counting()));
        Numbering<String> orders = new Numbering<>();
        return problem.pieces().stream()
                .map(Piece::order)
                .mapToInt(order -> sizeOfOrder.getOrDefault(order, 0L) > 1 ? orders.of(order) : Workbench.NONE)
                .toArray();
    }

    private int[] earlierReels() {
        Map<String, Integer> reels = new HashMap<>();
        problem.reels().forEach(reel -> reels.put(reel.id(), reels.size()));
        return problem.pieces().stream()
                .map(piece -> problem.earlier().getOrDefault(piece.id(), ""))
                .mapToInt(reel -> reel.isEmpty() ? Workbench.NONE : reels.getOrDefault(reel, GONE))
                .toArray();
    }

    /** The number of a piece by its id; a piece that is not wanted is a caller's bug. */
    int numberOf(String piece) {
        Integer number = numbers.get(piece);
        if (number == null) {
            throw new IllegalArgumentException("no piece " + piece);
        }
        return number;
    }

    int kinds() {
        return sizes.size();
    }

    boolean hasHome(int piece) {
        return !isHome.get(kindOf[piece]).isEmpty();
    }

    boolean isHome(int piece, int run) {
        return isHome.get(kindOf[piece]).get(run);
    }

    long sizeOn(int piece, int rope) {
        return sizes.get(kindOf[piece])[rope];
    }

    /** Pieces that are as long as one another on every rope on the rack share a number. */
    int sizeNumber(int piece) {
        return sizeNumber.get(kindOf[piece]);
    }
}
