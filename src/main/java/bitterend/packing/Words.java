package bitterend.packing;

import bitterend.measure.Length;
import bitterend.measure.Written;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths inside sentences. */
public final class Words {
    /** As {@link #of} writes them, at most 1,000 km; what looks like one inside an id is not touched. */
    private static final Pattern LENGTH = Pattern.compile("(?<![^ (-])([0-9]{1,6})\\.([0-9]{3}) m(?![^ ,;:.)])");

    private Words() {}

    /** Metres with three digits, such as {@code 12.345 m}. */
    public static String of(Length length) {
        long mm = Math.abs(length.mm());
        String thousandths = Long.toString(1000 + mm % 1000).substring(1);
        return (length.isNegative() ? "-" : "") + mm / 1000 + "." + thousandths + " m";
    }

    /** As somebody typed it; a length that was worked out as metres with three digits. */
    public static String of(Written length) {
        return length.text().isEmpty() ? of(length.roundedDown()) : length.text();
    }

    /** The sentence with every length of it printed in another way, such as in feet. */
    public static String reprinted(String sentence, Function<Length, String> print) {
        return LENGTH.matcher(sentence)
                .replaceAll(found -> Matcher.quoteReplacement(
                        print.apply(new Length(Long.parseLong(found.group(1) + found.group(2))))));
    }
}
