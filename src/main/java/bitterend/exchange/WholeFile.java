package bitterend.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes files whole or not at all: beside the old one first, then in its place. */
public final class WholeFile {
    private WholeFile() {}

    /** Replaces a file by a text in UTF-8; when that fails the old one is as it was. */
    public static void write(Path file, String text) {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Replaces a file; when that fails the old one is as it was. */
    public static void write(Path file, byte[] bytes) {
        Path target = file.toAbsolutePath();
        Path beside = target.resolveSibling(
                target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            try {
                Files.write(beside, bytes);
                try (FileChannel written = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                    written.force(true);
                }
                move(beside, target);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException otherFileSystem) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
