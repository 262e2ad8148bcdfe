package bitterend.work;

import bitterend.exchange.WholeFile;
import bitterend.exchange.form.InputFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What was written into the files of a shop, one folder for each time: the files as they were, and a list of what they became,
 * by which a later taking back knows that nobody changed them since.
 */
public final class FilesBefore {
    private static final String LIST = "written.txt";
    private static final String BACK = " taken back";
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HHmmss");

    private final Path shop;
    private final Clock clock;
    private final String name;

    /** @param name of the folder in the shop that they are kept in */
    public FilesBefore(Path shop, Clock clock, String name) {
        this.shop = shop;
        this.clock = clock;
        this.name = name;
    }

    /** The files as they were, before the first is written; files that were not there have no text. */
    public Path begin(Map<String, String> before, String who) {
        String when = MOMENT.withZone(ZoneId.systemDefault()).format(clock.instant());
        String own = when + " " + who.replaceAll("[^\\p{L}\\p{N} ._-]", "_");
        try {
            Path folder = shop.resolve(name).resolve(own);
            for (int again = 2; Files.exists(folder); again++) {
                folder = shop.resolve(name).resolve(own + " " + again);
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
    public void end(Path folder, List<String> files) {
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

    /** The folders with files as they were, and of what was taken back as they had become. */
    public List<Path> all() {
        Path all = shop.resolve(name);
        if (!Files.isDirectory(all)) {
            return List.of();
        }
        try (Stream<Path> folders = Files.walk(all, 2)) {
            return folders.filter(Files::isDirectory).toList();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** The last of them that was not taken back. */
    public Optional<Path> last() {
        Path all = shop.resolve(name);
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

    /** The first of a day, by the clock, that was not taken back. */
    public Optional<Path> firstOf(LocalDate day) {
        return all().stream()
                .filter(folder -> folder.getFileName().toString().startsWith(day + " ")
                        && Files.exists(folder.resolve(LIST))
                        && !folder.toString().endsWith(BACK))
                .min(Path::compareTo);
    }

    /** The files of one of them with what they became. */
    public Map<String, String> written(Path folder) {
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

    /** Files of one of them that somebody changed since. */
    public List<String> changedSince(Path folder) {
        List<String> changed = new ArrayList<>();
        written(folder).forEach((file, digest) -> {
            if (!digest(file).equals(digest)) {
                changed.add(file);
            }
        });
        return changed;
    }

    /** Puts a file back as it was; one that was not there goes. */
    public void restore(Path folder, String file) {
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

    /** Notes that one of them was taken back. */
    public void takenBack(Path folder) {
        try {
            Files.move(folder, folder.resolveSibling(folder.getFileName() + BACK));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
