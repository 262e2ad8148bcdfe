package bitterend.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

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

    /** Every finding once, in reading order. */
    public List<Finding> sorted() {
        return all.stream().distinct().sorted().toList();
    }
}
