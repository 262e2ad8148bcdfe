package bitterend.store;

import bitterend.stock.LoftAddress;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Map;
import java.util.Properties;

/**
 * The way to a server. Who the program is there, its password and whether the way is enciphered come from the surroundings,
 * by the names that every program for such servers knows: PGUSER, PGPASSWORD, PGPASSFILE (else {@code ~/.pgpass}), PGSSLMODE,
 * PGSSLROOTCERT.
 */
final class ServerConnection {
    private static final String TO_CONNECT_S = "10";
    private static final String TO_ANSWER_S = "180";
    /**
     * Kept on the disk of the server before it is acknowledged; whoever waits for the loft waits a minute; a program that
     * vanished in the middle keeps it no longer than that.
     */
    private static final String SETTINGS = "-c synchronous_commit=on -c lock_timeout=60s"
            + " -c idle_in_transaction_session_timeout=60s -c tcp_keepalives_idle=30 -c search_path=";

    /** What the surroundings say, by the name that the driver has for it. */
    private static final Map<String, String> KNOWN =
            Map.of("PGUSER", "user", "PGPASSWORD", "password", "PGSSLMODE", "sslmode", "PGSSLROOTCERT", "sslrootcert");

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
                properties.setProperty(property, value);
            }
        });
        if (!at.user().isEmpty()) {
            properties.setProperty("user", at.user());
        }
        properties.setProperty("connectTimeout", TO_CONNECT_S);
        properties.setProperty("socketTimeout", TO_ANSWER_S);
        properties.setProperty("tcpKeepAlive", "true");
        properties.setProperty("ApplicationName", "bitterend");
        // nothing is kept planned: the tables of another loft, which the same words read, may have other columns
        properties.setProperty("prepareThreshold", "0");
        // temporary tables last: none of that name hides one of the loft
        properties.setProperty("options", SETTINGS + schema(at) + ",pg_temp");
        return DriverManager.getConnection(
                "jdbc:postgresql://" + at.host() + ":" + at.port() + "/" + at.database(), properties);
    }
}
