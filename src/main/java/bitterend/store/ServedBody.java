package bitterend.store;

import bitterend.stock.LedgerException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The tables of one loft on a server: made, known again, compared with those of a ledger that is begun now. */
final class ServedBody {
    /** Which tables this program writes. */
    static final int VERSION = 1;

    private static final String TEMPORARY = "pg_temp";
    private static final String PARTS =
            "WITH place AS (SELECT CASE WHEN ? = '' THEN pg_my_temp_schema() ELSE to_regnamespace(?)::oid END AS it)"
                    + " SELECT 'column ' || a.attname || ' of ' || c.relname, format_type(a.atttypid, a.atttypmod) || a.attnotnull::text"
                    + " || COALESCE(pg_get_expr(d.adbin, d.adrelid), '') FROM place, pg_class c JOIN pg_attribute a ON a.attrelid = c.oid"
                    + " LEFT JOIN pg_attrdef d ON d.adrelid = c.oid AND d.adnum = a.attnum"
                    + " WHERE c.relnamespace = place.it AND c.relkind IN ('r', 'p') AND a.attnum > 0 AND NOT a.attisdropped"
                    + " UNION ALL SELECT 'relation ' || c.relname, c.relkind::text || c.relrowsecurity::text FROM place, pg_class c"
                    + " WHERE c.relnamespace = place.it AND c.relkind <> 'i'"
                    + " UNION ALL SELECT 'constraint ' || o.conname, pg_get_constraintdef(o.oid) || o.convalidated::text"
                    + " FROM place, pg_constraint o WHERE o.connamespace = place.it"
                    + " UNION ALL SELECT 'index ' || c.relname, pg_get_indexdef(i.indexrelid) || i.indisvalid::text"
                    + " FROM place, pg_index i JOIN pg_class c ON c.oid = i.indexrelid WHERE c.relnamespace = place.it"
                    + " UNION ALL SELECT 'trigger ' || t.tgname || ' of ' || c.relname, pg_get_triggerdef(t.oid) || t.tgenabled::text"
                    + " FROM place, pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid"
                    + " WHERE c.relnamespace = place.it AND NOT t.tgisinternal"
                    + " UNION ALL SELECT 'references of ' || c.relname, string_agg(t.tgenabled::text, '' ORDER BY t.tgname)"
                    + " FROM place, pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid"
                    + " WHERE c.relnamespace = place.it AND t.tgisinternal GROUP BY c.relname"
                    + " UNION ALL SELECT 'rule ' || r.rulename || ' of ' || c.relname, ''"
                    + " FROM place, pg_rewrite r JOIN pg_class c ON c.oid = r.ev_class WHERE c.relnamespace = place.it"
                    + " UNION ALL SELECT 'function ' || p.proname, p.prosrc FROM place, pg_proc p WHERE p.pronamespace = place.it";

    private final Sql sql;
    private final String schema;

    /** @param schema the schema of the loft, as it is quoted */
    ServedBody(Sql sql, String schema) {
        this.sql = sql;
        this.schema = schema;
    }

    /** Makes the tables, in a transaction. */
    void make() {
        if (sql.list("SELECT to_regnamespace(?)::oid", row -> row.getLong(1), schema)
                .equals(List.of(0L))) {
            sql.script("CREATE SCHEMA " + schema);
        }
        sql.script(script(schema));
    }

    /** Whether the loft has been begun. */
    boolean isThere() {
        return sql.number("SELECT CASE WHEN to_regclass(?) IS NULL THEN 0 ELSE 1 END", schema + ".ledger") == 1;
    }

    /**
     * Refuses tables of a newer program.
     *
     * @param name the loft, for people
     */
    void check(String name) {
        long version = sql.list("SELECT version FROM ledger", row -> row.getLong(1)).stream()
                .findFirst()
                .orElse(0L);
        if (version > VERSION) {
            throw new LedgerException.Unreadable(
                    name + " was written by a newer version of this program (served ledger " + version
                            + ", this one knows " + VERSION + "): use that one");
        }
    }

    /** What is wrong with the tables and the server; in a transaction that is rolled back, for it makes new ones to compare. */
    List<String> faults() {
        List<String> faults = new ArrayList<>();
        if (sql.list("SHOW fsync", row -> row.getString(1)).equals(List.of("off"))) {
            faults.add("the server runs with fsync off: what is booked may be lost when its machine stops");
        }
        Map<String, String> there = parts(schema);
        sql.script("SET LOCAL search_path = " + TEMPORARY);
        sql.script(script(TEMPORARY));
        faults.addAll(SqliteBody.parts(there, parts(""), "server's tables"));
        return faults;
    }

    private Map<String, String> parts(String place) {
        Map<String, String> parts = new TreeMap<>();
        sql.list(PARTS, row -> parts.put(row.getString(1), unplaced(row.getString(2))) == null, place, place);
        return parts;
    }

    /** Without the names of the schemas, in which alone the two may differ. */
    private String unplaced(String part) {
        return part.replace(schema + ".", "")
                .replace(schema.replace("\"", "") + ".", "")
                .replaceAll("pg_temp(_[0-9]+)?\\.", "");
    }

    private static String script(String place) {
        try (InputStream script = ServedBody.class.getResourceAsStream("served-" + VERSION + ".sql")) {
            if (script == null) {
                throw new IllegalStateException("no tables of version " + VERSION);
            }
            return new String(script.readAllBytes(), StandardCharsets.UTF_8).replace("${schema}", place);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
