package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.stock.Ledger;
import bitterend.stock.LoftAddress;
import bitterend.store.LoftServer;
import bitterend.work.rack.BeginLedger;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two pages of one loft, each from a folder of its own, on one ledger of a server: what is booked on one is on the other. */
final class ServedLedgerPageTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void bookingOnOnePage_isSeenOnTheOther() throws IOException {
        LoftAddress loft = LoftServer.shared().newLoft();
        try (Served one = Served.on(loft, "eider-shed", folder.resolve("one"));
                Served other = Served.on(loft, "eider-shed", folder.resolve("other"))) {
            one.shop.read().found().ifPresent(now -> new BeginLedger(one.shop).begin(now.shop(), "Bo"));
            assertTrue(other.ada().get("/rack").page().contains("E10"));
            one.ada().post("/rack/reel", Map.of("about", "E10", "what", "hold", "note", "wet"));
            long booked =
                    one.shop.reading(ledger -> ledger.read(Ledger.Stock::head)).event();
            assertEquals(2, booked);
            assertTrue(other.ada().get("/rack").page().contains("on hold"));
        }
    }
}
