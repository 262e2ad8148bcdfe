package bitterend.work.imports;

import bitterend.finding.Finding;
import bitterend.work.ShopFound;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Errors that a shop does not have as it is: a file that brings them is not written. */
final class NewErrors {
    private NewErrors() {}

    static List<Finding> of(ShopFound now, ShopFound would) {
        Set<Object> had = errors(now).map(NewErrors::cause).collect(Collectors.toSet());
        return errors(would).filter(error -> !had.contains(cause(error))).toList();
    }

    private static Stream<Finding> errors(ShopFound found) {
        return found.findings().stream().filter(Finding::isError);
    }

    /** What an error is about, wherever its row went. */
    private static List<Object> cause(Finding error) {
        return List.of(error.file(), error.field(), error.what(), error.wanted());
    }
}
