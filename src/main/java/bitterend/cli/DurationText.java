package bitterend.cli;

import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a time limit above 0: {@code 10}, {@code 10s}, {@code 500ms} or {@code 2m}; a bare number is seconds. */
final class DurationText implements ITypeConverter<Duration> {
    private static final Pattern FORM = Pattern.compile("(0*[1-9][0-9]{0,5})(ms|s|m|)");

    @Override
    public Duration convert(String text) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches()) {
            throw new TypeConversionException("expected a time limit such as 10s, 500ms or 2m, above 0");
        }
        long number = Long.parseLong(form.group(1));
        return switch (form.group(2)) {
            case "ms" -> Duration.ofMillis(number);
            case "m" -> Duration.ofMinutes(number);
            default -> Duration.ofSeconds(number);
        };
    }
}
