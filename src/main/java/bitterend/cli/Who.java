package bitterend.cli;

import org.jspecify.annotations.Nullable;

/** Who does what is booked. */
final class Who {
    private Who() {}

    /** The name that was given, else the one that somebody is logged in as. */
    static String of(@Nullable String named) {
        return named == null || named.isBlank() ? System.getProperty("user.name", "unknown") : named.strip();
    }
}
