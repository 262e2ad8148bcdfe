package bitterend.bench;

import java.util.List;
import java.util.concurrent.Callable;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The inner steps of the engines, by the microbenchmarks that stand in the engines' own packages. */
@Command(name = "steps")
final class Steps implements Callable<Integer> {
    private static final List<String> ALL = List.of("Pricing", "Master", "Score");

    @Option(names = "--forks")
    private int forks = 1;

    @Parameters(arity = "0..*", paramLabel = "STEP")
    private List<String> steps = List.of();

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Override
    public Integer call() throws RunnerException {
        Benchmarks.positive(spec, "--forks", forks);
        ChainedOptionsBuilder options = new OptionsBuilder().forks(forks).shouldFailOnError(true);
        for (String step : steps.isEmpty() ? ALL : steps) {
            String name = ALL.stream()
                    .filter(known -> known.equalsIgnoreCase(step))
                    .findFirst()
                    .orElseThrow(() -> new ParameterException(
                            spec.commandLine(), "STEP: found " + step + ", expected pricing, master or score"));
            options.include("\\." + name + "Speed\\.");
        }
        new Runner(options.build()).run();
        return 0;
    }
}
