package bitterend.exchange.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** What a file is by how it begins, whatever its name says. */
final class Kind {
    private static final byte[] ZIP = {'P', 'K', 3, 4};
    private static final byte[] COMPOUND = {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0};
    private static final byte[] OF_ENCRYPTED = "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE);

    private Kind() {}

    /** Whether bytes begin as a workbook of either kind does. */
    static boolean isBook(byte[] bytes) {
        return begins(bytes, ZIP) || begins(bytes, COMPOUND);
    }

    /** Refuses what cannot be a workbook, and says what it is. */
    static void check(Path file) throws IOException {
        byte[] start = start(file);
        if (begins(start, COMPOUND)) {
            throw contains(Files.readAllBytes(file), OF_ENCRYPTED)
                    ? new Refused("a workbook with a password", "the workbook saved as .xlsx without a password")
                    : new Refused("a workbook of the old kind, .xls", "the workbook saved as .xlsx");
        }
        if (start.length == 0) {
            throw new Refused("an empty file", "a workbook, .xlsx");
        }
        if (!begins(start, ZIP)) {
            boolean text =
                    new String(start, StandardCharsets.ISO_8859_1).chars().allMatch(Kind::isTyped);
            throw new Refused(
                    text ? "text under the name of a workbook" : "other bytes than those of a workbook",
                    text
                            ? "a workbook saved as .xlsx; where it is a CSV file, the name ending in .csv"
                            : "a workbook saved as .xlsx");
        }
    }

    private static byte[] start(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(200);
        }
    }

    private static boolean isTyped(int letter) {
        return letter >= ' ' || letter == '\t' || letter == '\n' || letter == '\r';
    }

    private static boolean begins(byte[] bytes, byte[] with) {
        return bytes.length >= with.length && java.util.Arrays.equals(bytes, 0, with.length, with, 0, with.length);
    }

    private static boolean contains(byte[] bytes, byte[] looked) {
        for (int at = 0; at + looked.length <= bytes.length; at++) {
            if (java.util.Arrays.equals(bytes, at, at + looked.length, looked, 0, looked.length)) {
                return true;
            }
        }
        return false;
    }
}
