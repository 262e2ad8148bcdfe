package bitterend.exchange.form;

import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * How one value stands in a member of a JSON object.
 *
 * @param out what is written: a text, a whole number, a truth value
 * @param in how its text is read
 * @param placeholder what stands in for a text that cannot be read, once that is told
 * @param <V> the value
 */
public record Codec<V>(Function<V, Object> out, Reading<V> in, V placeholder) {
    private static final Pattern WHOLE = Pattern.compile("-?[0-9]{1,18}|-?[0-8][0-9]{18}");

    /** Any text, as it is. */
    public static final Codec<String> ANY = new Codec<>(text -> text, Parsed::of, "?");

    /** A text for people, on one line. */
    public static final Codec<String> TEXT = new Codec<>(text -> text, Readings::text, "?");

    /** An id of at most 40 letters, digits and a few signs. */
    public static final Codec<String> ID = new Codec<>(text -> text, Readings::id, "?");

    /** The id of a reel of a plan, one that is on order included. */
    public static final Codec<String> PLANNED_REEL = new Codec<>(text -> text, Readings::plannedReel, "?");

    /** A length in whole millimetres, in metres. */
    public static final Codec<Length> LENGTH = new Codec<>(LengthText::exact, LengthText::parse, Length.ZERO);

    /** A day as {@code 2026-03-02}. */
    public static final Codec<LocalDate> DAY = new Codec<>(LocalDate::toString, Readings::day, LocalDate.EPOCH);

    /** A moment as {@code 2026-03-02T09:12:00Z}. */
    public static final Codec<Instant> MOMENT = new Codec<>(Instant::toString, Codec::moment, Instant.EPOCH);

    /** True or false. */
    public static final Codec<Boolean> TRUE = new Codec<>(yes -> yes, Readings::yesOrNo, false);

    private static Parsed<Instant> moment(String text) {
        try {
            return Parsed.of(Instant.parse(text));
        } catch (DateTimeParseException notAnInstant) {
            return Parsed.refused("a moment such as 2026-03-02T09:12:00Z");
        }
    }

    /** Any whole number of at most 64 bits. */
    public static final Codec<Long> WHOLE_NUMBER = new Codec<>(
            whole -> whole,
            text -> WHOLE.matcher(text).matches() ? Parsed.of(Long.parseLong(text)) : Parsed.refused("a whole number"),
            0L);

    /** A whole number between two others, both included; the first stands in for one that cannot be read. */
    public static Codec<Integer> whole(int from, int to) {
        return new Codec<>(whole -> whole, Readings.whole(from, to), from);
    }

    /** One of a few constants, as a word: {@code on reel}. The first stands in for one that cannot be read. */
    public static <E extends Enum<E>> Codec<E> word(E[] constants) {
        return word(constants, Codec::word);
    }

    /** One of a few constants by words of their own. */
    public static <E> Codec<E> word(E[] constants, Function<E, String> word) {
        return new Codec<>(word::apply, Readings.word(constants, word), constants[0]);
    }

    /** The same with something else in place of what cannot be read. */
    public Codec<V> orElse(V other) {
        return new Codec<>(out, in, other);
    }

    /** A constant as a word. */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
