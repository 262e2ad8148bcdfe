package bitterend.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Pictures for people, written whole or not at all. */
public final class PictureFile {
    private PictureFile() {}

    /** Writes a picture; its folder is made where there is none. */
    public static void write(Path file, String picture) {
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        WholeFile.write(file, picture);
    }
}
