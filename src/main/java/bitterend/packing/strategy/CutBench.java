package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.bench.Numbering;
import bitterend.packing.bench.OrderLots;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A packing whose pieces may change places; pieces, runs, lots and orders are counted from zero. A trade is made only when
 * it keeps every hard rule and lowers the price of the plan, or leaves it as it is and brings the pieces of orders closer
 * together.
 */
final class CutBench {
    private static final int NOWHERE = -1;

    private final PackingProblem problem;
    private final List<Piece> pieces;
    private final List<CutRun> runs = new ArrayList<>();
    private final TradeRules rules;
    private final OrderLots lots;
    private final int[] orderOf;
    private final int[] runOf;
    private final Map<String, int[]> sets = new HashMap<>();

    CutBench(PackingProblem problem, PlanPrice prices, Packing packing) {
        this.problem = problem;
        pieces = problem.pieces();
        rules = new TradeRules(problem);
        orderOf = orders(pieces);
        lots = new OrderLots(Arrays.stream(orderOf).max().orElse(NOWHERE) + 1, layOut(prices));
        pieces.stream()
                .filter(Piece::isMatched)
                .forEach(piece -> sets.computeIfAbsent(piece.matching().set(), this::membersOf));
        Map<RunId, Integer> numbers = new HashMap<>();
        runs.forEach(run -> numbers.put(run.id(), run.number()));
        runOf = new int[pieces.size()];
        for (int p = 0; p < runOf.length; p++) {
            runOf[p] = packing.placeOf(pieces.get(p).id())
                    .map(id -> numbers.getOrDefault(id, NOWHERE))
                    .orElse(NOWHERE);
            if (isPlanned(p)) {
                runOf(p).add(p, pieces.get(p));
                if (orderOf[p] != NOWHERE) {
                    lots.add(orderOf[p], runOf(p).lot());
                }
            }
        }
    }

    /** Orders of one piece cannot be split and have no number. */
    private static int[] orders(List<Piece> pieces) {
        Map<String, Long> sizes = pieces.stream().collect(Collectors.groupingBy(Piece::order, Collectors.counting()));
        Numbering<String> numbers = new Numbering<>();
        return pieces.stream()
                .map(Piece::order)
                .mapToInt(order -> sizes.getOrDefault(order, 0L) > 1 ? numbers.of(order) : NOWHERE)
                .toArray();
    }

    /** Lays out the runs, and says which rope each lot is of. */
    private int[] layOut(PlanPrice prices) {
        Numbering<String> lotNames = new Numbering<>();
        Numbering<String> ropes = new Numbering<>();
        List<Integer> ropeOfLot = new ArrayList<>();
        for (int r = 0; r < problem.reels().size(); r++) {
            Reel reel = problem.reels().get(r);
            int lot = lotNames.of(PlanPrice.holderOf(Bond.ONE_LOT, reel));
            if (lot == ropeOfLot.size()) {
                ropeOfLot.add(ropes.of(reel.rope()));
            }
            CutReel cut = new CutReel(reel, r, lot, prices.draw(reel.id()));
            int ofReel = prices.draw(reel.id()).runs().size();
            for (int run = 0; run < ofReel; run++) {
                runs.add(new CutRun(cut, run, runs.size()));
            }
        }
        return ropeOfLot.stream().mapToInt(Integer::intValue).toArray();
    }

    private int[] membersOf(String set) {
        return IntStream.range(0, pieces.size())
                .filter(p -> pieces.get(p).matching().set().equals(set))
                .toArray();
    }

    List<CutRun> runs() {
        return runs;
    }

    int pieces() {
        return pieces.size();
    }

    boolean isPlanned(int piece) {
        return runOf[piece] != NOWHERE;
    }

    CutRun runOf(int piece) {
        return runs.get(runOf[piece]);
    }

    int sizeOf(int piece) {
        return rules.sizeOf(piece);
    }

    /** Whether its order takes rope from other lots too. */
    boolean isSplit(int piece) {
        return orderOf[piece] != NOWHERE
                && lots.isSplit(orderOf[piece], runOf(piece).lot());
    }

    /** Whether two pieces are of one order, so that nothing changes for it when they change places. */
    boolean areOfOneOrder(int one, int other) {
        return orderOf[one] == orderOf[other];
    }

    /** Whether it is the only piece of a split order on its lot. */
    boolean isStray(int piece) {
        return orderOf[piece] != NOWHERE
                && lots.isStray(orderOf[piece], runOf(piece).lot());
    }

    /** Whether its order takes rope from a lot. */
    boolean isWantedOn(int piece, int lot) {
        return orderOf[piece] != NOWHERE && lots.uses(orderOf[piece], lot);
    }

    Packing packing() {
        Map<String, RunId> places = new TreeMap<>();
        for (int p = 0; p < runOf.length; p++) {
            if (isPlanned(p)) {
                places.put(pieces.get(p).id(), runOf(p).id());
            }
        }
        return new Packing(places);
    }

    /** Puts planned pieces on other runs, all at once, if that is allowed and pays; says whether it was done. */
    boolean trade(int[] moved, int[] to) {
        long splitsBefore = lots.splits();
        long closenessBefore = lots.closeness();
        int[] from = changeLots(moved, to);
        long splits = lots.splits() - splitsBefore;
        boolean closer = lots.closeness() > closenessBefore;
        boolean promising = splits < 0 || (splits == 0 && closer);
        if (promising && areAllowed(moved) && pays(moved, from, splits, closer)) {
            return true;
        }
        changeLots(moved, from);
        return false;
    }

    /** Moves pieces as far as orders and lots go; returns where they were. */
    private int[] changeLots(int[] moved, int[] to) {
        int[] from = new int[moved.length];
        for (int i = 0; i < moved.length; i++) {
            int piece = moved[i];
            from[i] = runOf[piece];
            if (orderOf[piece] != NOWHERE) {
                lots.remove(orderOf[piece], runs.get(from[i]).lot());
                lots.add(orderOf[piece], runs.get(to[i]).lot());
            }
            runOf[piece] = to[i];
        }
        return from;
    }

    private boolean areAllowed(int[] moved) {
        for (int piece : moved) {
            if (!rules.allow(piece, runOf(piece).reel().number()) || !isTogether(pieces.get(piece))) {
                return false;
            }
        }
        return true;
    }

    /** Whether all of a piece's set lie together. */
    private boolean isTogether(Piece piece) {
        if (!piece.isMatched()) {
            return true;
        }
        Bond bond = piece.matching().bond();
        return Arrays.stream(sets.getOrDefault(piece.matching().set(), new int[0]))
                        .filter(this::isPlanned)
                        .mapToObj(mate -> runOf(mate).reel().holderOf(bond))
                        .distinct()
                        .count()
                <= 1;
    }

    /** Moves the loads as well and keeps that if all fits and the price is right. */
    private boolean pays(int[] moved, int[] from, long splits, boolean closer) {
        int[] to = Arrays.stream(moved).map(piece -> runOf[piece]).toArray();
        Set<CutReel> touched = new LinkedHashSet<>();
        IntStream.concat(Arrays.stream(from), Arrays.stream(to))
                .forEach(run -> touched.add(runs.get(run).reel()));
        long before = price(touched, moved, from);
        carry(moved, from, to);
        boolean fits = Arrays.stream(to).mapToObj(runs::get).allMatch(run -> run.fits(run.load()));
        long change = fits ? price(touched, moved, to) - before : 0;
        change += splits * problem.prices().splitOrder().millis();
        if (fits && (change < 0 || (change == 0 && closer))) {
            return true;
        }
        carry(moved, to, from);
        return false;
    }

    /** The draws, and what it costs that these pieces lie elsewhere than in an earlier plan. */
    private long price(Set<CutReel> touched, int[] moved, int[] where) {
        long sum = touched.stream().mapToLong(CutReel::millis).sum();
        for (int i = 0; i < moved.length && !problem.earlier().isEmpty(); i++) {
            String reel = runs.get(where[i]).reel().reel().id();
            String before = problem.earlier().getOrDefault(pieces.get(moved[i]).id(), reel);
            sum += before.equals(reel) ? 0 : problem.prices().movedPiece().millis();
        }
        return sum;
    }

    private void carry(int[] moved, int[] from, int[] to) {
        for (int i = 0; i < moved.length; i++) {
            runs.get(from[i]).remove(moved[i], pieces.get(moved[i]));
        }
        for (int i = 0; i < moved.length; i++) {
            runs.get(to[i]).add(moved[i], pieces.get(moved[i]));
        }
    }
}
