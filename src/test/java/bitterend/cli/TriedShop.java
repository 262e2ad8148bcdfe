package bitterend.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A shop that anything may be tried on: before each try its folder is put back as it was. */
final class TriedShop {
    /** What a command may end with; a fault of the program is none of them. */
    private static final Set<Integer> SOUND = Set.of(0, 2, 3, 4, 5);

    private final DayInTheShop day;
    private final Map<Path, byte[]> kept = new TreeMap<>();

    private TriedShop(DayInTheShop day) throws IOException {
        this.day = day;
        for (Path file : files()) {
            kept.put(file, Files.readAllBytes(file));
        }
    }

    /** A shop with a ledger in the middle of its day. */
    static TriedShop inItsDay() {
        try {
            return new TriedShop(DayInTheShop.in(Files.createTempDirectory("tried")));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** A demo loft as it is, with every kind of file. */
    static TriedShop of(String loft) {
        try {
            Path folder = Files.createTempDirectory("tried");
            Path out = Files.createDirectory(folder.resolve("out"));
            return new TriedShop(new DayInTheShop(DemoShop.copy(loft, folder), out, "1"));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder())) {
            return all.filter(Files::isRegularFile).toList();
        }
    }

    /** Where the shop's folder is, with what was written beside it. */
    private Path folder() {
        return day.shop().resolveSibling("");
    }

    private void putBack() throws IOException {
        for (Path file : files()) {
            byte[] before = kept.get(file);
            if (before == null) {
                Files.delete(file);
            } else if (Files.size(file) != before.length || !Arrays.equals(Files.readAllBytes(file), before)) {
                Files.write(file, before);
            }
        }
        for (Map.Entry<Path, byte[]> each : kept.entrySet()) {
            if (!Files.exists(each.getKey())) {
                Files.createDirectories(each.getKey().getParent());
                Files.write(each.getKey(), each.getValue());
            }
        }
        try (Stream<Path> all = Files.walk(folder())) {
            for (Path empty : all.sorted(Comparator.reverseOrder()).toList()) {
                if (Files.isDirectory(empty) && !empty.equals(day.out()) && isEmpty(empty)) {
                    Files.delete(empty);
                }
            }
        }
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        }
    }

    private Path file(String name) {
        return day.shop().resolve(name).normalize();
    }

    /** A file of the shop as it was at first. */
    byte[] first(String name) {
        byte[] bytes = kept.get(file(name));
        if (bytes == null) {
            throw new IllegalArgumentException("no file " + name + " in " + kept.keySet());
        }
        return bytes;
    }

    /** Asks each of the commands with that in place of a file of the shop. */
    void with(String name, byte[] content, List<String> commands) {
        try {
            putBack();
            Path file = file(name);
            Files.createDirectories(file.getParent());
            Files.write(file, content);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        for (String words : commands) {
            sound(day.typed(words));
        }
    }

    /** Asks one command line of the shop as it was. */
    void asked(String words) {
        try {
            putBack();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        sound(day.typed(words));
    }

    private static void sound(String... words) {
        Run run = Run.of(words);
        if (!SOUND.contains(run.code()) || (run.out() + run.err()).contains("\tat bitterend.")) {
            throw new AssertionError(
                    "exit code " + run.code() + " of " + String.join(" ", words) + "\n" + run.out() + run.err());
        }
    }
}
