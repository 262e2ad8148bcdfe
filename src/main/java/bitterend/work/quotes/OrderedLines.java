package bitterend.work.quotes;

import bitterend.exchange.quotes.KeptQuote;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * The lines of an order that comes of a quote: due as is stated, else as the request says, else on the day by which the quote
 * promised it.
 *
 * @param kept the quote
 * @param day the day it is accepted
 * @param stated cells of every line by column; they come before those of the request
 */
record OrderedLines(KeptQuote kept, LocalDate day, Map<String, String> stated) {
    private static final String DUE = "due";
    private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

    /** What is filled, by column, of the lines that are wanted themselves; what would be offered instead is not ordered. */
    List<Map<String, String>> rows() {
        List<Map<String, String>> rows = new ArrayList<>();
        for (Map<String, String> row : kept.rows()) {
            if (row.containsKey("instead of")) {
                continue;
            }
            Map<String, String> more = new TreeMap<>(row);
            more.putAll(stated);
            promised().filter(any -> isNotDue(row)).ifPresent(made -> more.put(DUE, made.toString()));
            rows.add(more);
        }
        return rows;
    }

    /** The day by which it is made, as the quote says; nothing where that has passed. */
    private Optional<LocalDate> promised() {
        return kept.made().filter(made -> !made.isBefore(day));
    }

    private boolean isNotDue(Map<String, String> row) {
        return row.getOrDefault(DUE, "").isBlank()
                && stated.getOrDefault(DUE, "").isBlank();
    }

    /** Why the stated day cannot be kept: it has passed. */
    Optional<String> tooEarly() {
        String due = stated.getOrDefault(DUE, "");
        return isBefore(due, day)
                ? Optional.of("it is due on " + due + ", before the day it is accepted, " + day)
                : Optional.empty();
    }

    /** What follows from the days, in sentences. */
    List<String> told() {
        List<String> told = new ArrayList<>();
        String due = stated.getOrDefault(DUE, "");
        promised()
                .filter(made -> isBefore(due, made))
                .ifPresent(made -> told.add("it is due on " + due + ", though the quote says: made by " + made));
        for (Map<String, String> row : kept.rows()) {
            if (due.isBlank() && isBefore(row.getOrDefault(DUE, ""), day)) {
                told.add("line " + row.getOrDefault("line", "") + " was due on " + row.get(DUE)
                        + ", before the day it is accepted");
            }
        }
        promised()
                .filter(made -> kept.rows().stream().anyMatch(this::isNotDue))
                .ifPresent(made -> told.add("lines without a day are due on " + made + ", as the quote says"));
        return told;
    }

    private static boolean isBefore(String due, LocalDate day) {
        return DATE.matcher(due).matches() && due.compareTo(day.toString()) < 0;
    }
}
