package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Units;
import bitterend.stock.LedgerPlace;
import bitterend.store.SqliteLedgerPlace;
import bitterend.work.CrashLog;
import bitterend.work.ShopAccess;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.lang.reflect.Proxy;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What no screen foresaw is a line where the program was started, found by the number that the page shows. */
final class FaultsTest {
    private static final String WHO = "Harbour Board";

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

    /** A place that cannot be asked from one thread, which nothing foresees. */
    private static LedgerPlace closedTo(String thread, LedgerPlace place) {
        return (LedgerPlace) Proxy.newProxyInstance(
                LedgerPlace.class.getClassLoader(), new Class<?>[] {LedgerPlace.class}, (proxy, method, args) -> {
                    if (Thread.currentThread().getName().equals(thread)) {
                        throw new IllegalStateException("no screen foresaw this of " + WHO);
                    }
                    return method.invoke(place, args);
                });
    }

    /** What goes wrong behind a page while something is worked out is noted, and said where people look at it. */
    @Test
    void faultBehindAPage_isNotedAndSaid(@TempDir Path folder) throws Exception {
        Path copy = new ServedLoft("eider-shed", folder).withLedger().folder();
        Clock clock = Clock.systemUTC();
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        try (ShopServer server = ShopServer.start(
                new ShopAccess(copy, closedTo("short", new SqliteLedgerPlace(copy, clock)), clock),
                new Listening(InetAddress.getLoopbackAddress(), 0),
                Units.METRIC,
                new PrintStream(lines, true, StandardCharsets.UTF_8))) {
            Visitor ada = new Visitor(server);
            Visitor.Seen seen = ada.get("/short");
            for (int i = 0; i < 300 && seen.text().contains("It is being worked out"); i++) {
                Thread.sleep(100);
                seen = ada.get("/short");
            }
            String number = saidOnceIn(seen.text(), lines, "short");
            assertTrue(ada.get("/short").text().contains(number), "and noted once");
            assertFalse(seen.page().contains("IllegalState"), seen.page());
            String said = lines.toString(StandardCharsets.UTF_8);
            Matcher file = Pattern.compile("; more of it, without a name, in (.+[.]txt)\\R")
                    .matcher(said);
            assertTrue(file.find(), said);
            Path report = Path.of(file.group(1));
            String text = Files.readString(report);
            Files.delete(report);
            assertFalse(report.startsWith(copy), said);
            assertTrue(text.contains("doing: serve short\nseed: 1\n"), text);
            assertTrue(text.contains("java.lang.IllegalStateException\n  at bitterend."), text);
            assertTrue(text.contains("  orders.csv ") && text.contains("  stock.db "), text);
            assertFalse(text.contains("Ada") || text.contains(WHO) || text.contains(copy.toString()), text);
        }
    }

    /** Whatever is worked out behind a page is begun so: plans, quotes and purchases, too. */
    @ParameterizedTest
    @ValueSource(strings = {"plan", "/buying"})
    void faultOfARun_hasANumberToo(String name) throws InterruptedException {
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        Faults faults = new Faults(
                new PrintStream(lines, true, StandardCharsets.UTF_8),
                Clock.systemUTC(),
                new CrashLog(Path.of("demo-data", "eider-shed"), Clock.systemUTC()));
        Run<String> run = new Runs(faults).begin(name, ear -> {
            throw new OutOfMemoryError("no screen foresaw this");
        });
        for (int i = 0; i < 100 && !run.isOver(); i++) {
            Thread.sleep(20);
        }
        assertTrue(run.fault().startsWith("There is not enough memory for this."), run.fault());
        saidOnceIn(run.fault(), lines, name);
    }

    private static String saidOnceIn(String page, ByteArrayOutputStream lines, String what) {
        Matcher number =
                Pattern.compile("with the number ([a-z0-9]{6}) says more").matcher(page);
        assertTrue(number.find(), page);
        String line = lines.toString(StandardCharsets.UTF_8);
        assertEquals(1, line.lines().count(), line);
        assertTrue(line.contains(" fault " + number.group(1) + ": " + what + ": "), line);
        return number.group(1);
    }
}
