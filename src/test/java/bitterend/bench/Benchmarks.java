package bitterend.bench;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** All sub-commands of {@code .ci/bench}; the script's head says what they do and what they take. */
@Command(name = ".ci/bench")
public final class Benchmarks {
    /** A benchmark made a plan that the checker refused. */
    static final int PLAN_REFUSED = 1;

    private static final int BAD_COMMAND_LINE = 2;

    Benchmarks() {}

    /** Runs one sub-command. */
    public static void main(String[] args) {
        System.exit(run(writer(System.out), writer(System.err), args));
    }

    static PrintWriter writer(java.io.PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    /** Runs one sub-command; the exit code is 0, 1 when a plan was refused or something broke, 2 for bad arguments. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine commands = new CommandLine(new Benchmarks())
                .addSubcommand("one", new PackingBench())
                .addSubcommand("sizes", new PackingBench())
                .addSubcommand(new Days())
                .addSubcommand(new Crowded())
                .addSubcommand(new Growth())
                .addSubcommand(new HardProblems())
                .addSubcommand(new Load())
                .addSubcommand(new MoreAndLess())
                .addSubcommand(new Rolling())
                .addSubcommand(new Steps())
                .addSubcommand(new StudyBench())
                .addSubcommand(new Tapping())
                .addSubcommand(new Weeks())
                .addSubcommand(new Years());
        return execute(commands, out, err, args);
    }

    /** Runs one of these sub-commands, with the same exit codes. */
    static int execute(CommandLine commands, PrintWriter out, PrintWriter err, String... args) {
        commands.setOut(out);
        commands.setErr(err);
        commands.setParameterExceptionHandler((fault, given) -> {
            err.println("error: " + fault.getMessage());
            err.println("Help: .ci/bench");
            return BAD_COMMAND_LINE;
        });
        return commands.execute(args);
    }

    /** Refuses a number below 1, or a time of nothing. */
    static void positive(CommandSpec spec, String name, @Nullable Number number) {
        if (number != null && !(number.doubleValue() > 0)) {
            throw new ParameterException(
                    spec.commandLine(), name + ": found " + number + ", expected a number above zero");
        }
    }
}
