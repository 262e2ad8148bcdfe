package bitterend.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.report.DayOnTheBench;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The list of cuts for other programs. */
final class CutListTest {
    @Test
    void wordsThatASpreadsheetWouldRun_areMarkedAsInEveryOtherTable() {
        assertEquals("'=1+1", CutList.cell("=1+1"));
        assertEquals("'\uff1d1", CutList.cell("\uff1d1"));
        assertEquals("-12", CutList.cell("-12"));
    }

    @Test
    void everyColumn_isInTheDocumentation() throws IOException {
        String docs = Files.readString(Path.of("docs", "file-formats.md"));
        String section = docs.substring(docs.indexOf("## sheet.csv"), docs.indexOf("## codes.json"));
        String head = CutList.csv(DayOnTheBench.view()).lines().findFirst().orElseThrow();
        for (String column : head.split(",")) {
            assertTrue(section.contains("`" + column + "`"), column);
        }
    }
}
