package bitterend.demand;

import bitterend.catalogue.Termination;
import bitterend.finding.Finding;
import bitterend.finding.Severity;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Collects what is wrong with one order line on one rope; fields are told as the columns of the order are named. */
final class Problems {
    private final Assembly.Origin origin;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Finding> remarks = new ArrayList<>();
    private @Nullable EndsThatDo others;

    Problems(Assembly.Origin origin) {
        this.origin = origin;
    }

    void error(String field, Sentence found, Sentence expected) {
        findings.add(finding(Severity.ERROR, field, found, expected));
    }

    /** From here on a refused end is told with the ends that would do. */
    void naming(EndsThatDo ends) {
        others = ends;
    }

    /** An error: the rope cannot have this end, whatever its size; those that it can have are named. */
    void unsuited(String field, Termination asked, Sentence found, Sentence expected) {
        error(field, found, others == null ? expected : withOthers(others, asked, expected));
    }

    private static Sentence withOthers(EndsThatDo others, Termination asked, Sentence expected) {
        Sentence why = expected;
        for (String danger : others.dangers(asked)) {
            why = why.exact().contains(danger) ? why : why.and("; " + danger);
        }
        boolean named = others.ids(asked).stream().anyMatch(why.exact()::contains);
        return named ? why : why.and("; " + others.words(asked));
    }

    void warning(String field, Sentence found, Sentence expected) {
        findings.add(finding(Severity.WARNING, field, found, expected));
    }

    /** An error, or only a warning. */
    void tell(boolean refused, String field, Sentence found, Sentence expected) {
        if (refused) {
            error(field, found, expected);
        } else {
            warning(field, found, expected);
        }
    }

    /** What is worth telling once for all lines that share it. */
    void remark(String field, Sentence found, Sentence expected) {
        remarks.add(finding(Severity.WARNING, field, found, expected));
    }

    private Finding finding(Severity severity, String field, Sentence found, Sentence expected) {
        Finding finding =
                new Finding(severity, origin.file(), origin.place(), field.toLowerCase(Locale.ROOT), found, expected);
        return severity == Severity.WARNING ? finding.workedOut() : finding;
    }

    /** An error of words alone. */
    void error(String field, String found, String expected) {
        error(field, Sentence.of(found), Sentence.of(expected));
    }

    /** The same of words alone. */
    void unsuited(String field, Termination asked, String found, String expected) {
        unsuited(field, asked, Sentence.of(found), Sentence.of(expected));
    }

    /** A warning of words alone. */
    void warning(String field, String found, String expected) {
        warning(field, Sentence.of(found), Sentence.of(expected));
    }

    /** What is worth telling once, in words alone. */
    void remark(String field, String found, String expected) {
        remark(field, Sentence.of(found), Sentence.of(expected));
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
                .map(error -> new Finding(
                        Severity.WARNING,
                        error.file(),
                        error.place(),
                        error.field(),
                        error.what(),
                        error.wanted().and("; substitute " + substitute + " is left out")))
                .toList();
    }
}
