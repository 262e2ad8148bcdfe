package bitterend.exchange;

import bitterend.demand.Accepted;
import bitterend.demand.Assembly.Along;
import bitterend.demand.Assembly.WantedMark;
import bitterend.demand.EndSpec;
import bitterend.demand.Tolerance;
import bitterend.exchange.form.Readings;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tolerances, {@code 20 mm} or {@code +/- 0.5 %}, and places to mark, {@code middle; quarters; 1.5 m}. */
final class AskedText {
    private static final Pattern TOLERANCE = Pattern.compile("(?:\\+/-|\u00b1)? *(?<size>.+)");
    private static final String EXPECTED_TOLERANCE = "a tolerance such as 20 mm or 0.5 %";
    private static final List<String> ACCEPTABLE = List.of(Accepted.WORKING_ROOM, Accepted.THROAT_ANGLE, Accepted.CODE);
    private static final String EXPECTED_MARKS = "places such as middle, quarters or 1.5 m, separated by semicolons";

    private static final Pattern ALONG = Pattern.compile("([1-9][0-9]{0,2}) *x +(.+)");
    private static final String EXPECTED_ALONG =
            "how many of which knot, such as 12 x overhand-knot or 3 x butterfly-loop length 120 mm";

    private AskedText() {}

    static Parsed<Tolerance> tolerance(String text) {
        Matcher form = TOLERANCE.matcher(text);
        if (!form.matches()) {
            return Parsed.refused(EXPECTED_TOLERANCE);
        }
        String size = form.group("size");
        return size.endsWith("%")
                ? RatioText.parse(size).then(AskedText::relative)
                : Written.parse(size)
                        .then(length -> length.exact().isPositive()
                                ? Parsed.of(new Tolerance(length, Ratio.ZERO))
                                : Parsed.refused(EXPECTED_TOLERANCE));
    }

    private static Parsed<Tolerance> relative(Ratio part) {
        return part.isPositive() && part.compareTo(Ratio.ONE) < 0
                ? Parsed.of(new Tolerance(Written.NOTHING, part))
                : Parsed.refused(EXPECTED_TOLERANCE);
    }

    /** Knots and loops along a piece: {@code 12 x overhand-knot; 3 x butterfly-loop length 120 mm}. */
    static Parsed<List<Along>> along(String text) {
        List<Along> along = new ArrayList<>();
        for (String part : text.split(";", -1)) {
            Matcher form = ALONG.matcher(part.strip());
            if (!form.matches()) {
                return Parsed.refused(EXPECTED_ALONG);
            }
            Parsed<EndSpec> spec = EndText.parse(form.group(2));
            if (spec.value().isEmpty()) {
                return Parsed.refused(EXPECTED_ALONG);
            }
            along.add(new Along(Integer.parseInt(form.group(1)), spec.value().get()));
        }
        return Parsed.of(along);
    }

    static Parsed<List<WantedMark>> marks(String text) {
        List<WantedMark> marks = new ArrayList<>();
        for (String place : text.split(";")) {
            switch (Readings.plain(place)) {
                case "middle" -> marks.add(part("middle", 1, 2));
                case "quarters" -> {
                    marks.add(part("first quarter", 1, 4));
                    marks.add(part("middle", 1, 2));
                    marks.add(part("third quarter", 3, 4));
                }
                default -> {
                    Parsed<FineLength> from = LengthText.parseFine(place.strip());
                    if (from.value().isEmpty() || !from.value().get().isPositive()) {
                        return Parsed.refused(EXPECTED_MARKS);
                    }
                    marks.add(new WantedMark(
                            place.strip(), Ratio.ZERO, from.value().get()));
                }
            }
        }
        return Parsed.of(List.copyOf(marks));
    }

    /** What is accepted and by whom: {@code working room: NAME; throat angle: NAME}. */
    static Parsed<List<Accepted>> accepted(String text) {
        List<Accepted> accepted = new ArrayList<>();
        for (String each : text.split(";")) {
            String[] sides = each.split(":", 2);
            Optional<String> what = ACCEPTABLE.stream()
                    .filter(rule -> rule.equals(Readings.plain(sides[0])))
                    .findFirst();
            if (what.isEmpty() || sides.length < 2 || sides[1].isBlank()) {
                return Parsed.refused("what is accepted and by whom, such as working room: NAME; it can be: "
                        + String.join(", ", ACCEPTABLE));
            }
            accepted.add(new Accepted(what.get(), sides[1].strip()));
        }
        return Parsed.of(List.copyOf(accepted));
    }

    private static WantedMark part(String name, long above, long below) {
        return new WantedMark(name, new Ratio(above, below), FineLength.ZERO);
    }
}
