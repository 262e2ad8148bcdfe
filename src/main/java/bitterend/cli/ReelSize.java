package bitterend.cli;

import bitterend.measure.Length;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a size of a reel on the command line, above nothing and at most 20 m: {@code 560 mm}, {@code 22 in}. */
final class ReelSize implements ITypeConverter<Length> {
    private static final Length MOST = Length.ofMetres(20);

    @Override
    public Length convert(String text) {
        Length size = new LengthOption().convert(text);
        if (!size.isPositive() || size.isLongerThan(MOST)) {
            throw new TypeConversionException("expected a size of a reel above nothing and of at most 20 m");
        }
        return size;
    }
}
