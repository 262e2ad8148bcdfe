package bitterend.stock;

import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Rope of a reel that is spoken for: so much of it, at its inner end, serves one order or one customer until a day.
 *
 * @param length how much; positive
 * @param kind whether it is held for an order or for a customer
 * @param name the order or the customer
 * @param until the last day on which it is held
 * @param why why, in words; may be empty
 */
public record Held(Length length, For kind, String name, LocalDate until, String why) {
    private static final String EXPECTED =
            "held rope such as 50 m for order G-2200 until 2026-03-05; 30 m for customer ketch Brambling until 2026-03-10: new sheets";
    private static final Pattern ONE = Pattern.compile(
            "(?<length>.+?) for (?<kind>order|customer) (?<name>.+?) until (?<day>\\d{4}-\\d\\d-\\d\\d)(?: *: *(?<why>.*))?");
    private static final Pattern PARTING = Pattern.compile(";|\\p{Cntrl}| until \\d");

    /** Whom it is held for. */
    public enum For {
        ORDER("order"),
        CUSTOMER("customer");

        private final String word;

        For(String word) {
            this.word = word;
        }

        /** The word used in lists and files. */
        public String word() {
            return word;
        }
    }

    public Held {
        if (!length.isPositive() || !isName(name) || why.contains(";")) {
            throw new IllegalArgumentException(length + " held for '" + name + "': " + why);
        }
    }

    /** Whether an order or a customer of this name can be told from what stands beside it in a list. */
    public static boolean isName(String text) {
        return !text.isBlank() && !PARTING.matcher(text).find();
    }

    /** Whom it is held for, such as {@code order G-2200} or {@code customer ketch Brambling}. */
    public String whom() {
        return kind.word() + " " + name;
    }

    /** Whether it is held on a day; it is released by the day that passes. */
    public boolean isOn(LocalDate day) {
        return !day.isAfter(until);
    }

    /** Whether it serves a piece of this order for this customer. */
    public boolean serves(String order, String customer) {
        return kind == For.ORDER ? name.equals(order) : name.equals(customer);
    }

    /** The same with so much less of it; nothing is left where that is all of it. */
    List<Held> less(Length used) {
        Length left = length.minus(used);
        return left.isPositive() ? List.of(new Held(left, kind, name, until, why)) : List.of();
    }

    /** As files have it, exact: {@code 50000 mm for order G-2200 until 2026-03-05}. */
    private String text() {
        return LengthText.exact(length) + " for " + whom() + " until " + until + (why.isEmpty() ? "" : ": " + why);
    }

    /** Several of them in one cell, separated by semicolons; empty for none. */
    public static String text(List<Held> all) {
        return all.stream().map(Held::text).collect(Collectors.joining("; "));
    }

    /** Reads what {@link #text(List)} writes, or a person typed: lengths in any unit, rounded up. */
    public static Parsed<List<Held>> parse(String text) {
        if (text.isBlank()) {
            return Parsed.of(List.of());
        }
        List<Parsed<Held>> parts =
                Arrays.stream(text.split(";")).map(String::strip).map(Held::one).toList();
        return parts.stream()
                .flatMap(part -> part.refusal().stream())
                .findFirst()
                .<Parsed<List<Held>>>map(Parsed::refused)
                .orElseGet(() -> Parsed.of(
                        parts.stream().map(part -> part.value().orElseThrow()).toList()));
    }

    private static Parsed<Held> one(String text) {
        Matcher parts = ONE.matcher(text);
        if (!parts.matches()) {
            return Parsed.refused(EXPECTED);
        }
        String why = parts.group("why") == null ? "" : parts.group("why").strip();
        For kind = parts.group("kind").equals(For.ORDER.word()) ? For.ORDER : For.CUSTOMER;
        try {
            LocalDate until = LocalDate.parse(parts.group("day"));
            return LengthText.parse(parts.group("length"))
                    .then(length -> length.isPositive()
                            ? Parsed.of(new Held(length, kind, parts.group("name"), until, why))
                            : Parsed.refused(EXPECTED));
        } catch (DateTimeParseException noDay) {
            return Parsed.refused(EXPECTED);
        }
    }
}
