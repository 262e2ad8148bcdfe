package bitterend.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** Statements on one connection. Values are always bound, never written into the text of a statement. */
final class Sql {
    private final Connection connection;

    Sql(Connection connection) {
        this.connection = connection;
    }

    /** A failed statement on its way to where it is told to the user. */
    static final class Failed extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final SQLException fault;

        Failed(SQLException fault) {
            super(fault);
            this.fault = fault;
        }

        SQLException fault() {
            return fault;
        }
    }

    /** Reads one row. */
    @FunctionalInterface
    interface Row<T> {
        T read(ResultSet row) throws SQLException;
    }

    <T> List<T> list(String query, Row<T> row, Object... values) {
        try (PreparedStatement statement = connection.prepareStatement(query)) {
            bind(statement, values);
            List<T> rows = new ArrayList<>();
            try (ResultSet result = statement.executeQuery()) {
                while (result.next()) {
                    rows.add(row.read(result));
                }
            }
            return rows;
        } catch (SQLException fault) {
            throw new Failed(fault);
        }
    }

    /** The whole number that a query gives in its only row. */
    long number(String query, Object... values) {
        return list(query, row -> row.getLong(1), values).get(0);
    }

    void run(String statement, Object... values) {
        try (PreparedStatement prepared = connection.prepareStatement(statement)) {
            bind(prepared, values);
            prepared.execute();
        } catch (SQLException fault) {
            throw new Failed(fault);
        }
    }

    /** Runs a script of several statements. */
    void script(String statements) {
        try (java.sql.Statement statement = connection.createStatement()) {
            statement.executeUpdate(statements);
        } catch (SQLException fault) {
            throw new Failed(fault);
        }
    }

    private static void bind(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            Object value = values[i];
            if (value == Missing.VALUE) {
                statement.setNull(i + 1, java.sql.Types.NULL);
            } else if (value instanceof String text) {
                statement.setString(i + 1, text);
            } else {
                statement.setLong(i + 1, ((Number) value).longValue());
            }
        }
    }

    /** Stands for NULL among bound values. */
    enum Missing {
        VALUE
    }
}
