package bitterend.quoting;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.PackingProblem;
import bitterend.quoting.sharing.NewRope;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Today's rack with new reels beside it, for one rope and all that is linked to it by an allowed substitute. */
final class RackAndMarket {
    private final QuoteBasis basis;
    private final Set<String> ropes = new TreeSet<>();
    private final List<Piece> booked;
    private final List<Piece> asked;

    /**
     * @param booked the pieces of the book that are not asked for
     * @param asked pieces of the request
     */
    RackAndMarket(QuoteBasis basis, String rope, List<Piece> booked, List<Piece> asked) {
        this.basis = basis;
        ropes.add(rope);
        link(booked, asked);
        this.booked = booked.stream().filter(this::isConcerned).toList();
        this.asked = asked;
    }

    private void link(List<Piece> booked, List<Piece> asked) {
        int before;
        do {
            before = ropes.size();
            for (List<Piece> pieces : List.of(booked, asked)) {
                pieces.stream().filter(this::isConcerned).forEach(piece -> piece.choices()
                        .forEach(choice -> ropes.add(choice.rope())));
            }
        } while (ropes.size() > before);
    }

    /** A customer's own rope serves that customer alone and takes nothing from the shop's. */
    private boolean isConcerned(Piece piece) {
        return !piece.ownRope() && piece.choices().stream().anyMatch(choice -> ropes.contains(choice.rope()));
    }

    /** The choice among the sizes of new reels of each of its ropes, which come in time for what is asked for. */
    Map<String, SizeChoice> sizes() {
        List<Piece> all = new ArrayList<>(booked);
        all.addAll(asked);
        Map<String, SizeChoice> sizes = new TreeMap<>();
        for (String id : ropes) {
            List<Piece> held = all.stream()
                    .filter(piece ->
                            piece.lengthOn(id).filter(cut -> isHeld(id, cut)).isPresent())
                    .toList();
            sizes.put(id, basis.sizes(id, Set.of(), held, asked));
        }
        return sizes;
    }

    private boolean isHeld(String id, Length cut) {
        return !cut.isLongerThan(basis.anySize(id).longest());
    }

    /**
     * The booked work and more pieces. There are new reels for all, asked for or not, so that problems differ in nothing else.
     *
     * @param bought every rope of it on the new reels that may be bought
     */
    PackingProblem problem(List<Piece> more, Map<String, NewRope> bought) {
        PackingProblem book = basis.book();
        List<Piece> pieces = new ArrayList<>(booked);
        pieces.addAll(more);
        List<Piece> all = new ArrayList<>(booked);
        all.addAll(asked);
        Map<String, Rope> catalogue = new HashMap<>(book.ropes());
        Map<String, StockValue> values = new HashMap<>(book.values());
        List<Reel> reels = new ArrayList<>(book.reels().stream()
                .filter(reel -> ropes.contains(reel.rope()))
                .toList());
        for (NewRope rope : bought.values()) {
            catalogue.putAll(rope.ropes());
            values.putAll(rope.values());
            reels.addAll(rope.reels(all, certificate()));
        }
        return book.about(pieces.stream()
                        .map(piece -> onNewReelsToo(piece, bought))
                        .toList())
                .withEarlier(Map.of())
                .withRack(catalogue, values, reels);
    }

    /** New rope is bought with the first kind of certificate that is asked for. */
    private String certificate() {
        List<Piece> all = new ArrayList<>(asked);
        all.addAll(booked);
        return all.stream()
                .map(Piece::certificate)
                .filter(kind -> !kind.isEmpty())
                .findFirst()
                .orElse("");
    }

    private static Piece onNewReelsToo(Piece piece, Map<String, NewRope> bought) {
        List<Piece.RopeChoice> choices = new ArrayList<>(piece.choices());
        for (Piece.RopeChoice choice : piece.choices()) {
            NewRope rope = bought.get(choice.rope());
            if (rope != null) {
                choices.addAll(rope.choices(piece));
            }
        }
        return piece.onAnyOf(choices);
    }
}
