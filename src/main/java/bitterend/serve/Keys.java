package bitterend.serve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * The secret of one shop's page, by which it knows again what it gave to a browser: so a tablet stays known when the program is
 * started anew. It is kept in a file that its owner alone may read.
 */
final class Keys {
    /** Name of the file in the shop folder. */
    static final String NAME = ".serve-key";

    private static final int BYTES = 32;
    private static final String MAC = "HmacSHA256";
    private static final SecureRandom RANDOM = new SecureRandom();

    private final SecretKeySpec key;

    private Keys(byte[] secret) {
        key = new SecretKeySpec(secret, MAC);
    }

    /** The shop's key, made where there is none. */
    static Keys of(Path shop) {
        Path file = shop.resolve(NAME);
        try {
            if (!Files.exists(file)) {
                make(file);
            }
            byte[] secret = HexFormat.of()
                    .parseHex(Files.readString(file, StandardCharsets.US_ASCII).strip());
            if (secret.length < BYTES) {
                throw new IllegalArgumentException("too short");
            }
            return new Keys(secret);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        } catch (IllegalArgumentException fault) {
            throw new UncheckedIOException(
                    new IOException(file + " is not a key of this program; remove it, and pair each device again"));
        }
    }

    /** Written whole before it has its name; where another process was first, its key is the shop's. */
    private static void make(Path file) throws IOException {
        byte[] secret = new byte[BYTES];
        RANDOM.nextBytes(secret);
        Path draft = file.resolveSibling(NAME + "-" + random());
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createFile(draft, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        }
        try {
            Files.writeString(draft, HexFormat.of().formatHex(secret) + "\n", StandardCharsets.US_ASCII);
            Files.move(draft, file);
        } catch (FileAlreadyExistsException made) {
            Files.delete(draft);
        }
    }

    /** A new random name for a browser. */
    static String random() {
        byte[] bytes = new byte[16];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** What nobody without the key can tell of a text. */
    String sign(String purpose, String text) {
        try {
            Mac mac = Mac.getInstance(MAC);
            mac.init(key);
            byte[] signed = mac.doFinal((purpose + "\n" + text).getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(signed);
        } catch (GeneralSecurityException fault) {
            throw new IllegalStateException("every Java has " + MAC, fault);
        }
    }

    /** Whether it is that, compared in a time that tells nothing. */
    boolean isSigned(String purpose, String text, String signature) {
        return MessageDigest.isEqual(
                sign(purpose, text).getBytes(StandardCharsets.UTF_8), signature.getBytes(StandardCharsets.UTF_8));
    }
}
