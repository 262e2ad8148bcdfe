package bitterend.demand;

import bitterend.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Collects what is wrong with one order line on one rope; fields are told as the columns of the order are named. */
final class Problems {
    private final Assembly.Origin origin;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Finding> remarks = new ArrayList<>();

    Problems(Assembly.Origin origin) {
        this.origin = origin;
    }

    void error(String field, String found, String expected) {
        findings.add(Finding.error(origin.file(), origin.place(), field.toLowerCase(Locale.ROOT), found, expected));
    }

    void warning(String field, String found, String expected) {
        findings.add(Finding.warning(origin.file(), origin.place(), field.toLowerCase(Locale.ROOT), found, expected));
    }

    /** An error, or only a warning. */
    void tell(boolean refused, String field, String found, String expected) {
        if (refused) {
            error(field, found, expected);
        } else {
            warning(field, found, expected);
        }
    }

    /** What is worth telling once for all lines that share it. */
    void remark(String field, String found, String expected) {
        remarks.add(Finding.warning(origin.file(), origin.place(), field.toLowerCase(Locale.ROOT), found, expected));
    }

    List<Finding> remarks() {
        return List.copyOf(remarks);
    }

    boolean hasErrors() {
        return findings.stream().anyMatch(Finding::isError);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** What speaks against a substitute is no error of the order: it is left out, and the reader is told. */
    List<Finding> asWarningsAbout(String substitute) {
        return findings.stream()
                .filter(Finding::isError)
                .map(error -> Finding.warning(
                        error.file(),
                        error.place(),
                        error.field(),
                        error.found(),
                        error.expected() + "; substitute " + substitute + " is left out"))
                .toList();
    }
}
