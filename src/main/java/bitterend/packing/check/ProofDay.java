package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import bitterend.packing.proof.Holder;
import bitterend.packing.proof.ProofTree;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The pieces and reels that a proof speaks of, by number: lines as the proof names them, and the pieces it does not name
 * in lines behind those; every piece of a line is alike.
 */
final class ProofDay {
    private final Facts facts;
    private final UndoneWork undone;
    private final List<Reel> reels;
    private final Map<String, Integer> reelNumbers = new HashMap<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Group> groups = new ArrayList<>();
    private final Map<String, MatchedSet> sets = new LinkedHashMap<>();
    private final Set<String> orders = new TreeSet<>();
    private final List<List<Integer>> alike = new ArrayList<>();

    /**
     * Pieces that are alike.
     *
     * @param number its place in the proof, or behind
     * @param count how many
     * @param urgency class of urgency, from 1
     * @param weight of one piece
     * @param set name of its set; empty for none
     */
    record Line(int number, int count, int urgency, long weight, String set) {}

    /** The pieces of a line that one order wants. */
    record Group(int number, int line, String order, int count, Terms terms) {}

    /** The pieces of a set. */
    record MatchedSet(String name, boolean toTheReel, List<Group> groups) {
        /** The one order of its pieces; empty when they are of several. */
        String order() {
            Set<String> all = new HashSet<>();
            groups.forEach(group -> all.add(group.order()));
            return all.size() == 1 ? groups.get(0).order() : "";
        }
    }

    /** What a piece asks for: its length with the loss of the cut on each reel that it may come off, 0 on the others. */
    record Terms(int urgency, long weight, String set, Bond bond, List<Long> sizes) {
        long size(int reel) {
            return sizes.get(reel);
        }
    }

    ProofDay(Facts facts, List<Reel> reels, List<Piece> pieces, ProofTree proof) {
        this.facts = facts;
        this.reels = List.copyOf(reels);
        undone = new UndoneWork(facts.problem());
        for (Reel reel : reels) {
            reelNumbers.put(reel.id(), reelNumbers.size());
        }
        Map<String, Piece> open = new LinkedHashMap<>();
        pieces.forEach(piece -> open.put(piece.id(), piece));
        for (ProofTree.Line line : proof.lines()) {
            addNamed(line, open);
        }
        Map<Terms, List<Piece>> others = new LinkedHashMap<>();
        open.values().forEach(piece -> others.computeIfAbsent(terms(piece), any -> new ArrayList<>())
                .add(piece));
        others.forEach(this::add);
        readSets();
        findAlike();
    }

    private void addNamed(ProofTree.Line line, Map<String, Piece> open) {
        List<Piece> pieces = new ArrayList<>();
        for (String id : line.pieces()) {
            Piece piece = open.remove(id);
            if (piece == null) {
                throw new ProofRefused("the proof speaks of " + id + ", which is not wanted here or named twice");
            }
            pieces.add(piece);
        }
        if (pieces.isEmpty()) {
            throw new ProofRefused("a line of the proof has no pieces");
        }
        Terms terms = terms(pieces.get(0));
        for (Piece piece : pieces) {
            if (!terms(piece).equals(terms)) {
                throw new ProofRefused(
                        piece.id() + " is not like " + pieces.get(0).id());
            }
        }
        add(terms, pieces);
    }

    private void add(Terms terms, List<Piece> pieces) {
        int line = lines.size();
        lines.add(new Line(line, pieces.size(), terms.urgency(), terms.weight(), terms.set()));
        Map<String, Integer> byOrder = new LinkedHashMap<>();
        pieces.forEach(piece -> byOrder.merge(piece.order(), 1, Integer::sum));
        byOrder.forEach((order, count) -> groups.add(new Group(groups.size(), line, order, count, terms)));
        orders.addAll(byOrder.keySet());
    }

    private Terms terms(Piece piece) {
        List<Long> sizes = new ArrayList<>();
        for (Reel reel : reels) {
            boolean may = facts.broken(piece, reel).isEmpty();
            sizes.add(
                    may
                            ? Math.addExact(
                                    piece.lengthOn(reel.rope()).orElseThrow().mm(), lossOn(reel))
                            : 0L);
        }
        Bond bond = piece.matching().bond();
        String set = bond == Bond.NONE ? "" : piece.matching().set();
        return new Terms(undone.classOf(piece), undone.weight(piece), set, bond, sizes);
    }

    private void readSets() {
        Map<String, List<Group>> bySet = new LinkedHashMap<>();
        for (Group group : groups) {
            if (!group.terms().set().isEmpty()) {
                bySet.computeIfAbsent(group.terms().set(), any -> new ArrayList<>())
                        .add(group);
            }
        }
        bySet.forEach((set, of) -> sets.put(
                set,
                new MatchedSet(
                        set, of.stream().anyMatch(group -> group.terms().bond() == Bond.ONE_REEL), List.copyOf(of))));
    }

    /**
     * Reels whose contents may change places: no plan is lost when the loads of such reels fall in the order of their ids.
     * Lots make no difference where no set asks for one and further ones are free.
     */
    private void findAlike() {
        boolean anyLot = sets.isEmpty() && facts.problem().prices().splitOrder().equals(Cost.ZERO);
        Map<List<Object>, List<Integer>> byTerms = new LinkedHashMap<>();
        for (int reel = 0; reel < reels.size(); reel++) {
            Reel one = reels.get(reel);
            List<Long> sizes = new ArrayList<>();
            for (Group group : groups) {
                sizes.add(group.terms().size(reel));
            }
            List<Object> terms = List.of(
                    one.rope(),
                    anyLot ? "" : one.lot(),
                    one.custody().isCustomersOwn(),
                    DerivedDraw.fetching(facts, one),
                    facts.runs(one).stream().map(SoundRope.Stretch::length).toList(),
                    sizes);
            byTerms.computeIfAbsent(terms, any -> new ArrayList<>()).add(reel);
        }
        for (List<Integer> same : byTerms.values()) {
            if (same.size() > 1) {
                same.sort(Comparator.comparing(reel -> reels.get(reel).id()));
                alike.add(same);
            }
        }
    }

    Facts facts() {
        return facts;
    }

    List<Reel> reels() {
        return reels;
    }

    List<Line> lines() {
        return lines;
    }

    List<Group> groups() {
        return groups;
    }

    Map<String, MatchedSet> sets() {
        return sets;
    }

    Set<String> orders() {
        return orders;
    }

    /** Reels by number that are alike, at least two each, in the order of their ids. */
    List<List<Integer>> alike() {
        return alike;
    }

    List<SoundRope.Stretch> runs(int reel) {
        return facts.runs(reels.get(reel));
    }

    long lossOn(Reel reel) {
        return facts.problem().ropeOn(reel).cutting().loss().mm();
    }

    /** The longest load of a run: the loss of the last cut need not fit. */
    long room(int reel, int run) {
        return Math.addExact(runs(reel).get(run).length().mm(), lossOn(reels.get(reel)));
    }

    /** The number of a reel; an unknown one is a fault of the proof. */
    int reel(String id) {
        Integer number = reelNumbers.get(id);
        if (number == null) {
            throw new ProofRefused("the proof speaks of reel " + id + ", which is not among these ropes");
        }
        return number;
    }

    /** What holds a set, or an order: the reels of one lot, or one reel. */
    BitSet reelsOf(Holder holder) {
        BitSet found = new BitSet();
        if (holder instanceof Holder.OneReel one) {
            found.set(reel(one.reel()));
        } else if (holder instanceof Holder.Lot lot) {
            for (int reel = 0; reel < reels.size(); reel++) {
                if (reels.get(reel).rope().equals(lot.rope())
                        && reels.get(reel).lot().equals(lot.number())) {
                    found.set(reel);
                }
            }
        } else {
            throw new ProofRefused("the whole rack holds everything: nothing is said by " + holder);
        }
        if (found.isEmpty()) {
            throw new ProofRefused("there is no reel of " + holder);
        }
        return found;
    }

    /** The reels of each lot; a reel of unknown lot is a lot by itself. */
    List<BitSet> lots() {
        Map<List<String>, BitSet> lots = new LinkedHashMap<>();
        for (int reel = 0; reel < reels.size(); reel++) {
            Reel one = reels.get(reel);
            lots.computeIfAbsent(List.of(one.rope(), Facts.lot(one)), any -> new BitSet())
                    .set(reel);
        }
        return List.copyOf(lots.values());
    }

    /** Where a set may lie together. */
    List<BitSet> holders(MatchedSet set) {
        if (!set.toTheReel()) {
            return lots();
        }
        List<BitSet> each = new ArrayList<>();
        for (int reel = 0; reel < reels.size(); reel++) {
            BitSet one = new BitSet();
            one.set(reel);
            each.add(one);
        }
        return each;
    }
}
