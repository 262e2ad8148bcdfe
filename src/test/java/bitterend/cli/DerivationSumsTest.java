package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A derivation is printed in tenths of a millimetre at most, and what is printed adds up to the cut length. */
final class DerivationSumsTest {
    private static final Pattern AMOUNT = Pattern.compile(
            "(?m)^(?:finished|end [AB]:|rounding|spare|sample|hardware)[^\n]*? {2,}(-?[0-9]+(?:\\.[0-9])?) ");
    private static final Pattern CUT = Pattern.compile("(?m)^cut length +([0-9]+) ");

    @ParameterizedTest
    @CsvSource({
        "eider-shed, E-31/1",
        "eider-shed, E-32/1",
        "eider-shed, E-32/2",
        "gannet-loft, G-2101/1",
        "gannet-loft, G-2102/2",
        "gannet-loft, G-2104/1",
        "gannet-loft, G-2108/1"
    })
    void printedAmounts_addUpToTheCutLength(String loft, String line) {
        String page = Run.of("lengths", "demo-data/" + loft, line, "--units", "metric")
                .out();
        Matcher amount = AMOUNT.matcher(page.substring(0, page.indexOf("cut length ")));
        BigDecimal sum = BigDecimal.ZERO;
        int amounts = 0;
        while (amount.find()) {
            sum = sum.add(new BigDecimal(amount.group(1)));
            amounts++;
        }
        Matcher cut = CUT.matcher(page);
        assertTrue(cut.find() && amounts >= 4, page);
        assertEquals(0, sum.compareTo(new BigDecimal(cut.group(1))), page);
    }
}
