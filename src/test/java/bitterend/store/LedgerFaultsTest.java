package bitterend.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bitterend.measure.Length;
import bitterend.stock.Event;
import bitterend.stock.Flaw;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes wrong around the ledger is told in a sentence, and damages nothing. */
final class LedgerFaultsTest {
    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void begin() {
        SqliteLedger.create(folder, Clock.systemUTC(), begun(), books -> {});
    }

    @Test
    void ledgerThatIsThere_isNotBegunAgain() {
        receive("K1");
        assertThrows(
                LedgerException.Refused.class,
                () -> SqliteLedger.create(folder, Clock.systemUTC(), begun(), books -> {}));
        assertEquals(1, movements());
    }

    @Test
    void failedBeginning_leavesNoLedgerBehind() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        assertThrows(
                LedgerException.Refused.class,
                () -> SqliteLedger.create(other, Clock.systemUTC(), begun(), books -> {
                    throw new LedgerException.Refused("no reels");
                }));
        assertThrows(LedgerException.class, () -> SqliteLedger.openToRead(other));
        SqliteLedger.create(other, Clock.systemUTC(), begun(), books -> {});
    }

    @Test
    void newerVersion_isRefusedAndUntouched() throws Exception {
        receive("K1");
        sql("PRAGMA user_version = 99");
        byte[] before = Files.readAllBytes(file());
        LedgerException refused = assertThrows(LedgerException.Unreadable.class, () -> open().close());
        assertTrue(refused.sentence().contains("newer version"), refused.sentence());
        assertArrayEquals(before, Files.readAllBytes(file()));
    }

    @Test
    void otherDatabase_isNotTakenForALedger() throws Exception {
        sql("PRAGMA application_id = 7");
        LedgerException refused = assertThrows(LedgerException.Unreadable.class, () -> open().close());
        assertTrue(refused.sentence().contains("not a stock ledger"), refused.sentence());
    }

    @Test
    void textFile_isNotTakenForALedger() throws Exception {
        Files.writeString(file(), "reel,rope,length\n".repeat(500), StandardCharsets.UTF_8);
        assertThrows(LedgerException.Unreadable.class, () -> open().close());
        assertTrue(Files.readString(file(), StandardCharsets.UTF_8).startsWith("reel,rope"));
    }

    @Test
    void damagedPages_areFoundByVerify() throws Exception {
        for (int i = 0; i < 200; i++) {
            receive("K" + i);
        }
        byte[] bytes = Files.readAllBytes(file());
        for (int i = bytes.length / 2; i < bytes.length / 2 + 4096; i++) {
            bytes[i] = (byte) 0xa5;
        }
        Files.write(file(), bytes);
        boolean told;
        try (Ledger ledger = SqliteLedger.openToRead(folder)) {
            told = !ledger.verify().isEmpty();
        } catch (LedgerException.Unreadable damaged) {
            told = true;
        }
        assertTrue(told);
        assertArrayEquals(bytes, Files.readAllBytes(file()));
    }

    @Test
    void movements_cannotBeChangedOrDeleted() {
        receive("K1");
        assertThrows(SQLException.class, () -> sql("UPDATE movement SET by_mm = 1"));
        assertThrows(SQLException.class, () -> sql("DELETE FROM movement"));
        assertEquals(1, movements());
    }

    @Test
    void wrongSums_areFoundByVerify() throws Exception {
        receive("K1");
        sql("DROP TRIGGER movement_is_not_changed", "UPDATE movement SET by_mm = by_mm + 1");
        try (Ledger ledger = open()) {
            String told = ledger.verify().toString();
            assertTrue(told.contains("the trigger movement_is_not_changed is missing"), told);
            assertTrue(told.contains("movement 1 (received, reel K1) leaves 100 mm"), told);
            assertTrue(told.contains("event 1 (received) or what is before it was changed"), told);
        }
    }

    @Test
    void readOnlyFolder_canBeReadAndIsToldWhenWritten() throws Exception {
        receive("K1");
        assumeTrue(file().toFile().setWritable(false) && folder.toFile().setWritable(false));
        assumeTrue(!Files.isWritable(file()), "the super-user writes everywhere; .ci/ledger mounts it read-only");
        try {
            assertEquals(1, movements());
            assertThrows(LedgerException.Unwritable.class, () -> receive("K2"));
            assertEquals(1, movements());
        } finally {
            assertTrue(folder.toFile().setWritable(true));
        }
    }

    @Test
    void workThatThrows_writesNothing() {
        try (Ledger ledger = open()) {
            assertThrows(
                    IllegalStateException.class,
                    () -> ledger.change(begun(), books -> {
                        books.append(new Movement.Entry(Movement.Kind.RECEIVED, reel("K1", "", List.of()), ""));
                        throw new IllegalStateException("the bench is on fire");
                    }));
        }
        assertEquals(0, movements());
    }

    @Test
    void hostileText_comesBackAsItWas() {
        String hostile = "'); DROP TABLE movement; -- \"\u0000\n\t\u202e\ud83e\uddf5 \\ % _ <b>";
        Flaw flaw = new Flaw(new Length(5), new Length(6), new Length(1), hostile);
        Reel reel = reel(hostile, hostile, List.of(flaw));
        try (Ledger ledger = open()) {
            new Rack(ledger, hostile).receive(reel, hostile);
            Movement read = ledger.read(stock -> stock.history(hostile)).get(0);
            assertEquals(reel, read.entry().after());
            assertEquals(hostile, read.entry().note());
            assertEquals(hostile, read.who());
            assertEquals(List.of(), ledger.verify());
        }
    }

    @Test
    void backup_isALedgerOfItsOwn() throws IOException {
        receive("K1");
        Path copies = Files.createDirectory(folder.resolve("copies"));
        try (Ledger ledger = open()) {
            ledger.backup(copies.resolve(SqliteLedger.NAME));
            assertThrows(LedgerException.Refused.class, () -> ledger.backup(copies.resolve(SqliteLedger.NAME)));
        }
        receive("K2");
        try (Ledger copy = SqliteLedger.open(copies, Clock.systemUTC())) {
            assertEquals(1, copy.read(Ledger.Stock::movements).size());
            assertEquals(List.of(), copy.verify());
        }
    }

    @Test
    void missingLedger_isTold() {
        LedgerException refused =
                assertThrows(LedgerException.Refused.class, () -> SqliteLedger.openToRead(folder.resolve("nowhere")));
        assertTrue(refused.sentence().contains("stock open"), refused.sentence());
        assertFalse(Files.exists(folder.resolve("nowhere")));
    }

    private static Event.Act begun() {
        return Event.Act.of(Event.Kind.OPENED, "test", "");
    }

    private Path file() {
        return folder.resolve(SqliteLedger.NAME);
    }

    private Ledger open() {
        return SqliteLedger.open(folder, Clock.systemUTC());
    }

    private void receive(String id) {
        try (Ledger ledger = open()) {
            new Rack(ledger, "test").receive(reel(id, "", List.of()), "");
        }
    }

    private int movements() {
        try (Ledger ledger = SqliteLedger.openToRead(folder)) {
            return ledger.read(Ledger.Stock::movements).size();
        }
    }

    private static Reel reel(String id, String text, List<Flaw> flaws) {
        Reel.Contents contents =
                new Reel.Contents(new Length(100), Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED);
        Reel.Papers papers = new Reel.Papers(text, text, java.time.LocalDate.MAX, java.time.LocalDate.MIN);
        Reel.Custody custody = new Reel.Custody(text, Reel.State.FREE, text);
        return new Reel(id, text, text, contents, flaws, papers, custody, true, Reel.Where.UNKNOWN);
    }

    private void sql(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.execute(each);
            }
        }
    }
}
