package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.CutPlan;
import bitterend.packing.ReelDraw;
import bitterend.packing.Rule;
import bitterend.packing.RunDraw;
import bitterend.packing.Unplanned;
import bitterend.stock.Reel;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Checks the reasons why pieces are unplanned, as far as one reason can be told false by looking at one piece: no reel
 * breaks the rule that is named, a run that is said to be too short takes the piece, or there is room for it.
 */
final class ReasonCheck {
    private final Facts facts;
    private final Faults faults;
    private final CutPlan plan;
    private final Map<String, Length> taken = new HashMap<>();

    ReasonCheck(Facts facts, Faults faults, CutPlan plan) {
        this.facts = facts;
        this.faults = faults;
        this.plan = plan;
    }

    void check() {
        if (plan.unplanned().isEmpty()) {
            return;
        }
        bookTaken();
        for (Unplanned unplanned : plan.unplanned()) {
            facts.findPiece(unplanned.piece())
                    .flatMap(piece -> falsehood(piece, unplanned.reason().rule()))
                    .ifPresent(sentence -> faults.add(Check.REASON, unplanned.piece(), sentence));
        }
    }

    /** Rope taken from each run, with a cut loss behind every piece. */
    private void bookTaken() {
        for (ReelDraw draw : plan.draws()) {
            Optional<Reel> reel = facts.findReel(draw.reel());
            for (RunDraw run : draw.runs()) {
                run.cuts().forEach(cut -> facts.findPiece(cut.piece())
                        .flatMap(piece -> reel.flatMap(known -> need(piece, known)))
                        .ifPresent(need -> taken.merge(key(draw.reel(), run.run()), need, Length::plus)));
            }
        }
    }

    private Optional<Length> need(Piece piece, Reel reel) {
        return piece.lengthOn(reel.rope())
                .map(cut -> cut.plus(facts.problem().ropeOn(reel).cutting().loss()));
    }

    private Optional<String> falsehood(Piece piece, Rule rule) {
        return switch (rule) {
            case SAME_ROPE -> when(
                    facts.problem().reels().stream()
                            .anyMatch(reel -> piece.lengthOn(reel.rope()).isPresent()),
                    "there is a reel of a rope it may be cut from");
            case CERTIFICATE, USE_BY, OWN_ROPE, RESERVED, ON_HOLD, BEGUN_SET, PINNED, ISSUED, COMES_IN_TIME -> when(
                    isTaken(piece, false) || !isBroken(piece, Check.valueOf(rule.name())),
                    "it is not " + rule + " that keeps it off every reel");
            case FITS_THE_RUN, CLEAR_OF_FLAWS -> when(
                    isTaken(piece, false), "a run that it may be cut from is long enough");
            case PLANNED -> when(
                    piece.matching().bond() == Piece.Bond.NONE && isTaken(piece, true),
                    "a run that it may be cut from still has room for it");
            case ONE_LOT, ONE_REEL, SET_WHOLE -> when(
                    piece.matching().bond() == Piece.Bond.NONE, "it belongs to no matched set");
            case STOCK_VALUE, OPENING, CHANGING, HANDLING, SPLIT_ORDER, MOVED_PIECE -> Optional.of(
                    "no piece is left undone to save money");
        };
    }

    private static Optional<String> when(boolean isFalse, String sentence) {
        return isFalse ? Optional.of(sentence) : Optional.empty();
    }

    private boolean isBroken(Piece piece, Check check) {
        return facts.problem().reels().stream()
                .map(reel -> facts.broken(piece, reel))
                .anyMatch(broken -> broken.containsKey(check) && !broken.containsKey(Check.SAME_ROPE));
    }

    /** Whether a run that breaks no rule takes the piece: when empty, or beside what the plan cuts from it. */
    private boolean isTaken(Piece piece, boolean besideThePlan) {
        return facts.problem().reels().stream()
                .filter(reel -> facts.broken(piece, reel).isEmpty())
                .anyMatch(reel -> isTaken(piece, reel, besideThePlan));
    }

    private boolean isTaken(Piece piece, Reel reel, boolean besideThePlan) {
        Length cut = piece.lengthOn(reel.rope()).orElseThrow();
        List<SoundRope.Stretch> runs = facts.runs(reel);
        for (int i = 0; i < runs.size(); i++) {
            Length before = besideThePlan ? taken.getOrDefault(key(reel.id(), i + 1), Length.ZERO) : Length.ZERO;
            if (!before.plus(cut).isLongerThan(runs.get(i).length())) {
                return true;
            }
        }
        return false;
    }

    private static String key(String reel, int run) {
        return reel + "\n" + run;
    }
}
