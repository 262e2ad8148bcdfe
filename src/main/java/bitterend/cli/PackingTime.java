package bitterend.cli;

import java.time.Duration;
import picocli.CommandLine.Option;

/** How long a command that packs many times may take for one packing. */
final class PackingTime {
    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = DurationText.class,
            defaultValue = "2s",
            description = "Pack no longer than this at a time; there are many packings. Default: ${DEFAULT-VALUE}.")
    private Duration time = Duration.ofSeconds(2);

    Duration most() {
        return time;
    }
}
