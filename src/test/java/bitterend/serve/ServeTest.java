package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Units;
import bitterend.serve.Visitor.Seen;
import bitterend.store.SqliteLedgerPlace;
import bitterend.work.ShopAccess;
import bitterend.work.rack.BeginLedger;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of the small demo loft, as a browser meets it. */
final class ServeTest {
    @TempDir
    private Path folder = Path.of("");

    private ShopAccess shop = access(Path.of(""));
    private ShopServer server = nobody();
    private Visitor ada = nobodyAtAll();

    @SuppressWarnings("NullAway")
    private static ShopServer nobody() {
        return null;
    }

    @SuppressWarnings("NullAway")
    private static Visitor nobodyAtAll() {
        return null;
    }

    private static ShopAccess access(Path folder) {
        Clock clock = Clock.systemUTC();
        return new ShopAccess(folder, new SqliteLedgerPlace(folder, clock), clock);
    }

    @BeforeEach
    void serve() throws IOException {
        Path demo = Path.of("demo-data/eider-shed");
        Path copy = folder.resolve("eider-shed");
        try (Stream<Path> files = Files.list(demo)) {
            Files.createDirectories(copy);
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        shop = access(copy);
        begin();
    }

    private void begin() throws IOException {
        server = ShopServer.start(
                shop, new Listening(InetAddress.getLoopbackAddress(), 0), Units.METRIC, ServedLoft.noFaults());
        ada = new Visitor(server);
    }

    @AfterEach
    void end() {
        server.close();
    }

    @Test
    void screens_openWithoutAPlan() {
        for (String path :
                new String[] {"/", "/bench", "/splicing", "/orders", "/book", "/rack", "/week", "/find?what=E"}) {
            assertEquals(200, ada.get(path).status(), path);
        }
        assertEquals(404, ada.get("/nosuch").status());
        assertTrue(ada.get("/").text().contains("No plan is in force yet."));
    }

    /** Somebody plans, looks, puts it in force, cuts; a second browser sees it; sent twice it counts once. */
    @Test
    void day_isPlannedAndCutFromTwoBrowsers() throws Exception {
        new BeginLedger(shop).begin(shop.read().found().orElseThrow().shop(), "Bo");
        assertTrue(ada.post("/plan/accept", Map.of()).text().contains("Say first who you are"));
        ada.post("/who", Map.of("name", "Ada <b>", "back", "/"));
        Seen planned = planned();
        assertTrue(planned.text().contains("Planned: all 10 pieces"), planned.text());
        assertTrue(ada.get("/").text().contains("No plan is in force yet."), "looked at, and no more");
        ada.post("/plan/accept", Map.of("run", planned.field("run")));
        assertTrue(ada.get("/").text().contains("Cutting plan 1 for 2026-03-02"));
        Seen reel = ada.get("/bench/reel?id=E7");
        assertTrue(reel.text().contains("counter reads, m"), reel.text());
        Map<String, String> cut = Map.of(
                "plan",
                "1",
                "reel",
                "E7",
                "piece",
                reel.field("piece"),
                "booking",
                reel.field("booking"),
                "what",
                "cut");
        Seen booked = ada.post("/bench/reel", cut);
        assertEquals(200, booked.status(), booked.text());
        long movements = movements();
        assertEquals(200, ada.post("/bench/reel", cut).status(), "sent again");
        assertEquals(movements, movements(), "and booked once");
        Visitor bo = new Visitor(server);
        assertTrue(bo.get("/bench").text().contains("E7 BRAID-12 hook 1 1 of 3 cut")
                || bo.get("/bench").text().contains("1 of 3 cut"));
        Map<String, String> other = new HashMap<>(cut);
        other.put("what", "measured");
        other.put("length", "30 m");
        Seen differently = ada.post("/bench/reel", other);
        assertEquals(409, differently.status());
        assertTrue(differently.text().contains("something else was booked before"), differently.text());
        assertTrue(ada.get("/rack/reel?id=E7").text().contains("Ada &lt;b&gt;"), "who did it, harmless");
        Seen waits = ada.get("/splicing");
        assertTrue(waits.text().contains(cut.get("piece")), waits.text());
        String last = ada.get("/bench/reel?id=E7").field("event");
        Seen undone = ada.post(
                "/bench/reel",
                Map.of(
                        "plan",
                        "1",
                        "reel",
                        "E7",
                        "booking",
                        reel.field("booking") + "u",
                        "what",
                        "undo",
                        "event",
                        last));
        assertEquals(200, undone.status(), undone.text());
        assertTrue(ada.get("/bench").text().contains("0 of 3 cut"));
    }

    /** Bo threw away what Ada looks at and made another: hers does not put his in force, stop it or throw it away. */
    @Test
    void planOfAnotherRun_isNotPutInForce() throws Exception {
        ada.post("/who", Map.of("name", "Ada"));
        String hers = planned().field("run");
        Visitor bo = new Visitor(server);
        bo.post("/plan/drop", Map.of("run", hers));
        String his = planned().field("run");
        assertNotEquals(hers, his);
        for (String tap : new String[] {"accept", "stop", "drop"}) {
            for (String run : new String[] {hers, ""}) {
                Seen refused = ada.post("/plan/" + tap, Map.of("run", run));
                assertEquals(409, refused.status(), tap);
                assertTrue(refused.text().contains("no longer here"), refused.text());
            }
        }
        assertTrue(ada.get("/").text().contains("No plan is in force yet."));
        assertEquals(200, ada.post("/plan/accept", Map.of("run", his)).status(), "the one that is here");
        assertTrue(ada.get("/").text().contains("Cutting plan 1"));
    }

    /** The page of today is that of the command, with the hours of the bench; the week leads to the sheets of its days. */
    @Test
    void todayAndWeek_areThoseOfTheCommands() throws Exception {
        Path settings = shop.folder().resolve("shop.json");
        Files.writeString(
                settings,
                Files.readString(settings)
                        .replace("\"labour\"", "\"benchHours\": {\"tuesday\": \"0.5 h\"}, \"labour\""));
        ada.post("/who", Map.of("name", "Ada", "back", "/"));
        ada.post("/plan/accept", Map.of("run", planned().field("run")));
        assertTrue(ada.get("/").text().contains("is too full by"), ada.get("/").text());
        ada.post("/plan/accept", Map.of("run", planned().field("run")));
        assertTrue(
                ada.get("/").text().contains("As plan 1 promised: 10 pieces stay"),
                ada.get("/").text());
        assertTrue(
                ada.get("/changes").text().contains("plan 1"),
                ada.get("/changes").text());
        Seen week = ada.get("/week");
        assertFalse(week.text().contains("bitterend sheet"), "no commands on the page");
        assertTrue(week.page().contains("href=\"/print/sheet?day=2026-03-06\""), week.page());
        Seen sheets = ada.get("/print/sheet?day=2026-03-06");
        assertTrue(sheets.text().contains("A promise") && sheets.text().contains("E8"), sheets.text());
        assertTrue(ada.get("/print/sheet?day=never").text().contains("Nothing of the plan is cut on that day."));
    }

    private Seen planned() throws InterruptedException {
        ada.post("/plan", Map.of());
        for (int i = 0; i < 300; i++) {
            Seen seen = ada.get("/plan");
            if (seen.page().contains("data-done")) {
                return seen;
            }
            Thread.sleep(100);
        }
        throw new AssertionError("no plan: " + ada.get("/plan").text());
    }

    private long movements() {
        return shop.reading(ledger -> ledger.read(stock -> stock.holdings().size()));
    }

    /** Typed, looked at, pasted, saved and taken back: the file is what a person would have written. */
    @Test
    void orderBook_isTypedInAndPastedInto() throws IOException {
        ada.post("/who", Map.of("name", "Ada"));
        Path orders = shop.folder().resolve("orders.csv");
        String before = Files.readString(orders);
        Seen book = ada.get("/book");
        assertTrue(book.page().contains("value=\"28 m\""), book.page());
        assertTrue(book.text().contains("29.300 m") || book.text().contains("28."), "cut lengths");
        Map<String, String> typed = new HashMap<>();
        typed.put("digest", book.field("digest"));
        typed.put("base", book.field("base"));
        typed.put("c1.4", "thirty");
        typed.put("paste", "order\tline\trope\tlength\tend a\nE-60\t1\tLAID-14\t3,5 m\twhipped");
        typed.put("what", "look");
        Seen looked = ada.post("/book", typed);
        assertTrue(looked.text().contains("length: found \"thirty\", expected"), looked.text());
        assertEquals(before, Files.readString(orders), "looking writes nothing");
        typed.put("c1.4", "30 m");
        typed.put("paste", "order\tline\trope\tlength\tend a\nE-60\t1\tLAID-14\t3.5 m\twhipped");
        typed.put("what", "save");
        Seen saved = ada.post("/book", typed);
        assertEquals(200, saved.status(), saved.text());
        assertEquals(
                before.replace("BRAID-12,28 m", "BRAID-12,30 m") + "E-60,1,,LAID-14,3.5 m,whipped,,,,,,,\n",
                Files.readString(orders));
        String after = Files.readString(orders);
        assertEquals(200, ada.post("/book", typed).status(), "sent again");
        assertEquals(after, Files.readString(orders), "and in the file once");
        typed.put("c1.4", "31 m");
        Seen refused = ada.post("/book", typed);
        assertEquals(409, refused.status(), "the cell is not what it was when the page was made");
        assertTrue(refused.text().contains("length, which is \"30 m\" by now"), refused.text());
        assertTrue(refused.page().contains("value=\"31 m\""), "nothing that was typed is lost");
        Seen saves = ada.get("/book");
        Map<String, String> back = Map.of("version", saves.field("version"), "digest", saves.field("digest"));
        assertEquals(409, ada.post("/book/back", Map.of()).status(), "which save, of which book");
        assertEquals(
                409,
                ada.post("/book/back", Map.of("version", saves.field("version"), "digest", book.field("digest")))
                        .status());
        assertEquals(200, ada.post("/book/back", back).status());
        assertEquals(before, Files.readString(orders));
        assertEquals(409, ada.post("/book/back", back).status(), "there is nothing before it");
    }

    /** Bo put a row above while the program was started anew: what Ada typed goes into her row, and errors are beside it. */
    @Test
    void bookThatWasLookedAt_isKnownAfterTheProgramWasStartedAnew() throws IOException {
        ada.post("/who", Map.of("name", "Ada"));
        Seen book = ada.get("/book");
        Map<String, String> typed = new HashMap<>(
                Map.of("digest", book.field("digest"), "base", book.field("base"), "c1.4", "thirty", "what", "look"));
        Path orders = shop.folder().resolve("orders.csv");
        Files.writeString(
                orders, Files.readString(orders).replaceFirst("E-31,1", "E-30,1,,LAID-14,3 m,whipped,,,,,,,\nE-31,1"));
        int port = URI.create(server.url()).getPort();
        server.close();
        server = ShopServer.start(
                shop, new Listening(InetAddress.getLoopbackAddress(), port), Units.METRIC, ServedLoft.noFaults());
        Seen looked = ada.post("/book", typed);
        assertEquals(200, looked.status(), looked.text());
        String row = looked.page().substring(looked.page().indexOf("name=\"c2.0\""));
        assertTrue(row.startsWith("name=\"c2.0\" value=\"E-31\""), row);
        assertTrue(
                row.indexOf("value=\"thirty\"") > 0
                        && row.indexOf("length: found") > row.indexOf("value=\"thirty\"")
                        && row.indexOf("length: found") < row.indexOf("name=\"c3.0\""),
                row);
        typed.put("c1.4", "30 m");
        typed.put("what", "save");
        assertEquals(200, ada.post("/book", typed).status());
        assertTrue(Files.readString(orders).contains("E-31,1,sloop Redshank,BRAID-12,30 m"), Files.readString(orders));
        assertTrue(Files.readString(orders).contains("E-30,1"));
        Seen unknown = ada.post("/book", Map.of("digest", book.field("digest"), "base", "AAAA", "what", "save"));
        assertTrue(unknown.text().contains("does not say what book it was made from"), unknown.text());
    }

    /** Who looks at a page of the shop learns nothing of where its folder is. */
    @Test
    void folderOfTheShop_isOnNoPage() throws Exception {
        new BeginLedger(shop).begin(shop.read().found().orElseThrow().shop(), "Bo");
        ada.post("/who", Map.of("name", "Ada"));
        ada.post("/plan/accept", Map.of("run", planned().field("run")));
        Map<String, String> cut = Map.of("plan", "1", "reel", "E7", "piece", "E-31/1.1", "what", "cut");
        assertEquals(200, ada.post("/bench/reel", cut).status());
        Path orders = shop.folder().resolve("orders.csv");
        Files.writeString(orders, Files.readString(orders).replace("BRAID-12,28 m", "BRAID-12,35 m"));
        for (String path : new String[] {
            "/",
            "/bench",
            "/bench/reel?id=E7",
            "/splicing",
            "/orders",
            "/week",
            "/tables",
            "/reasons",
            "/rack",
            "/rack/reel?id=E7",
            "/print/sheet",
            "/print/cards",
            "/print/tags",
            "/book"
        }) {
            Seen seen = ada.get(path);
            assertFalse(seen.page().contains(shop.folder().toString()), () -> path + seen.text());
            assertFalse(seen.page().contains(String.valueOf(folder.getFileName())), path);
        }
        assertTrue(ada.get("/orders").text().contains(" SHOP"), "a command names it by a word");
    }

    /** A browser stays known when the program is started anew; its page is still good for one more booking. */
    @Test
    void browser_isKnownAfterTheProgramWasStartedAnew() throws IOException {
        String token = ada.token();
        int port = URI.create(server.url()).getPort();
        server.close();
        server = ShopServer.start(
                shop, new Listening(InetAddress.getLoopbackAddress(), port), Units.METRIC, ServedLoft.noFaults());
        Seen sent = ada.post("/who", Map.of("name", "Ada"), origin(), token);
        assertEquals(200, sent.status(), sent.text());
    }

    /** A key of the JDK's own tool, for this test alone. */
    @Test
    void pageOverHttps_hasCookiesForHttpsAlone() throws Exception {
        Path file = folder.resolve("keys.p12");
        Process made = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-alias",
                        "loft",
                        "-keyalg",
                        "EC",
                        "-storetype",
                        "PKCS12",
                        "-storepass",
                        "secret",
                        "-dname",
                        "CN=loft",
                        "-ext",
                        "SAN=ip:127.0.0.1",
                        "-keystore",
                        file.toString())
                .redirectErrorStream(true)
                .start();
        made.getInputStream().readAllBytes();
        assertEquals(0, made.waitFor());
        assertThrows(IOException.class, () -> Secured.of(file, "wrong"));
        Secured secured = Secured.of(file, "secret");
        try (ShopServer over = ShopServer.start(
                shop,
                new Listening(InetAddress.getLoopbackAddress(), 0, secured),
                Units.METRIC,
                ServedLoft.noFaults())) {
            assertTrue(over.url().startsWith("https://"), over.url());
            TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
            trust.init(secured.store());
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(null, trust.getTrustManagers(), null);
            HttpResponse<String> answer = HttpClient.newBuilder()
                    .sslContext(context)
                    .build()
                    .send(HttpRequest.newBuilder(URI.create(over.url())).build(), HttpResponse.BodyHandlers.ofString());
            assertEquals(200, answer.statusCode());
            assertTrue(answer.headers().firstValue("Set-Cookie").orElse("").contains("Secure"));
        }
    }

    private String origin() {
        return server.url().substring(0, server.url().length() - 1);
    }

    @Test
    void formOfAnotherSite_isRefused() {
        String token = ada.token();
        assertEquals(
                403,
                ada.post("/who", Map.of("name", "Eve"), "https://elsewhere.example", token)
                        .status());
        assertEquals(403, ada.post("/who", Map.of("name", "Eve"), "null", token).status());
        assertEquals(
                403,
                ada.post("/who", Map.of("name", "Eve"), origin(), "guessed").status());
        assertEquals(
                403,
                new Visitor(server)
                        .post("/who", Map.of("name", "Eve"), origin(), token)
                        .status(),
                "a token is one browser's");
        assertEquals(
                200, ada.post("/who", Map.of("name", "Ada"), origin(), token).status());
    }

    /** A name that somebody points at this machine; the client of the JDK sends none but the true one. */
    @Test
    void foreignHost_isNotAnswered() throws IOException {
        URI at = URI.create(server.url());
        try (Socket socket = new Socket(at.getHost(), at.getPort())) {
            OutputStream out = socket.getOutputStream();
            out.write("GET / HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"
                    .getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(answer.startsWith("HTTP/1.1 403"), answer);
            assertFalse(answer.contains("Eider"), answer);
        }
    }

    @Test
    void answers_allowNothingFromElsewhere() {
        Seen seen = ada.get("/");
        String policy =
                seen.whole().headers().firstValue("Content-Security-Policy").orElse("");
        assertTrue(policy.contains("default-src 'none'") && !policy.contains("unsafe"), policy);
        assertEquals(
                "same-origin",
                seen.whole().headers().firstValue("Referrer-Policy").orElse(""),
                "with no-referrer a browser says of a form that it comes from nowhere");
        String cookie = seen.whole().headers().firstValue("Set-Cookie").orElse("");
        assertTrue(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), cookie);
        assertFalse(seen.page().matches("(?s).*<[^>]+\\son[a-z]+=.*"), "no handler in the page");
        assertFalse(seen.page().contains("style="), "no style in the page");
        assertEquals("", seen.whole().headers().firstValue("Server").orElse(""));
    }

    @Test
    void whatIsTyped_neverBecomesMarkup() {
        String hostile = "<script>alert(1)</script>\u202e\u0000'\"&";
        Seen found = ada.get("/find?what=" + java.net.URLEncoder.encode(hostile, StandardCharsets.UTF_8));
        assertFalse(found.page().contains("<script>alert"), found.page());
        assertFalse(found.page().contains("\u202e"));
        ada.post("/who", Map.of("name", hostile));
        assertFalse(ada.get("/").page().contains("<script>alert"));
    }

    @ParameterizedTest
    @ValueSource(ints = {3_000_000, 5_000_000, 20_000_000})
    void formThatIsTooLarge_isRefused(int letters) {
        Seen sent = ada.post("/who", Map.of("name", "x".repeat(letters)));
        assertEquals(413, sent.status(), sent.text());
        assertTrue(sent.text().contains("A form of more than 2 MB is not taken."), sent.text());
        assertEquals(200, ada.get("/").status());
    }

    @Test
    void formOfTooManyCells_isRefused() {
        Map<String, String> cells = new HashMap<>();
        for (int at = 0; at <= Guard.MOST_FIELDS; at++) {
            cells.put("c" + at + ".1", "");
        }
        Seen many = ada.post("/book", cells);
        assertEquals(413, many.status());
        assertTrue(many.text().contains("more than 30000 cells"), many.text());
        assertEquals(200, ada.get("/").status());
    }

    @Test
    void formWithFiles_isRefused() {
        Seen sent = ada.send(
                "/who",
                "multipart/form-data; boundary=x",
                "--x\r\nContent-Disposition: form-data; name=\"name\"\r\n\r\nEve\r\n--x--\r\n");
        assertEquals(415, sent.status());
        assertTrue(sent.text().contains("Only the fields of a form are taken, no files."), sent.text());
    }

    /** Who asks without end waits; the others notice nothing. */
    @Test
    void deviceThatAsksTooFast_waits() {
        ada.get("/pair");
        Seen seen = ada.get("/pair");
        for (int asked = 0; asked < 20 * Pace.AT_ONCE && seen.status() == 200; asked++) {
            seen = ada.get("/assets/page.css").status() == 200 ? ada.get("/pair") : seen;
        }
        assertEquals(429, seen.status());
        assertEquals("1", seen.whole().headers().firstValue("Retry-After").orElse(""));
        assertTrue(seen.text().contains("Too much is asked for at once"), seen.text());
        assertEquals(200, new Visitor(server).get("/pair").status());
    }

    @Test
    void errorsOfTheFiles_areOnTheScreenOfToday() throws IOException {
        Files.writeString(shop.folder().resolve("orders.csv"), "nonsense\n");
        Seen today = ada.get("/");
        assertTrue(today.text().contains("The files have errors"), today.text());
        assertTrue(today.text().contains("orders.csv"), today.text());
        assertEquals(200, ada.get("/bench").status());
    }

    @Test
    void deviceBeyondTheMachine_isPairedWithACodeThatLastsAWhile() {
        MutableClock clock = new MutableClock();
        Devices devices = new Devices(new DeviceFile(shop.folder()), clock);
        assertFalse(devices.mayUse("tablet"));
        assertFalse(devices.pair("tablet", "bench", "00000000"), "no code was asked for");
        String code = devices.newCode();
        assertFalse(devices.pair("tablet", "bench", wrong(code)));
        assertTrue(devices.pair("tablet", "bench", code));
        assertFalse(devices.pair("phone", "thief", code), "a code pairs one device");
        assertTrue(new Devices(new DeviceFile(shop.folder()), clock).mayUse("tablet"), "kept");
        String late = devices.newCode();
        clock.pass(java.time.Duration.ofMinutes(11));
        assertFalse(devices.pair("phone", "late", late));
        String tried = devices.newCode();
        for (int i = 0; i < 5; i++) {
            assertFalse(devices.pair("phone", "guess", wrong(tried)));
        }
        assertFalse(devices.pair("phone", "guess", tried), "few tries");
        devices.revoke("tablet");
        assertFalse(devices.mayUse("tablet"));
        assertNotEquals(code, late);
    }

    /** Who taps "That is me" on the page of a reel comes back to that reel; after a refusal, to the page of the form. */
    @Test
    void nameSaidOnAPage_comesBackToThatPage() {
        Seen found = ada.get("/find?what=E%2F1");
        assertEquals("/find?what=E%2F1", found.field("back").replace("&amp;", "&"));
        Seen back = ada.post("/who", Map.of("name", "Ada", "back", found.field("back")));
        assertEquals(
                "/find?what=E%2F1",
                back.whole().uri().getPath() + "?" + back.whole().uri().getRawQuery());
        assertEquals("/", ada.post("/plan/accept", Map.of()).field("back"), "no page of a GET");
    }

    private static String wrong(String code) {
        return code.equals("12345678") ? "87654321" : "12345678";
    }

    /** A clock that a test sets on. */
    private static final class MutableClock extends Clock {
        private java.time.Instant now = java.time.Instant.parse("2026-03-02T07:00:00Z");

        void pass(java.time.Duration time) {
            now = now.plus(time);
        }

        @Override
        public java.time.ZoneId getZone() {
            return java.time.ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(java.time.ZoneId zone) {
            return this;
        }

        @Override
        public java.time.Instant instant() {
            return now;
        }
    }
}
