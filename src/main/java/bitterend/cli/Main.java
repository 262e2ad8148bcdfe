package bitterend.cli;

import bitterend.report.Ink;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program: {@code java -jar bitterend.jar COMMAND ...}. */
public final class Main {
    private static final int HELP_WIDTH = 80;

    private Main() {}

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] args) {
        System.exit(run(args, Terminal.standard()));
    }

    /** Runs one command; the exit code is one of {@link ExitCode}. */
    static int run(String[] args, Terminal terminal) {
        CommandLine commandLine = commandLine(terminal);
        commandLine.setParameterExceptionHandler((fault, given) -> notUnderstood(fault, terminal));
        commandLine.setExecutionExceptionHandler(
                (fault, command, parsed) -> new Faults(terminal).report(fault, isDebugging(args)));
        if (args.length == 0) {
            commandLine.usage(commandLine.getErr());
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        return commandLine.execute(args);
    }

    /** Every command there is. */
    static CommandLine commandLine(Terminal terminal) {
        CommandLine commandLine = new CommandLine(new Bitterend())
                .addSubcommand(new CheckCommand(terminal))
                .addSubcommand(new LengthsCommand(terminal))
                .addSubcommand(new PlanCommand(terminal))
                .addSubcommand(new SheetCommand(terminal))
                .addSubcommand(new CalibrateCommand(terminal))
                .addSubcommand(
                        new CommandLine(new QuoteCommand(terminal)).addSubcommand(new QuoteCompareCommand(terminal)))
                .addSubcommand(stock(terminal))
                .addSubcommand(new BuyCommand(terminal))
                .addSubcommand(new ValueCommand(terminal));
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

    private static CommandLine stock(Terminal terminal) {
        return new CommandLine(new StockCommand(terminal))
                .addSubcommand(new StockReceiveCommand(terminal))
                .addSubcommand(new StockPostCommand(terminal))
                .addSubcommand(new StockGaugeCommand(terminal))
                .addSubcommand(new StockFlawCommand(terminal))
                .addSubcommand(new StockSpoilCommand(terminal))
                .addSubcommand(new StockTraceCommand(terminal));
    }

    /** The command and all below it. */
    private static List<CommandLine> all(CommandLine root) {
        List<CommandLine> all = new ArrayList<>();
        root.getSubcommands().values().forEach(each -> all.addAll(all(each)));
        all.add(root);
        return all;
    }

    private static boolean isDebugging(String[] args) {
        return List.of(args).contains("--debug");
    }

    private static int notUnderstood(ParameterException fault, Terminal terminal) {
        CommandLine command = fault.getCommandLine();
        terminal.err().println("error: " + fault.getMessage());
        if (fault instanceof UnmatchedArgumentException unmatched) {
            unmatched.getSuggestions().stream().findFirst().ifPresent(word -> terminal.err()
                    .println("Did you mean " + word + "?"));
        }
        terminal.err().println("Help: " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.BAD_COMMAND_LINE.number();
    }
}
