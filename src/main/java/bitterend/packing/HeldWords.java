package bitterend.packing;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;

/** Rope that is held, in sentences. */
public final class HeldWords {
    private HeldWords() {}

    /** Such as {@code 50.000 m held for order G-2200 until 2026-03-05}. */
    public static Sentence of(Held held) {
        return Sentence.NONE
                .and(held.length())
                .and(" held for " + held.whom() + " until " + held.until()
                        + (held.why().isEmpty() ? "" : " (" + held.why() + ")"));
    }

    /** All that is held of a reel on a day; empty for nothing. */
    public static Sentence of(Reel reel, LocalDate day) {
        return Sentence.joined(
                ", ", reel.custody().heldOn(day).stream().map(HeldWords::of).toList());
    }

    /** What is held of these reels that would take the piece if it were free, a sentence for each. */
    public static List<Sentence> inTheWayOf(Piece piece, Collection<Reel> reels, LocalDate day) {
        return reels.stream()
                .filter(reel -> reel.contents().held().isPositive() && takes(piece, reel.holding(Length.ZERO)))
                .map(reel -> Sentence.of("of reel " + reel.id() + " ").and(of(reel, day)))
                .toList();
    }

    private static boolean takes(Piece piece, Reel reel) {
        return piece.lengthOn(reel.rope())
                .filter(cut -> reel.runs().stream().anyMatch(run -> !cut.isLongerThan(run.length())))
                .isPresent();
    }
}
