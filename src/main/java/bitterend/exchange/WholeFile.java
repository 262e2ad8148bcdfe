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
final class WholeFile {
    private WholeFile() {}

    /** Replaces a file; when that fails the old one is as it was. */
    static void write(Path file, String text) {
        Path target = file.toAbsolutePath();
        Path beside = target.resolveSibling(
                target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            try {
                Files.writeString(beside, text, StandardCharsets.UTF_8);
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
