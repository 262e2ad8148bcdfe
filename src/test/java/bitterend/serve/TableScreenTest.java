package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.workbook.Sheet;
import bitterend.exchange.workbook.Workbook;
import bitterend.finding.Findings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks taken away from the page in the browser. */
final class TableScreenTest {
    @TempDir
    private Path folder = Path.of("");

    @TempDir
    private Path taken = Path.of("");

    @SuppressWarnings("NullAway")
    private Served loft = null;

    @BeforeEach
    void serve() throws IOException {
        loft = Served.withLedger("eider-shed", folder);
    }

    @AfterEach
    void end() {
        loft.close();
    }

    private List<Sheet> sheets(Visitor who, String path) throws IOException {
        Path file = Files.write(taken.resolve("taken.xlsx"), who.file(path));
        return Workbook.open(file, new Findings()).orElseThrow().sheets();
    }

    @Test
    void ordersAndRack_areTakenAway() throws IOException {
        assertTrue(loft.ada().get("/orders").page().contains("href=\"/workbook/orders\""));
        assertTrue(loft.ada().get("/rack").page().contains("href=\"/workbook/rack\""));
        assertEquals(3, sheets(loft.ada(), "/workbook/orders").get(0).rows().size());
        assertTrue(sheets(loft.ada(), "/workbook/rack").get(0).rows().size() > 3);
    }

    @Test
    void aPlanThatIsNotThere_isToldOnAPage() {
        assertEquals(0, loft.ada().file("/workbook/plan").length);
        assertTrue(loft.ada().get("/workbook/plan").text().contains("no plan or no ledger yet"));
    }

    @Test
    void whatAPlanCosts_needsTheOfficeCode() throws Exception {
        loft.plans();
        assertTrue(loft.ada().get("/tables").page().contains("href=\"/workbook/plan\""));
        assertTrue(headings(loft.ada()).contains("cost (EUR)"));
        loft.ada().post("/devices/office", Map.of("code", "", "next", "copper thimble", "again", "copper thimble"));
        assertFalse(headings(new Visitor(loft.server())).contains("cost (EUR)"));
    }

    private List<String> headings(Visitor who) throws IOException {
        return sheets(who, "/workbook/plan").get(1).rows().get(0).texts();
    }
}
