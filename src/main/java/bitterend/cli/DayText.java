package bitterend.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day: {@code 2026-03-02}. */
final class DayText implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException noDay) {
            throw new TypeConversionException("'" + text + "' is no day such as 2026-03-02");
        }
    }
}
