package bitterend.cli;

import bitterend.report.sheet.TagPage;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the size of a label: {@code 70x37}, in millimetres. */
final class LabelText implements ITypeConverter<TagPage.Label> {
    private static final Pattern FORM = Pattern.compile("([0-9]{2,3})(?:mm)?x([0-9]{2,3})(?:mm)?");

    @Override
    public TagPage.Label convert(String text) {
        Matcher form = FORM.matcher(text.strip().replace(" ", ""));
        if (!form.matches()) {
            throw new TypeConversionException("expected width x height in mm, such as 70x37");
        }
        try {
            return new TagPage.Label(Integer.parseInt(form.group(1)), Integer.parseInt(form.group(2)));
        } catch (IllegalArgumentException tooSmall) {
            throw new TypeConversionException(tooSmall.getMessage());
        }
    }
}
