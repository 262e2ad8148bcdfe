package bitterend.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.stock.Event;
import bitterend.stock.Flaw;
import bitterend.stock.Head;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LedgerPlace;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import bitterend.stock.Ordered;
import bitterend.stock.PieceCut;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import bitterend.stock.RopeWork;
import bitterend.stock.Undo;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every ledger keeps to, wherever it is kept; each place of a ledger runs these cases. */
abstract class LedgerContract {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T08:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder = Path.of("");

    private LedgerPlace place = new SqliteLedgerPlace(Path.of(""), CLOCK);

    /** A place where no ledger has been begun. */
    abstract LedgerPlace newPlace(Path folder, Clock clock);

    /** A connection behind the back of the program, where the names of the tables are those of the ledger. */
    abstract Connection behind() throws SQLException;

    /** What it tells of text that can be kept. */
    abstract String hostile();

    @BeforeEach
    void begin() {
        place = newPlace(folder, CLOCK);
        place.begin(act(Event.Kind.OPENED).with("reels", "2"), LedgerContract::twoReels);
    }

    /** What a ledger is begun with: a reel with a flaw, and one without. */
    static void twoReels(Ledger.Books books) {
        books.append(new Entry(Kind.RECEIVED, reel("K1", "L1", List.of(flaw("join"))), ""));
        books.append(new Entry(Kind.RECEIVED, reel("K2", "L1", List.of()), ""));
    }

    final LedgerPlace place() {
        return place;
    }

    @Test
    void ledgerThatIsThere_isNotBegunAgain() {
        assertTrue(place.isKept());
        assertThrows(LedgerException.Refused.class, () -> place.begin(act(Event.Kind.OPENED), books -> {}));
        assertEquals(2, movements().size());
    }

    @Test
    void failedBeginning_leavesNoLedgerBehind() {
        LedgerPlace other = newPlace(folder.resolve("other"), CLOCK);
        assertThrows(
                IllegalStateException.class,
                () -> other.begin(act(Event.Kind.OPENED), books -> {
                    books.append(new Entry(Kind.RECEIVED, reel("K1", "L1", List.of()), ""));
                    throw new IllegalStateException("no reels");
                }));
        assertThrows(LedgerException.class, other::toRead);
        other.begin(act(Event.Kind.OPENED), books -> {});
        assertTrue(other.isKept());
    }

    @Test
    void ledgerThatWasNeverBegun_isTold() {
        LedgerPlace other = newPlace(folder.resolve("other"), CLOCK);
        assertFalse(other.isKept());
        for (LedgerException refused : List.of(
                assertThrows(LedgerException.Refused.class, other::toRead),
                assertThrows(LedgerException.Refused.class, other::toWrite))) {
            assertTrue(refused.sentence().contains("bitterend stock open SHOP"), refused.sentence());
        }
    }

    @Test
    void sameId_countsOnce() {
        Event.Act once = act(Event.Kind.MOVED).withId("tap 1");
        Event first = move(once, "bay 1");
        assertEquals(first, move(once, "bay 2"));
        assertEquals(3, movements().size());
        LedgerException refused = assertThrows(
                LedgerException.Refused.class, () -> move(act(Event.Kind.SOLD).withId("tap 1"), "bay 2"));
        assertTrue(refused.sentence().contains("the id tap 1 was given to event 2"), refused.sentence());
    }

    @Test
    void workThatThrows_writesNothing() {
        try (Ledger ledger = place.toWrite()) {
            assertThrows(
                    IllegalStateException.class,
                    () -> ledger.change(act(Event.Kind.RECEIVED), books -> {
                        books.append(new Entry(Kind.RECEIVED, reel("K3", "L1", List.of()), ""));
                        throw new IllegalStateException("the bench is on fire");
                    }));
            assertEquals(Optional.empty(), ledger.change(act(Event.Kind.MOVED), books -> {}));
            assertEquals(1, ledger.read(Ledger.Stock::events).size());
            assertEquals(List.of(), ledger.verify());
        }
    }

    @Test
    void hostileText_comesBackAsItWas() {
        String hostile = hostile();
        Reel reel = reel(hostile, hostile, List.of(flaw(hostile)));
        try (Ledger ledger = place.toWrite()) {
            new Rack(ledger, hostile).receive(reel, hostile);
            Movement read = ledger.read(stock -> stock.history(hostile)).get(0);
            assertEquals(reel, read.entry().after());
            assertEquals(hostile, read.entry().note());
            assertEquals(hostile, read.who());
            assertEquals(List.of(), ledger.verify());
        }
    }

    /** Every part of the stock, after every kind of row was written. */
    @Test
    void day_isReadAsItWasBooked() {
        day();
        try (Ledger ledger = place.toRead()) {
            assertEquals(List.of(), ledger.verify());
            ledger.read(stock -> {
                List<Movement> all = stock.movements();
                assertEquals(
                        all,
                        stock.events().stream()
                                .flatMap(event -> event.movements().stream())
                                .toList());
                assertEquals(
                        List.of("K1", "K1b", "K2"),
                        stock.holdings().stream().map(each -> each.id()).toList());
                for (Movement movement : all) {
                    assertEquals(movement, stock.findMovement(movement.number()).orElseThrow());
                }
                for (Event event : stock.events()) {
                    assertEquals(event, stock.findEvent(event.number()).orElseThrow());
                    assertEquals(event, stock.eventOfId(event.act().id()).orElseThrow());
                }
                assertEquals(
                        all.stream()
                                .filter(each -> each.entry().reel().equals("K1"))
                                .toList(),
                        stock.history("K1"));
                assertEquals(3, stock.ofPlan("p").size());
                assertEquals(stock.ofPlan("p"), stock.ofPieces());
                assertEquals(stock.events().size(), stock.head().event());
                assertEquals(Optional.empty(), stock.findHolding("K9"));
                assertEquals(Optional.empty(), stock.findMovement(99));
                return true;
            });
        }
    }

    @Test
    void rows_cannotBeChangedOrDeleted() throws SQLException {
        day();
        for (String table : List.of("event", "fact", "movement", "flaw", "ordered")) {
            String column = table.equals("fact")
                    ? "value"
                    : table.equals("flaw") ? "what" : table.equals("ordered") ? "due" : "note";
            assertThrows(SQLException.class, () -> behind("UPDATE " + table + " SET " + column + " = 'x'"), table);
            assertThrows(SQLException.class, () -> behind("DELETE FROM " + table), table);
        }
        try (Ledger ledger = place.toRead()) {
            assertEquals(List.of(), ledger.verify());
        }
    }

    @Test
    void backup_isALedgerOfItsOwn() {
        day();
        Path copies = folder.resolve("copy");
        Path copy = copies.resolve(SqliteLedger.NAME);
        assertTrue(copies.toFile().mkdir());
        List<Event> events;
        try (Ledger ledger = place.toRead()) {
            events = ledger.read(Ledger.Stock::events);
            Head head = ledger.backup(copy);
            assertEquals(ledger.read(Ledger.Stock::head), head);
            assertThrows(LedgerException.Refused.class, () -> ledger.backup(copy));
        }
        try (Ledger ledger = SqliteLedger.open(copies, CLOCK)) {
            assertEquals(events, ledger.read(Ledger.Stock::events));
            assertEquals(List.of(), ledger.verify());
        }
    }

    @Test
    void clockThatGoesBack_datesNothingBeforeWhatCameEarlier() {
        try (Ledger ledger =
                newPlaceOfTheSame(Clock.offset(CLOCK, Duration.ofDays(-1))).toWrite()) {
            new Rack(ledger, "Ada").move("K1", "bay 2", "");
            assertEquals(List.of(), ledger.verify());
        }
    }

    /** The same ledger under another clock. */
    abstract LedgerPlace newPlaceOfTheSame(Clock clock);

    /** A day with every kind of row. */
    final void day() {
        try (Ledger ledger = place.toWrite()) {
            day(ledger);
        }
    }

    static void day(Ledger ledger) {
        Rack rack = new Rack(ledger, "Ada");
        rack.move("K1", "bay 2", "tidied");
        for (int i = 0; i < 2; i++) {
            Event cut = ledger.change(act(Event.Kind.POSTED).with("plan", "p"), LedgerContract::cut)
                    .orElseThrow();
            if (i == 0) {
                new Undo(ledger, act(Event.Kind.UNDONE)).event(cut.number());
            }
        }
        rack.split("K1", Written.worked(new Length(4_000)), "K1b", "");
        Event hold = rack.hold("K2", "tag missing");
        new Undo(ledger, act(Event.Kind.UNDONE)).event(hold.number());
        rack.sell("K1b", "", LocalDate.MIN, LocalDate.MIN);
        rack.count(
                "K2",
                Written.parsePresent("95 ft 2 in").value().orElseThrow(),
                new Length(500),
                Reel.Known.COUNTED,
                "tape");
    }

    /** A piece of 5 m off reel K1 by plan p, with all that was ordered of it. */
    static void cut(Ledger.Books books) {
        Length piece = new Length(5_000);
        Reel reel = books.findHolding("K1").orElseThrow().reel();
        Ordered ordered = new Ordered(
                new Ordered.Piece("1001", "1", 1, 0, ""),
                new Ordered.Make("braid", "4800 mm", "plain", piece),
                new Ordered.Bond("S1", "lot"),
                new Ordered.Wish("Harbour Board", "2026-03-05"),
                new Ordered.Terms("3.1", false, "pin to pin"));
        books.append(new Entry(
                Kind.CUT,
                RopeWork.takenOff(reel, piece.plus(new Length(10))).orElseThrow(),
                false,
                "",
                Origin.ofCut("p", "1001/1.1"),
                new PieceCut(piece, ordered)));
    }

    private Event move(Event.Act act, String bay) {
        try (Ledger ledger = place.toWrite()) {
            return ledger.change(act, books -> {
                        Reel reel = books.findHolding("K1").orElseThrow().reel();
                        books.append(new Entry(Kind.MOVED, reel, bay));
                    })
                    .orElseThrow();
        }
    }

    final List<Movement> movements() {
        try (Ledger ledger = place.toRead()) {
            return new ArrayList<>(ledger.read(Ledger.Stock::movements));
        }
    }

    final void behind(String statement) throws SQLException {
        try (Connection connection = behind();
                Statement each = connection.createStatement()) {
            each.execute(statement);
        }
    }

    static Event.Act act(Event.Kind kind) {
        return Event.Act.of(kind, "Ada", "");
    }

    static Flaw flaw(String what) {
        return new Flaw(new Length(20_000), new Length(20_400), new Length(100), what);
    }

    static Reel reel(String id, String text, List<Flaw> flaws) {
        return new Reel(
                id,
                "braid",
                text,
                new Reel.Contents(new Length(30_000), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                flaws,
                new Reel.Papers("3.1", "K22-0113", LocalDate.of(2028, 1, 1), LocalDate.of(2026, 1, 5)),
                Reel.Custody.FREE,
                true,
                Reel.Where.UNKNOWN);
    }
}
