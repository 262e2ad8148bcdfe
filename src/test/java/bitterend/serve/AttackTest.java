package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Units;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What somebody of ill will may try on the page, sent as it is and not as a browser would: docs/attacks.md lists it. */
final class AttackTest {
    private static final int SLOW = 300;
    private static final Duration SOON = Duration.ofSeconds(10);

    private static final List<String> PATHS = List.of(
            "/../shop.json",
            "/shop.json",
            "/stock.db",
            "/orders.csv",
            "/assets/../shop.json",
            "/assets/../../shop.json",
            "/assets/..%2f..%2fshop.json",
            "/assets/%2e%2e/%2e%2e/shop.json",
            "/assets/..%5c..%5cshop.json",
            "/assets/%00shop.json",
            "/assets//etc/passwd",
            "//etc/passwd",
            "/%2e%2e/%2e%2e/%2e%2e/etc/passwd",
            "/print/sheet?reel=../../shop.json",
            "/quotes/book/page?id=../shop&rev=1",
            "/quotes/kept?id=../../shop.json",
            "/import/sheet?id=../../shop.json",
            "/plans?number=../../shop.json");

    private static final List<String> METHODS =
            List.of("PUT", "DELETE", "PATCH", "TRACE", "CONNECT", "PROPFIND", "OPTIONS");

    private static final List<String> TWO_WAYS = List.of(
            "POST /who HTTP/1.1\nHost: HOST\nContent-Length: 3\nContent-Length: 40\n\na=b",
            "POST /who HTTP/1.1\nHost: HOST\nContent-Length: 3\nTransfer-Encoding: chunked\n\n0\n\nGET / HTTP/1.1\nHost: HOST\n\n",
            "POST /who HTTP/1.1\nHost: HOST\nTransfer-Encoding: chunked\n\nzz\na=b\n0\n\n",
            "POST /who HTTP/1.1\nHost: HOST\nContent-Length: -1\n\n",
            "POST /who HTTP/1.1\nHost: HOST\nContent-Length: 99999999999999999999\n\n",
            "GET / HTTP/1.1\nHost: HOST\nHost: elsewhere.example\n\n",
            "GET / HTTP/1.1\n\n",
            "GET http://elsewhere.example/ HTTP/1.1\nHost: HOST\n\n");

    private static final List<String> ELSEWHERE = List.of(
            "//elsewhere.example",
            "https://elsewhere.example/",
            "/\\elsewhere.example",
            "javascript:alert(1)",
            "%0d%0aSet-Cookie:%20a=b");

    private final ServedLoft loft;
    private Optional<ShopServer> running = Optional.empty();

    AttackTest(@TempDir Path folder) throws IOException {
        loft = new ServedLoft("eider-shed", folder).withLedger();
    }

    @BeforeEach
    void serve() throws IOException {
        running = Optional.of(ShopServer.start(
                loft.access(),
                new Listening(InetAddress.getLoopbackAddress(), 0),
                Units.METRIC,
                ServedLoft.noFaults()));
    }

    @AfterEach
    void close() {
        running.ifPresent(ShopServer::close);
    }

    private ShopServer server() {
        return running.orElseThrow();
    }

    private Socket socket() throws IOException {
        return new Socket(
                InetAddress.getLoopbackAddress(), URI.create(server().url()).getPort());
    }

    private String host() {
        return "127.0.0.1:" + URI.create(server().url()).getPort();
    }

    /** What is answered to lines that are sent as they are, {@code HOST} for the name of the server. */
    private String raw(String lines) throws IOException {
        return Visitor.answered(
                server().url(),
                lines.replace("\n", "\r\n").replace("HOST", host()).getBytes(StandardCharsets.UTF_8),
                SOON);
    }

    @Test
    void pathOutOfTheProgram_leadsNowhere() throws IOException {
        for (String path : PATHS) {
            String answer = raw("GET " + path + " HTTP/1.1\nHost: HOST\nConnection: close\n\n");
            assertTrue(answer.matches("(?s)HTTP/1.1 [234].*"), path + answer);
            assertFalse(
                    answer.contains("bitterend/shop/1") || answer.contains("root:") || answer.contains("SQLite"),
                    path + answer);
        }
    }

    @Test
    void otherMethod_doesNothing() throws IOException {
        for (String method : METHODS) {
            String answer =
                    raw(method + " /bench/reel HTTP/1.1\nHost: HOST\nOrigin: http://HOST\nConnection: close\n\n");
            assertTrue(answer.matches("(?s)HTTP/1.1 4.*"), answer);
            assertFalse(answer.contains("Access-Control"), answer);
        }
    }

    /** Two lengths, a piece that is longer than it says, a second request hidden in a body: one answer, and it is a refusal. */
    @Test
    void requestThatMayBeReadInTwoWays_isRefused() throws IOException {
        for (String lines : TWO_WAYS) {
            String answer = raw(lines);
            assertTrue(answer.isEmpty() || answer.startsWith("HTTP/1.1 4"), answer);
            assertEquals(-1, answer.indexOf("HTTP/1.1 200"), answer);
        }
    }

    @Test
    void wayBack_neverLeavesThePage() throws IOException {
        for (String to : ELSEWHERE) {
            String form = "code=1&name=Eve&back=" + to + "&to=" + to;
            Visitor eve = new Visitor(server());
            for (String path : List.of("/office", "/who")) {
                String answer = raw("POST " + path + " HTTP/1.1\n" + eve.headers()
                        + "Connection: close\nContent-Length: " + form.length() + "\n\n" + form);
                assertFalse(
                        answer.matches("(?is).*\nlocation: *(//|/\\\\|https://|javascript|http://elsewhere).*"),
                        answer);
                assertFalse(answer.contains("\nSet-Cookie: a=b"), answer);
            }
        }
    }

    @Test
    void tokenOfAnotherBrowser_opensNothing() throws IOException {
        Visitor ada = new Visitor(server());
        Visitor eve = new Visitor(server());
        assertNotEquals(ada.token(), eve.token());
        String origin = server().url().replaceAll("/$", "");
        assertEquals(
                403,
                eve.post("/who", Map.of("name", "Eve"), origin, ada.token()).status());
        assertEquals(403, eve.post("/who", Map.of("name", "Eve"), origin, "").status());
        assertEquals(
                403,
                eve.post("/who", Map.of("name", "Eve"), "https://elsewhere.example", eve.token())
                        .status());
        assertEquals(
                403,
                eve.post("/who", Map.of("name", "Eve"), "null", eve.token()).status());
    }

    /** Caught on its way and sent again, once at the same page and once years later: booked once. */
    @Test
    void bookingThatIsSentAgain_isBookedOnce() throws IOException {
        Visitor ada = new Visitor(server());
        Map<String, String> flaw = Map.of(
                "what",
                "flaw",
                "reel",
                "E7",
                "flaw",
                "2 m to 2.2 m: chafed",
                "by",
                "Ada",
                "booking",
                "a-booking-sent-again");
        assertTrue(ada.post("/bench/reel", flaw).status() < 500);
        long once = events();
        for (int again = 0; again < 5; again++) {
            ada.post("/bench/reel", flaw);
        }
        assertEquals(once, events());
    }

    private long events() {
        return loft.access()
                .reading(ledger -> (long) ledger.read(stock -> stock.events().size()));
    }

    @Test
    void guessedCode_opensNothingAfterFewTries() throws IOException {
        close();
        try (ShopServer beyond = ShopServer.start(
                loft.access(),
                new Listening(InetAddress.getLoopbackAddress(), 0),
                Units.METRIC,
                ServedLoft.noFaults(),
                from -> false)) {
            String code = beyond.pairingCode();
            Visitor eve = new Visitor(beyond);
            for (int guess = 0; guess < 5; guess++) {
                assertEquals(
                        403,
                        eve.post("/pair", Map.of("code", "0000000" + guess)).status());
            }
            assertEquals(403, eve.post("/pair", Map.of("code", code)).status(), "the right one, too late");
            assertFalse(eve.get("/").text().contains("No plan is in force"));
        }
    }

    /** Three hundred that send a letter now and then, half of them in the head and half in the form: the others are answered. */
    @Test
    void slowSenders_keepNobodyWaiting() throws IOException {
        Visitor eve = new Visitor(server());
        String begun = "POST /who HTTP/1.1\n" + eve.headers() + "Content-Length: 5000\n";
        Visitor ada = new Visitor(server());
        List<Socket> slow = new ArrayList<>();
        try {
            for (int each = 0; each < SLOW; each++) {
                Socket socket = socket();
                slow.add(socket);
                String lines = each % 2 == 0 ? begun : begun + "\nname=";
                socket.getOutputStream()
                        .write(lines.replace("\n", "\r\n")
                                .replace("HOST", host())
                                .getBytes(StandardCharsets.UTF_8));
            }
            int status = assertTimeoutPreemptively(SOON, () -> ada.get("/").status());
            assertEquals(200, status);
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    /** A line that breaks, or somebody who sends half of what was announced. */
    @Test
    void formThatEndsInItsMidst_isNoFault() throws IOException {
        ByteArrayOutputStream faults = new ByteArrayOutputStream();
        close();
        running = Optional.of(ShopServer.start(
                loft.access(),
                new Listening(InetAddress.getLoopbackAddress(), 0),
                Units.METRIC,
                new PrintStream(faults, true, StandardCharsets.UTF_8)));
        Visitor eve = new Visitor(server());
        String answer = raw("POST /who HTTP/1.1\n" + eve.headers() + "Content-Length: 50\n\nname=Eve");
        assertFalse(answer.startsWith("HTTP/1.1 5"), answer);
        assertEquals("", faults.toString(StandardCharsets.UTF_8));
    }

    /** The shop's files are as they were after all that was refused. */
    @Test
    void nothingRefused_isWritten() throws IOException {
        Path orders = loft.folder().resolve("orders.csv");
        String before = Files.readString(orders);
        raw(
                "POST /book HTTP/1.1\nHost: HOST\nOrigin: http://elsewhere.example\nContent-Length: 13\nConnection: close\n\norder=E-9&row");
        assertEquals(before, Files.readString(orders));
    }
}
