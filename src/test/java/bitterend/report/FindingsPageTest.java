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
    void fewFindings_areToldOneByOne() {
        List<Finding> findings = rows("length", 300);
        assertEquals(300, FindingsPage.text(findings, Ink.PLAIN).lines().count());
    }

    @Test
    void aMillionRowsOfTwoCauses_areToldByCauseAndThenCounted() {
        List<Finding> findings = rows("length", 999_000);
        findings.addAll(rows("rope", 1_000));
        List<String> lines = FindingsPage.text(findings, Ink.PLAIN).lines().toList();
        assertEquals(2 * 150 + 2, lines.size());
        assertEquals("  and 998850 more like the last one.", lines.get(150));
        assertTrue(lines.get(151).contains("rope"), lines.get(151));
        assertEquals("  and 850 more like the last one.", lines.get(301));
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
