package bitterend.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import javax.management.JMException;
import javax.management.ObjectName;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * A run of so few seconds that code which the JVM compiles well would not earn back what the compiling takes from the
 * search: on 3,000 pieces at one second half of all processor time. The second compiler is kept out of such a run, where
 * the JVM can be asked to.
 */
final class ShortRun {
    private static final Duration SHORT = Duration.ofSeconds(2);
    private static final String FIRST_COMPILER_ALONE = "[{match: [\"*.*\"], c2: {Exclude: true}}]";

    private ShortRun() {}

    /** Asks for it beside the work when the time that a command may take is short. */
    static void prepare(ParseResult parsed) {
        if (isShort(parsed) && !hasOneCompiler()) {
            Thread beside = new Thread(ShortRun::compileQuickly, "short-run");
            beside.setDaemon(true);
            beside.start();
        }
    }

    static boolean isShort(ParseResult parsed) {
        ParseResult command = parsed.hasSubcommand() ? parsed.subcommand() : parsed;
        OptionSpec time = command.matchedOption("--time");
        return time != null && time.getValue() instanceof Duration limit && limit.compareTo(SHORT) <= 0;
    }

    /** Whether the JVM was started with the first compiler alone, as the launcher does. */
    private static boolean hasOneCompiler() {
        return System.getProperty("java.vm.info", "").contains("emulated-client");
    }

    private static void compileQuickly() {
        try {
            Path directive = Files.createTempFile("compile", ".json");
            try {
                Files.writeString(directive, FIRST_COMPILER_ALONE);
                ManagementFactory.getPlatformMBeanServer()
                        .invoke(
                                new ObjectName("com.sun.management:type=DiagnosticCommand"),
                                "compilerDirectivesAdd",
                                new Object[] {new String[] {directive.toString()}},
                                new String[] {String[].class.getName()});
            } finally {
                Files.delete(directive);
            }
        } catch (JMException | IOException another) {
            // a JVM that cannot be asked compiles as it always does
            return;
        }
    }
}
