package bitterend.cli;

import bitterend.quoting.Quote;
import bitterend.report.page.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Quantities with commas between them: {@code 1,2,5,10}. */
record Quantities(List<Integer> each) {
    /** None are asked for. */
    static final Quantities NONE = new Quantities(List.of());

    private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,3}");
    private static final int MOST = 12;

    Quantities {
        each = List.copyOf(each);
    }

    /** Says it where every line is asked for just so often: then there is no other price. */
    void toldIfAsked(Terminal terminal, Quote quote) {
        if (!each.isEmpty()
                && quote.lines().stream()
                        .allMatch(line -> each.equals(List.of(line.line().quantity())))) {
            terminal.err()
                    .println(Wording.sentence("--quantities: every line is asked for " + each.get(0)
                            + " times already, which the quote prices."));
        }
    }

    /** Reads them. */
    static final class Text implements ITypeConverter<Quantities> {
        @Override
        public Quantities convert(String text) {
            List<Integer> numbers = new ArrayList<>();
            for (String part : text.split(",", -1)) {
                String number = part.strip();
                if (!NUMBER.matcher(number).matches() || numbers.size() == MOST) {
                    throw new TypeConversionException("expected at most " + MOST
                            + " whole numbers from 1 to 9999 with commas between them, such as 1,2,5,10");
                }
                numbers.add(Integer.valueOf(number));
            }
            return new Quantities(numbers.stream().distinct().sorted().toList());
        }
    }
}
