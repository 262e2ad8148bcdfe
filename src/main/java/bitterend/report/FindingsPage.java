package bitterend.report;

import bitterend.finding.ByCause;
import bitterend.finding.Finding;
import bitterend.finding.Severity;
import bitterend.report.page.Ink;
import bitterend.report.page.Wording;
import java.util.List;

/** Located problems, one a line, as the reader walks through the files. */
public final class FindingsPage {
    private final Ink ink;

    public FindingsPage(Ink ink) {
        this.ink = ink;
    }

    /**
     * Every finding on its own line; errors first and strong, then warnings in the colour of cautions. Of more than some
     * hundred, those of one cause stand together, the first of them told and the others counted.
     */
    public String text(List<Finding> findings) {
        StringBuilder page = new StringBuilder();
        ByCause told = ByCause.of(findings);
        for (ByCause.Alike alike : told.alike()) {
            alike.told().forEach(finding -> page.append(line(finding)));
            if (alike.more() > 0) {
                page.append("  and ").append(alike.more()).append(" more like the last one.\n");
            }
        }
        if (told.others() > 0) {
            page.append("and ").append(told.others()).append(" more of other kinds.\n");
        }
        return page.toString();
    }

    private String line(Finding finding) {
        String line = Wording.printable(finding.toString());
        return (finding.severity() == Severity.WARNING ? ink.alert(line) : ink.strong(line)) + "\n";
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
