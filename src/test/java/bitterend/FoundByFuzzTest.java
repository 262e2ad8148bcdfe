package bitterend;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the fuzzer begins with, and what it ever found, without the fuzzer. */
final class FoundByFuzzTest {
    static final Path FOUND = Path.of("src/test/resources/fuzz");

    private static final int OF_THE_CORPUS = 12;

    /** A few of those that once led a fuzzer on to code that nothing before had reached. */
    @ParameterizedTest
    @MethodSource("bitterend.FuzzIT#targets")
    void whatALongRunCameUpon_isToldOrBorne(FuzzIT.Target target) throws IOException {
        KeptCorpus kept = KeptCorpus.of(target);
        assertTrue(kept.inputs().size() >= OF_THE_CORPUS, target + " has a corpus");
        kept.some(OF_THE_CORPUS).forEach(target.one()::with);
    }

    @ParameterizedTest
    @MethodSource("bitterend.FuzzIT#targets")
    void whatWasFound_isToldOrBorne(FuzzIT.Target target) throws IOException {
        target.seeds().get().forEach(target.one()::with);
        Path found = target.found();
        if (Files.isDirectory(found)) {
            try (Stream<Path> files = Files.list(found)) {
                for (Path file : files.sorted().toList()) {
                    target.one().with(Files.readAllBytes(file));
                }
            }
        }
    }
}
