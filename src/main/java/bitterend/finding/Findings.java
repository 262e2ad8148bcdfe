package bitterend.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Collects findings while files are read, so that every problem of every file is told in one run. */
public final class Findings {
    private final List<Finding> all = new ArrayList<>();

    public void add(Finding finding) {
        all.add(finding);
    }

    public void addAll(Collection<Finding> findings) {
        all.addAll(findings);
    }

    public boolean hasErrors() {
        return all.stream().anyMatch(Finding::isError);
    }

    public int size() {
        return all.size();
    }

    /** Every finding once, in reading order; of what is refused nobody needs to be warned as well. */
    public List<Finding> sorted() {
        Set<String> refused = new HashSet<>();
        all.stream()
                .filter(finding -> finding.severity() != Severity.WARNING)
                .forEach(finding -> refused.add(cell(finding)));
        return all.stream()
                .filter(finding -> finding.severity() != Severity.WARNING || !refused.contains(cell(finding)))
                .distinct()
                .sorted()
                .toList();
    }

    /** Where it is and what was found there, as it is printed. */
    private static String cell(Finding finding) {
        return String.join("\n", finding.file(), finding.place(), finding.field(), Unseen.shown(finding.found()));
    }
}
