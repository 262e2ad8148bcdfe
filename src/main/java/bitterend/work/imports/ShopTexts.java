package bitterend.work.imports;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The files of a shop as text, without a byte order mark; empty where there is none. */
final class ShopTexts {
    private ShopTexts() {}

    static String read(Path folder, String file) {
        Path path = folder.resolve(file);
        try {
            String text = Files.exists(path) ? new String(Files.readAllBytes(path), StandardCharsets.UTF_8) : "";
            return text.startsWith("\ufeff") ? text.substring(1) : text;
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
