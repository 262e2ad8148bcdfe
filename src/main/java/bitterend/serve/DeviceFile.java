package bitterend.serve;

import bitterend.exchange.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The devices that are paired with one shop's page, a line each: its name here, then what people call it. */
final class DeviceFile {
    /** Name of the file in the shop folder. */
    static final String NAME = ".serve-devices";

    private final Path file;

    DeviceFile(Path shop) {
        file = shop.resolve(NAME);
    }

    /** What people call each of them. */
    Map<String, String> names() {
        Map<String, String> names = new TreeMap<>();
        if (!Files.exists(file)) {
            return names;
        }
        try {
            for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
                int space = line.indexOf(' ');
                if (space > 0) {
                    names.put(line.substring(0, space), line.substring(space + 1));
                }
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return names;
    }

    void add(String device, String name) {
        Map<String, String> names = names();
        names.put(device, name);
        write(names);
    }

    void remove(String device) {
        Map<String, String> names = names();
        names.remove(device);
        write(names);
    }

    private void write(Map<String, String> names) {
        List<String> lines = new ArrayList<>();
        names.forEach((device, name) -> lines.add(device + " " + name + "\n"));
        WholeFile.write(file, String.join("", lines));
    }
}
