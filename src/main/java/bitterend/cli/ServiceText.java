package bitterend.cli;

import bitterend.measure.Ratio;
import bitterend.measure.ServiceShare;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a share of pieces as shop.json has it: {@code 97 %}. */
final class ServiceText implements ITypeConverter<Ratio> {
    @Override
    public Ratio convert(String text) {
        return ServiceShare.parse(text.strip())
                .value()
                .orElseThrow(() -> new TypeConversionException("expected a share from 50 to 99.9 %, such as 97%"));
    }
}
