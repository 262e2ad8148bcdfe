package bitterend.cli;

import static java.util.Objects.requireNonNull;

import bitterend.report.page.Ink;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program: {@code java -jar bitterend.jar COMMAND ...}. */
public final class Main {
    private static final int HELP_WIDTH = 80;

    private Main() {}

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] args) {
        System.exit(runStoppable(args, Terminal.standard()));
    }

    /** Runs one command; when the process is stopped meanwhile it is said on the terminal. */
    static int runStoppable(String[] args, Terminal terminal) {
        try (Interrupt any = Interrupt.listening(terminal, "it began")) {
            return run(args, terminal, parsed -> {
                ShortRun.prepare(parsed);
                any.underWay();
            });
        }
    }

    /** Runs one command; the exit code is one of {@link ExitCode}. */
    static int run(String[] typed, Terminal terminal) {
        return run(typed, terminal, parsed -> {});
    }

    static int run(String[] typed, Terminal plain, Consumer<ParseResult> prepare) {
        String[] args = asked(typed);
        if (List.of(args).equals(List.of(Bitterend.COMPLETION))) {
            plain.out().print(AutoComplete.bash(Bitterend.NAME, whole(plain)));
            plain.out().flush();
            return ExitCode.DONE.number();
        }
        if (List.of(args).equals(List.of(Bitterend.MAN))) {
            plain.out().print(ManPage.of(whole(plain), String.join(" ", new Version().getVersion())));
            plain.out().flush();
            return ExitCode.DONE.number();
        }
        Hints hints = new Hints();
        Terminal terminal = hints.over(plain);
        CommandLine commandLine = commandLine(terminal, args);
        commandLine.setParameterExceptionHandler((fault, given) -> notUnderstood(fault, given, terminal));
        AtomicReference<TypedCommand> asked = new AtomicReference<>(TypedCommand.NONE);
        commandLine.setExecutionExceptionHandler((fault, command, parsed) ->
                new Faults(terminal, requireNonNull(asked.get())).report(fault, isDebugging(args)));
        commandLine.setExecutionStrategy(parsed -> {
            asked.set(TypedCommand.of(parsed, shop(parsed)));
            try {
                return executed(parsed, hints, terminal, prepare);
            } catch (CommandLine.PicocliException told) {
                throw told;
            } catch (RuntimeException fault) {
                return new Faults(terminal, requireNonNull(asked.get())).report(fault, isDebugging(args));
            }
        });
        if (args.length == 0) {
            commandLine.usage(commandLine.getErr());
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        try {
            return commandLine.execute(args);
        } catch (Error fault) {
            return new Faults(terminal, requireNonNull(asked.get())).report(fault, isDebugging(args));
        }
    }

    private static int executed(ParseResult parsed, Hints hints, Terminal terminal, Consumer<ParseResult> prepare) {
        hints.of(shop(parsed));
        Optional<String> idle = IdleOptions.refusal(parsed);
        if (idle.isPresent() && !CommandLine.printHelpIfRequested(parsed)) {
            return refused(idle.get(), last(parsed).commandSpec(), terminal);
        }
        prepare.accept(parsed);
        return new CommandLine.RunLast().execute(parsed);
    }

    /** {@code help plan} as it is also said: {@code plan --help}. */
    private static String[] asked(String[] typed) {
        if (typed.length == 0 || !typed[0].equals("help")) {
            return typed;
        }
        String[] args = Arrays.copyOfRange(typed, 1, typed.length + 1);
        args[typed.length - 1] = "--help";
        return args;
    }

    /** The words that a command begins with. */
    static List<String> commands() {
        return entries(Terminal.standard(), name -> false).stream()
                .map(CommandEntry::name)
                .toList();
    }

    private static List<CommandEntry> entries(Terminal terminal, Predicate<String> isCalled) {
        return List.of(
                CommandEntry.of(InitCommand.class, () -> new InitCommand(terminal)),
                CommandEntry.of(ImportCommand.class, () -> new ImportCommand(terminal)),
                CommandEntry.of(CheckCommand.class, () -> new CheckCommand(terminal)),
                CommandEntry.of(LengthsCommand.class, () -> new LengthsCommand(terminal)),
                CommandEntry.of(PlanCommand.class, () -> new PlanCommand(terminal)),
                CommandEntry.of(ShowCommand.class, () -> new ShowCommand(terminal)),
                CommandEntry.of(SheetCommand.class, () -> new SheetCommand(terminal)),
                CommandEntry.of(MeasureCommand.class, () -> new MeasureCommand(terminal)),
                CommandEntry.of(CalibrateCommand.class, () -> new CalibrateCommand(terminal)),
                CommandEntry.withMore(QuoteCommand.class, () -> quote(terminal, isCalled)),
                CommandEntry.withMore(OrdersCommand.class, () -> orders(terminal, isCalled)),
                CommandEntry.withMore(StockCommand.class, () -> StockCommand.command(terminal, isCalled)),
                CommandEntry.of(ServeCommand.class, () -> new ServeCommand(terminal)),
                CommandEntry.of(BuyCommand.class, () -> new BuyCommand(terminal)),
                CommandEntry.of(ReorderCommand.class, () -> new ReorderCommand(terminal)),
                CommandEntry.of(ValueCommand.class, () -> new ValueCommand(terminal)));
    }

    /** Every command there is, each of them whole: for what tells of all of them. */
    static CommandLine whole(Terminal terminal) {
        return commandLine(terminal, name -> true);
    }

    /** Every command there is; the one that is called for whole, the others by name. */
    static CommandLine commandLine(Terminal terminal, String... args) {
        return commandLine(terminal, List.of(args)::contains);
    }

    private static CommandLine commandLine(Terminal terminal, Predicate<String> isCalled) {
        CommandLine commandLine =
                CommandEntry.below(new CommandLine(new Bitterend()), isCalled, entries(terminal, isCalled));
        commandLine
                .getCommandSpec()
                .usageMessage()
                .exitCodeListHeading("%nExit codes:%n")
                .exitCodeList(ExitCode.meanings());
        for (CommandLine each : all(commandLine)) {
            each.setCaseInsensitiveEnumValuesAllowed(true);
            each.setUsageHelpWidth(HELP_WIDTH);
            each.setUsageHelpAutoWidth(false);
        }
        commandLine.setOut(new PrintWriter(terminal.out(), true, terminal.charset()));
        commandLine.setErr(new PrintWriter(terminal.err(), true, terminal.charset()));
        commandLine.setColorScheme(
                CommandLine.Help.defaultColorScheme(terminal.ink() == Ink.TERMINAL ? Ansi.ON : Ansi.OFF));
        return commandLine;
    }

    private static CommandLine quote(Terminal terminal, Predicate<String> isCalled) {
        return CommandEntry.below(
                new CommandLine(new QuoteCommand(terminal)),
                isCalled,
                List.of(
                        CommandEntry.of(QuoteListCommand.class, () -> new QuoteListCommand(terminal)),
                        CommandEntry.of(QuoteShowCommand.class, () -> new QuoteShowCommand(terminal)),
                        CommandEntry.of(QuoteReviseCommand.class, () -> new QuoteReviseCommand(terminal)),
                        CommandEntry.of(QuoteSentCommand.class, () -> new QuoteSentCommand(terminal)),
                        CommandEntry.of(QuoteAcceptCommand.class, () -> new QuoteAcceptCommand(terminal)),
                        CommandEntry.of(QuoteDeclineCommand.class, () -> new QuoteDeclineCommand(terminal)),
                        CommandEntry.of(QuoteBackCommand.class, () -> new QuoteBackCommand(terminal)),
                        CommandEntry.of(QuoteCompareCommand.class, () -> new QuoteCompareCommand(terminal)),
                        CommandEntry.of(QuoteLearnCommand.class, () -> new QuoteLearnCommand(terminal))));
    }

    private static CommandLine orders(Terminal terminal, Predicate<String> isCalled) {
        return CommandEntry.below(
                new CommandLine(new OrdersCommand(terminal)),
                isCalled,
                Stream.concat(
                                CommandEntry.methods(OrdersCommand.class),
                                Stream.of(
                                        CommandEntry.of(
                                                OrdersDeliverCommand.class, () -> new OrdersDeliverCommand(terminal)),
                                        CommandEntry.of(
                                                OrdersNoteCommand.class, () -> new OrdersNoteCommand(terminal))))
                        .toList());
    }

    /** The command and all below it. */
    private static List<CommandLine> all(CommandLine root) {
        List<CommandLine> all = new ArrayList<>();
        root.getSubcommands().values().forEach(each -> all.addAll(all(each)));
        all.add(root);
        return all;
    }

    /** The shop folder as it was typed, or that of the plan file that was; empty for a command that has none. */
    private static String shop(ParseResult parsed) {
        return last(parsed).matchedPositionals().stream()
                .filter(place ->
                        place.paramLabel().equals("SHOP") || place.paramLabel().equals("PLAN"))
                .flatMap(place -> place.originalStringValues().stream())
                .map(word ->
                        Files.isRegularFile(Path.of(word)) ? "" + Path.of(word).resolveSibling("") : word)
                .findFirst()
                .orElse("");
    }

    private static ParseResult last(ParseResult parsed) {
        ParseResult last = parsed;
        while (last.hasSubcommand()) {
            last = last.subcommand();
        }
        return last;
    }

    private static boolean isDebugging(String[] args) {
        return List.of(args).contains("--debug");
    }

    private static int notUnderstood(ParameterException fault, String[] given, Terminal terminal) {
        CommandLine command = fault.getCommandLine();
        String found = belowNothing(given).orElseGet(() -> new Misread(fault).sentence());
        terminal.err().println("error: " + Faults.printable(found));
        if (fault instanceof UnmatchedArgumentException unmatched) {
            unmatched.getSuggestions().stream().findFirst().ifPresent(word -> terminal.err()
                    .println("Did you mean " + word + "?"));
        }
        return help(command.getCommandSpec(), terminal);
    }

    /** A figure below nothing, with the option that it was typed behind; nothing where there is none. */
    private static Optional<String> belowNothing(String[] given) {
        for (int i = 0; i < given.length; i++) {
            if (given[i].matches("-[0-9.,].*")) {
                String before = i > 0 && given[i - 1].startsWith("--") && given[i - 1].indexOf('=') < 0
                        ? given[i - 1] + ": "
                        : "";
                return Optional.of(before + "found \"" + given[i] + "\", expected no figure below nothing");
            }
        }
        return Optional.empty();
    }

    private static int refused(String why, CommandSpec command, Terminal terminal) {
        terminal.err().println("error: " + Faults.printable(why));
        return help(command, terminal);
    }

    private static int help(CommandSpec command, Terminal terminal) {
        terminal.err().println("Help: " + command.qualifiedName() + " --help");
        return ExitCode.BAD_COMMAND_LINE.number();
    }
}
