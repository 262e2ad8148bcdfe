package bitterend.quoting.sharing;

import bitterend.catalogue.Rope;
import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.Prices;
import bitterend.packing.RunId;
import bitterend.packing.Words;
import bitterend.stock.Reel;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * One rope as it is bought: new reels of a few sizes, as many as are wanted, with whatever papers are asked for. For a
 * packer each size is a rope of its own, because a whole reel is worth what is paid for it.
 *
 * @param rope the rope
 * @param rack what a length of it on the rack is worth
 * @param prices of which opening and changing are paid for every reel that is cut
 * @param sizes the reels that are bought, the shortest first; never empty
 */
public record NewRope(Rope rope, StockValue rack, Prices prices, List<NewReel> sizes) {
    /** So many pieces are cut at a time at most; there is a new reel of each size that holds it for each of them. */
    public static final int MOST_PIECES = 5_000;

    public NewRope {
        sizes = sizes.stream()
                .distinct()
                .sorted(Comparator.comparing(NewReel::length).thenComparing(NewReel::paid))
                .toList();
        if (sizes.isEmpty()) {
            throw new IllegalArgumentException("no reel size of " + rope.id());
        }
    }

    /** The same rope on other reels. */
    public NewRope on(List<NewReel> others) {
        return new NewRope(rope, rack, prices, others);
    }

    /** The longest piece that a new reel gives. */
    public Length longest() {
        return sizes.get(sizes.size() - 1).length();
    }

    private long loss() {
        return rope.cutting().loss().mm();
    }

    /** Whether a new reel is long enough for a piece. */
    public boolean holds(Piece piece) {
        return piece.lengthOn(rope.id())
                .filter(cut -> !cut.isLongerThan(longest()))
                .isPresent();
    }

    /** What a piece takes up on a run: its length and one cut loss, in millimetres. */
    long taken(Length cut) {
        return cut.mm() + loss();
    }

    /** What may be taken off the longest reel, the cut loss behind the last piece included. */
    long room() {
        return longest().mm() + loss();
    }

    /**
     * The least cost of taking a load off one new reel that holds it, in 1/1000 minor unit.
     *
     * @param taken pieces and a cut loss for each, in millimetres; at most {@link #room}
     */
    long cost(long taken) {
        return cost(sizeFor(taken), taken);
    }

    /** The reel that a load is taken off at the least cost; the shortest of several. */
    NewReel sizeFor(long taken) {
        return sizes.stream()
                .filter(size -> taken <= size.length().mm() + loss())
                .min(Comparator.comparingLong(size -> cost(size, taken)))
                .orElseThrow(() -> new IllegalArgumentException("no reel of " + sizes + " holds " + taken + " mm"));
    }

    private long cost(NewReel size, long taken) {
        Length left = new Length(Math.max(0, size.length().mm() - taken));
        Cost gone = size.paid().minus(new NewReelValue(size, rack).of(left));
        return gone.plus(prices.opening()).plus(prices.changing()).millis();
    }

    /** The question of cutting these pieces off new reels and nothing else. */
    public PackingProblem problem(List<Piece> pieces, LocalDate day) {
        return new PackingProblem(
                day,
                ropes(),
                pieces.stream().map(this::plain).toList(),
                reels(pieces),
                values(),
                prices,
                List.of(),
                Map.of());
    }

    /** The rope under a name for each size. */
    public Map<String, Rope> ropes() {
        Map<String, Rope> ropes = new TreeMap<>();
        for (NewReel size : sizes) {
            ropes.put(name(size), rope.named(name(size)));
        }
        return ropes;
    }

    /** What the reels of each size are worth, whole and cut. */
    public Map<String, StockValue> values() {
        Map<String, StockValue> values = new TreeMap<>();
        for (NewReel size : sizes) {
            values.put(name(size), new NewReelValue(size, rack));
        }
        return values;
    }

    /** Enough new reels of every size for each of these pieces to have one of its own. */
    public List<Reel> reels(List<Piece> pieces) {
        return reels(pieces, "");
    }

    /** The same, all with a kind of certificate. */
    public List<Reel> reels(List<Piece> pieces, String certificate) {
        List<Reel> reels = new ArrayList<>();
        for (NewReel size : sizes) {
            long wanted = pieces.stream()
                    .filter(piece -> piece.lengthOn(rope.id())
                            .filter(cut -> !cut.isLongerThan(size.length()))
                            .isPresent())
                    .count();
            for (int i = 1; i <= wanted; i++) {
                reels.add(reel(size, i, certificate));
            }
        }
        return reels;
    }

    /** How many new reels of each size a packing cuts; sizes of which it cuts none are left out. */
    public Map<NewReel, Integer> taken(PackingProblem problem, Packing packing) {
        Map<String, NewReel> byName = new TreeMap<>();
        sizes.forEach(size -> byName.put(name(size), size));
        Map<NewReel, Integer> taken = new HashMap<>();
        packing.places().values().stream()
                .map(RunId::reel)
                .distinct()
                .map(reel -> byName.get(problem.reel(reel).rope()))
                .filter(Objects::nonNull)
                .forEach(size -> taken.merge(size, 1, Integer::sum));
        return taken;
    }

    /** The choice of a new reel of any size for a piece of this rope. */
    public List<Piece.RopeChoice> choices(Piece piece) {
        Length cut = piece.lengthOn(rope.id())
                .orElseThrow(() -> new IllegalArgumentException(piece.id() + " is not cut from " + rope.id()));
        return sizes.stream().map(size -> new Piece.RopeChoice(name(size), cut)).toList();
    }

    private Reel reel(NewReel size, int number, String certificate) {
        return new Reel(
                name(size) + " " + number,
                name(size),
                "new",
                new Reel.Contents(size.length(), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                new Reel.Papers(certificate, "", LocalDate.MAX, LocalDate.MIN),
                Reel.Custody.FREE,
                true,
                Reel.Where.UNKNOWN);
    }

    /** Unlike the name of any rope of the shop, whose names begin with a letter or digit. */
    String name(NewReel size) {
        return "*new " + rope.id() + " " + Words.of(size.length()) + " at "
                + size.paid().millis();
    }

    /** The piece on new rope, which comes of one lot and with the papers it asks for. */
    private Piece plain(Piece piece) {
        boolean oneReel = piece.matching().bond() == Piece.Bond.ONE_REEL;
        return new Piece(
                piece.pieceId(),
                piece.source(),
                choices(piece),
                oneReel ? piece.matching() : Piece.Matching.NONE,
                "",
                false,
                piece.finished(),
                piece.ends());
    }
}
