package bitterend.exchange;

import bitterend.catalogue.Hardware;
import bitterend.demand.Measuring;
import bitterend.demand.Measuring.Between;
import bitterend.demand.Measuring.Points;
import bitterend.exchange.form.Readings;
import bitterend.finding.Nearest;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Between which points a finished length is measured, and how its eyes lie: {@code pin to pin}, {@code on pin 150 mm}, {@code
 * over all}, {@code shackle to end, flat}.
 */
final class MeasuredText {
    private static final Pattern ON_PIN = Pattern.compile("on pins? (?<pin>.*)");
    private static final Pattern POINTS = Pattern.compile("(?<a>.+?) to (?<b>.+?)(?:, (?<lying>.+))?");
    private static final Pattern OVER_ALL = Pattern.compile("over all(?:, (?<lying>.+))?");
    /** What people call the end itself. */
    private static final List<String> END_WORDS = List.of("end", "eye", "thimble", "fitting");

    private static final List<String> WORDS =
            List.of("pin to pin", "flat", "outside", Points.OUTERMOST, "circumference");

    private MeasuredText() {}

    static Parsed<Measuring> parse(String text) {
        String plain = text.toLowerCase(Locale.ROOT);
        Matcher onPin = ON_PIN.matcher(plain);
        if (onPin.matches()) {
            return onPin(onPin.group("pin"), Points.NONE);
        }
        return switch (Readings.plain(text)) {
            case "bearing points", "pin to pin" -> Parsed.of(Measuring.USUAL);
            case "flat" -> Parsed.of(measuring(Between.FLAT, Diameter.NONE, Points.NONE));
            case "circumference" -> Parsed.of(measuring(Between.CIRCUMFERENCE, Diameter.NONE, Points.NONE));
            case "outside" -> Parsed.of(measuring(Between.OUTSIDE, Diameter.NONE, Points.NONE));
            default -> points(text.strip().replaceAll("\\s+", " "));
        };
    }

    private static Parsed<Measuring> points(String text) {
        Matcher overAll = OVER_ALL.matcher(text.toLowerCase(Locale.ROOT));
        if (overAll.matches()) {
            return lying(overAll.group("lying"), Points.OVER_ALL);
        }
        Matcher two = POINTS.matcher(text);
        return two.matches() && isPoint(two.group("a")) && isPoint(two.group("b"))
                ? lying(two.group("lying"), new Points(point(two.group("a")), point(two.group("b"))))
                : refused(text);
    }

    private static boolean isPoint(String word) {
        return Hardware.Kind.words().contains(word.toLowerCase(Locale.ROOT))
                || EndText.partId(word).value().isPresent();
    }

    private static String point(String word) {
        String plain = word.toLowerCase(Locale.ROOT);
        if (END_WORDS.contains(plain)) {
            return Points.END;
        }
        return Hardware.Kind.words().contains(plain) ? plain : word;
    }

    private static Parsed<Measuring> lying(@Nullable String words, Points points) {
        if (words == null) {
            return Parsed.of(measuring(Between.BEARING_POINTS, Diameter.NONE, points));
        }
        Matcher onPin = ON_PIN.matcher(words.toLowerCase(Locale.ROOT));
        if (onPin.matches()) {
            return onPin(onPin.group("pin"), points);
        }
        return Readings.plain(words).equals("flat")
                ? Parsed.of(measuring(Between.FLAT, Diameter.NONE, points))
                : refused(words);
    }

    private static Parsed<Measuring> onPin(String pin, Points points) {
        return DiameterText.parse(pin).map(size -> measuring(Between.ON_PINS, size, points));
    }

    private static Parsed<Measuring> refused(String text) {
        return Parsed.refused(
                "one of: pin to pin, flat, outside, on pin 150 mm; with hardware over all, or two points such"
                        + " as shackle to end; of a ring circumference, or flat for its working length"
                        + Nearest.hint(text, WORDS));
    }

    private static Measuring measuring(Between between, Diameter pin, Points points) {
        return new Measuring(between, pin, Ratio.ZERO, Ratio.ZERO, Ratio.ZERO, points);
    }
}
