package bitterend.cli;

import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Parsed;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a length on the command line: {@code 12.5 m}, {@code 41'6"}; of rope that is there, so rounded down. */
final class LengthOption implements ITypeConverter<Length> {
    @Override
    public Length convert(String text) {
        Parsed<Length> length = LengthText.parseRoundedDown(text);
        return length.value()
                .orElseThrow(() -> new TypeConversionException(
                        "expected " + length.refusal().orElse("a length such as 12.5 m")));
    }
}
