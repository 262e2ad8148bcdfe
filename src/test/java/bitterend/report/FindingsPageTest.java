package bitterend.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.finding.Finding;
import bitterend.report.page.Ink;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

final class FindingsPageTest {
    @Test
    void fiveOfOneCause_areToldOneByOne() {
        assertEquals(5, FindingsPage.text(rows("length", 5), Ink.PLAIN).lines().count());
    }

    @Test
    void sixtyRowsOfOneCause_areThreeOfThemAndTheRowsOfTheOthers() {
        List<String> lines =
                FindingsPage.text(rows("due", 60), Ink.PLAIN).lines().toList();
        assertEquals(4, lines.size());
        assertTrue(lines.get(2).contains("row 4"), lines.get(2));
        assertEquals("  and 57 more like these: rows 5 to 61.", lines.get(3));
    }

    @Test
    void rowsThatAreNotOneBehindAnother_areNamedByTheFirstAndTheLast() {
        List<Finding> findings = rows("due", 60);
        findings.remove(30);
        List<String> lines = FindingsPage.text(findings, Ink.PLAIN).lines().toList();
        assertEquals("  and 56 more like these: rows 5, 6, 7 ... 61.", lines.get(3));
        assertEquals(
                "  and 3 more like these: rows 5, 6, 9.",
                FindingsPage.text(
                                List.of(
                                        findings.get(0),
                                        findings.get(1),
                                        findings.get(2),
                                        findings.get(3),
                                        findings.get(4),
                                        findings.get(7)),
                                Ink.PLAIN)
                        .lines()
                        .toList()
                        .get(3));
    }

    @Test
    void aMillionRowsOfTwoCauses_areToldByCauseAndThenCounted() {
        List<Finding> findings = rows("length", 999_000);
        findings.addAll(rows("rope", 1_000));
        List<String> lines = FindingsPage.text(findings, Ink.PLAIN).lines().toList();
        assertEquals(2 * 3 + 2, lines.size());
        assertEquals("  and 998997 more like these: rows 5 to 999001.", lines.get(3));
        assertTrue(lines.get(4).contains("rope"), lines.get(4));
        assertEquals("  and 997 more like these: rows 5 to 1001.", lines.get(7));
        assertEquals("1000000 errors, 0 warnings", FindingsPage.summary(findings));
    }

    @Test
    void manyCauses_areToldOnceEachAndTheRestCounted() {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < 1_000; i++) {
            findings.add(Finding.error("orders.csv", "row 2", "column " + i, "", "nothing"));
        }
        List<String> lines = FindingsPage.text(findings, Ink.PLAIN).lines().toList();
        assertEquals(301, lines.size());
        assertEquals("and 700 more of other kinds.", lines.get(300));
    }

    private static List<Finding> rows(String field, int count) {
        List<Finding> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rows.add(Finding.error("orders.csv", "row " + (i + 2), field, "x", "an id; this one stands in row " + i));
        }
        return rows;
    }
}
