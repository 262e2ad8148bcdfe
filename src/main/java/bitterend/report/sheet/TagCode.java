package bitterend.report.sheet;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the QR code of a tag is about. It comes first in the code, in words that a person can read, too.
 *
 * @param kind what the tag is on
 * @param id the piece, the assembly or the reel
 */
public record TagCode(Kind kind, String id) {
    private static final Pattern PIECE_THEN_REEL = Pattern.compile("([^/]+/.+?\\.[0-9]+(?:-[^ ]+)*) reel .*");

    /** What a tag is on. */
    public enum Kind {
        PIECE("piece"),
        ASSEMBLY("assembly"),
        /** A coil that comes off a reel, and has no number before it is booked: the tag names the reel. */
        COIL("coil off"),
        REST("rest of the reel"),
        REEL("reel");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    /** {@code reel 0392}; what follows in a code is kept apart from it. */
    String text() {
        return kind.words + " " + id;
    }

    /** What a text is about that was read off a code; nothing where it is off none of ours. */
    public static Optional<TagCode> read(String text) {
        for (Kind kind : Kind.values()) {
            String begin = kind.words + " ";
            if (text.toLowerCase(Locale.ROOT).startsWith(begin)) {
                String id = id(kind, text.substring(begin.length()));
                return id.isEmpty() ? Optional.empty() : Optional.of(new TagCode(kind, id));
            }
        }
        return Optional.empty();
    }

    private static String id(Kind kind, String rest) {
        Matcher piece = PIECE_THEN_REEL.matcher(rest);
        if (kind == Kind.PIECE && piece.matches()) {
            return piece.group(1).strip();
        }
        int end = rest.indexOf(';');
        return (end < 0 ? rest : rest.substring(0, end)).strip();
    }
}
