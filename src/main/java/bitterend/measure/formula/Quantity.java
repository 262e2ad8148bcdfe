package bitterend.measure.formula;

import bitterend.measure.FeetAndInches;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import bitterend.measure.RatioText;
import bitterend.measure.Units;
import bitterend.measure.Written;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.EnumSet;
import java.util.Set;

/** A length or a number while it is worked out: exact, and mindful of the units it was written in. */
public final class Quantity {
    private static final BigInteger MOST = new BigInteger("10000000000000");
    private static final long MILLION = 1_000_000;

    private final Kind kind;
    private final Exact size;
    private final Set<Units> systems;

    /** A length counts in ten-thousandths of a millimetre. */
    private Quantity(Kind kind, Exact size, Set<Units> systems) {
        this.kind = kind;
        this.size = size;
        this.systems = systems;
    }

    /** A text as what its name stands for. */
    public static Parsed<Quantity> of(Kind kind, String text) {
        return kind == Kind.LENGTH ? length(text) : number(text);
    }

    /** {@code 2 m}, {@code 31 ft 6 in}. */
    static Parsed<Quantity> length(String text) {
        return Written.parse(text).map(Quantity::length);
    }

    private static Quantity length(Written written) {
        Set<Units> systems = EnumSet.noneOf(Units.class);
        for (Units system : Units.values()) {
            if (written.inOtherThan(system).isEmpty()) {
                systems.add(system);
            }
        }
        return new Quantity(Kind.LENGTH, Exact.of(written.exact().units()), systems);
    }

    /** {@code 0.75}, {@code 3/4}, {@code 15 %}. */
    static Parsed<Quantity> number(String text) {
        return RatioText.parse(text)
                .map(ratio -> new Quantity(
                        Kind.NUMBER,
                        Exact.of(ratio.numerator()).over(Exact.of(ratio.denominator())),
                        EnumSet.allOf(Units.class)));
    }

    /** A length or a number. */
    public Kind kind() {
        return kind;
    }

    int signum() {
        return size.signum();
    }

    Exact size() {
        return size;
    }

    /** Another size of the same kind, reached together with {@code other}. */
    Quantity with(Kind of, Exact changed, Quantity other) {
        Set<Units> both = EnumSet.copyOf(systems);
        both.retainAll(other.systems);
        return new Quantity(of, changed, both);
    }

    /**
     * As a column takes it. A length is rounded up once: to a sixteenth of an inch where all that it was made of is in
     * feet and inches, else to a whole millimetre. A number must end behind the point.
     */
    public Parsed<String> text() {
        if (size.above().abs().compareTo(MOST.multiply(size.below())) > 0) {
            return Parsed.refused("a size that some rope or count can have");
        }
        if (size.signum() < 0) {
            return Parsed.refused(
                    "nothing below zero; this is less by " + new Quantity(kind, size.negated(), systems).words());
        }
        return kind == Kind.LENGTH ? Parsed.of(length()) : number();
    }

    private String words() {
        return text().value().orElse("a fraction");
    }

    private String length() {
        if (systems.contains(Units.IMPERIAL) && !systems.contains(Units.METRIC)) {
            Exact step = Exact.of(FeetAndInches.UNITS_PER_SIXTEENTH);
            return new FeetAndInches(size.over(step).roundedUp().longValueExact()).words();
        }
        Length whole = new FineLength(size.roundedUp().longValueExact()).roundedUp();
        return whole.mm() < 1000 ? LengthText.exact(whole) : plain(BigDecimal.valueOf(whole.mm(), 3)) + " m";
    }

    private Parsed<String> number() {
        Exact millionths = size.times(Exact.of(MILLION));
        return millionths.isWhole() && size.compareTo(Exact.of(MILLION)) <= 0
                ? Parsed.of(plain(BigDecimal.valueOf(millionths.above().longValueExact(), 6)))
                : Parsed.refused("a number of at most a million with six digits behind the point;"
                        + " roundUp(..., 1) makes it whole");
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
