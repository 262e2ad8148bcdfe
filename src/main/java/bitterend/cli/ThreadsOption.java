package bitterend.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How many cores may work at once. */
final class ThreadsOption {
    @Option(
            names = "--threads",
            paramLabel = "NUMBER",
            converter = Typed.Threads.class,
            description = "Work with so many threads at once; else as many as there are cores.")
    private @Nullable Integer threads;

    int count() {
        return threads == null ? Runtime.getRuntime().availableProcessors() : threads;
    }
}
