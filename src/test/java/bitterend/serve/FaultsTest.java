package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Units;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What no screen foresaw is a line where the program was started, found by the number that the page shows. */
final class FaultsTest {
    @Test
    void fault_isOneLineWithTheNumberOnThePage(@TempDir Path folder) throws Exception {
        ServedLoft loft = new ServedLoft("eider-shed", folder);
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        try (ShopServer server = ShopServer.start(
                loft.access(),
                new Listening(InetAddress.getLoopbackAddress(), 0),
                Units.METRIC,
                new PrintStream(lines, true, StandardCharsets.UTF_8))) {
            Visitor ada = new Visitor(server);
            ada.post("/who", Map.of("name", "Ada"));
            Visitor.Seen book = ada.get("/book");
            // The folder of the versions before cannot be made.
            Files.writeString(loft.folder().resolve("orders-before"), "");
            assertEquals("", lines.toString(StandardCharsets.UTF_8));
            Visitor.Seen seen = ada.post(
                    "/book",
                    Map.of("digest", book.field("digest"), "base", book.field("base"), "what", "save", "c1.4", "29 m"));
            assertEquals(500, seen.status(), seen.text());
            Matcher number =
                    Pattern.compile("with the number ([a-z0-9]{6}) says more").matcher(seen.text());
            assertTrue(number.find(), seen.text());
            String line = lines.toString(StandardCharsets.UTF_8);
            assertEquals(1, line.lines().count(), line);
            assertTrue(line.contains(" fault " + number.group(1) + ": POST /book: "), line);
            assertTrue(line.contains(" at bitterend.work.orders.EditOrders."), line);
            assertFalse(line.contains("29 m") || line.contains("Ada") || line.contains(folder.toString()), line);
            assertFalse(seen.page().contains("bitterend.") || seen.page().contains("Exception"), seen.page());
        }
    }
}
