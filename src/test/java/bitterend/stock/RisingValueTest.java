package bitterend.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.catalogue.Rope;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class RisingValueTest {
    /** A handwork of the formula in numbers of any size: small ropes and such as no loft has. */
    @Test
    void of_isTheFormulaRoundedDownOnceHoweverLargeTheNumbers() {
        Random random = new Random(16);
        for (int i = 0; i < 20_000; i++) {
            long keepFrom = size(random, 20);
            long asGoodAsNew = keepFrom + size(random, 34);
            UnitPrice price = new UnitPrice(size(random, 30));
            Ratio share = new Ratio(random.nextInt(100), 100L);
            long length = keepFrom + (long) (random.nextDouble() * (asGoodAsNew - keepFrom));
            RisingValue value = new RisingValue(
                    price,
                    new Rope.Worth(new Length(keepFrom), new Length(asGoodAsNew)),
                    share,
                    new Cost(random.nextInt(3) * 500L));
            assertEquals(byHand(value, length), value.of(new Length(length)).millis(), () -> value + " of " + length);
        }
    }

    private static long size(Random random, int bits) {
        return 1 + (random.nextLong() >>> 1 >>> (62 - random.nextInt(bits)));
    }

    private static long byHand(RisingValue value, long length) {
        long keepFrom = value.worth().keepFrom().mm();
        BigInteger span = BigInteger.valueOf(value.worth().asGoodAsNew().mm() - keepFrom);
        BigInteger whole = BigInteger.valueOf(value.shareAtKeepFrom().denominator());
        BigInteger least = BigInteger.valueOf(value.shareAtKeepFrom().numerator());
        BigInteger above = BigInteger.valueOf(length - keepFrom);
        BigInteger share = least.multiply(span).add(whole.subtract(least).multiply(above));
        BigInteger gross = BigInteger.valueOf(value.price().millisPerMetre())
                .multiply(BigInteger.valueOf(length))
                .multiply(share)
                .divide(BigInteger.valueOf(1000).multiply(whole).multiply(span));
        return Math.max(0, gross.longValueExact() - value.coilCharge().millis());
    }
}
