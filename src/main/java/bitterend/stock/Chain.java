package bitterend.stock;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;

/**
 * The chain over the events of a ledger: each link is the SHA-256 of the link before it, a line break, and the canonical
 * text of the event. It is made from what events say and not from rows of a database, so it stays the same wherever the
 * ledger is kept.
 */
public final class Chain {
    private Chain() {}

    /**
     * The link before the first event.
     *
     * @param ledger identity of the ledger
     * @param begun when it was begun
     * @param older how many of its events were made from a ledger of an older version
     */
    public static String root(String ledger, Instant begun, long older) {
        return sha256("bitterend ledger " + ledger + ", begun " + begun + ", older events " + older);
    }

    /** The link of an event behind another link; the event's own hash is no part of it. */
    public static String link(String before, Event event) {
        return sha256(before + "\n" + EventText.of(event));
    }

    private static String sha256(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }
}
