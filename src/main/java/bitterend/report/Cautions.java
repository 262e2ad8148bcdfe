package bitterend.report;

import bitterend.finding.Finding;
import java.util.List;

/** What must be said with every list of lengths: rope under load kills, and a computed length is an estimate. */
public final class Cautions {
    /** Sources in docs/bibliography.md: 29 CFR 1926.251(d), NAVEDTRA 14081; the last is common practice. */
    public static final List<String> ALWAYS = List.of(
            "A computed length is an estimate until the first article has been spliced and measured.",
            "Splice as the rope maker's current instructions say; where they differ from this page, they are right.",
            "A knot does not replace a splice in a sling.",
            "Keep out of the line of a loaded rope; synthetic rope gives no warning before it parts.",
            "Lifting and life safety need a competent person and the local code. Nothing here certifies strength.");

    private Cautions() {}

    static void write(Page page, List<Finding> notes) {
        if (!notes.isEmpty()) {
            page.heading("Before you cut");
            notes.forEach(note -> page.caution(note(note)));
        }
        page.heading("Cautions");
        ALWAYS.forEach(words -> page.paragraph(0, words));
    }

    /** What was found, what to do about it, and where it stands. */
    public static String note(Finding note) {
        String where = note.place().isEmpty() ? note.file() : note.file() + " " + note.place();
        String found = note.found().isEmpty() ? "" : note.found() + ": ";
        return found + note.expected() + " (" + where + (note.field().isEmpty() ? "" : ", " + note.field()) + ")";
    }
}
