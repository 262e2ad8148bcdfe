package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Units;
import java.net.InetAddress;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop's own machine while the page is served to devices beyond it. */
final class PairingTest {
    private static final Pattern CODE = Pattern.compile("[0-9]{8}");

    /** All addresses of this machine; it is met over its loopback, as somebody at the shop's own machine meets it. */
    @Test
    void shopsOwnMachine_needsNoPairingAndShowsACodeForEachDevice(@TempDir Path folder) throws Exception {
        ServedLoft loft = new ServedLoft("eider-shed", folder);
        InetAddress everywhere = Listening.address("0.0.0.0").orElseThrow();
        try (ShopServer server =
                ShopServer.start(loft.access(), new Listening(everywhere, 0), Units.METRIC, ServedLoft.noFaults())) {
            String port = server.url().replaceAll("^.*:([0-9]+)/$", "$1");
            Visitor office = new Visitor("http://127.0.0.1:" + port + "/");
            assertTrue(office.get("/").text().contains("No plan is in force yet."));
            Visitor.Seen page = office.get("/pair");
            assertFalse(CODE.matcher(page.text()).find(), "no code before it is asked for");
            String first = code(office);
            String second = code(office);
            assertFalse(first.equals(second), "each device has one of its own");
        }
    }

    /** As if this machine were another: it is sent to the page with the code, sees nothing else, and is given no code. */
    @Test
    void deviceBeyondTheMachine_seesNothingBeforeItIsPaired(@TempDir Path folder) throws Exception {
        ServedLoft loft = new ServedLoft("eider-shed", folder);
        try (ShopServer server = ShopServer.start(
                loft.access(),
                new Listening(InetAddress.getLoopbackAddress(), 0),
                Units.METRIC,
                ServedLoft.noFaults(),
                from -> false)) {
            Visitor tablet = new Visitor(server);
            for (String path : new String[] {"/", "/bench", "/book", "/pair"}) {
                Visitor.Seen seen = tablet.get(path);
                assertTrue(seen.text().contains("Ask for a code on the shop's own machine"), seen.text());
                assertFalse(seen.page().contains("E-31"), seen.page());
            }
            assertEquals(403, tablet.post("/pair/code", Map.of()).status());
            assertEquals(403, tablet.post("/who", Map.of("name", "Eve")).status());
            String code = server.pairingCode();
            assertEquals(403, tablet.post("/pair", Map.of("code", "00000000x")).status());
            assertEquals(
                    200,
                    tablet.post("/pair", Map.of("code", code, "name", "bench")).status());
            assertTrue(tablet.get("/").text().contains("No plan is in force yet."));
            assertEquals(403, tablet.post("/pair/code", Map.of()).status(), "a paired device pairs no other");
        }
    }

    private static String code(Visitor office) {
        Visitor.Seen shown = office.post("/pair/code", Map.of());
        assertEquals(200, shown.status(), shown.text());
        Matcher code = CODE.matcher(shown.text());
        assertTrue(code.find(), shown.text());
        return code.group();
    }
}
