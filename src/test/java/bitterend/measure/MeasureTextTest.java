package bitterend.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Rope;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class MeasureTextTest {
    private static final MoneyText EURO = new MoneyText("EUR", 2);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "12.5 m|12500",
                "12500 mm|12500",
                "12500mm|12500",
                " 12.5   m |12500",
                "12.5 metres|12500",
                "1250 cm|12500",
                "0.5 km|500000",
                "12 m 345 mm|12345",
                "41 ft 6 in|12650",
                "41'6\"|12650",
                "41\u2032 6\u2033|12650",
                "41' 6''|12650",
                "41 ft 6 1/2 in|12662",
                "41 ft 6-1/2 in|12662",
                "41.5 ft|12650",
                "3 fathoms|5487",
                "1/2 in|13",
                "120 fathoms|219456",
                "600 ft|182880",
                "1200 FEET|365760",
                "2 yd 1 ft|2134",
                "0|0",
                "-5 m|-5000",
            })
    void length_roundsUpToTheMillimetre(String text, long mm) {
        assertEquals(Parsed.of(new Length(mm)), LengthText.parse(text));
    }

    @Test
    void length_roundsDownWhatIsThere() {
        assertEquals(Parsed.of(new Length(5486)), LengthText.parseRoundedDown("3 fathoms"));
        assertEquals(Parsed.of(new Length(1001)), LengthText.parseRoundedDown("1.001 m"));
        assertEquals(Parsed.of(new Length(1001)), LengthText.parse("1.001 m"));
    }

    @Test
    void fineLength_holdsSixteenthsAndThousandthsOfAnInch() {
        assertEquals(Parsed.of(new FineLength(15_875)), LengthText.parseFine("1/16 in"));
        assertEquals(Parsed.of(new FineLength(282_956)), LengthText.parseFine("1.114 in"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "   ",
                "12.5",
                "m",
                "12.5 n",
                "12,5 m",
                "12.500,00 m",
                "1 200 m",
                "1e3 m",
                "12..5 m",
                ".5 m",
                "5. m",
                "41 in 6 ft",
                "41 ft 12 in",
                "41.5 ft 6 in",
                "12 m 5 in",
                "12 m 5 m",
                "1/3 in",
                "1/0 in",
                "NaN m",
                "0x10 m",
                "999999999999 m",
                "--5 m",
                "12 \u0645",
                "\u0661\u0662 m",
                "5 in circ",
                "9999999999999999999999999999999 m"
            })
    void length_refusesWithASentence(String text) {
        assertTrue(LengthText.parse(text).refusal().orElseThrow().startsWith("a length"), text);
    }

    @Test
    void decimalComma_isExplained() {
        String expected = LengthText.parse("12,5 m").refusal().orElseThrow();
        assertTrue(expected.contains("decimal point"), expected);
        assertTrue(DiameterText.parse("12,5 mm").refusal().orElseThrow().contains("decimal point"));
        assertTrue(EURO.parse("12,50").refusal().orElseThrow().contains("decimal point"));
        assertTrue(MassText.parse("12,5 kg").refusal().orElseThrow().contains("decimal point"));
        assertTrue(RatioText.parse("0,15").refusal().orElseThrow().contains("decimal point"));
    }

    @ParameterizedTest
    @CsvSource({
        "12650, 41 ft 6 1/16 in",
        "12649, 41 ft 6 in",
        "305, 1 ft",
        "304, 11 15/16 in",
        "0, 0 in",
        "2, 1/16 in",
        "-13, -1/2 in"
    })
    void length_printsToTheNearestSixteenth(long mm, String text) {
        assertEquals(text, LengthText.print(new Length(mm), Units.IMPERIAL));
    }

    @Test
    void length_printsMetres() {
        assertEquals("12.345 m", LengthText.print(new Length(12_345), Units.METRIC));
        assertEquals("-0.005 m", LengthText.print(new Length(-5), Units.METRIC));
        assertEquals("618.97 mm", LengthText.print(new FineLength(6_189_700), Units.METRIC));
        assertEquals("2 ft 3/8 in", LengthText.print(new FineLength(6_189_700), Units.IMPERIAL));
    }

    /**
     * The federal item A-A-52069 has 3.5 in circumference, 1.114 in diameter; size numbers by MEG2 Table 6.5 note 1.
     * C / pi rounded up: 88.9 / pi = 28.29775, 127 / pi = 40.42535, 120 / pi = 38.19719.
     */
    @ParameterizedTest
    @CsvSource({
        "12 mm, 120000",
        "1/2 in, 127000",
        "1 1/8 in, 285750",
        "3.5 in circ, 282978",
        "5 in circ, 404254",
        "5 in circumference, 404254",
        "120 mm circ., 381972",
        "size 3, 240000",
        "Size 6, 480000"
    })
    void diameter_readsEveryWayTheTradeStatesIt(String text, long units) {
        assertEquals(Parsed.of(new Diameter(units)), DiameterText.parse(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "12", "0 mm", "-12 mm", "1.5 m", "circ", "in circ", "size", "size 3 in", "1/2", "3 ounces"})
    void diameter_refusesWithASentence(String text) {
        assertTrue(DiameterText.parse(text).refusal().orElseThrow().startsWith("a diameter"), text);
    }

    @Test
    void diameter_printsInchFractionsWhereTheyAreExact() {
        assertEquals("1/2 in", DiameterText.print(new Diameter(127_000), Units.IMPERIAL));
        assertEquals("1 1/8 in", DiameterText.print(new Diameter(285_750), Units.IMPERIAL));
        assertEquals("12 mm (1/2 in)", DiameterText.print(Diameter.ofMillimetres(12), Units.IMPERIAL));
        assertEquals("40.43 mm", DiameterText.print(new Diameter(404_255), Units.METRIC));
    }

    /** Federal item A-A-52069: 36.0 lb per 100 ft is 0.536 kg/m; its 1,200 ft coil weighs 432 lb. */
    @Test
    void mass_readsBothSystems() {
        assertEquals(Parsed.of(new LinearMass(535_739)), MassText.parseByLength("36.0 lb/100 ft"));
        assertEquals(Parsed.of(new LinearMass(179_000)), MassText.parseByLength("0.179 kg/m"));
        assertEquals(Parsed.of(new LinearMass(179_000)), MassText.parseByLength("179 g/m"));
        assertEquals(Parsed.of(new LinearMass(179_000)), MassText.parseByLength("17.9 kg / 100 m"));
        assertEquals(Parsed.of(new Mass(12_000)), MassText.parse("12 kg"));
        assertEquals(Parsed.of(new Mass(195_952)), MassText.parse("432 lb"));
        assertEquals("36.0 lb/100 ft", MassText.print(new LinearMass(535_739), Units.IMPERIAL));
    }

    /** Whole kilograms and pounds from 10 on, for who lifts it: never less than it weighs. */
    @ParameterizedTest
    @CsvSource({
        "195952, 196 kg, 432 lb",
        "29120, 30 kg, 65 lb",
        "23000, 23 kg, 51 lb",
        "10000, 10 kg, 23 lb",
        "6944, 7 kg, 16 lb",
        "3208, 3.3 kg, 7.1 lb",
        "350, 0.35 kg, 0.78 lb",
        "0, 0 kg, 0 lb"
    })
    void mass_isPrintedForWhoLiftsIt(long grams, String metric, String imperial) {
        assertEquals(metric, MassText.print(new Mass(grams), Units.METRIC));
        assertEquals(imperial, MassText.print(new Mass(grams), Units.IMPERIAL));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "12", "12 m", "-1 kg", "12 kg/m", "12 stone"})
    void mass_refusesWithASentence(String text) {
        assertTrue(MassText.parse(text).refusal().orElseThrow().startsWith("a mass"), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "12 kg", "12 kg/0 m", "12 kg/", "/m", "12 m/kg", "1 kg/parsec"})
    void massByLength_refusesWithASentence(String text) {
        assertTrue(MassText.parseByLength(text).refusal().orElseThrow().startsWith("a mass by length"), text);
    }

    @Test
    void money_keepsToTheCurrencyOfTheShop() {
        assertEquals(Parsed.of(new Money(1250)), EURO.parse("12.50"));
        assertEquals(Parsed.of(new Money(1250)), EURO.parse("12.5 EUR"));
        assertEquals(Parsed.of(new Money(-1250)), EURO.parse("-12.50 eur"));
        assertEquals(Parsed.of(new Money(12)), new MoneyText("JPY", 0).parse("12"));
        assertTrue(EURO.parse("12.50 USD").refusal().isPresent());
        assertTrue(EURO.parse("12.505").refusal().isPresent());
        assertTrue(EURO.parse("$12").refusal().isPresent());
        assertTrue(EURO.parse("999999999999").refusal().isPresent());
        assertEquals("-0.05 EUR", EURO.print(new Money(-5)));
        assertEquals("12.50125 EUR", EURO.exact(new Cost(1_250_125)));
    }

    @Test
    void priceByLength_readsMetresAndFeet() {
        assertEquals(Parsed.of(new UnitPrice(185_000)), EURO.parseByLength("1.85 EUR/m"));
        assertEquals(Parsed.of(new UnitPrice(185_000)), EURO.parseByLength("1.85/m"));
        assertEquals(Parsed.of(new UnitPrice(203_412)), EURO.parseByLength("62 EUR/100 ft"));
        assertTrue(EURO.parseByLength("1.85 EUR").refusal().isPresent());
        assertTrue(EURO.parseByLength("1.85 GBP/m").refusal().isPresent());
        assertEquals("1.85 EUR/m", EURO.exact(new UnitPrice(185_000)));
    }

    @Test
    void ratio_isExact() {
        assertEquals(Parsed.of(new Ratio(3, 20)), RatioText.parse("15 %"));
        assertEquals(Parsed.of(new Ratio(3, 20)), RatioText.parse("15%"));
        assertEquals(Parsed.of(new Ratio(3, 20)), RatioText.parse("0.15"));
        assertEquals(Parsed.of(new Ratio(4, 3)), RatioText.parse("4/3"));
        assertEquals(Parsed.of(new Ratio(-1, 2)), RatioText.parse("-0.5"));
        assertTrue(RatioText.parse("1/0").refusal().isPresent());
        assertTrue(RatioText.parse("15 m").refusal().isPresent());
        assertEquals("15 %", RatioText.percent(new Ratio(3, 20)));
        assertEquals("33.33 %", RatioText.percent(new Ratio(1, 3)));
        assertEquals("0.0001 %", RatioText.percent(new Ratio(1, 1_000_000)));
        assertEquals("0 %", RatioText.percent(Ratio.ZERO));
    }

    /** 18 in are 457.2 mm and 458 in whole millimetres; printed they are 18 in again, never 18 1/16. */
    @ParameterizedTest
    @CsvSource({"1 ft 6 in", "41 ft 6 in", "31 ft 6 in", "1 ft 2 in", "1000 ft", "9 ft", "6 3/4 in", "1/4 in"})
    void inches_arePrintedAsTheyWereWritten(String text) {
        Written read = Written.parse(text).value().orElseThrow();
        assertEquals(text, read.print(Units.IMPERIAL, exact -> LengthText.print(exact, Units.IMPERIAL)));
        assertEquals(text, LengthText.print(read.exact(), Units.IMPERIAL));
    }

    /** 12,649.2 mm are 996 half inches; a cut length rounded up to half an inch is one, printed. */
    @Test
    void halfInches_stayHalfInches() {
        FineLength step = LengthText.parseFine("1/2 in").value().orElseThrow();
        FineLength sum = LengthText.parseFine("41 ft 5 3/4 in").value().orElseThrow();
        Length cut = sum.roundedUpTo(step);
        assertEquals(new Length(12_650), cut);
        FineLength exact = new Rope.Cutting(Length.ZERO, step).exactly(cut);
        assertEquals("41 ft 6 in", LengthText.print(exact, Units.IMPERIAL));
    }
}
