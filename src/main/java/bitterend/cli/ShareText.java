package bitterend.cli;

import bitterend.buying.Share;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a share of a study: {@code 2/8}. */
final class ShareText implements ITypeConverter<Share> {
    private static final Pattern FORM = Pattern.compile("([0-9]{1,6})/([0-9]{1,6})");

    @Override
    public Share convert(String text) {
        Matcher form = FORM.matcher(text.strip());
        if (form.matches()) {
            int part = Integer.parseInt(form.group(1));
            int parts = Integer.parseInt(form.group(2));
            if (part >= 1 && part <= parts) {
                return new Share(part, parts);
            }
        }
        throw new TypeConversionException("expected a share such as 1/4: of four, 1/4 to 4/4");
    }
}
