package bitterend.demand;

import java.util.regex.Pattern;

/**
 * Which piece of the order book: order, line, number within the line, part of the product, leg. Its text is
 * {@code ORDER/LINE.n}, with {@code -part} for a further part and {@code -leg} for each leg of several. Neither order nor
 * line holds a slash, and a part neither a dot nor a slash, starts with a letter and does not end in a number behind a
 * hyphen: so no two ids have one text. Equal when the texts are.
 */
public final class PieceId {
    private static final Pattern TEXT =
            Pattern.compile("[^/]+/[^/]+\\.[0-9]+(-\\p{L}[\\p{L}\\p{N}_#+()-]*)?(-[0-9]+)?");
    private static final Pattern PART = Pattern.compile("\\p{L}[\\p{L}\\p{N}_#+()-]{0,39}");
    private static final Pattern LIKE_A_LEG = Pattern.compile(".*-[0-9]+");

    private final String assembly;
    private final String order;
    private final String line;
    private final int number;
    private final String part;
    private final int leg;
    private final int legs;
    private final String text;

    private PieceId(PieceId main, String part, int leg, int legs, String text) {
        this.assembly = main.assembly;
        this.order = main.order;
        this.line = main.line;
        this.number = main.number;
        this.part = part;
        this.leg = leg;
        this.legs = legs;
        this.text = text;
    }

    private PieceId(String text, String order, String line, int number) {
        this.assembly = text;
        this.order = order;
        this.line = line;
        this.number = number;
        this.part = "";
        this.leg = 1;
        this.legs = 1;
        this.text = text;
    }

    /** The only piece of an assembly, {@code number} counting the assemblies of the line from 1. */
    public static PieceId of(String order, String line, int number) {
        if (number < 1 || order.isEmpty() || line.isEmpty() || order.contains("/") || line.contains("/")) {
            throw new IllegalArgumentException("no piece " + order + " / " + line + " . " + number);
        }
        return new PieceId(order + "/" + line + "." + number, order, line, number);
    }

    /**
     * Any piece of the order book.
     *
     * @param assembly its assembly
     * @param part the part of its product; empty for the main part
     * @param leg which leg of its part, from 1
     * @param legs how many legs its part has
     */
    public static PieceId of(PieceId assembly, String part, int leg, int legs) {
        if (leg < 1 || leg > legs) {
            throw new IllegalArgumentException("leg " + leg + " of " + legs);
        }
        return assembly.part(part).leg(leg, legs);
    }

    /** A piece outside the order book, as studies make them: it is known by this text alone. */
    public static PieceId outsideTheBook(String text, Piece.Source source) {
        return new PieceId(text, source.order(), source.line(), 1);
    }

    /** The piece of a further part of the same assembly; an empty name is the main part. */
    PieceId part(String name) {
        if (name.isEmpty()) {
            return this;
        }
        if (!isPart(name)) {
            throw new IllegalArgumentException("no name for a part: " + name);
        }
        return new PieceId(this, name, leg, legs, text + "-" + name);
    }

    /** One leg of the part, counted from 1; a part of one leg keeps its id. */
    PieceId leg(int which, int of) {
        return of == 1 ? this : new PieceId(this, part, which, of, text + "-" + which);
    }

    /** Whether a part of a product may have this name. */
    public static boolean isPart(String name) {
        return PART.matcher(name).matches() && !LIKE_A_LEG.matcher(name).matches();
    }

    /** Whether a text has the form of an id of the order book. */
    public static boolean isText(String text) {
        return TEXT.matcher(text).matches();
    }

    /** The number of an order. */
    public String order() {
        return order;
    }

    /** The line within the order. */
    public String line() {
        return line;
    }

    /** Which assembly of its line, from 1. */
    public int number() {
        return number;
    }

    /** The part of its product; empty for the main part. */
    public String part() {
        return part;
    }

    /** Which leg of its part, from 1. */
    public int leg() {
        return leg;
    }

    /** How many legs its part has. */
    public int legs() {
        return legs;
    }

    /** The assembly it belongs to, {@code ORDER/LINE.n}; all its parts and legs share it. */
    public String assembly() {
        return assembly;
    }

    /** As printed, and as other files name it. */
    public String text() {
        return text;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PieceId id && id.text.equals(text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
