package bitterend.exchange;

import bitterend.catalogue.Term;
import bitterend.catalogue.Yardstick;
import bitterend.exchange.form.Readings;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * An allowance as the trade states it: {@code 1 fid}, {@code 24 diameters}, {@code 23/6 diameters a tuck + 6 in},
 * {@code 4 times across the eye - 1 times round the eye}. Summands are joined by a plus or minus between blanks.
 */
final class AllowanceText {
    private static final Pattern JOINT = Pattern.compile(" ([+-]) ");
    private static final Pattern MULTIPLE = Pattern.compile("(?<count>[0-9./]+) (?<of>\\p{L}.*)");
    private static final String EXPECTED = "a sum such as 1 fid + 10 mm, of lengths and of: "
            + Arrays.stream(Yardstick.values()).map(Yardstick::words).collect(Collectors.joining(", "));

    private AllowanceText() {}

    static Parsed<List<Term>> parse(String text) {
        List<Term> terms = new ArrayList<>();
        Matcher joint = JOINT.matcher(text);
        int from = 0;
        boolean minus = false;
        while (joint.find()) {
            addTerm(terms, text.substring(from, joint.start()), minus);
            minus = joint.group(1).equals("-");
            from = joint.end();
        }
        int joints = (int) JOINT.matcher(text).results().count();
        addTerm(terms, text.substring(from), minus);
        return terms.size() == joints + 1 ? Parsed.of(List.copyOf(terms)) : Parsed.refused(EXPECTED);
    }

    /** Adds the term that the text states; nothing when it states none. */
    private static void addTerm(List<Term> terms, String text, boolean minus) {
        multiple(text.strip(), minus).or(() -> fixed(text.strip(), minus)).ifPresent(terms::add);
    }

    private static Optional<Term> multiple(String text, boolean minus) {
        Matcher parts = MULTIPLE.matcher(text);
        if (!parts.matches()) {
            return Optional.empty();
        }
        Optional<Ratio> count = RatioText.parse(parts.group("count")).value();
        String of = Readings.plain(parts.group("of"));
        return Arrays.stream(Yardstick.values())
                .filter(yardstick ->
                        of.equals(Readings.plain(yardstick.word())) || of.equals(Readings.plain(yardstick.words())))
                .findFirst()
                .flatMap(yardstick ->
                        count.map(number -> new Term.Multiple(minus ? Ratio.ZERO.minus(number) : number, yardstick)));
    }

    private static Optional<Term> fixed(String text, boolean minus) {
        return LengthText.parseFine(text)
                .value()
                .map(length -> new Term.Fixed(minus ? FineLength.ZERO.minus(length) : length));
    }
}
