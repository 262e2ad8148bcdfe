package bitterend.exchange;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Term;
import bitterend.catalogue.Yardstick;
import bitterend.demand.EndSpec;
import bitterend.demand.EndSpec.FittingSpec;
import bitterend.demand.EndSpec.Options;
import bitterend.demand.HardwareSpec;
import bitterend.exchange.form.Readings;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One end of an assembly in one cell: the termination, then words that each take what follows them, in any order.
 *
 * <pre>
 * length 300 mm | perimeter 600 mm | diameter 200 mm | ratio 5 | thimble T12     the eye
 * pin 150 mm                                                                     what the eye works on
 * fork-12 | bore 45 mm                                                           the fitting, behind the termination
 * to M24                                                                         the rope a join goes to
 * tail 24 diameters | tucks 5 | tapered | accepted NAME                        options
 * with SB12 + TB8 half open                                                      what hangs on it
 * </pre>
 */
final class EndText {
    private static final Pattern KEY = Pattern.compile(
            "(?<= )(length|perimeter|diameter|ratio|thimble|pin|bore|tail|tucks|tapered|to|with|accepted)(?= |$)");
    private static final Pattern PART_ID = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._#+/()-]{0,39}");
    private static final List<String> EYES = List.of("length", "perimeter", "diameter", "ratio", "thimble");
    private static final List<String> WRITTEN = List.of(
            "length",
            "perimeter",
            "diameter",
            "ratio",
            "thimble",
            "pin",
            "bore",
            "tail",
            "tucks",
            "tapered",
            "to",
            "with");
    private static final Set<String> LAST = Set.of("accepted");
    private static final String EXPECTED = "an end such as sealed, double-braid-eye perimeter 600 mm,"
            + " bury-eye length 300 mm pin 150 mm, bury-eye thimble T12 or swaged fork-12";

    private EndText() {}

    /** The id of a termination, thimble or fitting: no blanks, so that it can stand in a cell. */
    static Parsed<String> partId(String text) {
        return PART_ID.matcher(text).matches()
                ? Parsed.of(text)
                : Parsed.refused("an id of at most 40 letters, digits and . _ # + / ( ) -, without blanks");
    }

    static Parsed<EndSpec> parse(String text) {
        Map<String, String> words = new HashMap<>();
        String head = split(text.strip().replaceAll("\\s+", " "), words);
        String[] names = head.split(" ");
        boolean sound = names.length <= 2 && partId(names[0]).value().isPresent();
        if (!sound || words.containsKey("?")) {
            return Parsed.refused(EXPECTED);
        }
        return eye(words).then(eye -> fitting(names, words).then(fitting -> options(words)
                .map(options -> new EndSpec(names[0], eye, fitting, options, written(head, words)))));
    }

    /** Every word with what was written behind it, in one order; who accepted it is told elsewhere. */
    private static String written(String head, Map<String, String> words) {
        StringBuilder written = new StringBuilder(head);
        for (String word : WRITTEN) {
            if (words.containsKey(word)) {
                written.append(" ").append((word + " " + words.get(word)).strip());
            }
        }
        return written.toString();
    }

    /** What stands in front of the first word; each word with what follows it; "?" when a word stands twice. */
    private static String split(String text, Map<String, String> words) {
        Matcher key = KEY.matcher(text);
        int headEnd = text.length();
        String open = "";
        int from = 0;
        while (!LAST.contains(open) && key.find()) {
            if (open.isEmpty()) {
                headEnd = key.start();
            } else {
                put(words, open, text.substring(from, key.start()));
            }
            open = key.group(1).toLowerCase(Locale.ROOT);
            from = key.end();
        }
        if (!open.isEmpty()) {
            put(words, open, text.substring(from));
        }
        return text.substring(0, headEnd).strip();
    }

    private static void put(Map<String, String> words, String word, String what) {
        if (words.put(word, what.strip()) != null) {
            words.put("?", word);
        }
    }

    private static Parsed<EyeSpec> eye(Map<String, String> words) {
        List<String> stated = EYES.stream().filter(words::containsKey).toList();
        if (stated.size() > 1) {
            return Parsed.refused("one of " + String.join(", ", EYES) + ", not two");
        }
        Parsed<Diameter> pin = words.containsKey("pin") ? diameter("pin", words) : Parsed.of(Diameter.NONE);
        if (stated.isEmpty()) {
            return words.containsKey("pin") ? Parsed.refused(EXPECTED) : Parsed.of(EyeSpec.NONE);
        }
        return pin.then(on -> eye(stated.get(0), words, on));
    }

    private static Parsed<EyeSpec> eye(String word, Map<String, String> words, Diameter pin) {
        return switch (word) {
            case "length" -> length(word, words).map(length -> new EyeSpec.FlatLength(length, pin));
            case "perimeter" -> length(word, words).map(length -> new EyeSpec.Perimeter(length, pin));
            case "diameter" -> length(word, words).map(length -> new EyeSpec.RoundEye(length, pin));
            case "ratio" -> pin.equals(Diameter.NONE)
                    ? Parsed.refused("the pin of the ratio, such as ratio 5 pin 300 mm")
                    : ratio(words).map(ratio -> new EyeSpec.PinRatio(ratio, pin));
            default -> value(word, words).then(EndText::partId).map(id -> new EyeSpec.OnThimble(id, pin));
        };
    }

    private static Parsed<FittingSpec> fitting(String[] names, Map<String, String> words) {
        if (names.length == 2 && words.containsKey("bore")) {
            return Parsed.refused("the id of a fitting or its bore, not both");
        }
        if (names.length == 2) {
            return partId(names[1]).map(id -> new FittingSpec(id, FineLength.ZERO));
        }
        return words.containsKey("bore")
                ? length("bore", words).map(depth -> new FittingSpec("", depth))
                : Parsed.of(FittingSpec.NONE);
    }

    private static Parsed<Options> options(Map<String, String> words) {
        if (!words.getOrDefault("tapered", "").isEmpty()) {
            return Parsed.refused("nothing behind tapered");
        }
        Parsed<Integer> tucks = words.containsKey("tucks")
                ? value("tucks", words).then(text -> Readings.whole(1, 100).read(text))
                : Parsed.of(0);
        Parsed<String> accepted =
                words.containsKey("accepted") ? value("accepted", words).then(Readings::text) : Parsed.of("");
        Parsed<String> joined = words.containsKey("to") ? value("to", words).then(Readings::id) : Parsed.of("");
        Parsed<Allowance> tail =
                words.containsKey("tail") ? value("tail", words).then(EndText::tail) : Parsed.of(Allowance.NOTHING);
        Parsed<List<HardwareSpec>> hung =
                words.containsKey("with") ? value("with", words).then(HardwareText::parse) : Parsed.of(List.of());
        boolean tapered = words.containsKey("tapered");
        return tucks.then(count -> accepted.then(name -> joined.then(rope ->
                tail.then(asked -> hung.map(hardware -> new Options(count, tapered, name, rope, asked, hardware))))));
    }

    /** A length, or so many diameters or fids. */
    private static Parsed<Allowance> tail(String text) {
        return AllowanceText.parse(text)
                .value()
                .filter(terms -> terms.size() == 1 && isTail(terms.get(0)))
                .map(terms -> Parsed.of(new Allowance(terms, Provenance.ORDER)))
                .orElse(Parsed.refused(
                        "a tail such as 24 diameters, 2 fids or 600 mm, of at most 1000 diameters or 100 m"));
    }

    private static boolean isTail(Term term) {
        if (term instanceof Term.Fixed fixed) {
            return fixed.length().isPositive() && fixed.length().compareTo(FineLength.ofMillimetres(100_000)) <= 0;
        }
        return term instanceof Term.Multiple some
                && (some.of() == Yardstick.DIAMETER || some.of() == Yardstick.FID)
                && some.count().isPositive()
                && some.count().compareTo(Ratio.of(1000)) <= 0;
    }

    private static Parsed<String> value(String word, Map<String, String> words) {
        String text = Optional.ofNullable(words.get(word)).orElse("");
        return text.isEmpty() ? Parsed.refused("something behind " + word + ": " + EXPECTED) : Parsed.of(text);
    }

    private static Parsed<FineLength> length(String word, Map<String, String> words) {
        return value(word, words)
                .then(LengthText::parseFine)
                .then(length -> length.isPositive() && length.compareTo(FineLength.ofMillimetres(100_000)) <= 0
                        ? Parsed.of(length)
                        : Parsed.refused("a " + word + " above 0 and of at most 100 m"));
    }

    private static Parsed<Diameter> diameter(String word, Map<String, String> words) {
        return value(word, words)
                .then(LengthText::parseFine)
                .then(length -> length.isPositive() && length.compareTo(FineLength.ofMillimetres(10_000)) <= 0
                        ? Parsed.of(new Diameter(length.units()))
                        : Parsed.refused("a pin above 0 and of at most 10 m"));
    }

    private static Parsed<Ratio> ratio(Map<String, String> words) {
        return value("ratio", words)
                .then(BookRow::positive)
                .then(ratio -> ratio.isPositive() && ratio.compareTo(Ratio.of(100)) <= 0
                        ? Parsed.of(ratio)
                        : Parsed.refused("a ratio above 0 and of at most 100"));
    }
}
