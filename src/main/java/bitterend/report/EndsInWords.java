package bitterend.report;

import java.util.regex.Pattern;

/** Both ends of a piece as people say them, not as the cells of an order are typed. */
public final class EndsInWords {
    private static final String BETWEEN = " / ";
    private static final Pattern LENGTH = Pattern.compile(" length (?=[0-9])");

    private EndsInWords() {}

    /** {@code bury-eye 100 mm, both ends}; {@code bury-eye 100 mm pin 40 mm / sealed}. Lengths stay as they were written. */
    public static String of(String ends) {
        String said = LENGTH.matcher(ends).replaceAll(" ");
        int between = said.indexOf(BETWEEN);
        if (between < 0) {
            return said;
        }
        String first = said.substring(0, between);
        return first.equals(said.substring(between + BETWEEN.length())) ? first + ", both ends" : said;
    }
}
