package bitterend.cli;

import bitterend.work.CrashLog;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * A command as it may be told to others: which it is, its options, and of what was typed behind them figures and fixed words
 * alone. Names, notes and paths are a shop's own and are shown as three dots.
 *
 * @param shop the shop folder
 * @param doing what was asked for
 */
record TypedCommand(Path shop, CrashLog.Doing doing) {
    /** So long as nothing of the command line was understood. */
    static final TypedCommand NONE =
            new TypedCommand(Path.of(""), new CrashLog.Doing("a command that was not understood", "", List.of()));

    private static final Pattern FIGURE = Pattern.compile("[0-9][0-9.:-]*(ms|s|m|h|%)?");
    private static final String SEED = "--seed";

    /** @param shop the shop folder as it was typed; empty for none */
    static TypedCommand of(ParseResult parsed, String shop) {
        ParseResult last = parsed;
        StringBuilder what = new StringBuilder(parsed.commandSpec().name());
        while (last.hasSubcommand()) {
            last = last.subcommand();
            what.append(' ').append(last.commandSpec().name());
        }
        List<Path> named = new ArrayList<>();
        for (ArgSpec each : last.matchedArgs()) {
            what.append(' ').append(each instanceof OptionSpec option ? option.longestName() : each.paramLabel());
            for (String word : each.originalStringValues()) {
                if (each instanceof OptionSpec && !each.typeInfo().isBoolean()) {
                    what.append(' ').append(isPlain(each, word) ? word : "...");
                }
                file(word).ifPresent(named::add);
            }
        }
        return new TypedCommand(Path.of(shop), new CrashLog.Doing(what.toString(), seed(last), named));
    }

    private static boolean isPlain(ArgSpec each, String word) {
        return each.typeInfo().isEnum() || FIGURE.matcher(word).matches();
    }

    private static Optional<Path> file(String word) {
        try {
            Path path = Path.of(word);
            return Files.isRegularFile(path) ? Optional.of(path) : Optional.empty();
        } catch (InvalidPathException noFile) {
            return Optional.empty();
        }
    }

    private static String seed(ParseResult command) {
        @Nullable OptionSpec seed = command.commandSpec().findOption(SEED);
        return seed == null ? "" : Objects.toString(seed.<Object>getValue());
    }
}
