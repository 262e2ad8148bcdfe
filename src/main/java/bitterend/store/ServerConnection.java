package bitterend.store;

import bitterend.stock.LoftAddress;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Map;
import java.util.Properties;
import org.postgresql.PGProperty;

/**
 * The way to a server. Who the program is there, its password and whether the way is enciphered come from the surroundings,
 * by the names that every program for such servers knows: PGUSER, PGPASSWORD, PGPASSFILE (else {@code ~/.pgpass}), PGSSLMODE,
 * PGSSLROOTCERT.
 */
final class ServerConnection {
    private static final int TO_CONNECT_S = 10;
    private static final int TO_ANSWER_S = 180;
    /**
     * Kept on the disk of the server before it is acknowledged; whoever waits for the loft waits a minute; a program that
     * vanished in the middle keeps it no longer than that.
     */
    private static final String SETTINGS = "-c synchronous_commit=on -c lock_timeout=60s"
            + " -c idle_in_transaction_session_timeout=60s -c tcp_keepalives_idle=30 -c search_path=";

    private static final Map<String, PGProperty> KNOWN = Map.of(
            "PGUSER", PGProperty.USER,
            "PGPASSWORD", PGProperty.PASSWORD,
            "PGSSLMODE", PGProperty.SSL_MODE,
            "PGSSLROOTCERT", PGProperty.SSL_ROOT_CERT);

    private ServerConnection() {}

    /** The schema that a loft has on the server, quoted. */
    static String schema(LoftAddress at) {
        return "\"loft_" + at.loft() + "\"";
    }

    static Connection to(LoftAddress at) throws SQLException {
        Properties properties = new Properties();
        KNOWN.forEach((name, property) -> {
            String value = System.getenv(name);
            if (value != null && !value.isEmpty()) {
                property.set(properties, value);
            }
        });
        if (!at.user().isEmpty()) {
            PGProperty.USER.set(properties, at.user());
        }
        PGProperty.CONNECT_TIMEOUT.set(properties, TO_CONNECT_S);
        PGProperty.SOCKET_TIMEOUT.set(properties, TO_ANSWER_S);
        PGProperty.TCP_KEEP_ALIVE.set(properties, true);
        PGProperty.APPLICATION_NAME.set(properties, "bitterend");
        // temporary tables last: none of that name hides one of the loft
        PGProperty.OPTIONS.set(properties, SETTINGS + schema(at) + ",pg_temp");
        return DriverManager.getConnection(
                "jdbc:postgresql://" + at.host() + ":" + at.port() + "/" + at.database(), properties);
    }
}
