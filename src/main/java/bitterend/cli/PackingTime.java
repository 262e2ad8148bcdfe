package bitterend.cli;

import java.time.Duration;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How long a command that packs many times may take for one packing. */
final class PackingTime {
    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = DurationText.class,
            defaultValue = "30s",
            description =
                    "End a packing after this, done or not; there are many. What is done in time comes out the same"
                            + " on any machine. Default: ${DEFAULT-VALUE}.")
    private Duration time = Duration.ofSeconds(30);

    @Mixin
    private ThreadsOption threads = new ThreadsOption();

    Duration most() {
        return time;
    }

    int threads() {
        return threads.count();
    }
}
