package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.measure.Cost;
import bitterend.packing.DrawPrice;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceKind;
import bitterend.packing.PlanPrice;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The runs that may take a piece by the rules of its own; pieces that are alike are asked about once. */
final class Homes {
    private final PackingProblem problem;
    private final Eligibility rules;
    private final List<Slot> slots = new ArrayList<>();
    private final Map<PieceKind, Open> known = new HashMap<>();
    private final Map<String, Open> ofPiece = new HashMap<>();

    /** The runs that are open to pieces of a kind; kinds are counted from zero. */
    record Open(int kind, List<Slot> slots, BitSet numbers) {}

    /** All that decides what a piece costs on a reel of one run that nothing is cut from. */
    private record Twin(String rope, String lot, long mm, Cost fixed, boolean isCustomersOwn, String several) {}

    Homes(PackingProblem problem, PlanPrice prices) {
        this.problem = problem;
        rules = new Eligibility(problem);
        List<Reel> reels = problem.reels();
        for (int r = 0; r < reels.size(); r++) {
            DrawPrice draw = prices.draw(reels.get(r).id());
            for (int run = 0; run < draw.runs().size(); run++) {
                slots.add(new Slot(reels.get(r), r, run, draw));
            }
        }
        slots.sort(Slot.BY_ID);
        Map<Twin, Integer> twins = new HashMap<>();
        Map<String, Integer> ropes = new HashMap<>();
        Map<String, Integer> lots = new HashMap<>();
        for (int i = 0; i < slots.size(); i++) {
            Slot slot = slots.get(i);
            slot.number(i, twins.computeIfAbsent(twin(slot), twin -> twins.size()));
            slot.numberLot(
                    ropes.computeIfAbsent(slot.reel().rope(), rope -> ropes.size()),
                    lots.computeIfAbsent(slot.holderOf(Bond.ONE_LOT), lot -> lots.size()));
        }
    }

    /** Slots of a reel with several runs are like no others. */
    private Twin twin(Slot slot) {
        Reel reel = slot.reel();
        return new Twin(
                reel.rope(),
                slot.lot(),
                slot.length().mm(),
                DrawPrice.fixedCost(problem, reel),
                reel.custody().isCustomersOwn(),
                slot.draw().runs().size() > 1 ? slot.id().toString() : "");
    }

    /** Every run of every reel. */
    List<Slot> all() {
        return slots;
    }

    boolean isPinned(Piece piece) {
        return rules.kindOf(piece).isPinned();
    }

    /** Whether a run would take the piece if nothing else were cut there. */
    boolean isHome(Piece piece, Slot slot) {
        return open(piece).numbers().get(slot.number());
    }

    /** The runs that would take the piece if nothing else were cut there, by reel and run. */
    List<Slot> of(Piece piece) {
        return open(piece).slots();
    }

    /** The runs that would take the piece, the same for all pieces that are alike. */
    Open open(Piece piece) {
        Open open = ofPiece.get(piece.id());
        if (open == null) {
            PieceKind kind = rules.kindOf(piece);
            open = known.get(kind);
            if (open == null) {
                open = ask(piece);
                known.put(kind, open);
            }
            ofPiece.put(piece.id(), open);
        }
        return open;
    }

    private Open ask(Piece piece) {
        List<Slot> open = slots.stream()
                .filter(slot -> rules.allows(piece, slot.reel()))
                .filter(slot -> !slot.cut(piece).isLongerThan(slot.length()))
                .toList();
        BitSet numbers = new BitSet();
        open.forEach(slot -> numbers.set(slot.number()));
        return new Open(known.size(), open, numbers);
    }
}
