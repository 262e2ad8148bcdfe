package bitterend.exchange;

import bitterend.exchange.form.JsonTree;
import bitterend.exchange.mapping.Change;
import bitterend.exchange.mapping.Column;
import bitterend.exchange.mapping.Question;
import bitterend.exchange.mapping.SheetPreview;
import java.util.List;

/** What an import answers under {@code --json}. */
public final class ImportJson {
    private static final String FORMAT = "bitterend/import/1";

    private ImportJson() {}

    /**
     * What was understood, what is asked, and what becomes of each row.
     *
     * @param written names of the files that were written; none where it was looked at alone
     */
    public static String text(List<SheetPreview> sheets, List<String> skipped, List<String> written) {
        return new JsonTree()
                .with("format", FORMAT)
                .with("sheets", sheets.stream().map(ImportJson::sheet).toList())
                .with("skipped", (Object) skipped)
                .with("written", (Object) written)
                .text();
    }

    private static JsonTree sheet(SheetPreview preview) {
        JsonTree tree = new JsonTree()
                .with("file", preview.understood().file())
                .with("sheet", preview.understood().sheet())
                .with("into", preview.into())
                .with("headings", preview.understood().head())
                .with("known", preview.known())
                .with("kept", (Object) preview.understood().kept())
                .with(
                        "columns",
                        preview.understood().columns().stream()
                                .map(ImportJson::column)
                                .toList())
                .with(
                        "questions",
                        preview.understood().questions().stream()
                                .map(ImportJson::question)
                                .toList())
                .with(
                        "changes",
                        preview.changes().stream().map(ImportJson::change).toList())
                .with("waiting", (Object) preview.understood().waiting())
                .with("passed", (Object) preview.understood().passed());
        AnswerJson.with(tree, "findings", preview.findings());
        return tree;
    }

    private static JsonTree column(Column column) {
        return new JsonTree()
                .with("heading", column.heading())
                .with("member", column.member())
                .with("how", column.how().words())
                .with(
                        "samples",
                        column.samples().stream()
                                .map(sample -> new JsonTree()
                                        .with("before", sample.before())
                                        .with("after", sample.after()))
                                .toList());
    }

    private static JsonTree question(Question question) {
        return new JsonTree()
                .with("id", question.id())
                .with("question", question.words())
                .with("choices", (Object) question.choices())
                .with("open", question.open());
    }

    private static JsonTree change(Change change) {
        return new JsonTree()
                .with("place", change.place())
                .with("name", change.name())
                .with("is", change.kind().word())
                .with(
                        "cells",
                        change.cells().stream()
                                .map(cell -> new JsonTree()
                                        .with("member", cell.member())
                                        .with("before", cell.before())
                                        .with("after", cell.after()))
                                .toList());
    }
}
