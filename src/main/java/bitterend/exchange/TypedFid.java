package bitterend.exchange;

import bitterend.exchange.form.JsonTree;
import bitterend.measure.DiameterText;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A fid that a shop measures with, as it is typed: {@code 12 mm: 95 mm + 165 mm}.
 *
 * @param rope the rope it is made for
 * @param shortSection from its point to its short mark
 * @param longSection the rest of it
 */
public record TypedFid(String rope, String shortSection, String longSection) {
    private static final Pattern FORM = Pattern.compile("(?<rope>[^:]+):(?<short>[^+]+)\\+(?<long>[^+]+)");
    private static final String EXPECTED =
            "a rope with the short and the long section of its fid, such as 12 mm: 95 mm + 165 mm";

    /** Understood by the rules of the file that it goes into. */
    public static Parsed<TypedFid> parse(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return Parsed.refused(EXPECTED);
        }
        TypedFid fid = new TypedFid(
                form.group("rope").strip(),
                form.group("short").strip(),
                form.group("long").strip());
        boolean sound = DiameterText.parse(fid.rope).value().isPresent()
                && isLength(fid.shortSection)
                && isLength(fid.longSection);
        return sound ? Parsed.of(fid) : Parsed.refused(EXPECTED);
    }

    private static boolean isLength(String text) {
        return LengthText.parseFine(text)
                .value()
                .filter(length -> length.isPositive())
                .isPresent();
    }

    JsonTree tree() {
        return new JsonTree()
                .with("rope", rope)
                .with("short", shortSection)
                .with("long", longSection)
                .with("source", "own tool, as typed");
    }
}
