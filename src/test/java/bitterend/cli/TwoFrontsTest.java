package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerPlace;
import bitterend.stock.Movement;
import bitterend.store.LoftServer;
import bitterend.store.SqliteLedger;
import bitterend.work.BeginShop;
import bitterend.work.Booking;
import bitterend.work.imports.TakeOver;
import bitterend.work.plans.PostPlan;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same day through two fronts: the command line, and one that calls the verbs. What a shop has afterwards, files, ledger
 * and answers, does not depend on the front. Were a rule in a front, it would.
 */
final class TwoFrontsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final String WHO = "Ada";
    private static final String REEL = "E7";

    @TempDir
    private Path folder = Path.of("");

    private Path typed = Path.of("");
    private Path called = Path.of("");
    private PlainFront front = new PlainFront(folder, DAY, WHO);

    @BeforeEach
    void openTwoShops() throws IOException {
        typed = DemoShop.copy("eider-shed", Files.createDirectory(folder.resolve("typed")));
        called = DemoShop.copy("eider-shed", Files.createDirectory(folder.resolve("called")));
        front = new PlainFront(called, DAY, WHO);
    }

    @Test
    void day_isTheSameThroughEitherFront() {
        command("stock", "open", "SHOP", "--who", WHO);
        front.open();
        assertAlike();

        plan();
        front.plan(0, Who.of(null));
        assertAlike();

        command("sheet", "SHOP", "--all", "--issue", "--who", WHO);
        assertEquals(1, front.issue().plan().number());
        assertAlike();

        command("stock", "post", "SHOP", "--reel", REEL, "--who", WHO);
        assertInstanceOf(PostPlan.Result.Posted.class, front.post(REEL));
        assertAlike();

        plan("--from", "1");
        front.plan(1, Who.of(null));
        assertAlike();

        plan("--from", "2", "--withdraw");
        front.planAnew(2);
        assertAlike();
        assertEquals(Set.of(REEL), front.issuedReels(1), "what was posted is not called back");
        assertEquals(List.of("plans/1.json", "plans/2.json", "plans/3.json"), plans());

        assertEquals(command("orders", "SHOP", "--day", DAY.toString(), "--json"), front.orders());
        assertEquals(
                command("quote", "SHOP", "--order", "E-32", "--day", DAY.toString(), "--json", "--time", "20s"),
                front.quote("E-32"));
        assertEquals(
                command("buy", "SHOP", "--day", DAY.toString(), "--json", "--time", "20s", "--threads", "1"),
                front.buy());
        assertAlike();
    }

    @Test
    void newShop_isTheSameThroughEitherFront() {
        Path one = folder.resolve("one").resolve("loft");
        Path other = folder.resolve("other").resolve("loft");
        assertEquals(
                0,
                Run.of("init", one.toString(), "--bench-tools", "metric", "--example")
                        .code());
        assertInstanceOf(BeginShop.Result.Begun.class, PlainFront.begin(other, "loft"));
        assertEquals(files(one), files(other));
        assertInstanceOf(BeginShop.Result.NotBegun.class, PlainFront.begin(other, "again"));
        assertEquals(files(one), files(other));
    }

    /** Versions before bear the time; the files of the shop do not. */
    @Test
    void ownSheet_isTakenOverAlikeThroughEitherFront() throws IOException {
        Path sheet = folder.resolve("own.csv");
        Files.writeString(sheet, "Order,Rope,Length,Due\nE-40,BRAID-12,3,13/3/2026\n");
        command("import", "SHOP", sheet.toString(), "--answer", "unit Length=m", "--accept", "--who", WHO);
        assertInstanceOf(TakeOver.Result.Done.class, front.takeOver(sheet, Map.of("unit Length", "m")));
        for (String file : List.of("orders.csv", "mappings.json")) {
            assertEquals(Files.readString(typed.resolve(file)), Files.readString(called.resolve(file)));
        }
        assertTrue(Files.readString(called.resolve("orders.csv")).contains("E-40,1,,BRAID-12,3 m"));
        command("import", "SHOP", "--back");
        assertEquals(
                Files.readString(Path.of("demo-data/eider-shed/orders.csv")),
                Files.readString(typed.resolve("orders.csv")));
    }

    @Test
    void postingTwice_isNoneOfTheFronts() {
        command("stock", "open", "SHOP", "--who", WHO);
        front.open();
        plan();
        front.plan(0, Who.of(null));
        for (int time = 0; time < 2; time++) {
            command("stock", "post", "SHOP", "--reel", REEL, "--who", WHO);
            PostPlan.Result result = front.post(REEL);
            assertEquals(
                    time == 0,
                    ((PostPlan.Result.Posted) result).posted().already() == 0,
                    "posted " + (time + 1) + " times");
            assertAlike();
        }
    }

    /** A reel is of a rope of the shop, whichever front says otherwise. */
    @Test
    void reelOfARopeThatTheShopDoesNotHave_isNoneOfTheFronts() {
        command("stock", "open", "SHOP", "--who", WHO);
        front.open();
        assertEquals(
                3,
                Run.of("stock", "correct", typed.toString(), REEL, "--rope", "NO-SUCH")
                        .code());
        assertEquals(new Booking.Refused("there is no rope NO-SUCH in ropes.json"), front.correct(REEL, "NO-SUCH"));
        assertAlike();
    }

    /** Carried to a server, booked in there what another loft sent, and carried back. */
    @Test
    void ledgerOnAServer_isTheSameThroughEitherFront() throws IOException {
        command("stock", "open", "SHOP", "--who", WHO);
        front.open();
        String typedLoft = LoftServer.shared().name(typed);
        String calledLoft = LoftServer.shared().name(called);
        command("stock", "move-ledger", "SHOP");
        front.carry(LedgerPlace.Where.SERVER);
        assertAlike();
        assertFalse(Files.exists(called.resolve(SqliteLedger.NAME)));

        neighbour(typed, typedLoft);
        neighbour(called, calledLoft);
        command("stock", "arrive", "SHOP", "E9", "--as", "N9", "--who", WHO);
        assertInstanceOf(Booking.Booked.class, front.arrive("E9", "N9"));
        assertAlike();
        Run again = Run.of("stock", "arrive", typed.toString(), "E9", "--as", "N8");
        Booking.Refused refused = (Booking.Refused) front.arrive("E9", "N8");
        assertEquals(3, again.code());
        assertTrue(refused.why().startsWith("no reel E9 is on the way to this loft"), refused.why());
        assertTrue(again.err().contains("no reel E9 is on the way to this loft"), again.err());
        assertAlike();

        command("stock", "move-ledger", "SHOP", "--to-file");
        front.carry(LedgerPlace.Where.FILE);
        for (Path shop : List.of(typed, called)) {
            LoftServer.forget(shop);
        }
        assertAlike();
        assertTrue(Files.exists(called.resolve(SqliteLedger.NAME)));
    }

    /** Another loft of the server, that sends a reel to that of a shop. */
    private static void neighbour(Path shop, String loft) throws IOException {
        Path other = DemoShop.copy("eider-shed", Files.createDirectory(shop.resolveSibling("neighbour")));
        LoftServer.shared().name(other);
        assertEquals(0, Run.of("stock", "open", other.toString()).code());
        assertEquals(0, Run.of("stock", "send", other.toString(), "E9", loft).code());
    }

    @Test
    void postedThroughBothAtOnce_isBookedOnce() {
        command("stock", "open", "SHOP", "--who", WHO);
        plan();
        PlainFront other = new PlainFront(typed, DAY, "Bea");
        CompletableFuture<String> typing =
                CompletableFuture.supplyAsync(() -> command("stock", "post", "SHOP", "--reel", REEL, "--who", WHO));
        CompletableFuture<PostPlan.Result> calling = CompletableFuture.supplyAsync(() -> other.post(REEL));
        typing.join();
        assertInstanceOf(PostPlan.Result.Posted.class, calling.join());
        try (Ledger ledger = SqliteLedger.openToRead(typed)) {
            List<String> cut = ledger.read(Ledger.Stock::movements).stream()
                    .filter(movement -> movement.entry().kind() == Movement.Kind.CUT)
                    .map(movement -> movement.entry().origin().piece())
                    .toList();
            assertFalse(cut.isEmpty());
            assertEquals(cut.stream().distinct().toList(), cut);
            assertEquals(List.of(), ledger.verify());
        }
    }

    @Test
    void frontThatDoesSomethingElse_isFound() {
        command("stock", "open", "SHOP", "--who", WHO);
        front.open();
        plan();
        front.plan(0, "somebody else");
        assertNotEquals(ledger(typed), ledger(called));
    }

    private void plan(String... more) {
        List<String> words = List.of("plan", "SHOP", "--day", DAY.toString(), "--effort", "reproducible");
        command(Stream.concat(words.stream(), Stream.of(more)).toArray(String[]::new));
    }

    /** A command that is done; what it prints. */
    private String command(String... words) {
        Run run = Run.of(Stream.of(words)
                .map(word -> word.equals("SHOP") ? typed.toString() : word)
                .toArray(String[]::new));
        assertTrue(run.code() == 0 || run.code() == 4, String.join(" ", words) + "\n" + run.err());
        return run.out();
    }

    private void assertAlike() {
        assertEquals(files(typed), files(called));
        assertEquals(ledger(typed), ledger(called));
    }

    private List<String> plans() {
        return files(called).keySet().stream()
                .filter(name -> name.matches("plans/[0-9]+[.]json"))
                .toList();
    }

    /** Every file that a verb writes, by name; sheets are how one front shows what it was told. */
    private static Map<String, String> files(Path shop) {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(shop)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = shop.relativize(file).toString().replace('\\', '/');
                if (!isLedger(name) && !name.equals("sheet.html")) {
                    files.put(name, withoutMarks(Files.readString(file)));
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return files;
    }

    /** The ledger as a file, and as one that is kept since it was carried to a server. */
    private static boolean isLedger(String name) {
        return name.equals(SqliteLedger.NAME) || name.startsWith(SqliteLedger.NAME + "-moved-");
    }

    /** Every event with its movements, but for the moment, wherever the ledger is. */
    private static List<String> ledger(Path shop) {
        return ShopArgument.access(shop).reading(ledger -> ledger.read(Ledger.Stock::events)).stream()
                .map(TwoFrontsTest::told)
                .toList();
    }

    private static String told(Event event) {
        Event.Act act = event.act();
        List<String> movements = event.movements().stream()
                .map(movement -> movement.entry() + " " + movement.who())
                .toList();
        return withoutMarks(act.kind() + " " + act.who() + " " + act.note() + " " + act.facts() + " " + movements);
    }

    /** Two ledgers have two names, two chains and two lofts, and a file with such a name has another digest. */
    private static String withoutMarks(String text) {
        return text.replaceAll("\\b[0-9a-f]{12,64}\\b", "...").replaceAll("\\bloft-[0-9]+\\b", "loft-...");
    }
}
