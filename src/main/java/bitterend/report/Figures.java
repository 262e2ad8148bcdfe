package bitterend.report;

import bitterend.measure.Cost;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Mass;
import bitterend.measure.MassText;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.packing.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Figures as they are printed for people, the same in every locale. Files carry the exact forms; these are rounded.
 *
 * @param units metres and kilograms, or feet, inches, sixteenths and pounds
 * @param currency the shop's currency
 */
public record Figures(Units units, MoneyText currency) {
    /** Steps of a tape, in 1/10,000 mm. */
    private static final BigDecimal MM = BigDecimal.valueOf(FineLength.UNITS_PER_MM);

    private static final BigDecimal SIXTEENTH = new BigDecimal("15875");
    private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");

    /** {@code 12.340 m}, or {@code 40 ft 5 13/16 in}. */
    public String length(Length length) {
        return LengthText.print(length, units);
    }

    /** The same to the nearest millimetre or sixteenth of an inch. */
    public String length(FineLength length) {
        return units == Units.METRIC ? length(new Length(steps(length))) : tape(length);
    }

    /** A sentence of the plan, which names lengths in exact metres, with its lengths as on this page. */
    public String sentence(String sentence) {
        return units == Units.METRIC ? sentence : Words.reprinted(sentence, this::length);
    }

    /** For a column that names its unit: {@code 12.340}, or {@code 40' 5 13/16"} to the nearest sixteenth. */
    public String bare(Length length) {
        return units == Units.METRIC
                ? BigDecimal.valueOf(length.mm(), 3).toPlainString()
                : FeetAndInches.nearest(length).toString();
    }

    /** The unit of a column of lengths. */
    public String unit() {
        return units == Units.METRIC ? "m" : "ft, in";
    }

    /** A line of a derivation in millimetres, all digits; or in inches to four. No trailing zeros. */
    public String fine(FineLength length) {
        BigDecimal mm = BigDecimal.valueOf(length.units(), 4);
        BigDecimal shown = units == Units.METRIC ? mm : mm.divide(MM_PER_INCH, 4, RoundingMode.HALF_UP);
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }

    /** A length in steps of a tape, millimetres or sixteenths of an inch, to the nearest; halves go up. */
    public long steps(FineLength length) {
        return BigDecimal.valueOf(length.units())
                .divide(BigDecimal.valueOf(stepUnits()), 0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    /** One step of a tape, in 1/10,000 mm. */
    public long stepUnits() {
        return (units == Units.METRIC ? MM : SIXTEENTH).longValueExact();
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
        return tape(steps(length));
    }

    /** The unit of {@link #fine}. */
    public String fineUnit() {
        return units == Units.METRIC ? "mm" : "in";
    }

    /** Rounded to the smallest coin, with the currency. */
    public String money(Cost cost) {
        return currency.print(cost);
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
        if (whole == 0) {
            return "-";
        }
        return BigDecimal.valueOf(part)
                .movePointRight(2)
                .divide(BigDecimal.valueOf(whole), digits, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
