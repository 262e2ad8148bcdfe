package bitterend.cli;

import bitterend.finding.Finding;
import bitterend.quoting.Quote;
import java.util.ArrayList;
import java.util.List;

/** What is told of the lines of a request that are left out of its quote. */
final class QuoteFindings {
    private QuoteFindings() {}

    /** Lines that are left out, those that could not be priced among them. */
    static List<Finding> all(List<Finding> leftOut, Quote quote) {
        List<Finding> all = new ArrayList<>(leftOut);
        quote.lacking().forEach(each -> each.findings().forEach(finding -> all.add(finding.leavingOut())));
        return all;
    }

    /** What was not told of yet, each once. */
    static List<Finding> unsaid(List<Finding> all, List<Finding> said) {
        return all.stream()
                .distinct()
                .filter(finding -> !said.contains(finding))
                .toList();
    }
}
