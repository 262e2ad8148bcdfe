package bitterend.exchange;

import bitterend.catalogue.Hardware;
import bitterend.catalogue.Hardware.Kind;
import bitterend.demand.HardwareSpec;
import bitterend.demand.HardwareSpec.Setting;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Mass;
import bitterend.measure.MassText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What hangs on an end, from the rope outwards, with a plus between blanks:
 *
 * <pre>
 * SB12 + TB8 half open + shared ML16 | shackle inside 48 mm +/- 2 mm mass 0.4 kg
 * </pre>
 */
final class HardwareText {
    private static final Pattern STATED = Pattern.compile(
            "(?<kind>[a-z][a-z ]*?) inside (?<inside>.+?)(?: (?:\\+/-|\u00b1) ?(?<tolerance>.+?))?(?: mass (?<mass>.+))?");
    private static final Pattern SHARED = Pattern.compile("shared (?<rest>.+)");
    private static final FineLength LONGEST = FineLength.ofMillimetres(10_000);
    private static final String EXPECTED = "hardware such as SB12, TB8 half open, shared ML16 or shackle inside 48 mm"
            + " +/- 2 mm mass 0.4 kg, with \" + \" between two";
    static final Reading<Kind> KIND = Readings.word(Kind.values(), Kind::word);

    private HardwareText() {}

    static Parsed<List<HardwareSpec>> parse(String text) {
        List<HardwareSpec> hung = new ArrayList<>();
        for (String each : text.strip().split(" \\+ ", -1)) {
            Matcher shared = SHARED.matcher(each.strip());
            boolean elsewhere = shared.matches();
            Parsed<HardwareSpec.What> what = what(elsewhere ? shared.group("rest") : each.strip());
            if (what.value().isEmpty()) {
                return Parsed.refused(what.refusal().orElse(EXPECTED));
            }
            hung.add(new HardwareSpec(what.value().get(), elsewhere));
        }
        return Parsed.of(List.copyOf(hung));
    }

    private static Parsed<HardwareSpec.What> what(String text) {
        Matcher stated = STATED.matcher(text);
        if (stated.matches()) {
            return stated(stated).map(HardwareSpec.Stated::new);
        }
        String[] words = text.split(" ", 2);
        if (EndText.partId(words[0]).value().isEmpty()
                || KIND.read(text).value().isPresent()) {
            return Parsed.refused(EXPECTED);
        }
        return setting(words.length > 1 ? words[1] : "").map(setting -> new HardwareSpec.Row(words[0], setting));
    }

    private static Parsed<Hardware> stated(Matcher form) {
        Parsed<FineLength> tolerance =
                form.group("tolerance") == null ? Parsed.of(FineLength.ZERO) : notNegative(form.group("tolerance"));
        Parsed<Mass> mass = form.group("mass") == null ? Parsed.of(Mass.ZERO) : MassText.parse(form.group("mass"));
        return KIND.read(form.group("kind")).then(kind -> inside(form.group("inside"))
                .then(inside ->
                        tolerance.then(off -> mass.map(weight -> Hardware.fixed("", kind, inside, off, weight)))));
    }

    private static Parsed<Setting> setting(String words) {
        Optional<Ratio> part =
                switch (words) {
                    case "closed" -> Optional.of(Ratio.ZERO);
                    case "half open" -> Optional.of(new Ratio(1, 2));
                    case "open" -> Optional.of(Ratio.ONE);
                    default -> words.startsWith("open ")
                            ? RatioText.parse(words.substring(5)).value().filter(HardwareText::isPart)
                            : Optional.empty();
                };
        if (part.isPresent()) {
            return Parsed.of(new HardwareSpec.Open(part.get(), words));
        }
        if (words.startsWith("at ")) {
            return inside(words.substring(3)).map(HardwareSpec.At::new);
        }
        return words.isEmpty() ? Parsed.of(Setting.NOT_STATED) : Parsed.refused(EXPECTED);
    }

    private static boolean isPart(Ratio ratio) {
        return !ratio.isNegative() && ratio.compareTo(Ratio.ONE) <= 0;
    }

    /** An inside length. */
    static Parsed<FineLength> inside(String text) {
        return LengthText.parseFine(text)
                .then(length -> length.isPositive() && length.compareTo(LONGEST) <= 0
                        ? Parsed.of(length)
                        : Parsed.refused("an inside length above 0 and of at most 10 m"));
    }

    /** How far an inside length may be off. */
    static Parsed<FineLength> notNegative(String text) {
        return LengthText.parseFine(text)
                .then(length -> length.isNegative() || length.compareTo(LONGEST) > 0
                        ? Parsed.refused("a length from 0 up to 10 m")
                        : Parsed.of(length));
    }
}
