package bitterend.report;

import bitterend.measure.Cost;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import bitterend.measure.Units;
import bitterend.report.table.DataTable.Column;
import bitterend.report.table.Datum;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.function.Function;

/**
 * Columns of tables for spreadsheets, in the units of a page: metres to the millimetre, or feet with four digits behind the
 * point, to the nearest; money exactly, in the shop's currency.
 */
public record TableFigures(Figures figures) {
    private static final BigDecimal UNITS_PER_FOOT = BigDecimal.valueOf(3_048_000);
    private static final int DIGITS_OF_A_FOOT = 4;

    private String unit() {
        return figures.units() == Units.METRIC ? " (m)" : " (ft)";
    }

    private String currency() {
        return figures.currency().currency();
    }

    /** A column of words. */
    public static <T> Column<T> words(String heading, Function<T, String> words) {
        return new Column<>(heading, thing -> Datum.of(words.apply(thing)));
    }

    /** A column of whole numbers. */
    public static <T> Column<T> count(String heading, Function<T, Number> count) {
        return new Column<>(heading, thing -> Datum.of(count.apply(thing).longValue()));
    }

    /** A column of yes and no. */
    public static <T> Column<T> truth(String heading, Function<T, Boolean> truth) {
        return new Column<>(heading, thing -> Datum.of(truth.apply(thing).booleanValue()));
    }

    /** A column of days; blank where there is none. */
    public static <T> Column<T> day(String heading, Function<T, LocalDate> day) {
        return new Column<>(heading, thing -> day(day.apply(thing)));
    }

    private static Datum day(LocalDate day) {
        return day.equals(LocalDate.MAX) || day.equals(LocalDate.MIN) ? Datum.blank() : new Datum.Day(day);
    }

    /** A column of lengths, the unit in its heading. */
    public <T> Column<T> length(String heading, Function<T, Length> length) {
        return fine(heading, thing -> length.apply(thing).fine());
    }

    /** The same of lengths that are not whole millimetres: to the nearest. */
    public <T> Column<T> fine(String heading, Function<T, FineLength> length) {
        return new Column<>(heading + unit(), thing -> length(length.apply(thing)));
    }

    /** A length as it stands in such a column. */
    private Datum length(FineLength length) {
        return new Datum.Figure(
                figures.units() == Units.METRIC
                        ? BigDecimal.valueOf(length.toNearestMillimetre().mm(), 3)
                        : BigDecimal.valueOf(length.units())
                                .divide(UNITS_PER_FOOT, DIGITS_OF_A_FOOT, RoundingMode.HALF_UP));
    }

    /** A column of whole coins. */
    public <T> Column<T> money(String heading, Function<T, Money> money) {
        return new Column<>(
                heading + " (" + currency() + ")",
                thing -> new Datum.Figure(BigDecimal.valueOf(
                        money.apply(thing).minor(), figures.currency().minorDigits())));
    }

    /** A column of costs to 1/1000 of a coin, all digits that mean something. */
    public <T> Column<T> cost(String heading, Function<T, Cost> cost) {
        return new Column<>(
                heading + " (" + currency() + ")",
                thing -> exact(cost.apply(thing).millis()));
    }

    /** A column of prices by the metre. */
    public <T> Column<T> byMetre(String heading, Function<T, UnitPrice> price) {
        return new Column<>(
                heading + " (" + currency() + "/m)",
                thing -> exact(price.apply(thing).millisPerMetre()));
    }

    private Datum exact(long millis) {
        int minor = figures.currency().minorDigits();
        BigDecimal amount = BigDecimal.valueOf(millis, minor + 3).stripTrailingZeros();
        return new Datum.Figure(amount.setScale(Math.max(minor, amount.scale())));
    }
}
