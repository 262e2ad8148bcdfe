package bitterend.report;

import bitterend.finding.ByCause;
import bitterend.finding.Finding;
import bitterend.finding.Severity;
import bitterend.report.page.Block.Line.Weight;
import bitterend.report.page.Document;
import bitterend.report.page.Ink;
import bitterend.report.page.Writing;
import java.util.List;

/** Located problems, one a line, as the reader walks through the files. */
public final class FindingsPage {
    private FindingsPage() {}

    /**
     * Every finding on its own line; errors first and strong, then warnings in the colour of cautions. Many of one cause stand
     * together, the first of them told, of the others their places.
     */
    public static Document of(List<Finding> findings) {
        Writing page = new Writing();
        ByCause told = ByCause.of(findings);
        for (ByCause.Alike alike : told.alike()) {
            alike.told()
                    .forEach(finding -> page.line(
                            finding.severity() == Severity.WARNING ? Weight.ALERT : Weight.STRONG, finding.toString()));
            if (alike.more() > 0) {
                page.paragraph(1, "and " + more(alike));
            }
        }
        if (told.others() > 0) {
            page.paragraph("and " + told.others() + " more of other kinds.");
        }
        return page.document();
    }

    /** {@code 57 more like these: rows 5 to 61.} */
    static String more(ByCause.Alike alike) {
        return alike.more() + " more like these" + (alike.where().isEmpty() ? "." : ": " + alike.where() + ".");
    }

    /** The same as text. */
    public static String text(List<Finding> findings, Ink ink) {
        return of(findings).text(ink);
    }

    /** {@code 2 errors, 1 warning}; {@code 0 errors, 1 line left out, 3 warnings}. */
    public static String summary(List<Finding> findings) {
        int errors = (int) findings.stream().filter(Finding::isError).count();
        int lines = (int) findings.stream()
                .filter(Finding::leavesOut)
                .map(finding -> finding.file() + finding.place())
                .distinct()
                .count();
        int warnings = (int) findings.stream()
                .filter(finding -> finding.severity() == Severity.WARNING)
                .count();
        return count(errors, "error") + (lines == 0 ? "" : ", " + count(lines, "line") + " left out") + ", "
                + count(warnings, "warning");
    }

    /** {@code 1 reel}, {@code 2 reels}. */
    public static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
