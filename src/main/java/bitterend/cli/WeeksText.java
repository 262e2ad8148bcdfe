package bitterend.cli;

import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a number of weeks, as {@code mostWeeks} of {@code shop.json} may be. */
final class WeeksText implements ITypeConverter<Integer> {
    private static final Pattern FORM = Pattern.compile("[0-9]{1,3}");
    private static final int MOST = 520;

    @Override
    public Integer convert(String text) {
        boolean number = FORM.matcher(text.strip()).matches();
        int weeks = number ? Integer.parseInt(text.strip()) : 0;
        if (weeks < 1 || weeks > MOST) {
            throw new TypeConversionException("expected a number of weeks from 1 to " + MOST);
        }
        return weeks;
    }
}
