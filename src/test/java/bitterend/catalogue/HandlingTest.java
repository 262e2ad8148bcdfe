package bitterend.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.catalogue.Handling.Hands;
import bitterend.exchange.SplicesJson;
import bitterend.measure.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who is needed for a piece or a reel. */
final class HandlingTest {
    /** 51 lb, 23 kg: OSHA on the NIOSH recommendations; two people: two thirds of 46 kg, 30.666 kg. */
    @ParameterizedTest
    @CsvSource({"23000, ONE", "23001, TWO", "30666, TWO", "30667, HOIST"})
    void limits_areThoseOfOneAndOfTwo(long grams, Hands hands) {
        assertEquals(hands, SplicesJson.builtIn().bench().handling().needed(new Mass(grams)));
    }

    /** A worked example as printed: 20 kg for one are about 26.6 kg for two (a railway's page on lifting in teams). */
    @Test
    void twoPeople_handleTwoThirdsOfTheirSum() {
        assertEquals(new Mass(26_666), Handling.of(new Mass(20_000)).two());
    }

    @Test
    void noLimit_needsNobodyMore() {
        assertEquals(Hands.ONE, Handling.UNLIMITED.needed(new Mass(1_000_000)));
    }
}
