package bitterend.stock;

import bitterend.measure.Parsed;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the ledger of a loft is kept on a server, among those of other lofts. There is no password in it.
 *
 * @param host name or number of the machine
 * @param port where the server listens
 * @param database the database that holds the lofts
 * @param user who the server knows the program as; empty for whoever is logged in, or as the surroundings say
 * @param loft name of the loft
 */
public record LoftAddress(String host, int port, String database, String user, String loft) {
    /** No server: the ledger is a file of the shop folder. */
    public static final LoftAddress NONE = new LoftAddress("", 0, "", "", "");

    /** Where a server listens unless it is told otherwise. */
    public static final int USUAL_PORT = 5432;

    private static final int LAST_PORT = 65_535;
    private static final Pattern SERVER =
            Pattern.compile("(?:([A-Za-z0-9._-]{1,63})@)?([A-Za-z0-9._-]{1,253}|\\[[0-9a-fA-F:.]{2,45}\\])"
                    + "(?::([0-9]{1,5}))?/([A-Za-z0-9_-]{1,63})");
    private static final Pattern LOFT = Pattern.compile("[a-z][a-z0-9-]{0,39}");

    /** A server, no loft on it yet, as it is typed: {@code bench@10.0.0.5:5432/lofts}. */
    public static Parsed<LoftAddress> server(String text) {
        Matcher parts = SERVER.matcher(text);
        if (!parts.matches() || port(parts).isEmpty()) {
            return Parsed.refused("a server and its database, such as lofts.example/ropes, or"
                    + " bench@lofts.example:5432/ropes; a password is never typed here");
        }
        String user = parts.group(1) == null ? "" : parts.group(1);
        return Parsed.of(new LoftAddress(parts.group(2), port(parts).get(), parts.group(4), user, ""));
    }

    private static Optional<Integer> port(Matcher parts) {
        int port = parts.group(3) == null ? USUAL_PORT : Integer.parseInt(parts.group(3));
        return port >= 1 && port <= LAST_PORT ? Optional.of(port) : Optional.empty();
    }

    /** The name of a loft, as it is typed. */
    public static Parsed<String> loft(String text) {
        return LOFT.matcher(text).matches()
                ? Parsed.of(text)
                : Parsed.refused("the name of a loft: small letters, figures and hyphens, a letter first, at most 40");
    }

    /** Whether it names a server at all. */
    public boolean isNamed() {
        return !host.isEmpty();
    }

    /** A loft on the same server. */
    public LoftAddress of(String name) {
        return new LoftAddress(host, port, database, user, name);
    }

    /** The server, as people read it: {@code lofts.example/ropes}. */
    public String serverText() {
        return host + (port == USUAL_PORT ? "" : ":" + port) + "/" + database;
    }

    /** As people read it: {@code loft gannet on lofts.example/ropes}. */
    public String text() {
        return "loft " + loft + " on " + serverText();
    }
}
