package bitterend.serve;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which browsers beyond the shop's own machine may use the page: each is paired once, with a code that the machine shows. It
 * lasts a few minutes, pairs one device, and few wrong tries end it.
 */
final class Devices {
    /** Where a device is paired. */
    static final String PATH = "/pair";

    /** How long a code is good for. */
    static final Duration LASTS = Duration.ofMinutes(10);

    private static final int TRIES = 5;
    private static final int CODES = 100_000_000;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final Clock clock;
    private final DeviceFile file;
    private String code = "";
    private Instant until = Instant.MIN;
    private int left;

    Devices(DeviceFile file, Clock clock) {
        this.file = file;
        this.clock = clock;
    }

    boolean mayUse(String device) {
        return paired().contains(device);
    }

    /** What people call each paired device. */
    synchronized Map<String, String> names() {
        return file.names();
    }

    synchronized Set<String> paired() {
        return new TreeSet<>(file.names().keySet());
    }

    /** A new code; the one before it counts no more. */
    synchronized String newCode() {
        code = String.format(java.util.Locale.ROOT, "%08d", RANDOM.nextInt(CODES));
        until = clock.instant().plus(LASTS);
        left = TRIES;
        return code;
    }

    /** Pairs a device that sent the code; a code pairs one device. */
    synchronized boolean pair(String device, String name, String sent) {
        if (left == 0 || !clock.instant().isBefore(until)) {
            return false;
        }
        left--;
        boolean right = java.security.MessageDigest.isEqual(
                code.getBytes(java.nio.charset.StandardCharsets.UTF_8),
                sent.strip().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        if (right) {
            left = 0;
            file.add(device, name);
        }
        return right;
    }

    /** Ends the pairing of a device. */
    synchronized void revoke(String device) {
        file.remove(device);
    }
}
