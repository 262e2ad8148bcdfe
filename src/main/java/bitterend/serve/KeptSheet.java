package bitterend.serve;

import bitterend.exchange.mapping.Column;
import bitterend.exchange.mapping.Question;
import bitterend.exchange.mapping.SheetPreview;
import bitterend.exchange.mapping.Table;
import bitterend.finding.Finding;
import bitterend.work.imports.ImportSheets;
import bitterend.work.imports.ImportSheets.Result;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A sheet that a browser sent, with what was answered about it. It is in memory; on disk only while it is read. */
final class KeptSheet {
    /** Names of files by how the sender's name ends; what is none that we read is told what to save it as. */
    private static final Map<String, String> NAMES = Map.of(
            ".xlsx", "sheet.xlsx",
            ".xlsm", "sheet.xlsx",
            ".xls", "sheet.xlsx",
            ".xlsb", "sheet.xlsx",
            ".ods", "sheet.xlsx",
            ".csv", "sheet.csv",
            ".txt", "sheet.csv",
            ".tsv", "sheet.tsv");

    private final String id = Keys.random();
    private final String device;
    private final String called;
    private final String name;
    private final byte[] bytes;
    private final Map<String, String> answers = new TreeMap<>();

    KeptSheet(String device, String called, String name, byte[] bytes) {
        this.device = device;
        this.called = called;
        this.name = name;
        this.bytes = bytes;
    }

    /** The name that a file is read under, never its sender's; nothing where that one ends like no table. */
    static Optional<String> name(String called) {
        int dot = called.lastIndexOf('.');
        return dot < 0
                ? Optional.empty()
                : Optional.ofNullable(NAMES.get(called.substring(dot).toLowerCase(Locale.ROOT)));
    }

    String id() {
        return id;
    }

    boolean isOf(String browser) {
        return device.equals(browser);
    }

    /** What its sender calls it. */
    String called() {
        return called;
    }

    /** The name that it is read under. */
    String name() {
        return name;
    }

    /** What was answered about it here. */
    Map<String, String> answers() {
        return new TreeMap<>(answers);
    }

    /** Forgets what was answered here. */
    void forget() {
        answers.clear();
    }

    /** Takes an answer to a question, if it is one. */
    void answer(Question question, String answer) {
        if (question.takes(answer)) {
            answers.put(question.id(), answer);
        }
    }

    /** Says what a column is, among what a column of its sheet can be. */
    void takeFor(Result.Looked looked, String heading, String member) {
        for (SheetPreview sheet : looked.sheets()) {
            List<String> members =
                    sheet.understood().about().map(Table::members).orElse(List.of());
            boolean isThere = sheet.understood().columns().stream()
                    .anyMatch(column -> column.heading().equals(heading));
            if (isThere && (member.equals(Question.LEFT_OUT) || members.contains(member))) {
                answers.put(Column.question(heading), member);
            }
        }
    }

    /** Looks at it by what was answered: it is on disk meanwhile, in a folder of its own. */
    Result look(ImportSheets verb) {
        try {
            Path folder = Files.createTempDirectory("bitterend-");
            Path file = folder.resolve(name);
            folder.toFile().deleteOnExit();
            file.toFile().deleteOnExit();
            try {
                Files.write(file, bytes);
                Result result = verb.look(new ImportSheets.Request(file, answers));
                return result instanceof Result.Unreadable unreadable ? named(unreadable, file) : result;
            } finally {
                Files.deleteIfExists(file);
                Files.deleteIfExists(folder);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Where it was meanwhile is nobody's business. */
    private Result named(Result.Unreadable unreadable, Path file) {
        return new Result.Unreadable(unreadable.findings().stream()
                .map(each -> each.file().equals(file.toString())
                        ? new Finding(
                                each.severity(),
                                name,
                                each.place(),
                                each.field(),
                                each.what(),
                                each.wanted(),
                                each.typed())
                        : each)
                .toList());
    }
}
