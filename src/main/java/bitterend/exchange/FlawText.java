package bitterend.exchange;

import bitterend.exchange.form.Readings;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import bitterend.stock.Flaw;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The flaws of a reel in one cell, separated by semicolons, measured from the working end:
 * {@code 120 m to 121.5 m +/- 0.5 m: maker's join; 180 m: cut strand}.
 */
public final class FlawText {
    private static final String EXPECTED = "flaws such as 120 m to 121.5 m +/- 0.5 m: maker's join; 180 m: cut strand";
    private static final Pattern FLAW = Pattern.compile(
            "(?<from>[^:]+?)(?: to (?<to>[^:]+?))?(?: *(?:\\+/-|\u00b1) *(?<uncertainty>[^:]+?))?(?: *: *(?<what>.*))?");

    /** Of one reel. */
    static final int MOST = 20_000;

    private FlawText() {}

    /** Beginnings rounded down, ends and uncertainties up: what is avoided is never too short. */
    public static Parsed<List<Flaw>> parse(String text) {
        List<Flaw> flaws = new ArrayList<>();
        String[] parts = text.split(";");
        if (parts.length > MOST) {
            return Parsed.refused("at most " + MOST + " flaws; a reel with more is cut apart, or scrap");
        }
        for (String part : parts) {
            Parsed<Flaw> flaw = flaw(part.strip());
            if (flaw.refusal().isPresent()) {
                return Parsed.refused(flaw.refusal().get());
            }
            flaws.add(flaw.value().orElseThrow());
        }
        return flaws.isEmpty() ? Parsed.refused(EXPECTED) : Parsed.of(List.copyOf(flaws));
    }

    private static Parsed<Flaw> flaw(String text) {
        Matcher parts = FLAW.matcher(text);
        if (!parts.matches()) {
            return Parsed.refused(EXPECTED);
        }
        String end = parts.group("to") == null ? parts.group("from") : parts.group("to");
        String uncertainty = parts.group("uncertainty") == null ? "0" : parts.group("uncertainty");
        String what = parts.group("what") == null ? "" : parts.group("what");
        if (!what.isEmpty() && Readings.text(what).refusal().isPresent()) {
            return Parsed.refused(EXPECTED + ", each in at most 200 characters");
        }
        return LengthText.parseRoundedDown(parts.group("from")).then(from -> LengthText.parse(end)
                .then(to -> LengthText.parse(uncertainty).then(around -> flaw(from, to, around, what))));
    }

    private static Parsed<Flaw> flaw(Length from, Length to, Length uncertainty, String what) {
        if (from.isNegative() || uncertainty.isNegative()) {
            return Parsed.refused(EXPECTED + ", none of it negative");
        }
        return to.isShorterThan(from)
                ? Parsed.refused(EXPECTED + ", the end of a flaw not before its beginning")
                : Parsed.of(new Flaw(from, to, uncertainty, what));
    }
}
