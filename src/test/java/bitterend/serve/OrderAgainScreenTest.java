package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to order again, edited and ordered on the page. */
final class OrderAgainScreenTest {
    @TempDir
    private Path folder = Path.of("");

    @SuppressWarnings("NullAway")
    private Served loft = null;

    @BeforeEach
    void serve() throws IOException {
        loft = Served.copy("gannet-loft", folder);
    }

    @AfterEach
    void end() {
        loft.close();
    }

    private String onOrder() throws IOException {
        return Files.readString(loft.file("on-order.csv"));
    }

    @Test
    void proposal_isEditedAndOrderedOnce_andTakenBack() throws Exception {
        String before = onOrder();
        assertTrue(loft.ada().get("/buying").page().contains("/buying/again"));
        Seen page = loft.ada().get("/buying/again");
        assertTrue(page.text().contains("what to order on 2026-03-02"), page.text());
        assertTrue(page.page().contains("reels of DB12-50"), page.page());
        assertTrue(page.text().contains("to have enough it takes 132"), "as the command says: " + page.text());
        Map<String, String> typed =
                Map.of("what", "order", "reels of DB12-50", "2", "reels of DB10-200", "0", "booking", "form-0001");
        Seen ordered = loft.ada().post("/buying/again", typed);
        assertTrue(ordered.text().contains("P-89"), ordered.text());
        assertTrue(onOrder().contains("P-89,DB12,50 m,2,"), onOrder());
        String once = onOrder();
        assertTrue(loft.ada().post("/buying/again", typed).text().contains("done already"));
        assertEquals(once, onOrder());
        loft.ada().post("/buying/again", Map.of("what", "back", "booking", "form-0002"));
        assertEquals(before, onOrder());
        Seen wrong = loft.ada()
                .post("/buying/again", Map.of("what", "order", "reels of DB12-50", "some", "booking", "form-0003"));
        assertTrue(wrong.text().contains("whole number of reels"), wrong.page());
        assertEquals(before, onOrder());
        assertFalse(loft.ada().get("/buying/idle").text().contains("That did not go"));
        assertTrue(loft.ada().get("/buying").page().contains("/buying/idle"));
    }

    /** Somebody else ordered it this morning: nothing is written until it is said that it is meant once more. */
    @Test
    void sameOrderOfToday_isOrderedOnceMoreOnlyWhereThatIsSaid() throws Exception {
        Map<String, String> typed = Map.of("what", "order", "reels of DB12-50", "2", "booking", "form-0001");
        loft.ada().post("/buying/again", typed);
        String once = onOrder();
        Map<String, String> again = Map.of("what", "order", "reels of DB12-50", "2", "booking", "form-0002");
        Seen warned = loft.ada().post("/buying/again", again);
        assertTrue(warned.text().contains("the same was ordered today already, P-89"), warned.text());
        assertTrue(warned.page().contains("name=\"once more\""), warned.page());
        assertEquals(once, onOrder());
        loft.ada()
                .post(
                        "/buying/again",
                        Map.of("what", "order", "reels of DB12-50", "2", "once more", "yes", "booking", "form-0003"));
        assertTrue(onOrder().contains("P-90,DB12,50 m,2,"), onOrder());
    }
}
