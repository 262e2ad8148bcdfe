package bitterend.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import bitterend.stock.Event;
import bitterend.stock.Fills;
import bitterend.stock.Head;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Ordered;
import bitterend.stock.PieceCut;
import bitterend.stock.Reel;
import bitterend.stock.RopeWork;
import bitterend.stock.Standing;
import bitterend.stock.Undo;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A ledger of an older version, as its program wrote it, is taken over whole; its movements become events. */
final class OlderLedgerTest {
    private static final Ordered ORDERED = new Ordered(
            new Ordered.Piece("1001", "1", 1, 0, ""),
            new Ordered.Make("braid", "4800 mm", "plain", new Length(5_000)),
            new Ordered.Bond("", ""),
            new Ordered.Wish("Harbour Board", "2026-03-05"),
            Ordered.Terms.NOT_KEPT);

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void olderLedger_becomesEventsOfWhatOneCommandWrote(int version) throws Exception {
        begin(version);
        LedgerException refused = assertThrows(LedgerException.Unreadable.class, () -> SqliteLedger.openToRead(folder));
        assertTrue(refused.sentence().contains("older version"), refused.sentence());
        try (Ledger ledger = open()) {
            List<Event> events = ledger.read(Ledger.Stock::events);
            assertEquals(
                    List.of("ledger begun 2", "posted 3", "spoiled 2", "split 2", "counted 1", "undone 1"),
                    events.stream()
                            .filter(event -> event.act().kind() != Event.Kind.GAUGED)
                            .map(event -> event.act().kind().word() + " "
                                    + event.movements().size())
                            .toList());
            assertEquals(11, ledger.read(Ledger.Stock::movements).size());
            assertEquals("Ada", events.get(1).act().who());
            assertEquals(List.of(), ledger.verify());
            assertEquals(
                    new Length(5_020),
                    events.get(1).movements().get(0).entry().piece().length());
        }
    }

    @Test
    void olderLedger_keepsItsReelsFlawsAndFills() throws Exception {
        begin(2);
        try (Ledger ledger = open()) {
            ledger.read(stock -> {
                Movement first = stock.history("K1").get(0);
                assertEquals("join", first.entry().after().flaws().get(0).what());
                assertEquals(
                        7,
                        stock.holdings().stream()
                                .mapToLong(holding -> holding.movements())
                                .max()
                                .orElseThrow());
                assertEquals(1, Fills.of(stock, "plywood").size());
                assertEquals(1, stock.standing(Event.Kind.SPOILED).size());
                return true;
            });
        }
    }

    @Test
    void olderEvent_isTakenBackWhole() throws Exception {
        begin(2);
        try (Ledger ledger = open()) {
            List<Event> events = Standing.events(ledger.read(Ledger.Stock::events));
            Event split = events.stream()
                    .filter(event -> event.act().kind() == Event.Kind.SPLIT)
                    .findFirst()
                    .orElseThrow();
            Event undone = new Undo(ledger, Event.Act.of(Event.Kind.UNDONE, "Ada", "")).event(split.number());
            assertEquals(2, undone.movements().size());
            assertTrue(
                    ledger.read(stock -> stock.findHolding("K1b")).orElseThrow().gone());
            assertEquals(List.of(), ledger.verify());
        }
    }

    @Test
    void clockThatWentBackInAnOlderLedger_isNoFault() throws Exception {
        begin(2);
        sql(
                "DROP TRIGGER movement_is_not_changed",
                "UPDATE movement SET at = '2026-03-05T08:00:00Z' WHERE number < 3",
                "CREATE TRIGGER movement_is_not_changed BEFORE UPDATE ON movement BEGIN SELECT RAISE(ABORT, ''); END");
        try (Ledger ledger = open()) {
            assertEquals(List.of(), ledger.verify());
        }
    }

    /** Version 3 kept neither what was asked of the rope of a piece nor how lengths were typed: that is not known. */
    @Test
    void versionThree_keepsItsChain_andWhatItDidNotKeepIsNotKnown() throws Exception {
        SqliteLedger.create(folder, Clock.systemUTC(), Event.Act.of(Event.Kind.OPENED, "Ada", ""), books -> {
            Reel reel = new Reel(
                    "K1",
                    "braid",
                    "L1",
                    new Reel.Contents(new Length(30_784), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                    List.of(),
                    Reel.Papers.NONE,
                    Reel.Custody.FREE,
                    true,
                    Reel.Where.UNKNOWN);
            books.append(new Movement.Entry(Movement.Kind.RECEIVED, reel, ""));
            books.append(new Movement.Entry(
                    Movement.Kind.CUT,
                    RopeWork.takenOff(reel, new Length(5_000)).orElseThrow(),
                    false,
                    "",
                    Movement.Origin.ofCut("p", "1001/1.1"),
                    new PieceCut(new Length(5_000), ORDERED)));
        });
        Head head = headNow();
        sql(
                "ALTER TABLE ordered DROP COLUMN certificate",
                "ALTER TABLE ordered DROP COLUMN own_rope",
                "ALTER TABLE ordered DROP COLUMN measured",
                "ALTER TABLE movement DROP COLUMN length_text",
                "ALTER TABLE movement DROP COLUMN held",
                "PRAGMA user_version = 3");
        assertThrows(LedgerException.Unreadable.class, () -> SqliteLedger.openToRead(folder));
        try (Ledger ledger = open()) {
            assertEquals(List.of(), ledger.verify());
            assertEquals(head, ledger.read(Ledger.Stock::head));
            List<Movement> movements = ledger.read(Ledger.Stock::movements);
            assertEquals(
                    "", movements.get(0).entry().after().contents().written().text());
            assertEquals(ORDERED, movements.get(1).entry().piece().ordered());
            assertFalse(ORDERED.terms().isKept());
        }
    }

    private Head headNow() {
        try (Ledger ledger = open()) {
            return ledger.read(Ledger.Stock::head);
        }
    }

    private Ledger open() {
        return SqliteLedger.open(folder, Clock.systemUTC());
    }

    /** Two reels; a cut whose rest is kept as a coil; the piece spoiled; a split; a count, and that taken back. */
    private void begin(int version) throws Exception {
        for (int script = 1; script <= version; script++) {
            try (InputStream text = SqliteLedger.class.getResourceAsStream("schema-" + script + ".sql")) {
                assertNotNull(text);
                script(new String(text.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        sql("PRAGMA application_id = " + Schema.APPLICATION, "PRAGMA user_version = " + version);
        String begun = "on the rack when the ledger was begun";
        move("RECEIVED", "K1", 1, 30_000, 30_000, "08:00:00", begun);
        move("RECEIVED", "K2", 1, 50_000, 50_000, "08:00:00", begun);
        sql("INSERT INTO flaw VALUES (1, 0, 12000, 12400, 0, 'join')");
        move("CUT", "K1", 2, -5_020, 24_980, "09:00:00", "");
        move("KEPT", "K1", 3, -1_980, 23_000, "09:00:00", "kept as K1-1");
        move("KEPT", "K1-1", 1, 1_980, 1_980, "09:00:00", "");
        move("SPOILED", "K1", 4, 0, 23_000, "10:00:00", "");
        move("KEPT", "K1-2", 1, 4_000, 4_000, "10:00:00", "spoiled A/1.1");
        move("SPLIT", "K1", 5, -3_000, 20_000, "11:00:00", "");
        move("SPLIT", "K1b", 1, 3_000, 3_000, "11:00:00", "");
        move("COUNTED", "K1", 6, -500, 19_500, "12:00:00", "");
        move("UNDONE", "K1", 7, 500, 20_000, "13:00:00", "");
        if (version == 2) {
            sql("INSERT INTO gauged VALUES (1, '2026-03-02T10:30:00Z', 'Ada', 'plywood', 90, 100)");
        }
    }

    private void move(String kind, String reel, int count, int by, int length, String at, String note)
            throws SQLException {
        boolean piece = kind.equals("CUT") || kind.equals("SPOILED");
        sql("INSERT INTO movement SELECT 1 + COUNT(*), '2026-03-02T" + at + "Z', 'Ada', '" + kind + "', '" + reel
                + "', "
                + count + ", " + by + ", '" + note + "', '', '" + (piece ? "p" : "") + "', '', 0, '"
                + (piece ? "A/1.1" : "") + "', " + (kind.equals("UNDONE") ? "10" : "NULL") + ", 0, 'braid', 'L1', "
                + length
                + ", 0, 0, 0, 'METERED', '', '', NULL, NULL, '', 'FREE', '', 0, '', 0, 'OUTSIDE' FROM movement");
    }

    private void sql(String... statements) throws SQLException {
        for (String each : statements) {
            script(each);
        }
    }

    private void script(String text) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(SqliteLedger.NAME));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(text);
        }
    }
}
