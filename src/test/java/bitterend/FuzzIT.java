package bitterend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.cli.FilesFuzz;
import bitterend.cli.PapersFuzz;
import bitterend.cli.WordsFuzz;
import bitterend.cli.WorkbookFuzz;
import bitterend.serve.RequestFuzz;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A fuzzer that is led by coverage (Jazzer) tries whatever it comes upon on every reader, the command line and the page: nothing is
 * a fault of the program, and nothing goes on without end. {@code -Dfuzz.seconds=3600} tries each for an hour, {@code -Dfuzz.seed=7}
 * begins otherwise; of ten minutes and more each goes on from what such an hour came upon ({@link KeptCorpus}). What it finds goes
 * into {@code src/test/resources/fuzz}, where {@link FoundByFuzzTest} tries it ever after.
 */
final class FuzzIT {
    private static final int SECONDS = Integer.getInteger("fuzz.seconds", 10);
    /** From so many seconds on it goes on from what an earlier hour came upon, which takes minutes to be read. */
    private static final int WITH_KEPT = 600;

    private static final int BEGIN_SECONDS = SECONDS >= WITH_KEPT ? 900 : 180;
    private static final int ONE_SECONDS = 60;
    private static final int LONGEST = 20_000;
    private static final Path WORDS = FoundByFuzzTest.FOUND.resolve("words.dict");

    private final Path folder;

    FuzzIT(@TempDir Path folder) {
        this.folder = folder;
    }

    /** One try. */
    interface Try {
        void with(byte[] data);
    }

    /**
     * What is tried on.
     *
     * @param seeds what it begins with
     */
    record Target(Class<?> type, Supplier<List<byte[]>> seeds, Try one) {
        /** Where what was found of it is kept. */
        Path found() {
            return FoundByFuzzTest.FOUND.resolve(toString());
        }

        @Override
        public String toString() {
            return type.getSimpleName();
        }
    }

    static List<Target> targets() {
        return List.of(
                new Target(FilesFuzz.class, FilesFuzz::seeds, FilesFuzz::fuzzerTestOneInput),
                new Target(PapersFuzz.class, PapersFuzz::seeds, PapersFuzz::fuzzerTestOneInput),
                new Target(WorkbookFuzz.class, WorkbookFuzz::seeds, WorkbookFuzz::fuzzerTestOneInput),
                new Target(WordsFuzz.class, WordsFuzz::seeds, WordsFuzz::fuzzerTestOneInput),
                new Target(RequestFuzz.class, RequestFuzz::seeds, RequestFuzz::fuzzerTestOneInput));
    }

    @ParameterizedTest
    @MethodSource("targets")
    void whateverIsTried_isToldOrBorne(Target target) throws IOException, InterruptedException {
        Path begin = Files.createDirectory(folder.resolve("seeds"));
        int count = 0;
        for (byte[] seed : target.seeds().get()) {
            Files.write(begin.resolve("seed-" + count++), seed);
        }
        Path grown = Files.createDirectory(folder.resolve("grown"));
        if (SECONDS >= WITH_KEPT) {
            KeptCorpus.of(target).unpack(grown);
        }
        Path log = folder.resolve("log");
        // What a command line writes beside itself goes into the folder of the test.
        Path here = Files.createDirectory(folder.resolve("here"));
        Folders.copy(Path.of("demo-data"), here.resolve("demo-data"));
        Process fuzzer = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx1500m",
                        "-Djava.io.tmpdir=" + Files.createDirectory(folder.resolve("tmp")),
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        "com.code_intelligence.jazzer.Jazzer",
                        "--target_class=" + target.type().getName(),
                        "--instrumentation_includes=bitterend.**",
                        "--custom_hook_excludes=**",
                        // The tries themselves call the page at its own address.
                        "--disabled_hooks=com.code_intelligence.jazzer.sanitizers.ServerSideRequestForgery",
                        "--reproducer_path=" + folder,
                        "-max_total_time=" + SECONDS,
                        "-len_control=0",
                        "-max_len=" + LONGEST,
                        "-timeout=" + ONE_SECONDS,
                        "-seed=" + Long.getLong("fuzz.seed", 1),
                        "-dict=" + WORDS.toAbsolutePath(),
                        "-artifact_prefix=" + folder + "/",
                        "-print_final_stats=1",
                        grown.toString(),
                        begin.toString()))
                .directory(here.toFile())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        try {
            assertTrue(fuzzer.waitFor(SECONDS + BEGIN_SECONDS, TimeUnit.SECONDS), () -> told(log));
        } finally {
            fuzzer.destroyForcibly();
        }
        assertEquals(0, fuzzer.exitValue(), () -> told(log));
        assertTrue(Files.readString(log).contains("stat::number_of_executed_units"), () -> told(log));
    }

    private static String told(Path log) {
        try {
            return Files.readString(log);
        } catch (IOException fault) {
            return fault.toString();
        }
    }
}
