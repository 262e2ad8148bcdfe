package bitterend.report;

import bitterend.finding.ByCause;
import bitterend.finding.Finding;
import bitterend.measure.LengthText;
import bitterend.report.page.Writing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What must be said with every list of lengths: rope under load kills, and a computed length is an estimate. */
public final class Cautions {
    /** Sources in docs/bibliography.md: 29 CFR 1926.251(d), NAVEDTRA 14081; the last is common practice. */
    public static final List<String> ALWAYS = List.of(
            "A computed length is an estimate until the first article has been spliced and measured.",
            "Splice as the rope maker's current instructions say; where they differ from this page, they are right.",
            "A knot does not replace a splice in a sling.",
            "Keep out of the line of a loaded rope; synthetic rope gives no warning before it parts.",
            "Lifting and life safety need a competent person and the local code. Nothing here certifies strength.");

    /** Where there is one line for all of them: on a screen whose paper has them whole. */
    static final String IN_ONE_LINE = "Lengths only, never strength: follow the rope maker and your local code.";

    private static final int MOST_PLACES = 4;

    private Cautions() {}

    static void write(Writing page, List<Finding> notes) {
        writeSentences(page, sentences(notes));
    }

    /** For the bench: the rows and columns of the shop's files are nothing to the splicer. */
    static void writeForTheBench(Writing page, List<Finding> notes) {
        writeSentences(page, forTheBench(notes));
    }

    private static void writeSentences(Writing page, List<String> sentences) {
        if (!sentences.isEmpty()) {
            page.heading("Before you cut");
            sentences.forEach(page::caution);
        }
        page.standing(ALWAYS, IN_ONE_LINE);
    }

    /** Order lines that are not in a plan, each with why; of many with one cause the first, and the places of the others. */
    public static List<String> leftOut(List<Finding> notes) {
        List<String> sentences = new ArrayList<>();
        ByCause told = ByCause.of(notes.stream().filter(Finding::leavesOut).toList());
        for (ByCause.Alike alike : told.alike()) {
            alike.told().forEach(finding -> sentences.add(sentence(finding)));
            if (alike.more() > 0) {
                sentences.add("And " + FindingsPage.more(alike));
            }
        }
        if (told.others() > 0) {
            sentences.add("And " + told.others() + " more of other kinds.");
        }
        return sentences;
    }

    private static String sentence(Finding leftOut) {
        String words = leftOut.toString();
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + (words.endsWith("?") ? "" : ".");
    }

    /** What was found, what to do about it, and where it stands; alike ones together. */
    public static List<String> sentences(List<Finding> notes) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (Finding note : notes) {
            String where = note.place().isEmpty() ? note.file() : note.file() + " " + note.place();
            alike.computeIfAbsent(Finding.advice(note.found(), note.expected()), key -> new ArrayList<>())
                    .add(where + (note.field().isEmpty() ? "" : ", " + note.field()));
        }
        List<String> sentences = new ArrayList<>();
        alike.forEach((words, places) -> sentences.add(words + " (" + places(places) + ")"));
        return sentences;
    }

    /** What was found of order lines and what to do about it, with the lines that it is said of; alike ones together. */
    public static List<String> ofLines(Map<String, List<Finding>> notes) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        notes.forEach((line, findings) -> findings.stream()
                .map(note -> Finding.advice(named(note), note.expected()))
                .distinct()
                .forEach(words ->
                        alike.computeIfAbsent(words, key -> new ArrayList<>()).add(line)));
        List<String> sentences = new ArrayList<>();
        alike.forEach((words, lines) -> sentences.add(words + " (" + String.join(", ", lines) + ")"));
        return sentences;
    }

    /** What was warned of, as sentences; what is said of both ends is said once. */
    public static List<String> forTheBench(List<Finding> notes) {
        return notes.stream()
                .map(note -> LengthsPage.sentence(Finding.advice(named(note), note.expected())))
                .distinct()
                .toList();
    }

    /** A bare length is told with what it is a figure of. */
    private static String named(Finding note) {
        String found = note.found();
        return LengthText.parse(found.replaceFirst(" \\(.*\\)$", "")).value().isPresent()
                ? note.field() + " of " + found
                : found;
    }

    private static String places(List<String> places) {
        int more = places.size() - MOST_PLACES;
        String named = String.join("; ", places.subList(0, Math.min(places.size(), MOST_PLACES)));
        return more > 0 ? named + "; and " + more + " more" : named;
    }
}
