package bitterend.quoting;

import bitterend.finding.Finding;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A line of a request that has no price.
 *
 * @param asked what was asked for, as written
 * @param why for the customer, in a sentence without a full stop
 * @param findings the same for the shop, each with its place; at least one
 */
public record Lacking(Asked asked, String why, List<Finding> findings) {
    public Lacking {
        findings = List.copyOf(findings);
        if (findings.isEmpty()) {
            throw new IllegalArgumentException("nothing is wrong with " + asked);
        }
    }

    /**
     * A line as it was written; what was not is empty.
     *
     * @param line its name
     * @param note the customer's own name for it
     * @param length finished length
     * @param rope the rope
     * @param again whether a line before it has the same name
     */
    public record Asked(String line, String note, String length, String rope, boolean again) {
        /** By what a customer knows it: {@code line 3 (berth lines, 11.2 m)}. */
        public String forCustomer() {
            return named(Stream.of(note, length));
        }

        /** The same with its rope. */
        public String forFile() {
            return named(Stream.of(note, length, rope));
        }

        private String named(Stream<String> known) {
            String words = known.filter(each -> !each.isEmpty()).collect(Collectors.joining(", "));
            String name = line.isEmpty() ? "a line without a name" : (again ? "another line " : "line ") + line;
            return words.isEmpty() ? name : name + " (" + words + ")";
        }
    }

    /** The name of the line. */
    public String line() {
        return asked.line();
    }
}
