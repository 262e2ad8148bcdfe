package bitterend.store;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The file that the rows of a ledger are kept in. */
final class SqliteBody {
    private final Sql sql;
    private final List<String> faults = new ArrayList<>();

    SqliteBody(Sql sql) {
        this.sql = sql;
    }

    /** What is wrong with it, each in a sentence. */
    List<String> faults() {
        for (String answer : sql.list("PRAGMA integrity_check", row -> row.getString(1))) {
            unless(answer.equals("ok"), "the file is damaged: " + answer);
        }
        int strays =
                sql.list("PRAGMA foreign_key_check", row -> row.getString(1)).size();
        unless(strays == 0, strays + " rows speak of events or movements that are not there");
        addParts();
        return faults;
    }

    /** Tables, indexes and triggers, against those of a ledger that is begun now. */
    private void addParts() {
        try (Connection empty = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            Sql fresh = new Sql(empty);
            Schema.update(fresh, SqliteLedger.NAME, Instant.EPOCH);
            faults.addAll(parts(Schema.parts(sql), Schema.parts(fresh), "file"));
        } catch (SQLException fault) {
            throw new Sql.Failed(fault);
        }
    }

    /**
     * What tells the parts that are there from those that a ledger is made of.
     *
     * @param body what holds them, such as the file
     */
    static List<String> parts(Map<String, String> there, Map<String, String> made, String body) {
        List<String> faults = new ArrayList<>();
        made.forEach((name, part) -> {
            String is = there.remove(name);
            if (is == null) {
                faults.add("the " + name + " is missing: somebody changed the " + body + " by hand");
            } else if (!is.equals(part)) {
                faults.add("the " + name + " is not as it was made");
            }
        });
        there.keySet().forEach(name -> faults.add("the " + name + " is no part of a ledger"));
        return faults;
    }

    private void unless(boolean kept, String sentence) {
        if (!kept) {
            faults.add(sentence);
        }
    }
}
