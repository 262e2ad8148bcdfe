package bitterend.packing;

import bitterend.measure.Length;
import bitterend.measure.Written;
import java.util.regex.Pattern;

/** Lengths inside sentences. */
public final class Words {
    private static final Pattern BEGINS_OPEN = Pattern.compile("[aeio8]", Pattern.CASE_INSENSITIVE);

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

    /** The papers that a piece must come with, such as {@code an EN 1891 certificate}. */
    public static String certificate(String name) {
        return (BEGINS_OPEN.matcher(name).lookingAt() ? "an " : "a ") + name + " certificate";
    }

    /** The same after the rope that is meant; nothing where a piece needs no papers. */
    public static String withCertificate(String name) {
        return name.isEmpty() ? "" : " with " + certificate(name);
    }
}
