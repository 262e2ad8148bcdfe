package bitterend.report;

import bitterend.finding.Finding;
import bitterend.finding.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Located problems, one a line, as the reader walks through the files. */
public final class FindingsPage {
    /** How many findings a reader is told one by one. */
    private static final int MOST_TOLD = 300;

    private static final Pattern FIGURES = Pattern.compile("[0-9]+");

    private final Ink ink;

    public FindingsPage(Ink ink) {
        this.ink = ink;
    }

    /**
     * Every finding on its own line; errors first and strong, then warnings in the colour of cautions. Of more than some
     * hundred, those of one cause stand together, the first of them told and the others counted.
     */
    public String text(List<Finding> findings) {
        List<Finding> errorsFirst = new ArrayList<>(findings);
        errorsFirst.sort(Comparator.comparing(Finding::severity));
        StringBuilder page = new StringBuilder();
        if (findings.size() <= MOST_TOLD) {
            errorsFirst.forEach(finding -> page.append(line(finding)));
        } else {
            byCause(errorsFirst, page);
        }
        return page.toString();
    }

    private void byCause(List<Finding> findings, StringBuilder page) {
        Map<String, List<Finding>> causes = findings.stream()
                .collect(Collectors.groupingBy(FindingsPage::cause, LinkedHashMap::new, Collectors.toList()));
        int each = Math.max(1, MOST_TOLD / causes.size());
        int told = 0;
        for (List<Finding> alike : causes.values()) {
            if (told >= MOST_TOLD) {
                break;
            }
            int shown = Math.min(each, alike.size());
            alike.subList(0, shown).forEach(finding -> page.append(line(finding)));
            told += shown;
            if (alike.size() > shown) {
                page.append("  and ").append(alike.size() - shown).append(" more like the last one.\n");
            }
        }
        long left =
                causes.values().stream().skip(MOST_TOLD).mapToLong(List::size).sum();
        if (each == 1 && left > 0) {
            page.append("and ").append(left).append(" more of other kinds.\n");
        }
    }

    /** What findings have in common that come of one mistake: all but the place and the figures. */
    private static String cause(Finding finding) {
        return finding.severity() + "\n" + finding.file() + "\n" + finding.field() + "\n"
                + FIGURES.matcher(finding.expected()).replaceAll("#");
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
