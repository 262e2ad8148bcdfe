package bitterend.report;

import bitterend.measure.Sentence;
import java.util.List;
import java.util.Set;

/**
 * What is printed large on every page of a plan, so that nobody cuts by another one.
 *
 * @param number the plan's number; 0 for one that has none
 * @param preview whether sheets on these pages are not issued
 * @param changes what changed since the plan was made, each a sentence
 * @param folder the shop folder as a command names it; empty where none is known
 * @param out the reels whose sheets are issued
 */
public record PlanMark(int number, boolean preview, List<Change> changes, String folder, Set<String> out) {
    /** No number, nothing to say. */
    public static final PlanMark NONE = new PlanMark(0, false, List.of());

    /** Of a plan in no folder. */
    public PlanMark(int number, boolean preview, List<Change> changes) {
        this(number, preview, changes, "", Set.of());
    }

    public PlanMark {
        out = Set.copyOf(out);
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

    /** The same knowing what is out. */
    public PlanMark out(Set<String> reels) {
        return new PlanMark(number, preview, changes, folder, reels);
    }

    /** Whether the sheet of a reel is issued. */
    public boolean isOut(String reel) {
        return out.contains(reel);
    }

    /**
     * {@code plan 3}; {@code plan 3, not issued}; {@code plan 3, issued in part} where some of it is out; empty where there
     * is nothing to mark.
     */
    public String words() {
        return marked(out.isEmpty() ? "not issued" : "issued in part");
    }

    /** The same on the sheet of a reel, and on what is stuck on what comes off it. */
    public String words(String reel) {
        return isOut(reel) ? marked("") : marked("not issued");
    }

    private String marked(String how) {
        String name = number == 0 ? "" : "plan " + number;
        return !preview || how.isEmpty() ? name : (name.isEmpty() ? "" : name + ", ") + how;
    }

    /** What changed of one reel. */
    public List<Sentence> changesOf(String reel) {
        return changes.stream()
                .filter(change -> change.reel().equals(reel))
                .map(Change::sentence)
                .toList();
    }
}
