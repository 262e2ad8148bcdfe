package bitterend.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

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
        Path beside = beside(target);
        try {
            try {
                force(beside, bytes);
                move(beside, target);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(naming(file, fault));
        }
    }

    /** A full disk does not say which file it had no room for, and nobody has named the one beside. */
    static IOException naming(Path file, IOException fault) {
        String reason = fault instanceof FileSystemException system
                ? fault instanceof NoSuchFileException ? "there is no such folder" : system.getReason()
                : fault.getMessage();
        String kind = fault.getClass().getSimpleName().replace("Exception", "");
        IOException named = new FileSystemException("" + file, null, reason == null ? kind : reason);
        named.initCause(fault);
        return named;
    }

    /**
     * Writes a file that is not there yet, whole or not at all; of several who try at once one succeeds.
     *
     * @return whether it was written; not when there is a file of this name
     */
    public static boolean create(Path file, byte[] bytes) {
        Path target = file.toAbsolutePath();
        Path beside = beside(target);
        try {
            try {
                force(beside, bytes);
                return claim(beside, target);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(naming(file, fault));
        }
    }

    /** A second name for the file is all or nothing; where there are no second names the name is claimed empty first. */
    private static boolean claim(Path from, Path target) throws IOException {
        try {
            Files.createLink(target, from);
            return true;
        } catch (FileAlreadyExistsException taken) {
            return false;
        } catch (UnsupportedOperationException | FileSystemException noLinks) {
            try {
                Files.createFile(target);
            } catch (FileAlreadyExistsException taken) {
                return false;
            }
            move(from, target);
            return true;
        }
    }

    /** A name that no other writer has: two may write one file at once, in one process or on two machines. */
    private static Path beside(Path target) {
        return target.resolveSibling(target.getFileName() + "." + UUID.randomUUID() + ".part");
    }

    private static void force(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes);
        try (FileChannel written = FileChannel.open(file, StandardOpenOption.WRITE)) {
            written.force(true);
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
