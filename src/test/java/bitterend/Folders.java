package bitterend;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Folders that a test writes into: copies, since what is in the project is never written. */
public final class Folders {
    private Folders() {}

    /** Copies a folder with all that is in it; where it goes may be there already. */
    public static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Path target = to.resolve(from.relativize(each).toString());
                if (Files.isDirectory(each)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(each, target);
                }
            }
        }
    }
}
