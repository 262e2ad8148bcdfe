package bitterend.quoting.sharing;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What every group of parties would pay on new reels of one rope: by the exact table where it can be, else by packing. */
final class GroupCosts {
    private final NewRope rope;
    private final List<Party> parties;
    private final Fallback fallback;
    private final List<Piece> all;
    private final Optional<CutTable> table;
    private final Map<Integer, CostRange> known = new HashMap<>();
    private CostRange whole = CostRange.UNKNOWN;

    /**
     * How a group is packed where the table does not reach.
     *
     * @param packer the packer
     * @param effort for one group
     * @param day day of the packing
     */
    record Fallback(Packer packer, Effort effort, LocalDate day) {}

    GroupCosts(NewRope rope, List<Party> parties, Fallback fallback) {
        this.rope = rope;
        this.parties = parties;
        this.fallback = fallback;
        all = parties.stream().flatMap(party -> party.pieces().stream()).toList();
        boolean looseOnly = all.stream().noneMatch(piece -> piece.matching().bond() == Piece.Bond.ONE_REEL);
        table = looseOnly ? CutTable.of(rope, demand(all)) : Optional.empty();
    }

    /** Sets what is known of all parties together. */
    void putWhole(CostRange cost) {
        whole = cost;
    }

    /** What all parties together pay. */
    CostRange whole() {
        return whole;
    }

    /** What a group that is not all of them would pay. */
    CostRange of(Group group) {
        return known.computeIfAbsent(group.members(), members -> computed(group));
    }

    /** The exact least cost of all parties together, if the table reaches it. */
    Optional<Long> exact() {
        return table.map(exact -> exact.cost(demand(all)));
    }

    /** The whole job as the table cuts it, if the table reaches it and there are reels enough. */
    Optional<Packing> exactPacking(PackingProblem problem) {
        return table.flatMap(exact -> new TableCut(rope, problem).packing(exact.loads()));
    }

    private CostRange computed(Group group) {
        List<Piece> pieces = pieces(group);
        if (table.isPresent()) {
            long exact = table.get().cost(demand(pieces));
            return new CostRange(exact, exact);
        }
        Packer.Result result = fallback.packer().pack(rope.problem(pieces, fallback.day()), fallback.effort());
        return CostRange.of(result, pieces.size());
    }

    private List<Piece> pieces(Group group) {
        List<Piece> pieces = new ArrayList<>();
        group.places().forEach(place -> pieces.addAll(parties.get(place).pieces()));
        return pieces;
    }

    private static SortedMap<Length, Integer> demand(List<Piece> pieces) {
        SortedMap<Length, Integer> demand = new TreeMap<>();
        pieces.forEach(piece -> demand.merge(piece.cut(), 1, Integer::sum));
        return demand;
    }
}
