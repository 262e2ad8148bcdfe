package bitterend.cli;

import picocli.CommandLine.Option;

/** Options that every command takes. */
final class CommonOptions {
    @Option(names = "--json", description = "Print the result as JSON, exact, for other programs.")
    boolean json;

    @Option(names = "--debug", description = "After an internal error, print the stack trace too.")
    boolean debug;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    boolean help;
}
