package bitterend.serve;

import bitterend.exchange.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/** The office code of one shop's page as it is kept: stretched with PBKDF2 and salted, so that its file does not give it away. */
final class OfficeCode {
    /** Name of the file in the shop folder; who takes it away ends the code. */
    static final String NAME = ".serve-office";

    /** Fewest characters of a code. */
    static final int FEWEST = 6;

    private static final String KIND = "PBKDF2WithHmacSHA256";
    private static final int ROUNDS = 310_000;
    private static final int BITS = 256;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final Path file;

    OfficeCode(Path shop) {
        file = shop.resolve(NAME);
    }

    boolean isSet() {
        return Files.exists(file);
    }

    /** Sets a code; the one before it counts no more. */
    void set(String code) {
        byte[] salt = new byte[16];
        RANDOM.nextBytes(salt);
        WholeFile.write(
                file,
                ROUNDS + " " + HexFormat.of().formatHex(salt) + " "
                        + HexFormat.of().formatHex(stretched(code, salt, ROUNDS)) + "\n");
        try {
            if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
                Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** From now on there is none. */
    void end() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** What is kept of it, by which one code is told from the next. */
    String kept() {
        try {
            return Files.readString(file, StandardCharsets.US_ASCII).strip();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Whether it is that, compared in a time that tells nothing. A file that is no such code opens nothing. */
    boolean is(String code) {
        String[] parts = kept().split(" ");
        if (parts.length != 3 || !parts[0].matches("[1-9][0-9]{0,7}")) {
            return false;
        }
        try {
            byte[] salt = HexFormat.of().parseHex(parts[1]);
            byte[] want = HexFormat.of().parseHex(parts[2]);
            return salt.length > 0 && MessageDigest.isEqual(want, stretched(code, salt, Integer.parseInt(parts[0])));
        } catch (IllegalArgumentException noHex) {
            return false;
        }
    }

    private static byte[] stretched(String code, byte[] salt, int rounds) {
        PBEKeySpec spec = new PBEKeySpec(code.toCharArray(), salt, rounds, BITS);
        try {
            return SecretKeyFactory.getInstance(KIND).generateSecret(spec).getEncoded();
        } catch (GeneralSecurityException fault) {
            throw new IllegalStateException("every Java has " + KIND, fault);
        } finally {
            spec.clearPassword();
        }
    }
}
