package bitterend.work.plans;

import bitterend.day.RackToday;
import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.ReelDraw;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The other pieces of a matched set, and where each is cut: what is cut by the ledger, what is not by a plan. */
public final class AskMates {
    private final Map<String, List<Mate>> sets = new HashMap<>();
    private final RackToday rack;
    private final Map<String, Reel> reels = new HashMap<>();
    private final Map<String, String> planned = new HashMap<>();

    /**
     * Of every set that is ordered.
     *
     * @param shop the shop
     * @param plan what is cut by
     * @param posted pieces that are booked off reels by it, whatever became of them since
     */
    public AskMates(ShopNow shop, Verdict.Passed plan, Set<String> posted) {
        rack = shop.rack().orElse(RackToday.NONE);
        plan.problem().reels().forEach(reel -> reels.put(reel.id(), reel));
        reels.putAll(rack.known());
        for (ReelDraw draw : plan.plan().draws()) {
            draw.cuts().stream()
                    .filter(cut -> !posted.contains(cut.piece()))
                    .forEach(cut -> planned.put(cut.piece(), draw.reel()));
        }
        shop.shop().pieces().stream().filter(Piece::isMatched).forEach(piece -> sets.computeIfAbsent(
                        piece.matching().set(), set -> new ArrayList<>())
                .add(mate(piece.id())));
        sets.values().forEach(mates -> mates.sort(Comparator.comparing(Mate::piece, NaturalOrder.IDS)));
    }

    /** What becomes of a piece. */
    public enum State {
        CUT,
        /** By the plan. */
        TO_BE_CUT,
        /** Neither cut nor planned: there was no rope for it, or it was spoiled. */
        OPEN
    }

    /**
     * A piece of a set.
     *
     * @param piece its id
     * @param state whether it is cut
     * @param reel the reel that it came off, or is to be cut from; empty for neither
     * @param lot the lot of that reel as it is known today; empty where it is not known
     */
    public record Mate(String piece, State state, String reel, String lot) {}

    private Mate mate(String piece) {
        Movement cut = rack.cut().get(piece);
        String reel =
                cut == null ? planned.getOrDefault(piece, "") : cut.entry().reel();
        State state = cut == null ? (reel.isEmpty() ? State.OPEN : State.TO_BE_CUT) : State.CUT;
        Reel known = reels.get(reel);
        return new Mate(piece, state, reel, known == null ? "" : known.lot());
    }

    /** The other pieces of its set, by their ids; none for a piece that stands alone. */
    public List<Mate> of(Piece piece) {
        return sets.getOrDefault(piece.matching().set(), List.of()).stream()
                .filter(mate -> !mate.piece().equals(piece.id()))
                .toList();
    }
}
