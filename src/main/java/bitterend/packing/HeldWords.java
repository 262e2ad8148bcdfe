package bitterend.packing;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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

    /** What is still held of a reel once a plan has cut it: not what it cuts for those it is held for. */
    public static List<Sentence> behind(PackingProblem problem, ReelDraw draw) {
        Reel reel = problem.reel(draw.reel());
        Length loss = problem.ropeOn(reel).cutting().loss();
        Map<String, Length> cut = new HashMap<>();
        problem.pins().stream()
                .filter(pin -> pin.isOfHeldRope() && pin.reel().equals(reel.id()))
                .forEach(pin -> draw.cuts().stream()
                        .filter(each -> each.piece().equals(pin.piece()))
                        .forEach(each -> cut.merge(pin.heldFor(), each.length().plus(loss), Length::plus)));
        List<Sentence> left = new ArrayList<>();
        for (Held held : reel.custody().heldOn(problem.day())) {
            Length taken = Length.min(held.length(), cut.getOrDefault(held.whom(), Length.ZERO));
            cut.computeIfPresent(held.whom(), (whom, more) -> more.minus(taken));
            if (held.length().isLongerThan(taken)) {
                left.add(of(new Held(held.length().minus(taken), held.kind(), held.name(), held.until(), held.why())));
            }
        }
        return left;
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
