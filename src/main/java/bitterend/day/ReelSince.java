package bitterend.day;

import bitterend.measure.Moments;
import bitterend.measure.Sentence;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Reel;
import bitterend.stock.Standing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What happened to a reel since a plan saw it.
 *
 * @param history every movement of the reel, oldest first
 * @param seen how many of them the plan saw
 * @param plan the name that the ledger knows the plan by
 * @param same what it has in common with other plans
 */
public record ReelSince(List<Movement> history, long seen, String plan, SameSteps same) {
    public ReelSince {
        history = List.copyOf(history);
    }

    /** What others did to it, oldest first; what was booked and taken back since is none. */
    public List<Movement> others() {
        List<Movement> since =
                history.stream().filter(movement -> movement.count() > seen).toList();
        List<Movement> others = new ArrayList<>(since);
        List<Movement> undoneSince = new ArrayList<>(since);
        undoneSince.removeAll(Standing.movements(since));
        Set<Long> numbers = new HashSet<>();
        since.forEach(movement -> numbers.add(movement.number()));
        others.removeIf(movement -> {
            long undoes = movement.entry().origin().undoes();
            boolean pair = undoneSince.contains(movement) && (undoes == 0 || numbers.contains(undoes));
            return pair || same.areOf(plan, movement);
        });
        return others;
    }

    /** The last of them that put the reel on hold, while it is. */
    public Optional<Movement> hold() {
        List<Movement> others = others();
        boolean isHeld = !history.isEmpty() && isHeld(history.get(history.size() - 1));
        return isHeld
                ? others.stream()
                        .filter(movement -> movement.entry().kind() == Kind.ON_HOLD)
                        .reduce((first, last) -> last)
                : Optional.empty();
    }

    private static boolean isHeld(Movement last) {
        return !last.entry().gone() && last.entry().after().custody().isOnHold();
    }

    /** Those of them after which the rope does not lie as it lay. */
    public List<Movement> changes() {
        return others().stream().filter(this::changesTheRope).toList();
    }

    /** Whether a movement among them left the rope another than it was: longer or shorter, turned round, with other flaws, spoken for. */
    public boolean changesTheRope(Movement movement) {
        Movement.Entry entry = movement.entry();
        int place = history.indexOf(movement);
        if (entry.kind().leavesTheRope()) {
            return false;
        }
        if (place < 1 || movement.by().mm() != 0 || entry.gone() || entry.kind() == Kind.REWOUND) {
            return true;
        }
        Reel was = history.get(place - 1).entry().after();
        Reel is = entry.after();
        return !was.custody().held().containsAll(is.custody().held())
                || !is.rope().equals(was.rope())
                || !is.flaws().equals(was.flaws())
                || !is.contents().leadTrim().equals(was.contents().leadTrim())
                || !is.contents().innerWraps().equals(was.contents().innerWraps())
                || is.contents().uncertainty().isLongerThan(was.contents().uncertainty());
    }

    /** The steps of the plan that stand in the ledger. */
    public Set<String> steps() {
        return Standing.movements(history).stream()
                .filter(movement -> same.areOf(plan, movement))
                .map(movement -> same.step(plan, movement))
                .filter(step -> !step.isEmpty())
                .collect(Collectors.toSet());
    }

    /** The pieces of a draw that stand in the ledger as cut by its steps, whatever became of them. */
    public Set<String> posted(ReelDraw draw) {
        Set<String> steps = steps();
        return draw.cuts().stream()
                .map(Cut::piece)
                .filter(piece -> steps.contains(Step.ofPiece(piece)))
                .collect(Collectors.toSet());
    }

    /** Whether every piece of a draw that is meant stands in the ledger. */
    public boolean isPosted(ReelDraw draw, Part part) {
        Set<String> steps = steps();
        List<String> pieces = part.pieces(draw);
        return !pieces.isEmpty() && pieces.stream().allMatch(piece -> steps.contains(Step.ofPiece(piece)));
    }

    /** A movement in a sentence: what, when, by whom, under which event. */
    public static Sentence told(Movement movement) {
        Movement.Entry entry = movement.entry();
        long by = movement.by().mm();
        Sentence told = Sentence.of("reel " + entry.reel() + ": " + entry.kind().word() + " on "
                + Moments.text(movement.at()) + " by " + movement.who() + " (event " + movement.event() + ")");
        Sentence changed =
                by == 0 ? told : told.and(", which changed its length by ").and(movement.by());
        return changed.and(entry.note().isEmpty() ? "" : ": " + entry.note());
    }
}
