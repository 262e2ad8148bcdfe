package bitterend.cli;

import bitterend.exchange.StockText;
import bitterend.measure.Length;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import java.time.LocalDate;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Values as they are typed on the command line; they pass the same rules as in the files. */
final class Typed {
    private Typed() {}

    /** One kind of value. */
    abstract static class Value<T> implements ITypeConverter<T> {
        private final Function<String, Parsed<T>> rule;

        Value(Function<String, Parsed<T>> rule) {
            this.rule = rule;
        }

        @Override
        public T convert(String text) {
            Parsed<T> value = rule.apply(text);
            return value.value()
                    .orElseThrow(() -> new TypeConversionException(
                            "expected " + value.refusal().orElse("another value")));
        }
    }

    /** Where nothing may be typed too. */
    private static Function<String, Parsed<String>> orNothing(Function<String, Parsed<String>> rule) {
        return text -> text.isEmpty() ? Parsed.of(text) : rule.apply(text);
    }

    /** The id of a new reel. */
    static final class ReelId extends Value<String> {
        ReelId() {
            super(StockText::reel);
        }
    }

    /** The number of an order, or nothing. */
    static final class OrderId extends Value<String> {
        OrderId() {
            super(orNothing(StockText::order));
        }
    }

    /** A lot or the number of a certificate, or nothing. */
    static final class Lot extends Value<String> {
        Lot() {
            super(orNothing(StockText::lot));
        }
    }

    /** Words for people on one line, or nothing. */
    static final class Words extends Value<String> {
        Words() {
            super(orNothing(StockText::words));
        }
    }

    /** Minutes that somebody worked. */
    static final class Minutes extends Value<Integer> {
        Minutes() {
            super(StockText::minutes);
        }
    }

    /** A share of what is wanted that is to be there; not all of it. */
    static final class Service extends Value<Ratio> {
        Service() {
            super(StockText::service);
        }
    }

    /** So many threads as a large machine has cores, at most. */
    static final class Threads extends Value<Integer> {
        private static final int MOST = 1_000;

        Threads() {
            super(Threads::read);
        }

        private static Parsed<Integer> read(String text) {
            String figures = text.strip();
            int number = figures.matches("[0-9]{1,4}") ? Integer.parseInt(figures) : 0;
            return number < 1 || number > MOST
                    ? Parsed.refused("a number of threads from 1 to " + MOST)
                    : Parsed.of(number);
        }
    }

    /** A number of weeks, up to ten years. */
    static final class Weeks extends Value<Integer> {
        Weeks() {
            super(StockText::weeks);
        }
    }

    /** Rope that is there. */
    static final class Rope extends Value<Length> {
        Rope() {
            super(StockText::length);
        }
    }

    /** The same as it was typed. */
    static final class RopeAsTyped extends Value<Written> {
        RopeAsTyped() {
            super(StockText::asTyped);
        }
    }

    /** What was counted of a reel, as it was typed; a reel without rope is no count of one. */
    static final class CountedRope extends Value<Written> {
        CountedRope() {
            super(CountedRope::read);
        }

        private static Parsed<Written> read(String text) {
            boolean nothing = StockText.allowance(text)
                    .value()
                    .filter(length -> !length.isPositive())
                    .isPresent();
            return nothing
                    ? Parsed.refused(
                            "a length above 0; a reel that is empty is written off: bitterend stock condemn SHOP"
                                    + " REEL, or is booked by a list with the word empty")
                    : StockText.asTyped(text);
        }
    }

    /** A length that may be nothing. */
    static final class Allowance extends Value<Length> {
        Allowance() {
            super(StockText::allowance);
        }
    }

    /** A share. */
    static final class Tolerance extends Value<Ratio> {
        Tolerance() {
            super(text -> StockText.tolerance(text)
                    .value()
                    .map(Parsed::of)
                    .orElseGet(() -> Parsed.refused("a share from 0 to 50 %; write the tolerance as 2 or 2 %")));
        }
    }

    /** The number of a revision. */
    static final class Revision extends Value<Integer> {
        Revision() {
            super(text -> text.matches("[1-9][0-9]{0,2}")
                    ? Parsed.of(Integer.valueOf(text))
                    : Parsed.refused("the number of a revision, from 1 to 999"));
        }
    }

    /** A day. */
    static final class Day extends Value<LocalDate> {
        Day() {
            super(StockText::day);
        }
    }
}
