package bitterend.exchange.workbook;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.ZipException;

/**
 * A workbook as its sheets. Values alone are read: of a formula what it came to when the workbook was saved.
 *
 * @param name the name of its file
 * @param sheets in the order of their tabs; at least one
 */
public record Workbook(String name, List<Sheet> sheets) {
    public Workbook {
        sheets = List.copyOf(sheets);
    }

    /** Whether a file is a workbook by its name. */
    public static boolean isNamed(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return small.endsWith(".xlsx") || small.endsWith(".xlsm");
    }

    /** Whether bytes begin as those of a workbook do, an old or an encrypted one included. */
    public static boolean begins(byte[] bytes) {
        return Kind.isBook(bytes);
    }

    /** What is in a workbook; nothing, and why not is told, where the file is none or is larger than the {@link Limits}. */
    public static Optional<Workbook> open(Path file, Findings findings) {
        String name = String.valueOf(file.getFileName());
        try {
            if (Files.size(file) > Limits.MOST_BYTES) {
                throw new Refused(
                        Files.size(file) / 1_000_000 + " MB",
                        "a workbook of at most " + Limits.MOST_BYTES / 1_000_000 + " MB");
            }
            Kind.check(file);
            try (Parts parts = Parts.open(file)) {
                return Optional.of(new Workbook(name, new Book(name, parts).sheets()));
            }
        } catch (Refused refused) {
            findings.add(Finding.error(name, "", "", refused.found(), refused.wanted()));
        } catch (ZipException broken) {
            Refused refused = Parts.damaged("a file");
            findings.add(Finding.error(name, "", "", refused.found(), refused.wanted()));
        } catch (IOException unreadable) {
            findings.add(Finding.error(name, "", "", "", "a file that can be read"));
        }
        return Optional.empty();
    }
}
