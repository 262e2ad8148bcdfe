package bitterend.exchange.mapping;

import bitterend.finding.Finding;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a sheet would do to the file of a shop that it goes into.
 *
 * @param understood the sheet as far as it is understood
 * @param into the file of the shop that it goes into; empty where that is not known
 * @param known whether a sheet with these headings was imported before
 * @param changes its rows, each new, changed or as it is there
 * @param findings what cannot be read, and what the shop would say of the rows
 */
public record SheetPreview(
        Understood understood, String into, boolean known, List<Change> changes, List<Finding> findings) {
    public SheetPreview {
        changes = List.copyOf(changes);
        findings = List.copyOf(findings);
    }

    /** The same with further findings, in front of its own. */
    public SheetPreview with(List<Finding> further) {
        return new SheetPreview(
                understood,
                into,
                known,
                changes,
                Stream.concat(further.stream(), findings.stream()).toList());
    }

    /** How many rows are of a kind. */
    public int count(Change.Kind kind) {
        return (int) changes.stream().filter(change -> change.kind() == kind).count();
    }

    /** Whether nothing is asked. */
    public boolean isAnswered() {
        return understood.questions().isEmpty();
    }
}
