package bitterend.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** What is printed is read back as the same value; what is rounded for people is off by no more than half a step. */
final class TextRoundTripTest {

    @Property
    void length_everyForm(@ForAll @LongRange(min = -1_000_000_000, max = 1_000_000_000) long mm) {
        Length length = new Length(mm);
        assertEquals(Parsed.of(length), LengthText.parse(LengthText.exact(length)));
        assertEquals(Parsed.of(length), LengthText.parseRoundedDown(LengthText.exact(length)));
        assertEquals(Parsed.of(length), LengthText.parse(LengthText.print(length, Units.METRIC)));
    }

    @Property
    void length_inSixteenths_isOffByHalfASixteenthAtMost(
            @ForAll @LongRange(min = -900_000_000, max = 900_000_000) long mm) {
        FineLength length = FineLength.ofMillimetres(mm);
        FineLength back = LengthText.parseFine(LengthText.print(new Length(mm), Units.IMPERIAL))
                .value()
                .orElseThrow();
        assertTrue(Math.abs(back.minus(length).units()) <= 15_875 / 2 + 1, () -> length + " came back as " + back);
    }

    @Property
    void fineLength_exactForm(@ForAll @LongRange(min = -9_000_000_000_000L, max = 9_000_000_000_000L) long units) {
        FineLength length = new FineLength(units);
        assertEquals(Parsed.of(length), LengthText.parseFine(LengthText.exact(length)));
        assertEquals(Parsed.of(length), LengthText.parseFine(LengthText.print(length, Units.METRIC)));
    }

    @Property
    void fineLength_wholeSixteenths_survivePrinting(@ForAll @LongRange(min = 0, max = 500_000) long sixteenths) {
        FineLength length = new FineLength(sixteenths * 15_875);
        assertEquals(
                LengthText.parseFine(LengthText.print(length, Units.METRIC)),
                LengthText.parseFine(new FeetAndInches(sixteenths).words()));
    }

    @Property
    void diameter_exactForm(@ForAll @LongRange(min = 1, max = 10_000_000) long units) {
        Diameter diameter = new Diameter(units);
        assertEquals(Parsed.of(diameter), DiameterText.parse(DiameterText.exact(diameter)));
    }

    @Property
    void diameter_inSixteenths_survivesPrinting(@ForAll @IntRange(min = 1, max = 600) int sixteenths) {
        Diameter diameter = new Diameter(sixteenths * 15_875L);
        assertEquals(Parsed.of(diameter), DiameterText.parse(DiameterText.print(diameter, Units.IMPERIAL)));
    }

    @Property
    void mass_everyForm(@ForAll @LongRange(min = 0, max = 1_000_000_000) long grams) {
        Mass mass = new Mass(grams);
        assertEquals(Parsed.of(mass), MassText.parse(MassText.exact(mass)));
        assertEquals(Parsed.of(mass), MassText.parse(MassText.full(mass, Units.METRIC)));
    }

    @Property
    void massByLength_exactForm(@ForAll @LongRange(min = 0, max = 1_000_000_000) long milligrams) {
        LinearMass mass = new LinearMass(milligrams);
        assertEquals(Parsed.of(mass), MassText.parseByLength(MassText.exact(mass)));
    }

    @Property
    void money_everyForm(
            @ForAll @LongRange(min = -1_000_000_000, max = 1_000_000_000) long minor,
            @ForAll @IntRange(min = 0, max = 4) int digits) {
        MoneyText text = new MoneyText("EUR", digits);
        assertEquals(Parsed.of(new Money(minor)), text.parse(text.print(new Money(minor))));
    }

    @Property
    void cost_exactForm(
            @ForAll @LongRange(min = -999_999_999_999L, max = 999_999_999_999L) long millis,
            @ForAll @IntRange(min = 0, max = 4) int digits) {
        MoneyText text = new MoneyText("EUR", digits);
        assertEquals(Parsed.of(new Cost(millis)), text.parseExact(text.exact(new Cost(millis))));
    }

    @Property
    void priceByLength_exactForm(
            @ForAll @LongRange(min = 0, max = 3_000_000_000L) long millis,
            @ForAll @IntRange(min = 0, max = 4) int digits) {
        MoneyText text = new MoneyText("EUR", digits);
        assertEquals(Parsed.of(new UnitPrice(millis)), text.parseByLength(text.exact(new UnitPrice(millis))));
    }

    @Property
    void ratio_exactForm(
            @ForAll @LongRange(min = -1_000_000, max = 1_000_000) long above,
            @ForAll @LongRange(min = 1, max = 1_000_000) long below) {
        Ratio ratio = new Ratio(above, below);
        assertEquals(Parsed.of(ratio), RatioText.parse(RatioText.exact(ratio)));
    }

    /** Whatever is typed, reading answers. */
    @Property
    void anyText_isReadOrRefused(@ForAll String text) {
        MoneyText money = new MoneyText("EUR", 2);
        assertTrue(LengthText.parse(text).value().isPresent()
                || LengthText.parse(text).refusal().isPresent());
        assertTrue(DiameterText.parse(text).refusal().isPresent()
                || DiameterText.parse(text).value().isPresent());
        assertTrue(MassText.parse(text).refusal().isPresent()
                || MassText.parse(text).value().isPresent());
        assertTrue(money.parse(text).refusal().isPresent()
                || money.parse(text).value().isPresent());
        assertTrue(RatioText.parse(text).refusal().isPresent()
                || RatioText.parse(text).value().isPresent());
    }
}
