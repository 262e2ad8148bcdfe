package bitterend.exchange;

import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.LocalForm;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The files of a shop folder as they are opened, each with its digest kept. */
final class FolderFiles {
    private final Path folder;
    private final Findings findings;
    private final Map<String, String> digests = new TreeMap<>();
    private LocalForm form = LocalForm.NONE;

    FolderFiles(Path folder, Findings findings) {
        this.folder = folder;
        this.findings = findings;
    }

    /** Every file from here on has days and figures as they are typed in this place. */
    void in(LocalForm local) {
        form = local;
    }

    /** A file that may be missing. */
    Optional<InputFile> find(String name) {
        return digested(InputFile.find(folder, name, findings));
    }

    /** A file that must be there. */
    Optional<InputFile> require(String name) {
        return digested(InputFile.require(folder, name, findings));
    }

    /** A table that may be missing, a CSV file or a workbook. */
    Optional<InputFile> findTable(String name) {
        return digested(InputFile.findTable(folder, name, findings));
    }

    /** A table that must be there, a CSV file or a workbook. */
    Optional<InputFile> requireTable(String name) {
        return digested(InputFile.requireTable(folder, name, findings));
    }

    private boolean isThere(String table) {
        return Files.exists(folder.resolve(table)) || Files.exists(folder.resolve(InputFile.workbook(table)));
    }

    /** Whichever is there of a file and the table that may take its place; both are told, and the file is read. */
    Optional<InputFile> either(String name, String table) {
        boolean both = Files.exists(folder.resolve(name)) && isThere(table);
        if (both) {
            findings.add(Finding.error(
                    table, "", "", "a second file of the same, beside " + name, "one of the two: move the other away"));
        }
        return Files.exists(folder.resolve(name)) ? find(name) : findTable(table);
    }

    /** The same where one of the two must be there. */
    Optional<InputFile> requireEither(String name, String table) {
        return isThere(table) ? either(name, table) : require(name);
    }

    /** SHA-256 of every file that was opened, in hexadecimal, by its name. */
    Map<String, String> digests() {
        return digests;
    }

    private Optional<InputFile> digested(Optional<InputFile> file) {
        file.ifPresent(read -> digests.put(read.name(), read.digest()));
        return file.map(read -> read.in(form));
    }
}
