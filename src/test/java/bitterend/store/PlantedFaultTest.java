package bitterend.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import bitterend.measure.Written;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import bitterend.stock.Undo;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A fault is planted at every row and in every cell of a small ledger, the triggers put back as they were: verify finds each
 * and names a place.
 */
final class PlantedFaultTest {
    @TempDir
    private Path folder = Path.of("");

    private Connection connection = none();
    private Sql sql = new Sql(none());
    private List<String> triggers = List.of();

    private static Connection none() {
        try {
            return DriverManager.getConnection("jdbc:sqlite::memory:");
        } catch (SQLException fault) {
            throw new IllegalStateException(fault);
        }
    }

    @BeforeEach
    void begin() throws SQLException {
        SqliteLedger.create(
                folder,
                Clock.systemUTC(),
                LedgerContract.act(Event.Kind.OPENED).with("reels", "2"),
                LedgerContract::twoReels);
        try (Ledger ledger = SqliteLedger.open(folder, Clock.systemUTC())) {
            Rack rack = new Rack(ledger, "Ada");
            rack.move("K1", "bay 2", "tidied");
            ledger.change(LedgerContract.act(Event.Kind.POSTED).with("plan", "p"), LedgerContract::cut);
            rack.split("K1", Written.worked(new Length(4_000)), "K1b", "");
            Event hold = rack.hold("K2", "tag missing");
            new Undo(ledger, LedgerContract.act(Event.Kind.UNDONE)).event(hold.number());
            ledger.change(
                    LedgerContract.act(Event.Kind.ISSUED).with("plan", "p").with("reel K1", ""), books -> {});
            rack.sell("K1b", "", LocalDate.MIN, LocalDate.MIN);
            rack.count(
                    "K2",
                    Written.parsePresent("95 ft 2 in").value().orElseThrow(),
                    new Length(500),
                    Reel.Known.COUNTED,
                    "tape");
        }
        connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(SqliteLedger.NAME));
        sql = new Sql(connection);
        sql.run("PRAGMA foreign_keys = OFF");
        triggers = sql.list("SELECT sql FROM sqlite_master WHERE type = 'trigger'", row -> row.getString(1));
        assertEquals(List.of(), new Verification(sql, new SqliteBody(sql).faults()).faults());
    }

    @AfterEach
    void end() throws SQLException {
        connection.close();
    }

    @Test
    void deletedRow_isFoundWhereverItStands() {
        int planted = 0;
        for (String table : List.of("event", "fact", "movement", "flaw", "ordered", "ledger")) {
            String key = table.equals("fact") || table.equals("flaw") ? key(table) : "rowid";
            for (String row : sql.list("SELECT " + key + " FROM " + table, each -> each.getString(1))) {
                assertFound("DELETE FROM " + table + " WHERE " + key + " = '" + row + "'");
                planted++;
            }
        }
        assertTrue(planted > 25, "only " + planted);
    }

    @Test
    void changedCell_isFoundWhereverItStands() {
        int planted = 0;
        for (String table : List.of("event", "fact", "movement", "flaw", "ordered", "ledger")) {
            String key = table.equals("fact") || table.equals("flaw") ? key(table) : "rowid";
            for (String column : sql.list("PRAGMA table_info(" + table + ")", each -> each.getString(2))) {
                // where a flaw stands in the list says nothing: flaws are sorted by their place on the reel
                if (column.equals("position")) {
                    continue;
                }
                for (String row : sql.list("SELECT " + key + " FROM " + table, each -> each.getString(1))) {
                    assertFound("UPDATE " + table + " SET " + column + " = " + other(column) + " WHERE " + key + " = '"
                            + row + "'");
                    planted++;
                }
            }
        }
        assertTrue(planted > 400, "only " + planted);
    }

    private static String key(String table) {
        return table.equals("fact") ? "event || name" : "movement || '-' || position";
    }

    private static String other(String column) {
        return "CASE typeof(" + column + ") WHEN 'integer' THEN " + column + " + 1000 WHEN 'text' THEN " + column
                + " || 'x' ELSE CASE '" + column + "' WHEN 'undoes' THEN 1 ELSE '2026-01-01' END END";
    }

    /** Movements are added up again so that every sum agrees; only the chain sees it. */
    @Test
    void changedRowWithItsSumsCorrected_isFound() {
        assertFound("UPDATE movement SET by_mm = by_mm + 50, length_mm = length_mm + 50 WHERE number = 1;"
                + " UPDATE movement SET length_mm = length_mm + 50 WHERE reel = 'K1' AND number > 1");
        assertFound("UPDATE movement SET certificate_number = 'K22-0913'");
    }

    @Test
    void unreadableRow_isAFaultOfThatPlace() {
        for (String[] change : new String[][] {
            {"UPDATE movement SET kind = 'BOUGHT' WHERE number = 4", "movement 4 cannot be read"},
            {"UPDATE event SET at = 'yesterday' WHERE number = 3", "cannot be read"},
            {"UPDATE event SET kind = 'BOUGHT' WHERE number = 7", "event 7 cannot be read"},
            {"UPDATE movement SET length_mm = -4 WHERE number = 2", "movement 2 cannot be read"},
            {"UPDATE movement SET use_by = 'soon' WHERE number = 2", "movement 2 cannot be read"},
            {"UPDATE flaw SET to_mm = 0", "movement 1 cannot be read"},
            {"UPDATE movement SET length_text = '31 m' WHERE number = 2", "movement 2 cannot be read"},
            {"UPDATE ledger SET begun = 'once'", "the ledger itself cannot be read"}
        }) {
            String told = assertFound(change[0]).toString();
            assertTrue(told.contains(change[1]), told);
        }
    }

    @Test
    void timeThatRunsBackwards_isFound() {
        String told = assertFound("UPDATE event SET at = '2099-01-01T00:00:00Z' WHERE number = 3")
                .toString();
        assertTrue(told.contains("event 4") && told.contains("before the event that came earlier"), told);
    }

    @Test
    void droppedTriggerOrIndexOrAnythingAdded_isFound() {
        for (String name : sql.list(
                "SELECT type || ' ' || name FROM sqlite_master WHERE sql LIKE 'CREATE%' AND type <> 'table'",
                row -> row.getString(1))) {
            inPlay(
                    () -> sql.script("DROP " + name),
                    faults -> assertTrue(faults.toString().contains(name), "" + faults));
        }
        inPlay(() -> sql.script("CREATE TABLE extra (x)"), faults -> assertFalse(faults.isEmpty()));
    }

    private List<String> assertFound(String change) {
        List<String> found = new ArrayList<>();
        inPlay(() -> plant(change), faults -> {
            assertFalse(faults.isEmpty(), change);
            found.addAll(faults);
        });
        return found;
    }

    /** Changes the rows behind the back of the triggers, which stand there afterwards as before. */
    private void plant(String change) {
        for (String name : sql.list("SELECT name FROM sqlite_master WHERE type = 'trigger'", row -> row.getString(1))) {
            sql.script("DROP TRIGGER " + name);
        }
        sql.run("PRAGMA ignore_check_constraints = ON");
        sql.script(change);
        sql.run("PRAGMA ignore_check_constraints = OFF");
        triggers.forEach(sql::script);
    }

    private void inPlay(Runnable change, Consumer<List<String>> look) {
        sql.script("BEGIN");
        try {
            change.run();
            look.accept(new Verification(sql, new SqliteBody(sql).faults()).faults());
        } finally {
            sql.script("ROLLBACK");
        }
    }
}
