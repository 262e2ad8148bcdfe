package bitterend.cli;

import static java.util.Objects.requireNonNull;

import java.lang.reflect.AnnotatedElement;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;

/**
 * A command that is only built when it is asked for: all of them take longer to build than most take to run.
 *
 * @param command what it says of itself in the list of commands
 * @param whole builds it with its options
 */
record CommandEntry(Command command, Supplier<CommandLine> whole) {
    /** A command of its own class. */
    static CommandEntry of(Class<?> type, Supplier<Object> make) {
        return withMore(type, () -> new CommandLine(make.get()));
    }

    /** A command with commands below it. */
    static CommandEntry withMore(Class<?> type, Supplier<CommandLine> make) {
        return new CommandEntry(said(type), make);
    }

    /** The commands that are methods of a class or of what it extends. */
    static Stream<CommandEntry> methods(Class<?> type) {
        return Stream.<Class<?>>iterate(type, Objects::nonNull, Class::getSuperclass)
                .flatMap(each -> CommandLine.getCommandMethods(each, null).stream())
                .distinct()
                .map(method -> new CommandEntry(said(method), () -> new CommandLine(method)));
    }

    private static Command said(AnnotatedElement element) {
        return requireNonNull(element.getAnnotation(Command.class));
    }

    String name() {
        return command.name();
    }

    /** The command with those below it; those called for are whole, the others stand there by name. */
    static CommandLine below(CommandLine command, Predicate<String> isCalled, List<CommandEntry> entries) {
        for (CommandEntry entry : entries) {
            command.addSubcommand(
                    entry.name(), isCalled.test(entry.name()) ? entry.whole().get() : entry.named());
        }
        return command;
    }

    /** Enough for the list of commands. */
    private CommandLine named() {
        CommandSpec spec = CommandSpec.create().name(name());
        spec.usageMessage().header(command.header());
        return new CommandLine(spec);
    }
}
