package bitterend.demand;

import bitterend.catalogue.Termination;
import bitterend.finding.Finding;
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

    void error(String field, String found, String expected) {
        findings.add(Finding.error(origin.file(), origin.place(), field.toLowerCase(Locale.ROOT), found, expected));
    }

    /** From here on a refused end is told with the ends that would do. */
    void naming(EndsThatDo ends) {
        others = ends;
    }

    /** An error: the rope cannot have this end, whatever its size; those that it can have are named. */
    void unsuited(String field, Termination asked, String found, String expected) {
        error(field, found, others == null ? expected : withOthers(others, asked, expected));
    }

    private static String withOthers(EndsThatDo others, Termination asked, String expected) {
        String why = expected.contains(others.dangers(asked)) ? expected : expected + others.dangers(asked);
        return others.ids(asked).stream().anyMatch(why::contains) ? why : why + "; " + others.words(asked);
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
