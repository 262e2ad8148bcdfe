package bitterend.front;

import bitterend.exchange.mapping.Change;
import bitterend.exchange.mapping.Column;
import bitterend.exchange.mapping.Question;
import bitterend.exchange.mapping.SheetPreview;
import bitterend.exchange.mapping.Table;
import bitterend.finding.CommandWord;
import bitterend.finding.Finding;
import bitterend.report.FindingsPage;
import bitterend.report.page.Block.Line.Weight;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The page of an import: what was understood of each sheet, what is asked, and what becomes of its rows. */
public final class ImportPage {
    private static final int MOST_ROWS = 12;

    private ImportPage() {}

    /** The page of sheets that were looked at, in the order in which they are taken over. */
    public static Document of(List<SheetPreview> sheets, List<String> skipped) {
        return of(sheets, skipped, true);
    }

    /** The same where what is open is asked beside the page. */
    public static Document withoutQuestions(List<SheetPreview> sheets, List<String> skipped) {
        return of(sheets, skipped, false);
    }

    private static Document of(List<SheetPreview> sheets, List<String> skipped, boolean asks) {
        Document page = Document.EMPTY;
        for (SheetPreview sheet : sheets) {
            Document next = sheet(sheet, asks);
            page = page.blocks().isEmpty() ? next : page.then(next);
        }
        if (!skipped.isEmpty()) {
            Writing more = new Writing();
            more.paragraph("Not looked at, since no row of theirs has headings that are known: "
                    + String.join(", ", skipped) + ".");
            page = page.then(more.document());
        }
        return page;
    }

    private static Document sheet(SheetPreview sheet, boolean asks) {
        Writing page = new Writing();
        String from = sheet.understood().sheet().isEmpty()
                ? sheet.understood().file()
                : sheet.understood().file() + ", sheet " + sheet.understood().sheet();
        page.heading(from + (sheet.into().isEmpty() ? "" : " goes into " + sheet.into()));
        if (!sheet.understood().head().isEmpty()) {
            page.paragraph("Headings in " + sheet.understood().head() + "; "
                    + (sheet.known()
                            ? "a sheet with these headings was imported before."
                            : "they are new to the shop."));
        }
        if (!sheet.understood().kept().isEmpty()) {
            page.paragraph(asLastTime(sheet.understood().kept()));
        }
        columns(page, sheet.understood().columns());
        if (asks) {
            questions(page, sheet.understood().questions());
        }
        rows(page, sheet);
        return page.document().with(FindingsPage.of(sheet.findings()));
    }

    private static String asLastTime(List<String> kept) {
        return "As last time: " + String.join("; ", kept) + ".";
    }

    /** What was answered last time and holds for these sheets; empty for nothing. */
    public static String lastTime(List<SheetPreview> sheets) {
        List<String> kept = sheets.stream()
                .flatMap(sheet -> sheet.understood().kept().stream())
                .distinct()
                .toList();
        return kept.isEmpty() ? "" : asLastTime(kept);
    }

    private static void columns(Writing page, List<Column> columns) {
        TableRows table = new TableRows(
                bitterend.report.page.Column.words("column"),
                bitterend.report.page.Column.words("is"),
                bitterend.report.page.Column.words("known"),
                bitterend.report.page.Column.words("such as"));
        columns.stream()
                .filter(column -> !column.isLeftOut())
                .forEach(column -> table.row(
                        column.heading(), column.member(), column.how().words(), samples(column)));
        if (!table.table().rows().isEmpty()) {
            page.tableApart(table);
        }
        String left =
                columns.stream().filter(Column::isLeftOut).map(Column::heading).collect(Collectors.joining(", "));
        if (!left.isEmpty()) {
            page.paragraph("Left out, as nothing in the shop is known by these names: " + left + ".");
        }
    }

    private static String samples(Column column) {
        return column.samples().stream()
                .map(sample -> sample.before().equals(sample.after())
                        ? sample.before()
                        : sample.before() + " -> " + sample.after())
                .collect(Collectors.joining("\n"));
    }

    private static void questions(Writing page, List<Question> questions) {
        if (questions.isEmpty()) {
            return;
        }
        page.heading(questions.size() == 1 ? "One question" : questions.size() + " questions");
        for (Question question : questions) {
            page.paragraph(question.words());
            for (String choice : question.choices()) {
                page.line(Weight.PLAIN, "  " + typed(question, choice));
            }
            if (question.open()) {
                page.paragraph(1, "Another answer will do as well.");
            }
        }
        page.gap();
    }

    /** An answer as it is typed behind the command. */
    private static String typed(Question question, String choice) {
        String word = question.id() + "=" + choice;
        return "--answer " + CommandWord.of(word);
    }

    private static void rows(Writing page, SheetPreview sheet) {
        long wrong = sheet.findings().stream()
                .filter(Finding::isError)
                .map(Finding::place)
                .distinct()
                .count();
        page.paragraph("Rows: " + sheet.count(Change.Kind.NEW) + " new, " + sheet.count(Change.Kind.CHANGED)
                + " changed, " + sheet.count(Change.Kind.SAME) + " as they are, " + wrong + " with a mistake"
                + (sheet.understood().waiting().isEmpty()
                        ? ""
                        : ", " + sheet.understood().waiting().size() + " that wait for an answer")
                + (sheet.understood().passed().isEmpty()
                        ? "."
                        : ", " + sheet.understood().passed().size() + " passed over: "
                                + places(sheet.understood().passed()) + "."));
        sheet.changes().stream()
                .filter(change -> change.kind() == Change.Kind.GONE)
                .forEach(gone -> page.paragraph(
                        "The example " + gone.name() + " that the shop began with goes from " + sheet.into() + "."));
        table(page, sheet, Change.Kind.CHANGED);
        table(page, sheet, Change.Kind.NEW);
    }

    private static String places(List<String> places) {
        String first = places.stream().limit(MOST_ROWS).collect(Collectors.joining(", "));
        return places.size() > MOST_ROWS ? first + " ..." : first;
    }

    private static void table(Writing page, SheetPreview sheet, Change.Kind kind) {
        List<Change> changes =
                sheet.changes().stream().filter(change -> change.kind() == kind).toList();
        if (changes.isEmpty()) {
            return;
        }
        TableRows table = new TableRows(
                bitterend.report.page.Column.words("from"),
                bitterend.report.page.Column.words(kind.word()),
                bitterend.report.page.Column.words(kind == Change.Kind.NEW ? "as it will be" : "before -> after"));
        List<String> order = sheet.understood().about().map(Table::members).orElse(List.of());
        changes.stream()
                .limit(MOST_ROWS)
                .forEach(change -> table.row(change.place(), change.name(), cells(change, order)));
        page.tableApart(table);
        if (changes.size() > MOST_ROWS) {
            page.paragraph("and " + (changes.size() - MOST_ROWS) + " more " + kind.word() + ".");
        }
    }

    /** What it says, in the order of the file; a new row says its own name once. */
    private static String cells(Change change, List<String> order) {
        Set<String> name = Set.of("order", "line", "reel", "id");
        return change.cells().stream()
                .filter(cell -> !name.contains(cell.member()))
                .sorted(Comparator.comparing(cell -> order.indexOf(cell.member())))
                .map(cell -> change.kind() == Change.Kind.NEW
                        ? cell.member() + " " + cell.after()
                        : cell.member() + ": " + (cell.before().isEmpty() ? "nothing" : cell.before()) + " -> "
                                + cell.after())
                .collect(Collectors.joining(change.kind() == Change.Kind.NEW ? "; " : "\n"));
    }
}
