package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.store.LoftServer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reels that go from one loft to another on a server: an event on each side, each taken back while the other allows it. */
final class LoftsTest {
    private static final LoftServer SERVER = LoftServer.shared();

    @TempDir
    private Path folder = Path.of("");

    private Path here = Path.of("");
    private Path there = Path.of("");
    private String hereName = "";
    private String thereName = "";

    @BeforeEach
    void open() throws IOException {
        here = TestShop.in(Files.createDirectory(folder.resolve("here"))).path();
        there = TestShop.in(Files.createDirectory(folder.resolve("there"))).path();
        hereName = SERVER.name(here);
        thereName = SERVER.name(there);
        run(0, "stock", "open", "" + here);
        run(0, "stock", "open", "" + there);
        run(0, "stock", "receive", "" + here, "N1", "DB12", "50 m", "--lot", "A7", "--flaws", "20 m to 20.5 m: join");
    }

    private static Run run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), String.join(" ", args) + "\n" + run.err() + run.out());
        return run;
    }

    @Test
    void reel_leavesOneLoftAndComesInAtTheOther() {
        run(0, "stock", "send", "" + here, "N1", thereName);
        assertTrue(run(0, "stock", "arrive", "" + there).out().contains("N1"));
        for (Path side : List.of(here, there)) {
            Run verified = run(0, "stock", "verify", "" + side);
            assertTrue(verified.out().contains("on the way"), verified.out());
        }
        run(0, "stock", "arrive", "" + there, "N1");
        assertTrue(run(0, "stock", "list", "" + there).out().contains("A7"));
        Run gone = run(3, "stock", "arrive", "" + there, "N1");
        assertTrue(gone.err().contains("no reel N1 is on the way"), gone.err());
        for (Path side : List.of(here, there)) {
            assertFalse(run(0, "stock", "verify", "" + side).out().contains("on the way"));
            assertTrue(run(0, "stock", "arrive", "" + side).out().contains("nothing is on the way"));
        }
        Event sent = last(here);
        Event came = last(there);
        assertEquals(sent.hash(), came.fact("sent by link"));
        assertEquals("" + sent.number(), came.fact("sent by event"));
        assertEquals(hereName, came.fact("sent by"));
        assertEquals(
                sent.movements().get(0).entry().after(),
                came.movements().get(0).entry().after());
    }

    @Test
    void eachSide_isTakenBackWhileTheOtherAllowsIt() {
        run(0, "stock", "send", "" + here, "N1", thereName);
        String sent = "" + last(here).number();
        run(0, "stock", "arrive", "" + there, "N1", "--as", "T1");
        String came = "" + last(there).number();
        Run refused = run(3, "stock", "undo", "" + here, sent);
        assertTrue(refused.err().contains("it came in at loft " + thereName + " with event " + came), refused.err());

        run(0, "stock", "hold", "" + there, "T1");
        run(3, "stock", "undo", "" + there, came);
        run(0, "stock", "undo", "" + there, "" + last(there).number());
        run(0, "stock", "undo", "" + there, came);
        assertTrue(run(0, "stock", "arrive", "" + there).out().contains("N1"));
        run(0, "stock", "undo", "" + here, sent);
        assertTrue(run(0, "stock", "arrive", "" + there).out().contains("nothing is on the way"));
        run(3, "stock", "arrive", "" + there, "N1");
        run(0, "stock", "verify", "" + here);
        run(0, "stock", "verify", "" + there);
    }

    /** Taking back here and coming in there at the same moment: one of the two, never both. */
    @Test
    void takingBackAndComingIn_excludeOneAnother() throws Exception {
        for (int i = 0; i < 6; i++) {
            String reel = "P" + i;
            run(0, "stock", "receive", "" + here, reel, "DB12", "50 m");
            run(0, "stock", "send", "" + here, reel, thereName);
            String sent = "" + last(here).number();
            CompletableFuture<Integer> back = CompletableFuture.supplyAsync(
                    () -> Run.of("stock", "undo", "" + here, sent).code());
            CompletableFuture<Integer> comes = CompletableFuture.supplyAsync(
                    () -> Run.of("stock", "arrive", "" + there, reel).code());
            assertEquals(3, back.get() + comes.get(), reel);
        }
        run(0, "stock", "verify", "" + here);
        run(0, "stock", "verify", "" + there);
    }

    @Test
    void sendingElsewhere_hasOneSide() {
        run(0, "stock", "send", "" + here, "N1", "North Quay");
        assertEquals("", last(here).fact("sent to"));
        assertTrue(run(0, "stock", "arrive", "" + there).out().contains("nothing is on the way"));
        Run own = run(3, "stock", "send", "" + here, "R-105", hereName);
        assertTrue(own.err().contains("is this one"), own.err());
    }

    @Test
    void ropeThatALoftDoesNotHave_isRefused() throws IOException {
        Path ropes = here.resolve("ropes.json");
        String one = Files.readString(ropes);
        String rope = one.substring(one.indexOf("{\"id\""), one.indexOf("]}"));
        Files.writeString(ropes, one.replace("]}", "," + rope.replace("12", "13") + "]}"));
        run(0, "stock", "receive", "" + here, "N2", "DB13", "50 m");
        run(0, "stock", "send", "" + here, "N2", thereName);
        Run refused = run(3, "stock", "arrive", "" + there, "N2");
        assertTrue(refused.err().contains("ropes.json of this loft does not have"), refused.err());
        Files.writeString(ropes, one);
        run(0, "stock", "receive", "" + there, "N2", "DB12", "50 m");
        run(0, "stock", "send", "" + there, "N2", hereName);
        run(0, "stock", "arrive", "" + here, "N2", "--as", "N3");
    }

    /** The loft that sent is put back to a copy of before: what came in has one side alone, and verify says so. */
    @Test
    void sideThatIsMissing_isFound() throws Exception {
        Path copy = folder.resolve("b.db");
        run(0, "stock", "backup", "" + here, "" + copy);
        run(0, "stock", "send", "" + here, "N1", thereName);
        run(0, "stock", "arrive", "" + there, "N1");
        run(0, "stock", "move-ledger", "" + here, "--to-file");
        LoftServer.forget(here);
        run(0, "stock", "restore", "" + here, "" + copy);
        SERVER.dropLoft(hereName);
        SERVER.name(here, hereName);
        run(0, "stock", "move-ledger", "" + here);
        Run damaged = run(3, "stock", "verify", "" + there);
        assertTrue(damaged.err().contains("says that loft " + hereName + " sent it"), damaged.err());
    }

    @Test
    void json_saysWhatIsOnTheWay() {
        run(0, "stock", "send", "" + here, "N1", thereName);
        String json = run(0, "stock", "arrive", "" + there, "--json").out();
        for (Map.Entry<String, String> member : Map.of(
                        "from", hereName, "to", thereName, "format", "bitterend/on-the-way/1")
                .entrySet()) {
            Matcher found =
                    Pattern.compile("\"" + member.getKey() + "\": \"([^\"]*)\"").matcher(json);
            assertTrue(found.find(), json);
            assertEquals(member.getValue(), found.group(1));
        }
    }

    private static Event last(Path shop) {
        List<Event> events = ShopArgument.access(shop).reading(ledger -> ledger.read(Ledger.Stock::events));
        return events.get(events.size() - 1);
    }
}
