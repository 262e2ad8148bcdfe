package bitterend.exchange.mapping;

import bitterend.exchange.form.OwnSheet;
import bitterend.finding.Finding;
import bitterend.finding.Nearest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Reads a sheet by what was answered about its headings; what it leaves open is asked, each thing once. */
public final class SheetReading {
    private final OwnSheet sheet;
    private final Known known;
    private final Answers answers;

    private SheetReading(OwnSheet sheet, Known known, Answers answers) {
        this.sheet = sheet;
        this.known = known;
        this.answers = answers;
    }

    /** The headings of a sheet, by which its answers are kept; none where no row names columns. */
    public static List<String> headings(OwnSheet sheet) {
        return HeadingRow.of(sheet).map(head -> Columns.headings(sheet, head)).orElse(List.of());
    }

    /** The file of a shop that a sheet goes into, as answered or by its headings; nothing where that is to be asked. */
    public static Optional<Table> table(OwnSheet sheet, Map<String, String> given) {
        return Optional.ofNullable(given.get("table")).flatMap(Table::of).or(() -> HeadingRow.table(headings(sheet)));
    }

    /**
     * Reads a sheet.
     *
     * @param kept answers of last time, by id of the question
     * @param given answers, by id of the question, or by the heading that they are about
     */
    public static Understood read(OwnSheet sheet, Known known, Map<String, String> kept, Map<String, String> given) {
        Map<String, String> byId = new TreeMap<>();
        List<String> headings = headings(sheet);
        given.forEach((id, answer) -> byId.put(headings.contains(id) ? Column.question(id) : id, answer));
        return new SheetReading(sheet, known, new Answers(kept, byId)).read();
    }

    private Understood read() {
        Optional<Integer> head = HeadingRow.of(sheet);
        if (head.isEmpty()) {
            return nothing(
                    List.of(),
                    Finding.error(
                            sheet.file(),
                            sheet.name(),
                            "",
                            "",
                            "a row of headings, such as order, rope, length; none of the first twenty has two that are known"));
        }
        List<String> headings = Columns.headings(sheet, head.get());
        Optional<Table> own = OwnForm.of(headings, known.headers());
        if (own.isPresent()) {
            return OwnForm.read(sheet, head.get(), headings, own.get());
        }
        Optional<Table> table = answers.find("table")
                .flatMap(Table::of)
                .or(() -> HeadingRow.table(headings))
                .or(() -> answers.ask(new Question(
                                "table",
                                "What is in this sheet?",
                                Arrays.stream(Table.values()).map(Table::word).toList(),
                                false))
                        .flatMap(Table::of));
        return table.map(about -> read(head.get(), headings, about)).orElseGet(() -> nothing(headings, null));
    }

    private Understood nothing(List<String> headings, @Nullable Finding why) {
        return new Understood(
                sheet.file(),
                sheet.name(),
                Optional.empty(),
                "",
                headings,
                List.of(),
                answers.asked(),
                List.of(),
                List.of(),
                List.of(),
                why == null ? List.of() : List.of(why),
                answers.used(),
                List.of());
    }

    private Understood read(int head, List<String> headings, Table table) {
        RopeMatch ropes = new RopeMatch(known.catalogue().ropes(), answers);
        List<Column> columns = new Columns(sheet, head, table, answers, ropes).decided();
        SheetForm forms = new SheetForm(known.form(), answers);
        SheetForm.Form form =
                forms.of(texts(head, columns, CellWords::isDay), texts(head, columns, CellWords::hasFigures));
        new Proportion(sheet, head, known.lengths(table), answers).check(columns, form);
        List<Finding> wrong = unknownAnswers(columns, table);
        Rows rows = new Rows(sheet, head, table, columns, known, answers, ropes);
        rows.read(form);
        wrong.addAll(rows.wrong());
        wrong.addAll(sheet.toldFrom(head));
        Map<String, String> settled = answers.used();
        settled.putAll(forms.settled());
        settled.put("table", table.word());
        columns.forEach(column -> settled.put(
                Column.question(column.heading()), column.isLeftOut() ? Question.LEFT_OUT : column.member()));
        return new Understood(
                sheet.file(),
                sheet.name(),
                Optional.of(table),
                sheet.place(head),
                headings,
                columns.stream()
                        .map(column -> column.with(rows.samples(column.at())))
                        .toList(),
                answers.asked(),
                rows.rows(),
                rows.passed(),
                rows.waiting(),
                wrong,
                settled,
                KeptWords.of(ofLastTime(forms.settled())));
    }

    /** Answers of last time that say something of this sheet: days and signs where it has some that could be two. */
    private Map<String, String> ofLastTime(Map<String, String> form) {
        Map<String, String> kept = answers.usedOfLastTime();
        kept.keySet()
                .removeIf(id -> (id.equals(SheetForm.DAYS) || id.equals(SheetForm.DECIMAL)) && !form.containsKey(id));
        return kept;
    }

    /** An answer that names nothing a column can be. */
    private List<Finding> unknownAnswers(List<Column> columns, Table table) {
        List<Finding> wrong = new ArrayList<>();
        for (Column column : columns) {
            answers.find(Column.question(column.heading()))
                    .filter(answer -> !answer.equals(Question.LEFT_OUT)
                            && !table.members().contains(answer))
                    .ifPresent(answer -> wrong.add(Finding.error(
                            sheet.file(),
                            "",
                            column.heading(),
                            answer,
                            "one of: " + String.join(", ", table.members()) + ", " + Question.LEFT_OUT
                                    + Nearest.hint(answer, table.members()))));
        }
        return wrong;
    }

    private List<String> texts(int head, List<Column> columns, Predicate<String> member) {
        Function<Column, List<String>> below = column -> sheet.typedBelow(head, column.at());
        return columns.stream()
                .filter(column -> !column.isLeftOut() && member.test(column.member()))
                .map(below)
                .flatMap(List::stream)
                .toList();
    }
}
