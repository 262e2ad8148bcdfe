package bitterend.exchange.form;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * One file of a shop folder, read whole.
 *
 * @param name its name inside the folder
 * @param text its text, without a byte order mark
 * @param digest SHA-256 of its bytes, in hexadecimal
 */
public record InputFile(String name, String text, String digest) {

    /** A file that must be there. */
    public static Optional<InputFile> require(Path folder, String name, Findings findings) {
        if (!Files.exists(folder.resolve(name))) {
            findings.add(Finding.error(name, "", "", "", "a file of this name in the shop folder"));
            return Optional.empty();
        }
        return open(folder, name, findings);
    }

    /** A file that may be missing. */
    public static Optional<InputFile> find(Path folder, String name, Findings findings) {
        return Files.exists(folder.resolve(name)) ? open(folder, name, findings) : Optional.empty();
    }

    private static Optional<InputFile> open(Path folder, String name, Findings findings) {
        try {
            byte[] bytes = Files.readAllBytes(folder.resolve(name));
            return Optional.of(new InputFile(name, text(bytes), sha256(bytes)));
        } catch (CharacterCodingException notUtf8) {
            findings.add(Finding.error(name, "", "", "other bytes", "text saved as UTF-8"));
        } catch (IOException unreadable) {
            findings.add(Finding.error(name, "", "", "", "a file that can be read"));
        }
        return Optional.empty();
    }

    private static String text(byte[] bytes) throws CharacterCodingException {
        String text = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(bytes))
                .toString();
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }

    public static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
