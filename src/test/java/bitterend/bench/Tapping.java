package bitterend.bench;

import bitterend.serve.TickLoad;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How long a tick at the bench takes through the served page: one device and nothing else, then many beside a plan. */
@Command(name = "serve")
final class Tapping implements Callable<Integer> {
    @Option(names = "--devices")
    private int devices = 12;

    @Option(names = "--each")
    private int each = 12;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Benchmarks.positive(spec, "--devices", devices);
        Benchmarks.positive(spec, "--each", each);
        PrintWriter out = spec.commandLine().getOut();
        out.println("way\tticks\tnot_booked\tmedian_ms\tp95_ms\tmost_ms");
        ticks(1, each, false); // what the virtual machine learns first is not counted
        double idle = print(out, "one device, idle", ticks(1, each, false));
        double busy = print(out, devices + " devices, a plan running", ticks(devices, each, true));
        out.println(String.format(Locale.ROOT, "p95, times\t%.1f", busy / idle));
        return 0;
    }

    private static double print(PrintWriter out, String way, TickLoad.Ticks ticks) {
        Percentiles millis = new Percentiles(ticks.millis());
        out.println(String.format(
                Locale.ROOT,
                "%s\t%d\t%d\t%.0f\t%.0f\t%.0f",
                way,
                ticks.millis().size(),
                ticks.refused().size(),
                millis.median(),
                millis.at(0.95),
                millis.most()));
        ticks.refused().forEach(each -> out.println("not booked\t" + each));
        return millis.at(0.95);
    }

    private static TickLoad.Ticks ticks(int devices, int each, boolean planning) throws Exception {
        Path folder = Files.createTempDirectory("ticks");
        try {
            return TickLoad.of(folder, devices, each, planning);
        } finally {
            remove(folder);
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
