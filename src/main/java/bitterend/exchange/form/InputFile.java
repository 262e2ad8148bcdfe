package bitterend.exchange.form;

import bitterend.exchange.workbook.Sheet;
import bitterend.exchange.workbook.Workbook;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * One file of a shop folder, read whole.
 *
 * @param name its name inside the folder
 * @param text its text, without a byte order mark; empty for a workbook
 * @param digest SHA-256 of its bytes, in hexadecimal
 * @param sheets of a workbook its sheets; none for a text
 * @param form how days and figures are typed in it, where it is a table
 */
public record InputFile(String name, String text, String digest, List<Sheet> sheets, LocalForm form) {
    private static final Pattern BLANKS = Pattern.compile("[\\s,;\"]+");
    private static final int MOST_PLAIN = 127;
    private static final int LONGEST_SHOWN = 40;
    private static final int PART = 1 << 16;

    public InputFile {
        sheets = List.copyOf(sheets);
    }

    /** A text with days and figures of no place in particular. */
    public InputFile(String name, String text, String digest) {
        this(name, text, digest, List.of(), LocalForm.NONE);
    }

    /** The same file with days and figures as they are typed in a place. */
    public InputFile in(LocalForm local) {
        return new InputFile(name, text, digest, sheets, local);
    }

    /** A file that must be there. */
    public static Optional<InputFile> require(Path folder, String name, Findings findings) {
        if (!Files.exists(folder.resolve(name))) {
            findings.add(Finding.error(name, "", "", "", "a file of this name in the shop folder"));
            return Optional.empty();
        }
        return open(folder, name, findings);
    }

    /** A file that somebody names, wherever it is; it must be there. */
    public static Optional<InputFile> named(Path file, Findings findings) {
        Path whole = file.toAbsolutePath();
        Path folder = Optional.ofNullable(whole.getParent()).orElse(whole);
        String name = String.valueOf(whole.getFileName());
        if (!Files.exists(whole)) {
            findings.add(Finding.error(name, "", "", "", "a file that is there; looked for " + whole.normalize()));
            return Optional.empty();
        }
        return open(folder, name, findings);
    }

    /** A file that may be missing. */
    public static Optional<InputFile> find(Path folder, String name, Findings findings) {
        return Files.exists(folder.resolve(name)) ? open(folder, name, findings) : Optional.empty();
    }

    /** A table that must be there, in a CSV file of this name or in a workbook that is named alike. */
    public static Optional<InputFile> requireTable(Path folder, String name, Findings findings) {
        return Files.exists(folder.resolve(workbook(name)))
                ? findTable(folder, name, findings)
                : require(folder, name, findings);
    }

    /** A table that may be missing; not there twice, lest one of the two is thought to be read and is not. */
    public static Optional<InputFile> findTable(Path folder, String name, Findings findings) {
        String other = workbook(name);
        boolean both = Files.exists(folder.resolve(name)) && Files.exists(folder.resolve(other));
        if (both) {
            findings.add(Finding.error(
                            name,
                            "",
                            "",
                            name + " and " + other,
                            "one of the two; move the other out of the shop folder")
                    .workedOut());
        }
        return find(folder, Files.exists(folder.resolve(name)) ? name : other, findings);
    }

    /** The name of the workbook that may be in place of a CSV file: {@code orders.xlsx} for {@code orders.csv}. */
    public static String workbook(String name) {
        return name.replaceFirst("\\.csv$", ".xlsx");
    }

    private static Optional<InputFile> open(Path folder, String name, Findings findings) {
        try {
            Path file = folder.resolve(name);
            if (!Files.isRegularFile(file)) {
                findings.add(Finding.error(name, "", "", kind(file), "a file that can be read"));
                return Optional.empty();
            }
            if (Workbook.isNamed(name)) {
                Optional<Workbook> book = Workbook.open(file, findings);
                return book.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new InputFile(
                                name,
                                "",
                                sha256(Files.readAllBytes(file)),
                                book.get().sheets(),
                                LocalForm.NONE));
            }
            if (Files.size(file) > FileLimits.MOST_BYTES) {
                findings.add(Finding.error(
                        name,
                        "",
                        "",
                        Files.size(file) / 1_000_000 + " MB",
                        "a file of at most " + FileLimits.MOST_BYTES / 1_000_000 + " MB"));
                return Optional.empty();
            }
            byte[] bytes = Files.readAllBytes(file);
            Optional<Encoding.Decoded> decoded = Encoding.decode(bytes);
            if (decoded.isEmpty()) {
                findings.add(other(name, bytes));
            }
            decoded.filter(text -> text.encoding() == Encoding.WINDOWS_1252)
                    .ifPresent(guessed -> findings.add(Finding.warning(
                            name,
                            "",
                            "",
                            "letters in Windows-1252, " + shown(guessed.text()),
                            "text saved as UTF-8; it was read all the same")));
            return decoded.map(text -> new InputFile(name, text.text(), sha256(bytes)));
        } catch (IOException unreadable) {
            findings.add(Finding.error(name, "", "", "", "a file that can be read"));
        }
        return Optional.empty();
    }

    /** What is there in place of a file: reading a pipe or a device would never end. */
    private static String kind(Path file) {
        return Files.isDirectory(file) ? "a folder" : "a pipe, a socket or a device";
    }

    private static Finding other(String name, byte[] bytes) {
        return Workbook.begins(bytes)
                ? Finding.error(name, "", "", "a workbook", "text saved as UTF-8; the name of a workbook ends in .xlsx")
                : Finding.error(name, "", "", "other bytes", "text saved as UTF-8");
    }

    /** The first word with a letter that is no plain one, for people to see whether it was read as it was meant. */
    private static String shown(String text) {
        return Arrays.stream(BLANKS.split(text))
                .filter(word -> word.chars().anyMatch(letter -> letter > MOST_PLAIN))
                .findFirst()
                .map(word -> "such as " + word.substring(0, Math.min(word.length(), LONGEST_SHOWN)))
                .orElse("");
    }

    /** Whether its bytes are its text in UTF-8, with a byte order mark or without. */
    public boolean isUtf8() {
        return digest.equals(sha256(text.getBytes(StandardCharsets.UTF_8)))
                || digest.equals(sha256(("\ufeff" + text).getBytes(StandardCharsets.UTF_8)));
    }

    public static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    /** SHA-256 of a file that is there, in hexadecimal, however large: it is not held in memory. */
    public static String sha256(Path file) throws IOException {
        MessageDigest digest = sha256();
        try (InputStream bytes = Files.newInputStream(file)) {
            byte[] part = new byte[PART];
            for (int read = bytes.read(part); read >= 0; read = bytes.read(part)) {
                digest.update(part, 0, read);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
