package bitterend.cli;

import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import java.util.Currency;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the code of a currency in use, {@code EUR}, and knows the digits of its smallest coin (ISO 4217). */
final class CurrencyText implements ITypeConverter<MoneyText> {
    @Override
    public MoneyText convert(String text) {
        return parse(text)
                .value()
                .orElseThrow(() -> new TypeConversionException("expected the code of a currency, such as EUR"));
    }

    /** The currency of a code. */
    static Parsed<MoneyText> parse(String text) {
        try {
            return Parsed.of(new MoneyText(text, Currency.getInstance(text).getDefaultFractionDigits()));
        } catch (IllegalArgumentException noMoney) {
            return Parsed.refused("the code of a currency, such as EUR");
        }
    }
}
