package bitterend.quoting.sharing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * How much more than its cost alone a group may be asked to pay by dual prices: the cost over what the prices of all pieces
 * add up to. At least 1.
 *
 * @param exact the fraction
 */
public record Factor(BigFraction exact) {
    static final Factor ONE = new Factor(BigFraction.ONE);

    /** Rounded up to six digits behind the point, without trailing zeros: the promise holds for the printed number. */
    public String printed() {
        BigDecimal number = new BigDecimal(exact.getNumerator())
                .divide(new BigDecimal(exact.getDenominator()), new MathContext(40, RoundingMode.UP))
                .setScale(6, RoundingMode.UP);
        return number.stripTrailingZeros().toPlainString();
    }
}
