package bitterend.quoting.after;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Of which line of a quote a piece is, by its id: {@code ORDER/LINE.n}, a part of a product and a leg behind it. */
public final class PieceLine {
    private static final Pattern PIECE =
            Pattern.compile("([^/]+/[^/]+)\\.[0-9]+(?:-(\\p{L}[\\p{L}\\p{N}_#+()-]*?))?(?:-[0-9]+)?");

    private PieceLine() {}

    /** The line of the quote, with the part; empty where the piece is of none. */
    public static String of(String piece, Map<String, String> lineOf) {
        Matcher parts = PIECE.matcher(piece);
        if (!parts.matches()) {
            return "";
        }
        String line = lineOf.getOrDefault(parts.group(1), "");
        return line.isEmpty() || parts.group(2) == null ? line : line + " " + parts.group(2);
    }
}
