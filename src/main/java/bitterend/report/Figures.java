package bitterend.report;

import bitterend.measure.Cost;
import bitterend.measure.FeetAndInches;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.LengthsInWords;
import bitterend.measure.Mass;
import bitterend.measure.MassText;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Sentence;
import bitterend.measure.Units;
import bitterend.measure.Written;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Figures as they are printed for people, the same in every locale. Files carry the exact forms; these are rounded.
 *
 * @param units metres and kilograms, or feet, inches, sixteenths and pounds
 * @param currency the shop's currency
 */
public record Figures(Units units, MoneyText currency) {
    private static final BigDecimal MM_OF_A_METRE = BigDecimal.valueOf(1_000);
    /** 0.3048 m, exact by its definition. */
    private static final BigDecimal MM_OF_A_FOOT = new BigDecimal("304.8");

    private static final long UNITS_PER_TENTH = FineLength.UNITS_PER_MM / 10;

    /** {@code 12.340 m}, or {@code 40 ft 5 13/16 in}. */
    public String length(Length length) {
        return LengthText.print(length, units);
    }

    /** To the nearest millimetre or sixteenth of an inch. */
    public String length(FineLength length) {
        return units == Units.METRIC ? length(length.toNearestMillimetre()) : tape(length);
    }

    /** As it was written, and in this page's units behind it where they are others: {@code 31 ft 6 in (9.601 m)}. */
    public String written(Written length) {
        return length.print(units, this::length);
    }

    /** The same with no more digits than it needs when nobody wrote it: {@code 11.3 m}. */
    public String briefly(Written length) {
        return length.print(
                units,
                exact -> length(exact).replaceFirst("(\\.\\d*?)0+( m)$", "$1$2").replaceFirst("\\.( m)$", "$1"));
    }

    /** Words as they were written that hold lengths, such as the ends of an order: {@code length 14 in (356 mm)}. */
    public String written(String words) {
        return sentence(LengthsInWords.sentence(words));
    }

    /** A sentence with its figures as on this page. */
    public String sentence(Sentence sentence) {
        return sentence.print(units);
    }

    /** For a column that names its unit: {@code 12.340}, or {@code 40' 5 13/16"} to the nearest sixteenth. */
    public String bare(Length length) {
        return units == Units.METRIC ? BigDecimal.valueOf(length.mm(), 3).toPlainString() : bare(length.fine());
    }

    /** The same, rounded once. */
    public String bare(FineLength length) {
        return units == Units.METRIC
                ? bare(length.toNearestMillimetre())
                : FeetAndInches.nearest(length).marks();
    }

    /** A sum, which nobody cuts by: to the nearest 0.1 m, or the nearest inch. */
    public String total(Length length) {
        return units == Units.METRIC ? bareTotal(length) + " m" : inches(length).words();
    }

    /** What one sum is more than another, as both are printed: the three add up on paper, too. */
    public String difference(Length more, Length less) {
        return units == Units.METRIC
                ? tenths(more).subtract(tenths(less)).toPlainString() + " m"
                : new FeetAndInches(inches(more).sixteenths() - inches(less).sixteenths()).words();
    }

    /** The same for a column that names its unit. */
    public String bareTotal(Length length) {
        return units == Units.METRIC
                ? tenths(length).toPlainString()
                : inches(length).marks();
    }

    private static BigDecimal tenths(Length length) {
        return BigDecimal.valueOf(length.mm(), 3).setScale(1, RoundingMode.HALF_UP);
    }

    private static FeetAndInches inches(Length length) {
        return FeetAndInches.toNearestInch(length.fine());
    }

    /** A length that is to be there, which nobody counts more finely: up to a whole metre or foot. */
    public String wholeUp(Length length) {
        return bareWhole(length, RoundingMode.CEILING) + " " + wholeUnit();
    }

    /** The same for a column that names {@link #wholeUnit its unit}, rounded as it is asked for. */
    public String bareWhole(Length length, RoundingMode rounding) {
        return BigDecimal.valueOf(length.mm())
                .divide(units == Units.METRIC ? MM_OF_A_METRE : MM_OF_A_FOOT, 0, rounding)
                .toPlainString();
    }

    /** The unit of a column of whole metres or feet. */
    public String wholeUnit() {
        return units == Units.METRIC ? "m" : "ft";
    }

    /** The unit of a column of lengths. */
    public String unit() {
        return units == Units.METRIC ? "m" : "ft, in";
    }

    /** A line of a derivation in millimetres, all digits without trailing zeros; or in inches and sixteenths. */
    public String fine(FineLength length) {
        if (units == Units.IMPERIAL) {
            return bareTape(steps(length));
        }
        BigDecimal mm = BigDecimal.valueOf(length.units(), 4);
        return mm.signum() == 0 ? "0" : mm.stripTrailingZeros().toPlainString();
    }

    /** A length in the steps that derivations are printed in, tenths of a millimetre or sixteenths of an inch, to the nearest. */
    long fineSteps(FineLength length) {
        return units == Units.METRIC
                ? Math.floorDiv(length.units() + UNITS_PER_TENTH / 2, UNITS_PER_TENTH)
                : steps(length);
    }

    /** Such steps for a column that names {@link #fineUnit}: {@code 155.1}, {@code 252}, or inches {@code 18 1/16}. */
    String bareFine(long steps) {
        return units == Units.METRIC ? fine(new FineLength(steps * UNITS_PER_TENTH)) : bareTape(steps);
    }

    /** A length in steps of a tape, millimetres or sixteenths of an inch, to the nearest. */
    public long steps(FineLength length) {
        return units == Units.METRIC
                ? length.toNearestMillimetre().mm()
                : FeetAndInches.nearest(length).sixteenths();
    }

    /** One step of a tape, in 1/10,000 mm. */
    public long stepUnits() {
        return units == Units.METRIC ? FineLength.UNITS_PER_MM : FeetAndInches.UNITS_PER_SIXTEENTH;
    }

    /** Steps of a tape in words: {@code 252 mm}, {@code 1 ft 6 1/16 in}. */
    public String tape(long steps) {
        return units == Units.METRIC ? steps + " mm" : new FeetAndInches(steps).words();
    }

    /** Steps of a tape for a column that names {@link #fineUnit}: {@code 252}, or inches {@code 18 1/16}. */
    public String bareTape(long steps) {
        return units == Units.METRIC ? Long.toString(steps) : new FeetAndInches(steps).inches();
    }

    /** A mark to set with a tape: to the nearest millimetre, {@code 252 mm}, or sixteenth of an inch. */
    public String tape(FineLength length) {
        return LengthText.tape(length, units);
    }

    /** The unit of {@link #fine}. */
    public String fineUnit() {
        return units == Units.METRIC ? "mm" : "in";
    }

    /** Rounded to the smallest coin, with the currency. */
    public String money(Cost cost) {
        return currency.print(cost);
    }

    /** What nothing costs less than, with the currency: rounded down to the smallest coin. */
    public String atLeast(Cost cost) {
        return currency.print(cost.roundedDown());
    }

    /** What is saved at most, with the currency: rounded up to the smallest coin. */
    public String atMost(Cost cost) {
        return currency.print(cost.roundedUp());
    }

    /** For a column that names the currency. */
    public String bare(Money money) {
        return BigDecimal.valueOf(money.minor(), currency.minorDigits()).toPlainString();
    }

    public String mass(Mass mass) {
        return MassText.print(mass, units);
    }

    /** A share in per cent, {@code 12.3}; a dash when there is no whole. */
    public String percent(long part, long whole, int digits) {
        return percent(part, whole, digits, RoundingMode.HALF_UP);
    }

    /** A share that is not exceeded, in per cent, rounded up; a dash when there is no whole. */
    public String percentAtMost(long part, long whole, int digits) {
        return percent(part, whole, digits, RoundingMode.CEILING);
    }

    private static String percent(long part, long whole, int digits, RoundingMode rounding) {
        return whole == 0
                ? "-"
                : BigDecimal.valueOf(part)
                        .movePointRight(2)
                        .divide(BigDecimal.valueOf(whole), digits, rounding)
                        .toPlainString();
    }
}
