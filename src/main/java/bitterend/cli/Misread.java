package bitterend.cli;

import bitterend.finding.CommandWord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.MutuallyExclusiveArgsException;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with a command line, and what to write instead. */
final class Misread {
    private final ParameterException fault;

    Misread(ParameterException fault) {
        this.fault = fault;
    }

    /** One sentence. */
    String sentence() {
        if (fault instanceof MissingParameterException missing) {
            return missing(missing.getMissing());
        }
        if (fault instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched.getUnmatched());
        }
        if (fault instanceof OverwrittenOptionException twice) {
            return named(twice.getOverwritten()) + ": given twice; give it once";
        }
        if (fault instanceof MutuallyExclusiveArgsException) {
            return String.valueOf(fault.getMessage())
                    .replaceFirst("^Error: ", "")
                    .replaceFirst(" are mutually exclusive.*", ": only one of these can be; give one");
        }
        return value(fault.getArgSpec(), fault.getValue());
    }

    /** That the words of a command are to be named, with a command line to go by. */
    static String words(CommandSpec command, Predicate<PositionalParamSpec> wanted) {
        List<PositionalParamSpec> places = command.positionalParameters().stream()
                .sorted(Comparator.comparing(place -> place.index().min()))
                .toList();
        List<String> labels = places.stream()
                .filter(wanted)
                .filter(place -> place.originalStringValues().isEmpty())
                .map(ArgSpec::paramLabel)
                .toList();
        StringBuilder typed = new StringBuilder(command.qualifiedName());
        places.stream()
                .filter(place ->
                        wanted.test(place) || !place.originalStringValues().isEmpty())
                .forEach(place -> typed.append(' ').append(word(place)));
        return "name " + listed(labels.stream().map(SampleWords::meaning).toList(), " and ") + ": " + typed;
    }

    private static String word(PositionalParamSpec place) {
        return place.originalStringValues().isEmpty()
                ? SampleWords.sample(place.paramLabel())
                : place.originalStringValues().stream().map(CommandWord::of).collect(Collectors.joining(" "));
    }

    private String missing(List<ArgSpec> missing) {
        if (missing.size() == 1 && missing.get(0) instanceof OptionSpec option) {
            return option.longestName() + ": its value is missing; such as: " + option.longestName() + " "
                    + SampleWords.sample(option.paramLabel());
        }
        return words(
                fault.getCommandLine().getCommandSpec(), place -> place.arity().min() > 0);
    }

    private String unmatched(List<String> words) {
        String first = words.get(0);
        CommandLine command = fault.getCommandLine();
        String name = command.getCommandSpec().qualifiedName().replaceFirst("^bitterend ", "");
        if (first.startsWith("-")) {
            return name + " has no option " + first;
        }
        List<PositionalParamSpec> places = command.getCommandSpec().positionalParameters();
        return places.isEmpty()
                ? name + " has no command " + first
                : "\"" + first + "\" is a word too many; expected " + name + " "
                        + places.stream().map(ArgSpec::paramLabel).collect(Collectors.joining(" "));
    }

    private String value(@Nullable ArgSpec argument, @Nullable String value) {
        if (argument == null || value == null) {
            return String.valueOf(fault.getMessage());
        }
        return named(argument) + ": " + unitless(argument, value.strip(), expected(argument, value));
    }

    /** A bare number gets its unit: nobody can tell what is meant by it. */
    private static String unitless(ArgSpec argument, String value, String expected) {
        String unit = argument.paramLabel().equals("MASS") ? "kg" : "m";
        return value.matches("[0-9]+([.,][0-9]+)?")
                ? expected.replaceFirst("with its unit.*", "with its unit; write \"" + value + " " + unit + "\"")
                : expected;
    }

    private String expected(ArgSpec argument, String value) {
        String found = "found \"" + value + "\", expected ";
        Class<?> type = argument.typeInfo().isCollection() ? argument.auxiliaryTypes()[0] : argument.type();
        if (type.isEnum()) {
            return found
                    + listed(
                            Arrays.stream(type.getEnumConstants())
                                    .map(each -> String.valueOf(each).toLowerCase(Locale.ROOT))
                                    .toList(),
                            " or ");
        }
        if (fault.getCause() instanceof TypeConversionException told && own(argument)) {
            String why = String.valueOf(told.getMessage());
            return why.startsWith("expected ") ? found + why.substring("expected ".length()) : why;
        }
        return found + (type == String.class ? "other words" : "a whole number");
    }

    /** Whether the words for what was expected are ours. */
    private static boolean own(ArgSpec argument) {
        return argument.converters().length > 0;
    }

    private static String named(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static String listed(List<String> words, String last) {
        List<String> all = new ArrayList<>(words);
        String end = all.remove(all.size() - 1);
        return all.isEmpty() ? end : String.join(", ", all) + last + end;
    }
}
