package bitterend.work.imports;

import bitterend.exchange.WholeFile;
import bitterend.exchange.form.InputFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What imports wrote, one folder for each in {@code import-before}: the files as they were, and a list of what they became, by
 * which a later taking back knows that nobody changed them since.
 */
final class ImportLog {
    /** The folder in the shop. */
    static final String FOLDER = "import-before";

    private static final String LIST = "written.txt";
    private static final String BACK = " taken back";
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HHmmss");

    private final Path shop;
    private final Clock clock;

    ImportLog(Path shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /** The files as they were, before the first is written; files that were not there have no text. */
    Path begin(Map<String, String> before, String who) {
        String when = MOMENT.withZone(ZoneId.systemDefault()).format(clock.instant());
        String name = when + " " + who.replaceAll("[^\\p{L}\\p{N} ._-]", "_");
        try {
            Path folder = shop.resolve(FOLDER).resolve(name);
            for (int again = 2; Files.exists(folder); again++) {
                folder = shop.resolve(FOLDER).resolve(name + " " + again);
            }
            Files.createDirectories(folder);
            for (String file : before.keySet()) {
                if (Files.exists(shop.resolve(file))) {
                    Files.copy(shop.resolve(file), folder.resolve(file));
                }
            }
            return folder;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Says what became of the files, when all are written. */
    void end(Path folder, List<String> files) {
        StringBuilder list = new StringBuilder();
        files.forEach(file -> list.append(digest(file)).append(' ').append(file).append('\n'));
        WholeFile.write(folder.resolve(LIST), list.toString());
    }

    private String digest(String file) {
        try {
            Path path = shop.resolve(file);
            return InputFile.sha256(Files.exists(path) ? Files.readAllBytes(path) : new byte[0]);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** The last import that was not taken back. */
    Optional<Path> last() {
        Path all = shop.resolve(FOLDER);
        if (!Files.isDirectory(all)) {
            return Optional.empty();
        }
        try (Stream<Path> folders = Files.list(all)) {
            return folders.filter(folder -> Files.exists(folder.resolve(LIST))
                            && !folder.toString().endsWith(BACK))
                    .max(Path::compareTo);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** The files of an import with what they became. */
    Map<String, String> written(Path folder) {
        Map<String, String> written = new TreeMap<>();
        try {
            for (String line : Files.readAllLines(folder.resolve(LIST), StandardCharsets.UTF_8)) {
                String[] parts = line.split(" ", 2);
                written.put(parts[1], parts[0]);
            }
            return written;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Files of an import that somebody changed since. */
    List<String> changedSince(Path folder) {
        List<String> changed = new ArrayList<>();
        written(folder).forEach((file, digest) -> {
            if (!digest(file).equals(digest)) {
                changed.add(file);
            }
        });
        return changed;
    }

    /** Puts a file back as it was; one that was not there goes. */
    void restore(Path folder, String file) {
        try {
            if (Files.exists(folder.resolve(file))) {
                WholeFile.write(shop.resolve(file), Files.readAllBytes(folder.resolve(file)));
            } else {
                Files.deleteIfExists(shop.resolve(file));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Notes that an import was taken back. */
    void takenBack(Path folder) {
        try {
            Files.move(folder, folder.resolveSibling(folder.getFileName() + BACK));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
