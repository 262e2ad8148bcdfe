package bitterend.report;

import bitterend.measure.Sentence;
import java.util.List;

/**
 * What is printed large on every page of a plan, so that nobody cuts by another one.
 *
 * @param number the plan's number; 0 for one that has none
 * @param preview whether its sheets are not issued
 * @param changes what changed since the plan was made, each a sentence
 * @param folder the shop folder as a command names it; empty where none is known
 */
public record PlanMark(int number, boolean preview, List<Change> changes, String folder) {
    /** No number, nothing to say. */
    public static final PlanMark NONE = new PlanMark(0, false, List.of());

    /** Of a plan in no folder. */
    public PlanMark(int number, boolean preview, List<Change> changes) {
        this(number, preview, changes, "");
    }

    public PlanMark {
        changes = List.copyOf(changes);
    }

    /**
     * Something that changed since.
     *
     * @param reel the reel concerned; empty when it is no reel alone
     * @param sentence what changed
     */
    public record Change(String reel, Sentence sentence) {}

    /** A plan of which nothing else is to be said. */
    public static PlanMark of(int number) {
        return new PlanMark(number, false, List.of());
    }

    /** {@code plan 3}; {@code plan 3, not issued}; empty where there is nothing to mark. */
    public String words() {
        String name = number == 0 ? "" : "plan " + number;
        return preview ? (name.isEmpty() ? "" : name + ", ") + "not issued" : name;
    }

    /** What changed of one reel. */
    public List<Sentence> changesOf(String reel) {
        return changes.stream()
                .filter(change -> change.reel().equals(reel))
                .map(Change::sentence)
                .toList();
    }
}
