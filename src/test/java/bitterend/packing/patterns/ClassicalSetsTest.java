package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.bench.Instance;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sample of the published sets; src/test/resources/instances/README.md names the sources. */
final class ClassicalSetsTest {
    private static final Path INSTANCES = Path.of("src", "test", "resources", "instances");

    @ParameterizedTest
    @CsvSource({"falkenauer_u,8", "falkenauer_t,16", "waescher,2", "scholl3,5", "gap,3", "lengths,6"})
    void sample_isProvenOptimal(String set, int every) throws IOException {
        int number = 0;
        for (Instance instance : Instance.read(INSTANCES.resolve(set + ".tsv"))) {
            if (number++ % every != 1) {
                continue;
            }
            PatternPlan plan = PatternPacker.pack(instance.problem(), Effort.ofWork(3_000_000_000L));
            PlanReferee.check(instance.problem(), plan);
            assertEquals(instance.upper(), plan.cost(), instance.name());
            assertTrue(plan.proven(), instance.name());
        }
    }
}
