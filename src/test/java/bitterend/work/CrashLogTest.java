package bitterend.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.LimitsPage;
import bitterend.work.CrashLog.Doing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where the file of a fault goes, and how many there are. */
final class CrashLogTest {
    private static final Doing DOING = new Doing("serve GET /rack", "1", List.of());
    private final Path folder;

    CrashLogTest(@TempDir Path folder) {
        this.folder = folder;
    }

    /** A fault whose place in the program is like no other's. */
    private static Throwable at(int line) {
        Throwable fault = new IllegalStateException("of a customer");
        fault.setStackTrace(
                new StackTraceElement[] {new StackTraceElement("bitterend.Planted", "at", "Planted.java", line)});
        return fault;
    }

    @Test
    void sameFault_isWrittenOnceAndAllOfThemAreFew() throws IOException {
        CrashLog log = new CrashLog(folder, Clock.systemUTC());
        Set<Path> files = new HashSet<>();
        for (int line = 0; line < CrashLog.MOST_FILES; line++) {
            Optional<Path> file = log.write(DOING, at(line));
            assertEquals(file, log.write(DOING, at(line)));
            files.add(file.orElseThrow());
        }
        assertEquals(LimitsPage.most("files about faults of one run"), files.size());
        assertTrue(log.write(DOING, at(-1)).isEmpty());
        for (Path file : files) {
            assertFalse(Files.readString(file).contains("of a customer"));
            Files.delete(file);
        }
    }

    @Test
    void shopThatHoldsTheTemporaryFolder_getsNoFile() throws IOException {
        Path temporary = Path.of(System.getProperty("java.io.tmpdir")).toRealPath();
        assertTrue(
                new CrashLog(temporary, Clock.systemUTC()).write(DOING, at(1)).isEmpty());
        assertTrue(new CrashLog(temporary.getRoot(), Clock.systemUTC())
                .write(DOING, at(1))
                .isEmpty());
    }

    @Test
    void faultThatComesOfItself_ends() throws IOException {
        Throwable first = at(1);
        Throwable second = at(2);
        first.initCause(second);
        second.initCause(first);
        Path file = new CrashLog(folder, Clock.systemUTC()).write(DOING, first).orElseThrow();
        assertEquals(2, Files.readString(file).split("IllegalStateException", -1).length - 1);
        Files.delete(file);
    }
}
