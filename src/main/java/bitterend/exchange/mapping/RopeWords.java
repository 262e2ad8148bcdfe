package bitterend.exchange.mapping;

import bitterend.catalogue.Rope;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A rope in somebody's words taken apart: {@code 12 mm 3 Strand polyester, white}.
 *
 * @param diameter as files write it; empty where none is said
 * @param construction a word of the files; empty where none is said
 * @param fibre the same
 * @param colour the same; of several the first
 * @param others words that mean none of these
 */
record RopeWords(String diameter, String construction, String fibre, String colour, List<String> others) {
    private static final Pattern METRIC = Pattern.compile("(?<![0-9.,])([0-9]+(?:[.,][0-9]+)?) ?mm(?![\\p{L}])");
    private static final Pattern INCHES = Pattern.compile(
            "(?<![0-9./])([0-9]+ [0-9]+/[0-9]+|[0-9]+/[0-9]+|[0-9]+) ?(?:\"|in(?:ch(?:es)?)?(?![\\p{L}])|zoll)");
    /** No size in millimetres is a fraction. */
    private static final Pattern FRACTION =
            Pattern.compile("(?<![0-9./])((?:[0-9] )?[0-9]{1,2}/(?:2|4|8|16|32))(?![0-9./])");

    private static final Pattern BARE = Pattern.compile("[0-9]{1,3}");

    RopeWords {
        others = List.copyOf(others);
    }

    static RopeWords of(String text) {
        StringBuilder rest = new StringBuilder(text.toLowerCase(Locale.ROOT));
        String diameter = cut(rest, METRIC)
                .map(mm -> mm.replace(',', '.') + " mm")
                .or(() -> cut(rest, INCHES).or(() -> cut(rest, FRACTION)).map(inches -> inches + " in"))
                .orElse("");
        StringBuilder plain = new StringBuilder(" " + TradeWords.plain(rest.toString()) + " ");
        String construction = cut(plain, "construction");
        String fibre = cut(plain, "fibre");
        String colour = cut(plain, "colour");
        while (!cut(plain, "small").isEmpty()) {
            // one after the other
        }
        List<String> others = new ArrayList<>();
        for (String word : plain.toString().strip().split(" +")) {
            if (diameter.isEmpty() && BARE.matcher(word).matches()) {
                diameter = word + " mm";
            } else if (!word.isEmpty()) {
                others.add(word);
            }
        }
        return new RopeWords(diameter, construction, fibre, colour, others);
    }

    private static Optional<String> cut(StringBuilder text, Pattern pattern) {
        Matcher found = pattern.matcher(text);
        if (!found.find()) {
            return Optional.empty();
        }
        String group = found.group(1);
        text.replace(found.start(), found.end(), " ");
        return Optional.of(group);
    }

    /** Takes the longest phrase of a list out; empty where none is there. */
    private static String cut(StringBuilder plain, String list) {
        for (TradeWords.Phrase phrase : TradeWords.builtIn().phrases(list)) {
            int at = plain.indexOf(" " + phrase.words() + " ");
            if (at >= 0) {
                plain.replace(at, at + phrase.words().length() + 2, " ");
                return phrase.meaning();
            }
        }
        return "";
    }

    private Optional<Diameter> thick() {
        return diameter.isEmpty()
                ? Optional.empty()
                : DiameterText.parse(diameter).value();
    }

    /** Whether nothing that is said speaks against a rope, and enough is said to know one by. */
    boolean mayMean(Rope rope) {
        boolean thick = thick().map(rope.diameter()::equals).orElse(true);
        boolean built = construction.isEmpty()
                || construction.equals(rope.construction().word());
        boolean made = fibre.isEmpty()
                || rope.fibre().parts().stream().anyMatch(part -> part.word().equals(fibre));
        String its = RopeWords.of(rope.identity().colour()).colour();
        boolean dyed = colour.isEmpty() || its.isEmpty() || colour.equals(its);
        boolean enough = !(diameter + construction + fibre).isEmpty();
        return enough && thick && built && made && dyed;
    }

    /** Whether all of it, beside the id of a rope, is said of that rope and nothing speaks against it. */
    boolean isOf(Rope rope) {
        boolean said = !(diameter + construction + fibre).isEmpty();
        String its = RopeWords.of(rope.identity().colour()).colour();
        boolean dyed = colour.isEmpty() || its.isEmpty() || colour.equals(its);
        return dyed && (!said || mayMean(rope)) && knowsAll(rope);
    }

    /** Whether every word means something of this rope, so that nobody needs to be asked. */
    boolean isSure(Rope rope) {
        return !diameter.isEmpty() && !isSizeAlone() && knowsAll(rope);
    }

    /** Whether a diameter is all that is said, a colour aside: a rope of that size may be of quite another make. */
    boolean isSizeAlone() {
        return !diameter.isEmpty() && (construction + fibre).isEmpty() && others.isEmpty();
    }

    private boolean knowsAll(Rope rope) {
        String own = " "
                + TradeWords.plain(String.join(
                        " ",
                        rope.id(),
                        rope.name(),
                        rope.identity().core(),
                        rope.identity().grade(),
                        rope.identity().finish(),
                        rope.identity().colour(),
                        rope.identity().tracer()))
                + " ";
        return others.stream().allMatch(word -> own.contains(" " + word + " "));
    }
}
