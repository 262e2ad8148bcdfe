package bitterend.measure.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.LimitsPage;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arithmetic that a shop writes, against sums done by hand and against decimal arithmetic of the Java library. */
final class FormulaTest {
    private static final Map<String, Kind> NAMES = new TreeMap<>(Map.of(
            "length", Kind.LENGTH, "legs", Kind.NUMBER, "eye", Kind.LENGTH, "eye gap", Kind.LENGTH, "hook", Kind.TEXT));
    private static final Map<String, String> VALUES =
            Map.of("length", "18 m", "legs", "4", "eye", "300 mm", "eye gap", "25 mm");

    @Test
    void formula_isAtMostSoLong() {
        int most = (int) LimitsPage.most("characters of a formula");
        String within = "legs" + " ".repeat(most - 6) + "+1";
        assertTrue(Formula.parse(within, NAMES).refusal().isEmpty(), within);
        assertEquals(
                "a formula of at most " + most + " characters",
                Formula.parse(within + "1", NAMES).refusal().orElse(""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "length - 2 m | 16 m",
                "0.75 * length | 13.5 m",
                "75 % * length | 13.5 m",
                "length * 3 / 4 | 13.5 m",
                "length / 7 | 2.572 m", // 2,571.43 mm, rounded up once
                "length / 7 * 7 | 18 m",
                "length - 2 * eye - 1 m | 16.4 m",
                "(length - 2 m) / legs | 4 m",
                "length / eye | 60",
                "2 * legs | 8",
                "legs / 8 | 0.5",
                "min(length, 12 m) | 12 m",
                "max(eye, 250 mm, 35 cm) | 350 mm",
                "roundUp(length / 7, 50 mm) | 2.6 m",
                "roundUp(legs / 3, 1) | 2",
                "roundUp(18 m, 6 m) | 18 m",
                "eye gap * 2 | 50 mm",
                "eye - 300 mm | 0 mm",
                "31 ft 6 in - 24 in | 29 ft 6 in",
                "10 in / 3 | 3 3/8 in", // 3.333 in, up to a sixteenth
                "2 1/2 in * 2 | 5 in",
                "18 m - 1 ft | 17.696 m", // 17,695.2 mm
            })
    void formula_comesToWhatAHandComputes(String text, String expected) {
        assertEquals(expected, worked(text, VALUES).value().orElse("refused: " + text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "length - 2 | a number cannot be taken from a length, write it as 2 m at character 10",
                "legs + 2 m | a length cannot be added to a number",
                "length * eye | two lengths make an area at character 10",
                "legs / eye | a number cannot be divided by a length",
                "length - hook | hook is a text",
                "length - hight | at character 10 of the formula, where it has hight",
                "length - | where it has its end",
                "length 2 | one of + - * / or nothing more at character 8",
                "(length | a closing bracket",
                "min(length) | a comma and what it is compared with",
                "roundUp(length, 1 m, 2 m) | a closing bracket",
                "2,5 * length | decimal point",
                "max(2,3) | decimal point",
                "2 foo | a length with its unit",
                "length / 0 | something else than zero to divide by at character 10",
                "roundUp(length, 0 mm) | a step above zero to round up to at character 17",
                "lengthy | at character 1",
            })
    void mistake_isToldWithItsPlace(String text, String expected) {
        String told = Formula.parse(text, NAMES).refusal().orElse("read");
        assertTrue(told.contains(expected), told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "eye - 1 m | nothing below zero; this is less by 700 mm",
                "length / (legs - 4) | something else than zero to divide by",
                "roundUp(length, eye - eye) | a step above zero",
                "legs / 3 | roundUp(..., 1) makes it whole",
            })
    void whatCannotBeWorkedOut_isRefusedAndNotThrown(String text, String expected) {
        String told = worked(text, VALUES).refusal().orElse("worked out");
        assertTrue(told.contains(expected), told);
    }

    @Test
    void aLongChain_isReadAndALongerTextRefused() {
        assertEquals(
                "50 m",
                worked("1 m" + " + 1 m".repeat(49 - 21) + " + 21 m", VALUES)
                        .value()
                        .orElse("refused"));
        assertTrue(Formula.parse("(".repeat(201), NAMES).refusal().isPresent());
        assertTrue(Formula.parse("(".repeat(200), NAMES).refusal().isPresent());
    }

    /** Random sums of products against decimal arithmetic, rounded up once. */
    @Test
    void randomFormulas_agreeWithDecimalArithmetic() {
        Random random = new Random(194);
        for (int round = 0; round < 2_000; round++) {
            StringBuilder text = new StringBuilder();
            BigDecimal mm = BigDecimal.ZERO;
            int terms = 1 + random.nextInt(4);
            for (int term = 0; term < terms; term++) {
                BigDecimal factor = BigDecimal.valueOf(random.nextInt(5_000), 2 + random.nextInt(2));
                BigDecimal metres = BigDecimal.valueOf(random.nextInt(100_000), 3);
                text.append(term == 0 ? "" : " + ")
                        .append(factor.toPlainString())
                        .append(" * ")
                        .append(metres.toPlainString())
                        .append(" m");
                mm = mm.add(factor.multiply(metres).movePointRight(3));
            }
            // a length is kept in ten-thousandths of a millimetre before it is brought up to a whole one
            long expected = mm.setScale(0, RoundingMode.CEILING).longValueExact();
            String worked = worked(text.toString(), VALUES).value().orElse("refused: " + text);
            assertEquals(
                    expected, LengthText.parse(worked).value().orElseThrow().mm(), text::toString);
        }
    }

    @Test
    void everyText_isReadOrRefused() {
        Random random = new Random(195);
        String signs = "0123456789 .,+-*/()lengthsmin'\"%{}\u00e9\ud83d\ude00";
        for (int round = 0; round < 20_000; round++) {
            StringBuilder text = new StringBuilder();
            for (int at = random.nextInt(14); at >= 0; at--) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            worked(text.toString(), VALUES);
        }
    }

    private static Parsed<String> worked(String text, Map<String, String> values) {
        Map<String, Quantity> quantities = new HashMap<>();
        values.forEach((name, value) -> quantities.put(
                name,
                Quantity.of(NAMES.getOrDefault(name, Kind.TEXT), value).value().orElseThrow()));
        return Formula.parse(text, NAMES)
                .then(formula -> formula.of(quantities))
                .then(Quantity::text);
    }
}
