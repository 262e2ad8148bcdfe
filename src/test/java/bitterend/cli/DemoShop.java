package bitterend.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The shops of the demo data, copied so that a test may write into them. */
final class DemoShop {
    private DemoShop() {}

    /** Copies a shop into a folder; the copy. */
    static Path copy(String name, Path into) throws IOException {
        Path demo = Path.of("demo-data", name);
        Path copy = into.resolve(name);
        try (Stream<Path> files = Files.walk(demo)) {
            for (Path file : files.toList()) {
                Path target = copy.resolve(demo.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
        return copy;
    }
}
