package bitterend.exchange;

import bitterend.demand.Hang;
import bitterend.demand.HangFormula;
import bitterend.demand.LegAngle;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.Readings;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Written;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a leg of a sling hangs, in one cell: with the column {@code length} two of these, or without it two of them.
 *
 * <pre>
 * height 2.4 m                                      what a leg spans
 * out 1.8 m | spread 3.6 m | spread 3 m by 4 m      how far its lower point lies from below the upper; between opposite points
 * 45 degrees from the vertical | 90 degrees included | 45 degrees from the horizontal
 * </pre>
 */
final class HangText {
    private static final Pattern HEIGHT = Pattern.compile("height (?<is>.+)");
    private static final Pattern OUT = Pattern.compile("out (?<is>.+)");

    /** What is measured between opposite legs. */
    private static final Pattern BETWEEN_OPPOSITE = Pattern.compile("spread|included");

    /** Three legs and more of an odd number. */
    private static final Pattern ODD = Pattern.compile("[0-9]*[3579]|[0-9]+1");

    private static final Pattern SPREAD = Pattern.compile("spread (?<is>.+?)(?: by (?<other>.+))?");
    private static final Pattern ANGLE =
            Pattern.compile("(?<is>[0-9.]+) degrees? (?<how>included|from (?:the )?vertical|from (?:the )?horizontal)");
    private static final Ratio HALF = new Ratio(1, 2);
    private static final FineLength LONGEST = FineLength.ofMillimetres(1_000_000);
    private static final String EXPECTED =
            "two of height 2.4 m, spread 3.6 m (or out 1.8 m, spread 3 m by 4 m) and 45 degrees from the vertical (or"
                    + " included, from the horizontal), with a semicolon between them; or one of them and a length";

    private HangText() {}

    /**
     * The finished length of a row and how its leg hangs.
     *
     * @param finished as the column states it, else worked out
     * @param hang how it hangs
     */
    record Row(Written finished, Hang hang) {}

    /** What a cell states. */
    private record Stated(Optional<FineLength> height, Optional<FineLength> out, Optional<LegAngle> angle) {
        int count() {
            return (height.isPresent() ? 1 : 0) + (out.isPresent() ? 1 : 0) + (angle.isPresent() ? 1 : 0);
        }
    }

    static Row read(Fields row) {
        Written placeholder = Written.worked(new Length(1));
        Optional<String> text = row.text("hang");
        if (text.isEmpty()) {
            return new Row(row.require("length", Readings::wantedAsWritten, placeholder), Hang.NOT_STATED);
        }
        String words = text.get().replaceAll("\\s+", " ");
        if (ODD.matcher(row.text("legs").orElse("")).matches()
                && BETWEEN_OPPOSITE.matcher(words.toLowerCase(Locale.ROOT)).find()) {
            row.error(
                    "hang",
                    "out 1.8 m, or degrees from the vertical: spread and included angle are those of opposite legs, which an"
                            + " odd number of legs does not have");
        }
        Optional<Written> length = row.text("length").isPresent()
                ? Optional.of(row.require("length", Readings::wantedAsWritten, placeholder))
                : Optional.empty();
        Parsed<Row> hung = row.sound()
                ? parse(words).then(stated -> solved(stated, length, words))
                : Parsed.of(new Row(placeholder, Hang.NOT_STATED));
        hung.refusal().ifPresent(expected -> row.error("hang", expected));
        return hung.value().orElse(new Row(placeholder, Hang.NOT_STATED));
    }

    private static Parsed<Stated> parse(String words) {
        Stated stated = new Stated(Optional.empty(), Optional.empty(), Optional.empty());
        for (String each : words.split(";")) {
            Parsed<Stated> more = with(stated, each.strip().toLowerCase(Locale.ROOT));
            if (more.value().isEmpty()) {
                return more;
            }
            stated = more.value().get();
        }
        return Parsed.of(stated);
    }

    private static Parsed<Stated> with(Stated so, String text) {
        Matcher height = HEIGHT.matcher(text);
        if (height.matches() && so.height().isEmpty()) {
            return side(height.group("is")).map(is -> new Stated(Optional.of(is), so.out(), so.angle()));
        }
        Matcher angle = ANGLE.matcher(text);
        if (angle.matches() && so.angle().isEmpty()) {
            return angle(angle).map(is -> new Stated(so.height(), so.out(), Optional.of(is)));
        }
        return so.out().isEmpty()
                ? out(text).map(is -> new Stated(so.height(), Optional.of(is), so.angle()))
                : Parsed.refused(EXPECTED);
    }

    private static Parsed<FineLength> out(String text) {
        Matcher out = OUT.matcher(text);
        if (out.matches()) {
            return side(out.group("is"));
        }
        Matcher spread = SPREAD.matcher(text);
        if (!spread.matches()) {
            return Parsed.refused(EXPECTED);
        }
        Parsed<FineLength> one = side(spread.group("is"));
        String other = spread.group("other");
        return other == null
                ? one.map(is -> is.times(HALF))
                : one.then(is -> side(other).map(across -> HangFormula.halfDiagonal(is, across)));
    }

    private static Parsed<FineLength> side(String text) {
        return LengthText.parseFine(text)
                .then(length -> length.isPositive() && length.compareTo(LONGEST) <= 0
                        ? Parsed.of(length)
                        : Parsed.refused("a length above 0 and of at most 1000 m"));
    }

    private static Parsed<LegAngle> angle(Matcher form) {
        Parsed<LegAngle> refused = Parsed.refused("an angle from 0 to below 90 degrees from the vertical, below 180"
                + " included, above 0 from the horizontal, to a thousandth");
        String how = form.group("how");
        Optional<Ratio> degrees = RatioText.parse(form.group("is")).value();
        if (degrees.isEmpty()) {
            return refused;
        }
        Ratio halved = how.equals("included") ? degrees.get().times(HALF) : degrees.get();
        long millidegrees = halved.compareTo(Ratio.of(180)) > 0 ? Long.MAX_VALUE : halved.timesRoundedUp(1000);
        long fromVertical = how.endsWith("horizontal") ? LegAngle.RIGHT_ANGLE - millidegrees : millidegrees;
        return fromVertical >= 0 && fromVertical < LegAngle.RIGHT_ANGLE
                ? Parsed.of(new LegAngle(fromVertical))
                : refused;
    }

    private static Parsed<Row> solved(Stated stated, Optional<Written> length, String words) {
        if (stated.count() + (length.isPresent() ? 1 : 0) != 2) {
            return Parsed.refused(EXPECTED + ": not more, and not less");
        }
        return length.isPresent()
                ? byLength(stated, length.get(), words)
                : withoutLength(stated)
                        .then(finished -> finished.fine().compareTo(LONGEST) > 0
                                ? Parsed.refused("a leg of at most 1000 m")
                                : byLength(stated, Written.worked(finished), words));
    }

    private static Parsed<Length> withoutLength(Stated stated) {
        if (stated.angle().isEmpty()) {
            return Parsed.of(HangFormula.length(
                    stated.height().orElseThrow(), stated.out().orElseThrow()));
        }
        LegAngle angle = stated.angle().get();
        if (stated.height().isPresent()) {
            return Parsed.of(HangFormula.lengthByHeight(stated.height().get(), angle));
        }
        return angle.millidegrees() == 0
                ? Parsed.refused("a height: a leg that hangs plumb reaches nowhere out")
                : Parsed.of(HangFormula.lengthByReach(stated.out().orElseThrow(), angle));
    }

    /** Height and reach as stated, what is left from the length. */
    private static Parsed<Row> byLength(Stated stated, Written finished, String words) {
        FineLength length = finished.exact();
        boolean worked = finished.text().isEmpty();
        if (stated.angle().isPresent()) {
            LegAngle angle = stated.angle().get();
            FineLength height = stated.height().orElseGet(() -> HangFormula.height(length, angle));
            FineLength out = stated.out().orElseGet(() -> HangFormula.reach(length, angle));
            return Parsed.of(new Row(finished, new Hang(height, out, angle, words, worked)));
        }
        FineLength side = stated.height().or(stated::out).orElseThrow();
        if (side.compareTo(length) > 0) {
            return Parsed.refused("a height, or half a spread, not above the length of the leg");
        }
        FineLength height = stated.height().orElseGet(() -> HangFormula.otherSide(length, side));
        FineLength out = stated.out().orElseGet(() -> HangFormula.otherSide(length, side));
        long millidegrees = millidegrees(stated, length);
        return millidegrees < LegAngle.RIGHT_ANGLE
                ? Parsed.of(new Row(finished, new Hang(height, out, new LegAngle(millidegrees), words, worked)))
                : Parsed.refused("a leg that spans some height");
    }

    /** From the two that are stated: what is worked out of them is rounded already. */
    private static long millidegrees(Stated stated, FineLength length) {
        if (stated.height().isEmpty()) {
            return HangFormula.millidegreesByReach(length, stated.out().orElseThrow());
        }
        FineLength height = stated.height().get();
        return stated.out()
                .map(out -> HangFormula.millidegrees(height, out))
                .orElseGet(() -> HangFormula.millidegreesByHeight(length, height));
    }
}
