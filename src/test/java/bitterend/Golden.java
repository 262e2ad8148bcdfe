package bitterend;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares what people read with the file that says how it should read, under {@code src/test/resources/golden}. Run the
 * tests with {@code -Dgolden.rewrite=true} to write those files anew, then look at the difference before you commit it.
 */
public final class Golden {
    private static final Path FOLDER = Path.of("src/test/resources/golden");

    private Golden() {}

    /** Fails when the text is not what the golden file holds. */
    public static void check(String name, String actual) {
        check(FOLDER.resolve(name), actual);
    }

    /** The same for a page of the documentation that is printed by the program. */
    public static void checkPage(Path page, String actual) {
        check(page, actual);
    }

    private static void check(Path file, String actual) {
        try {
            if (Boolean.getBoolean("golden.rewrite")) {
                Files.createDirectories(file.getParent());
                Files.writeString(file, actual);
            }
            assertEquals(Files.readString(file), actual, "golden file " + file);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
