package bitterend.packing;

import bitterend.measure.Length;
import bitterend.measure.Written;

/** Lengths inside sentences. */
public final class Words {
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

    /** The papers that a piece must come with, such as {@code a certificate (EN 1891)}. */
    public static String certificate(String name) {
        return "a certificate (" + name + ")";
    }

    /** The same after the rope that is meant; nothing where a piece needs no papers. */
    public static String withCertificate(String name) {
        return name.isEmpty() ? "" : " with " + certificate(name);
    }
}
