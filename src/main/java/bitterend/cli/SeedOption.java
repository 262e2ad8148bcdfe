package bitterend.cli;

import picocli.CommandLine.Option;

/** What random choices begin with. */
final class SeedOption {
    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "0",
            description = "Seed of every random choice. Default: ${DEFAULT-VALUE}.")
    long seed;
}
