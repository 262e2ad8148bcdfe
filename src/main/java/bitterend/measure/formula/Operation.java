package bitterend.measure.formula;

import bitterend.measure.Parsed;
import java.math.BigInteger;
import java.util.List;

/** What a formula does with two quantities. */
enum Operation {
    PLUS("+") {
        @Override
        Parsed<Kind> kind(Kind left, Kind right) {
            return alike(left, right, "added to");
        }

        @Override
        Parsed<Quantity> of(Quantity left, Quantity right) {
            return Parsed.of(left.with(left.kind(), left.size().plus(right.size()), right));
        }
    },
    MINUS("-") {
        @Override
        Parsed<Kind> kind(Kind left, Kind right) {
            return alike(left, right, "taken from");
        }

        @Override
        Parsed<Quantity> of(Quantity left, Quantity right) {
            return Parsed.of(
                    left.with(left.kind(), left.size().plus(right.size().negated()), right));
        }
    },
    TIMES("*") {
        @Override
        Parsed<Kind> kind(Kind left, Kind right) {
            return left == Kind.LENGTH && right == Kind.LENGTH
                    ? Parsed.refused("a number to multiply a length by, since two lengths make an area")
                    : Parsed.of(left == Kind.LENGTH ? left : right);
        }

        @Override
        Parsed<Quantity> of(Quantity left, Quantity right) {
            Kind kind = left.kind() == Kind.LENGTH ? Kind.LENGTH : right.kind();
            return Parsed.of(left.with(kind, left.size().times(right.size()), right));
        }
    },
    OVER("/") {
        @Override
        Parsed<Kind> kind(Kind left, Kind right) {
            if (right == Kind.NUMBER) {
                return Parsed.of(left);
            }
            return left == Kind.LENGTH
                    ? Parsed.of(Kind.NUMBER)
                    : Parsed.refused(
                            "a length or a number to divide a length by: a number cannot be divided by a length");
        }

        @Override
        Parsed<Quantity> of(Quantity left, Quantity right) {
            if (right.signum() == 0) {
                return Parsed.refused("something else than zero to divide by");
            }
            Kind kind = right.kind() == Kind.NUMBER ? left.kind() : Kind.NUMBER;
            return Parsed.of(left.with(kind, left.size().over(right.size()), right));
        }
    },
    MIN("min") {
        @Override
        Parsed<Kind> kind(Kind left, Kind right) {
            return alike(left, right, "compared with");
        }

        @Override
        Parsed<Quantity> of(Quantity left, Quantity right) {
            return Parsed.of(left.size().compareTo(right.size()) <= 0 ? left : right);
        }
    },
    MAX("max") {
        @Override
        Parsed<Kind> kind(Kind left, Kind right) {
            return alike(left, right, "compared with");
        }

        @Override
        Parsed<Quantity> of(Quantity left, Quantity right) {
            return Parsed.of(left.size().compareTo(right.size()) >= 0 ? left : right);
        }
    },
    ROUND_UP("roundUp") {
        @Override
        Parsed<Kind> kind(Kind left, Kind right) {
            return alike(left, right, "rounded up to a multiple of");
        }

        @Override
        Parsed<Quantity> of(Quantity left, Quantity right) {
            if (right.signum() <= 0) {
                return Parsed.refused("a step above zero to round up to");
            }
            Exact steps = new Exact(left.size().over(right.size()).roundedUp(), BigInteger.ONE);
            return Parsed.of(left.with(left.kind(), steps.times(right.size()), right));
        }
    };

    static final List<Operation> FUNCTIONS = List.of(MIN, MAX, ROUND_UP);

    private final String sign;

    Operation(String sign) {
        this.sign = sign;
    }

    String sign() {
        return sign;
    }

    /** What the result is; a refusal says what would have been right. */
    abstract Parsed<Kind> kind(Kind left, Kind right);

    /** The result for two quantities whose kinds go together. */
    abstract Parsed<Quantity> of(Quantity left, Quantity right);

    private static Parsed<Kind> alike(Kind left, Kind right, String done) {
        return left == right
                ? Parsed.of(left)
                : Parsed.refused(
                        "two of one kind: " + (left == Kind.LENGTH ? "a number cannot be " : "a length cannot be ")
                                + done + " " + left.words() + ", write it as " + (left == Kind.LENGTH ? "2 m" : "2"));
    }
}
