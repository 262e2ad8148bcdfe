package bitterend.report;

import bitterend.finding.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Located problems, one a line, as the reader walks through the files. */
public final class FindingsPage {
    private final Ink ink;

    public FindingsPage(Ink ink) {
        this.ink = ink;
    }

    /** Every finding on its own line; errors first and strong, then warnings in the colour of cautions. */
    public String text(List<Finding> findings) {
        StringBuilder page = new StringBuilder();
        List<Finding> errorsFirst = new ArrayList<>(findings);
        errorsFirst.sort(Comparator.comparing(Finding::severity));
        for (Finding finding : errorsFirst) {
            String line = Wording.printable(finding.toString());
            page.append(finding.isError() ? ink.strong(line) : ink.alert(line)).append('\n');
        }
        return page.toString();
    }

    /** {@code 2 errors, 1 warning}. */
    public static String summary(List<Finding> findings) {
        int errors = (int) findings.stream().filter(Finding::isError).count();
        return count(errors, "error") + ", " + count(findings.size() - errors, "warning");
    }

    /** {@code 1 reel}, {@code 2 reels}. */
    public static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
