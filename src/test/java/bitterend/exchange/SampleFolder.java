package bitterend.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Shop folders of the tests: a good one, and bad ones that say only what differs from it. */
final class SampleFolder {
    static final Path GOOD = Path.of("src/test/resources/good");
    static final Path BAD = Path.of("src/test/resources/bad");

    private SampleFolder() {}

    /** The good folder with the files of another laid over it, less those that its remove.txt names. */
    static void lay(Path over, Path target) throws IOException {
        copy(GOOD, target);
        copy(over, target);
        Path remove = target.resolve("remove.txt");
        if (Files.exists(remove)) {
            for (String name : Files.readAllLines(remove)) {
                Files.delete(target.resolve(name));
            }
            Files.delete(remove);
        }
    }

    /** Copies the files of a folder; what lies in folders below it is no part of the shop. */
    static void copy(Path from, Path to) throws IOException {
        for (Path file : files(from)) {
            if (Files.isRegularFile(file)) {
                Files.write(to.resolve(file.getFileName().toString()), Files.readAllBytes(file));
            }
        }
    }

    static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
