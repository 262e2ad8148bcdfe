package bitterend.store;

import bitterend.stock.Ledger;
import bitterend.stock.LoftAddress;
import bitterend.stock.Neighbours;
import java.util.List;
import java.util.function.Function;

/** The other lofts of a server that were begun, were not moved away, and may be read. */
final class ServedNeighbours implements Neighbours {
    private static final String LOFTS =
            "SELECT substr(n.nspname, 6) FROM pg_namespace n JOIN pg_class c ON c.relnamespace = n.oid"
                    + " WHERE c.relname = 'ledger' AND n.nspname LIKE 'loft\\_%' AND has_schema_privilege(n.oid, 'USAGE')"
                    + " AND has_table_privilege(c.oid, 'SELECT') ORDER BY 1";

    private final Sql sql;
    private final LoftAddress at;

    ServedNeighbours(Sql sql, LoftAddress at) {
        this.sql = sql;
        this.at = at;
    }

    @Override
    public String own() {
        return at.loft();
    }

    @Override
    public List<String> names() {
        return sql.list(LOFTS, row -> row.getString(1)).stream()
                .filter(name -> !name.equals(at.loft()))
                .filter(name -> LoftAddress.loft(name).value().isPresent())
                .filter(name -> sql.number("SELECT COUNT(*) FROM " + ServerConnection.schema(at.of(name))
                                + ".ledger WHERE moved = ''")
                        == 1)
                .toList();
    }

    @Override
    public <T> T read(String loft, Function<Ledger.Stock, T> question) {
        place(at.of(loft));
        T answer = question.apply(new SqlStock(sql));
        place(at);
        return answer;
    }

    /** For this transaction alone: one that fails in between leaves nothing behind. */
    private void place(LoftAddress loft) {
        sql.list(
                "SELECT set_config('search_path', ?, true)",
                row -> row.getString(1),
                ServerConnection.schema(loft) + ", pg_temp");
    }
}
