package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Units;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Paired devices and their end; the office code before prices, quotes and money. */
final class OfficeTest {
    private static final String CODE = "copper thimble";

    @TempDir
    private Path folder = Path.of("");

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

    private Visitor.Seen set(Visitor who, String old, String next) {
        return who.post("/devices/office", Map.of("code", old, "next", next, "again", next));
    }

    @Test
    void withoutACode_everythingIsShown() {
        assertEquals(200, loft.ada().get("/buying").status());
        assertTrue(loft.ada().get("/rack").text().contains("EUR"));
    }

    /** Settings in words, with what is usual and where they are changed; the page follows the file. */
    @Test
    void settings_areShownAsTheFileSaysThem() throws IOException {
        assertTrue(loft.ada().get("/quotes").page().contains("href=\"/settings\""));
        Path file = loft.file("shop.json");
        String said = Files.readString(file).replaceAll("\"(horizon|brake)\": [^\n]*\n", "");
        Files.writeString(
                file,
                said.replaceFirst("\\{", "{\"brake\": 3, \"quote\": {\"margin\": \"25 %\", \"overhead\": \"15 %\"},"));
        String page = settings();
        assertTrue(page.contains("kept while rope is short, times 3 8 brake"), page);
        assertTrue(page.contains("how far ahead a plan looks as usual 5 working days horizon"), page);
        assertTrue(page.contains("margin 25 % 20 % quote margin"), page);
        assertTrue(page.contains("least that a line is charged as usual 0.00 EUR quote minimum"), page);
        Files.writeString(file, Files.readString(file).replaceFirst("25 %", "30 %"));
        assertTrue(settings().contains("margin 30 % 20 % quote margin"));
    }

    private String settings() {
        return loft.ada().get("/settings").text().replaceAll("\u00a0|&nbsp;|&#160;", " ");
    }

    /** Anybody at the rack may say what the invoice says; what it was before is told to the office alone. */
    @Test
    void priceThatIsPutRight_isShownToTheOfficeAlone() throws IOException {
        Map<String, String> form = new HashMap<>(
                Map.of("about", "E9", "what", "correct", "rope", "LAID-14", "lot", "12", "note", "invoice 88"));
        form.putAll(Map.of("paid", "dear", "freight", "3"));
        assertTrue(loft.ada().post("/rack/reel", form).text().contains("found \"dear\", expected"));
        form.put("paid", "84.50");
        Visitor.Seen there = loft.ada().get("/rack/reel?id=E9");
        String lot = there.page().replaceAll("(?s).*name=\"lot\"[^>]*value=\"([^\"]*)\".*", "$1");
        form.put("lot", lot);
        form.put("rope", there.page().replaceAll("(?s).*name=\"rope\"[^>]*value=\"([^\"]*)\".*", "$1"));
        form.put("received", there.page().replaceAll("(?s).*name=\"received\"[^>]*value=\"([^\"]*)\".*", "$1"));
        Visitor.Seen booked = loft.ada().post("/rack/reel", form);
        assertEquals(200, booked.status(), booked.text());
        String page = loft.ada().get("/rack/reel?id=E9").text();
        assertTrue(page.contains("paid 84.50 EUR for 200.000 m, 0.4225 EUR/m freight 3.00 EUR"), page);
        String end = page.substring(page.indexOf("It leaves the rack")).replace('\u00a0', ' ');
        assertTrue(end.contains("Ada: corrected, paid 84.50 EUR, freight 3.00 EUR; invoice 88"), end);
        assertTrue(page.contains("corrected, Ada"), "among what may be taken back");
        assertEquals(200, set(loft.ada(), "", CODE).status());
        String bench = new Visitor(loft.server()).get("/rack/reel?id=E9").text();
        assertFalse(bench.contains("84.50") || bench.contains("EUR"), bench);
    }

    @Test
    void withACode_moneyIsShownOnceItWasTyped() throws IOException {
        assertTrue(set(loft.ada(), "", "short").text().contains("at least 6 characters"));
        assertEquals(200, set(loft.ada(), "", CODE).status());
        assertFalse(Files.readString(loft.file(OfficeCode.NAME)).contains("thimble"), "kept hashed");
        Visitor bo = new Visitor(loft.server());
        for (String path : new String[] {"/buying", "/buying/kept", "/quotes", "/quotes/run", "/import", "/settings"}) {
            Visitor.Seen asked = bo.get(path);
            assertTrue(asked.text().contains("once the office code is typed here"), path + ": " + asked.text());
        }
        assertEquals(403, bo.post("/quotes", Map.of()).status());
        assertFalse(bo.get("/rack").text().contains("EUR"), bo.get("/rack").text());
        assertFalse(bo.get("/rack/reel?id=E7").text().contains("EUR"));
        assertFalse(bo.get("/count/result").text().contains("EUR"));
        assertEquals(
                403,
                bo.post("/office", Map.of("code", "guessed", "to", "/rack")).status());
        Visitor.Seen opened = bo.post("/office", Map.of("code", CODE, "to", "/rack"));
        assertTrue(opened.text().contains("EUR"), opened.text());
        assertFalse(opened.whole().uri().toString().contains("thimble"));
        assertEquals(200, bo.get("/quotes").status());
        assertFalse(bo.get("/quotes").text().contains("once the office code is typed here"));
        bo.post("/office/close", Map.of());
        assertTrue(bo.get("/quotes").text().contains("once the office code"), "closed again");
        loft.again();
        assertTrue(loft.ada().get("/quotes").text().contains("once the office code"), "another browser");
    }

    @Test
    void fewWrongTries_endThemForAWhile() {
        set(loft.ada(), "", CODE);
        Visitor eve = new Visitor(loft.server());
        for (int i = 0; i < 5; i++) {
            eve.post("/office", Map.of("code", "guess " + i, "to", "/rack"));
        }
        Visitor.Seen late = new Visitor(loft.server()).post("/office", Map.of("code", CODE, "to", "/rack"));
        assertEquals(403, late.status(), "also from another browser");
        assertTrue(late.text().contains("too many wrong tries"), late.text());
    }

    @Test
    void code_isChangedByWhoKnowsItAndThenOpensNothingMore() {
        set(loft.ada(), "", CODE);
        Visitor bo = new Visitor(loft.server());
        bo.post("/office", Map.of("code", CODE, "to", "/rack"));
        assertTrue(bo.get("/rack").text().contains("EUR"));
        assertEquals(422, set(loft.ada(), "wrong one", "another code").status());
        assertEquals(200, set(loft.ada(), CODE, "another code").status());
        assertFalse(bo.get("/rack").text().contains("EUR"), "what the old code opened is closed");
        assertEquals(200, set(loft.ada(), "another code", "").status());
        assertTrue(bo.get("/rack").text().contains("EUR"), "none holds any more");
    }

    @Test
    void openOffice_isOfOneBrowserAlone() {
        set(loft.ada(), "", CODE);
        assertTrue(loft.ada().get("/rack").text().contains("EUR"), "who sets it has typed it");
        assertFalse(new Visitor(loft.server()).get("/rack").text().contains("EUR"));
    }

    @Test
    void nothingOfTheCode_isInALogOfFaults() throws IOException {
        ByteArrayOutputStream log = new ByteArrayOutputStream();
        try (ShopServer server = ShopServer.start(
                loft.shop,
                new Listening(InetAddress.getLoopbackAddress(), 0),
                Units.METRIC,
                new PrintStream(log, true, StandardCharsets.UTF_8))) {
            Visitor cy = new Visitor(server);
            Files.createDirectories(loft.file(OfficeCode.NAME).resolve("in-the-way"));
            assertEquals(
                    500, cy.post("/office", Map.of("code", CODE, "to", "/rack")).status());
            assertTrue(log.toString(StandardCharsets.UTF_8).contains("/office"));
            assertFalse(log.toString(StandardCharsets.UTF_8).contains("thimble"));
        }
    }

    @Test
    void pairedDevices_areListedAndRevokedOnTheShopsMachineAlone() throws IOException {
        new DeviceFile(loft.shop.folder()).add("abc123", "bench tablet");
        assertTrue(loft.ada().get("/devices").text().contains("bench tablet"));
        try (ShopServer server = ShopServer.start(
                loft.shop,
                new Listening(InetAddress.getLoopbackAddress(), 0),
                Units.METRIC,
                ServedLoft.noFaults(),
                from -> false)) {
            Visitor tablet = new Visitor(server);
            tablet.post("/pair", Map.of("code", server.pairingCode(), "name", "tablet"));
            assertEquals(403, tablet.get("/devices").status());
            assertEquals(
                    403,
                    tablet.post("/devices/revoke", Map.of("device", "abc123")).status());
            assertEquals(
                    403,
                    tablet.post("/devices/office", Map.of("next", CODE, "again", CODE))
                            .status());
        }
        loft.ada().post("/devices/revoke", Map.of("device", "abc123"));
        assertFalse(loft.ada().get("/devices").text().contains("bench tablet"));
    }
}
