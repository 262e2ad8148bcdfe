package bitterend.shops;

import bitterend.catalogue.Rope;
import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.demand.Piece.Matching;
import bitterend.demand.Piece.RopeChoice;
import bitterend.measure.Length;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The pieces of a random shop: alike, nearly alike, filling a run to the millimetre, and too long for every run. */
final class RandomPieces {
    private static final LocalDate DAY = RandomShop.DAY;
    private static final List<LocalDate> DUE = List.of(
            LocalDate.MAX,
            LocalDate.MAX,
            DAY.minusDays(1),
            DAY,
            DAY.plusDays(1),
            DAY.plusDays(7),
            DAY.plusDays(8),
            DAY.plusDays(30));

    private final Dice dice;
    private final ShopSize size;
    private final int substitutes;
    private final int matched;
    private final int certified;
    private final int own;
    private final int longest;

    RandomPieces(Dice dice, ShopSize size) {
        this.dice = dice;
        this.size = size;
        substitutes = dice.mood();
        matched = dice.mood();
        certified = dice.mood();
        own = dice.mood();
        longest = dice.pick(List.of(2, 4, 10));
    }

    List<Piece> pieces(List<Rope> ropes, List<Reel> reels) {
        List<Piece> pieces = new ArrayList<>();
        int count = dice.between(1, size.pieces());
        for (int line = 1; pieces.size() < count; line++) {
            pieces.addAll(line(line, Math.min(dice.between(1, 4), count - pieces.size()), ropes, reels));
        }
        return pieces;
    }

    /** Pieces of one order line: alike but for their number, a matched set now and then. */
    private List<Piece> line(int line, int quantity, List<Rope> ropes, List<Reel> reels) {
        String order = dice.pick(RandomReels.ORDERS);
        Piece.Source source = new Piece.Source(order, "" + line, dice.pick(DUE), dice.between(1, 9), line % 3);
        Matching matching = matching(order + "/" + line, quantity);
        String certificate = dice.chance(certified) ? dice.pick(RandomReels.CERTIFICATES) : "";
        boolean ownRope = dice.chance(own / 4);
        List<RopeChoice> choices = choices(ropes, reels);
        List<Piece> pieces = new ArrayList<>();
        for (int n = 1; n <= quantity; n++) {
            String id = order + "/" + line + "." + n;
            List<RopeChoice> lengths = matching.bond() == Bond.NONE || dice.chance(70) ? choices : longer(choices);
            pieces.add(new Piece(
                    id,
                    source,
                    lengths,
                    matching,
                    certificate,
                    ownRope,
                    choices.get(0).cut(),
                    "plain, plain"));
        }
        boolean begun = matching.bond() != Bond.NONE && !reels.isEmpty() && (order.length() + line) % 3 == 0;
        return begun ? begun(pieces, reels.get(line % reels.size())) : pieces;
    }

    /** One more piece of the set is cut already, off a reel that is there or off one that is gone. */
    private static List<Piece> begun(List<Piece> pieces, Reel reel) {
        String id = pieces.get(0).order() + "/cut";
        List<String> reels = List.of(pieces.size() % 2 == 0 ? reel.id() : "gone");
        List<CutMate> mates = List.of(new CutMate(id, reel.rope(), reel.lot(), reels));
        return pieces.stream().map(piece -> piece.begunWith(mates, "")).toList();
    }

    private Matching matching(String name, int quantity) {
        if (quantity < 2 || !dice.chance(matched)) {
            return Matching.NONE;
        }
        return new Matching(name, dice.chance(50) ? Bond.ONE_LOT : Bond.ONE_REEL);
    }

    private List<RopeChoice> choices(List<Rope> ropes, List<Reel> reels) {
        List<Rope> left = new ArrayList<>(ropes);
        List<RopeChoice> choices = new ArrayList<>();
        do {
            Rope rope = dice.pick(left);
            left.remove(rope);
            choices.add(new RopeChoice(rope.id(), cut(rope, reels)));
        } while (!left.isEmpty() && dice.chance(substitutes));
        return choices;
    }

    private Length cut(Rope rope, List<Reel> reels) {
        List<Length> runs = reels.stream()
                .filter(reel -> reel.rope().equals(rope.id()))
                .flatMap(reel -> reel.runs().stream())
                .map(run -> run.length())
                .toList();
        if (!runs.isEmpty() && dice.chance(15)) {
            Length share =
                    filling(dice.pick(runs), dice.between(1, 3), rope.cutting().loss());
            return share.isPositive() ? share : new Length(1);
        }
        return dice.length(size.longestReelMm() / 60, size.longestReelMm() / longest);
    }

    /** The length of which {@code count} pieces fill a run to the millimetre, or nearly. */
    private static Length filling(Length run, int count, Length loss) {
        return new Length((run.mm() - (count - 1) * loss.mm()) / count);
    }

    private List<RopeChoice> longer(List<RopeChoice> choices) {
        Length extra = dice.length(1, 400);
        return choices.stream()
                .map(choice -> new RopeChoice(choice.rope(), choice.cut().plus(extra)))
                .toList();
    }
}
