package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop without a ledger: the page itself begins it, and the day can be worked. */
final class LedgerScreenTest {
    private static final String BEGIN = "Begin the ledger with the reels of reels.csv";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void ledger_isBegunOnThePage_andThenAReelIsCut() throws IOException, InterruptedException {
        try (Served loft = Served.copy("eider-shed", folder)) {
            assertTrue(loft.ada().get("/").text().contains(BEGIN));
            assertTrue(loft.ada().get("/rack").text().contains("begin it on the screen of today"));
            Visitor nobody = new Visitor(loft.server());
            assertEquals(503, nobody.post("/ledger", Map.of()).status(), "nobody has said a name");
            assertFalse(loft.shop.keepsLedger());
            assertEquals(200, loft.ada().post("/ledger", Map.of()).status());
            assertEquals(200, loft.ada().post("/ledger", Map.of()).status(), "tapped twice");
            assertEquals(1, loft.events());
            assertFalse(loft.ada().get("/").text().contains(BEGIN));
            loft.plans();
            int before = loft.events();
            Seen cut = loft.ada()
                    .post("/bench/reel", Map.of("plan", "1", "reel", "E7", "piece", "E-31/1.1", "what", "cut"));
            assertEquals(200, cut.status(), cut.text());
            assertEquals(before + 1, loft.events());
        }
    }
}
