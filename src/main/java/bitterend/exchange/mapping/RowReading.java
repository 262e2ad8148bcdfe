package bitterend.exchange.mapping;

import bitterend.catalogue.Rope;
import bitterend.exchange.form.OwnSheet;
import bitterend.finding.Finding;
import bitterend.finding.Formula;
import bitterend.measure.DiameterText;
import bitterend.measure.Parsed;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** One row while it is read. */
final class RowReading {
    /** The id of the question what rows without an order number are. */
    static final String BLANK_ORDER = "blank order";
    /** What a sheet says in words of its own. */
    private static final Set<String> WORDS = Set.of("customer", "note");

    private static final String AS_ABOVE = "as above";

    private final Rows all;
    private final OwnSheet sheet;
    private final Table table;
    private final List<Column> columns;
    private final Known known;
    private final Answers answers;
    private final RopeMatch ropes;
    private final int row;
    private final CellWords cells;
    private final SheetForm.Form form;
    private final Map<String, String> members = new TreeMap<>();
    private boolean waits;
    private boolean sound = true;

    RowReading(Rows all, int row, CellWords cells, SheetForm.Form form) {
        this.all = all;
        this.sheet = all.sheet;
        this.table = all.table;
        this.columns = all.columns;
        this.known = all.known;
        this.answers = all.answers;
        this.ropes = all.ropes;
        this.row = row;
        this.cells = cells;
        this.form = form;
    }

    void read() {
        if (Sums.isSum(sheet, row, columns)) {
            all.passed.add(sheet.place(row));
            return;
        }
        for (Column column : columns) {
            plain(column);
        }
        boolean staying = table != Table.ORDERS || numbered();
        boolean named = table == Table.ROPES ? rope() : meet();
        if (!staying || !named) {
            all.passed.add(sheet.place(row));
            return;
        }
        if (!waits) {
            required();
        }
        if (waits) {
            all.waiting.add(sheet.place(row));
        } else if (sound) {
            all.rows.add(new Understood.Row(sheet.place(row), members));
        }
    }

    private void plain(Column column) {
        String text = sheet.cell(row, column.at());
        String member = column.member();
        if (text.isEmpty() || member.startsWith("end") || (Table.isOfRope(member) && !member.equals("diameter"))) {
            return;
        }
        if (member.equals("diameter") && table != Table.ROPES) {
            return;
        }
        String wanted = sheet.wanted(row, column.at());
        Optional<Parsed<String>> read = wanted.isEmpty()
                ? cells.of(column, text, sheet.isExact(row, column.at()))
                : Optional.of(Parsed.refused(wanted));
        if (read.isEmpty()) {
            waits = true;
            return;
        }
        read.get()
                .value()
                .ifPresentOrElse(
                        value -> put(column, text, value),
                        () -> tell(column.heading(), text, read.get().refusal().orElse("")));
    }

    private void put(Column column, String before, String after) {
        members.put(column.member(), after);
        all.samples.add(column, before, after);
        if (WORDS.contains(column.member()) && Formula.isRun(after)) {
            all.wrong.add(Finding.warning(
                    sheet.file(),
                    sheet.place(row),
                    column.heading(),
                    after,
                    "words that no spreadsheet would run as a formula; they are taken as they are"));
        }
    }

    private void tell(String heading, String found, String expected) {
        sound = false;
        all.wrong.add(Finding.error(sheet.file(), sheet.place(row), heading, found, expected));
    }

    /** Gives a row its order, as above where that was answered, and its line; false where it is left out. */
    private boolean numbered() {
        if (!members.containsKey("order") && !all.cell(row, "order").isEmpty()) {
            // what is below a number that cannot be read is of no order that is known
            all.orderAbove = "";
            return true;
        }
        if (members.getOrDefault("order", "").isEmpty()
                && !all.cell(row, "length").isEmpty()
                && !all.orderAbove.isEmpty()) {
            Optional<String> answer = answers.ask(new Question(
                    BLANK_ORDER,
                    "Rows without an order number: are they of the order above?",
                    List.of(AS_ABOVE, Question.LEFT_OUT),
                    false));
            waits |= answer.isEmpty();
            if (answer.filter(Question.LEFT_OUT::equals).isPresent()) {
                return false;
            }
            answer.ifPresent(any -> members.put("order", all.orderAbove));
        }
        all.orderAbove = members.getOrDefault("order", all.orderAbove);
        if (!members.containsKey("line") && all.cell(row, "line").isEmpty()) {
            int line = all.lines.merge(all.orderAbove, 1, Integer::sum);
            members.put("line", String.valueOf(line));
        }
        return true;
    }

    /** Finds the rope of a row, and its ends on that rope; false where it is left out. */
    private boolean meet() {
        String text = ropeText();
        if (text.isEmpty()) {
            return true;
        }
        Optional<String> id = ropes.of(text);
        if (id.filter(Question.LEFT_OUT::equals).isPresent()) {
            return false;
        }
        waits |= id.isEmpty();
        id.flatMap(ropes::find).ifPresent(rope -> {
            members.put("rope", rope.id());
            sizes(rope);
            columns.stream()
                    .filter(column -> Table.isOfRope(column.member()))
                    .filter(column -> !sheet.cell(row, column.at()).isEmpty())
                    .forEach(column -> all.samples.add(column, sheet.cell(row, column.at()), rope.id()));
            ends(rope);
        });
        return true;
    }

    /** A diameter in a column of its own that is not the one of the rope. */
    private void sizes(Rope rope) {
        for (Column column : columns) {
            String text = sheet.cell(row, column.at());
            boolean own = column.member().equals("diameter") && !text.isEmpty();
            if (own && ropes.isExact(all.cell(row, "rope")) && cells.isOther(column, text, rope.diameter())) {
                tell(
                        column.heading(),
                        text,
                        DiameterText.print(rope.diameter(), known.units()) + ", the diameter of " + rope.id());
            }
        }
    }

    private String ropeText() {
        String named = all.cell(row, table == Table.ROPES ? "name" : "rope");
        if (table != Table.ROPES && ropes.isExact(named)) {
            return named;
        }
        StringBuilder text = new StringBuilder(named);
        for (Column column : columns) {
            String part = sheet.cell(row, column.at());
            if (Table.PARTS_OF_ROPE.contains(column.member()) && !part.isEmpty()) {
                text.append(text.isEmpty() ? "" : " ").append(withUnit(column, part));
            }
        }
        return text.toString();
    }

    /** The diameter with the unit of its heading; without one it is asked. */
    private String withUnit(Column column, String part) {
        if (!column.member().equals("diameter")) {
            return part;
        }
        Optional<Parsed<String>> read = cells.of(column, part, sheet.isExact(row, column.at()));
        waits |= read.isEmpty();
        return read.flatMap(Parsed::value).orElse(part);
    }

    private void ends(Rope rope) {
        EndMatch match = new EndMatch(known.catalogue().splices(), known.units(), answers);
        for (Column column : columns) {
            String text = sheet.cell(row, column.at());
            if (!column.member().startsWith("end") || text.isEmpty()) {
                continue;
            }
            Parsed<String> figures = form.local().figures(text);
            if (!form.figures() && text.matches(".*[0-9][.,][0-9].*")) {
                waits = true;
            } else if (figures.value().isEmpty()) {
                tell(column.heading(), text, figures.refusal().orElse(""));
            } else if (column.member().equals("ends")) {
                Optional<EndMatch.Both> both = match.both(figures.value().get(), rope);
                waits |= both.isEmpty();
                both.ifPresent(ends -> {
                    members.put("end a", ends.a());
                    members.put("end b", ends.b());
                    all.samples.add(column, text, ends.a() + " / " + ends.b());
                });
            } else {
                Optional<String> end = match.of(figures.value().get(), rope);
                waits |= end.isEmpty();
                end.ifPresent(known -> put(column, text, known));
            }
        }
    }

    /** A rope of the catalogue from what a row says of it. */
    private boolean rope() {
        String text = ropeText();
        if (text.isEmpty()) {
            return true;
        }
        new CatalogueRow(known, answers).fill(text, all.cell(row, "name"), all.cell(row, "colour"), members);
        for (Column column : columns) {
            String before = sheet.cell(row, column.at());
            String after = members.getOrDefault(column.member(), "");
            if (!before.isEmpty() && Table.isOfRope(column.member()) && !after.isEmpty()) {
                all.samples.add(column, before, after);
            }
        }
        for (String member : List.of("construction", "fibre", "diameter")) {
            waits |= members.getOrDefault(member, "").equals(CatalogueRow.WAITS);
        }
        return true;
    }

    private void required() {
        for (String member : table.required()) {
            if (members.getOrDefault(member, "").isEmpty()) {
                allRows(member);
            }
        }
    }

    private void allRows(String member) {
        if (member.equals("usualReel") || member.equals("price")) {
            Optional<String> answer =
                    answers.ask(CatalogueRow.forAllRows(member, known.money().currency()));
            waits |= answer.isEmpty();
            answer.ifPresent(given -> {
                members.put(member, given);
                CatalogueRow.refusal(member, given, known.money())
                        .ifPresent(expected -> tell(Columns.forAll(member), given, expected));
            });
        } else if (sound) {
            String heading = Column.heading(columns, member);
            tell(heading, "", "the " + member + " of this row");
        }
    }
}
