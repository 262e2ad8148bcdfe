package bitterend.exchange.workbook;

import bitterend.exchange.workbook.Styles.Format;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The numbers of a workbook as cells. A spreadsheet computes with about 15 digits and saves up to 17, so that 0.1 + 0.2 is
 * saved as 0.30000000000000004: numbers are rounded to the 15 that it shows.
 *
 * @param from1904 whether days are counted from 1904 instead of 1900
 */
record Numbers(boolean from1904) {
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,40}(\\.\\d{0,40})?|\\.\\d{1,40})([eE][+-]?\\d{1,3})?");
    private static final MathContext SHOWN = new MathContext(15, RoundingMode.HALF_UP);
    private static final int MOST_DIGITS = 30;
    private static final BigDecimal SECONDS = BigDecimal.valueOf(86_400);
    private static final long SECONDS_OF_DAY = 86_400;
    private static final String A_DAY = "a day from 1900-01-01 to 9999-12-31, or the day as text, 2026-03-02";
    private static final LocalDate LAST = LocalDate.of(9999, 12, 31);
    /** The spreadsheet believes in a 29 February 1900 and gives it this number. */
    private static final long NEVER_WAS = 60;

    Cell cell(String text, Format format) {
        if (!NUMBER.matcher(text).matches()) {
            return Cell.wrong(text, "a number");
        }
        BigDecimal number = new BigDecimal(text).round(SHOWN).stripTrailingZeros();
        if (number.signum() != 0 && Math.abs((long) number.precision() - number.scale()) > MOST_DIGITS) {
            return Cell.wrong(text, "a number of at most " + MOST_DIGITS + " digits before or behind the point");
        }
        return switch (format.shown()) {
            case NUMBER -> new Cell(Cell.Kind.NUMBER, format.unit().with(number));
            case DAY -> day(number);
            case TIME -> number.signum() >= 0 && number.compareTo(BigDecimal.ONE) < 0
                    ? new Cell(Cell.Kind.DATE, time(seconds(number)))
                    : day(number);
            case ELAPSED -> elapsed(number);
        };
    }

    private static String plain(BigDecimal number) {
        return UnitShown.NONE.with(number);
    }

    private static long seconds(BigDecimal days) {
        return days.multiply(SECONDS).setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    private Cell day(BigDecimal number) {
        if (number.precision() - number.scale() > 7) {
            return Cell.wrong(plain(number), A_DAY);
        }
        long seconds = seconds(number);
        long whole = Math.floorDiv(seconds, SECONDS_OF_DAY);
        boolean before = from1904 ? whole < 0 : whole < 1 || whole == NEVER_WAS;
        LocalDate day = from1904
                ? LocalDate.of(1904, 1, 1).plusDays(whole)
                : LocalDate.of(1899, 12, whole < NEVER_WAS ? 31 : 30).plusDays(whole);
        if (before || day.isAfter(LAST)) {
            return Cell.wrong(plain(number), A_DAY);
        }
        long rest = Math.floorMod(seconds, SECONDS_OF_DAY);
        return new Cell(Cell.Kind.DATE, rest == 0 ? day.toString() : day + "T" + time(rest));
    }

    private static String time(long seconds) {
        return LocalTime.ofSecondOfDay(Math.min(seconds, SECONDS_OF_DAY - 1)).toString();
    }

    /** Hours and minutes that may be more than a day. */
    private static Cell elapsed(BigDecimal number) {
        if (number.signum() < 0 || number.precision() - number.scale() > 7) {
            return Cell.wrong(plain(number), "hours and minutes");
        }
        long minutes = (seconds(number) + 30) / 60;
        return new Cell(Cell.Kind.DATE, String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60));
    }
}
