package bitterend.cli;

import bitterend.measure.Mass;
import bitterend.measure.MassText;
import bitterend.measure.Parsed;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a mass on the command line: {@code 96.4 kg}, {@code 212 lb}. */
final class MassOption implements ITypeConverter<Mass> {
    @Override
    public Mass convert(String text) {
        Parsed<Mass> mass = MassText.parse(text);
        return mass.value()
                .orElseThrow(() ->
                        new TypeConversionException("expected " + mass.refusal().orElse("a mass such as 96.4 kg")));
    }
}
