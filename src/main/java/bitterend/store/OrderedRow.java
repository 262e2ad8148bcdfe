package bitterend.store;

import bitterend.measure.Length;
import bitterend.stock.Ordered;
import java.sql.ResultSet;
import java.sql.SQLException;

/** What was ordered when a piece was cut, as a row beside that of its movement, there and back. */
final class OrderedRow {
    private static final String INSERT =
            "INSERT INTO ordered (movement, order_number, line, assembly, leg, part, rope, finished, ends, needed_mm,"
                    + " set_name, match, customer, due, certificate, own_rope, measured)"
                    + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

    private OrderedRow() {}

    static Ordered read(ResultSet row) throws SQLException {
        return Unreadable.unless(
                "movement " + row.getLong("movement"),
                () -> new Ordered(
                        new Ordered.Piece(
                                row.getString("order_number"),
                                row.getString("line"),
                                row.getInt("assembly"),
                                row.getInt("leg"),
                                row.getString("part")),
                        new Ordered.Make(
                                row.getString("rope"),
                                row.getString("finished"),
                                row.getString("ends"),
                                new Length(row.getLong("needed_mm"))),
                        new Ordered.Bond(row.getString("set_name"), row.getString("match")),
                        new Ordered.Wish(row.getString("customer"), row.getString("due")),
                        new Ordered.Terms(
                                row.getString("certificate"), row.getInt("own_rope") == 1, row.getString("measured"))));
    }

    static void insert(Sql sql, long movement, Ordered ordered) {
        sql.run(
                INSERT,
                movement,
                ordered.piece().order(),
                ordered.piece().line(),
                ordered.piece().number(),
                ordered.piece().leg(),
                ordered.piece().part(),
                ordered.make().rope(),
                ordered.make().finished(),
                ordered.make().ends(),
                ordered.make().needed().mm(),
                ordered.bond().set(),
                ordered.bond().match(),
                ordered.wish().customer(),
                ordered.wish().due(),
                ordered.terms().certificate(),
                ordered.terms().ownRope() ? 1 : 0,
                ordered.terms().measured());
    }
}
