package bitterend.exchange.mapping;

import bitterend.exchange.form.OwnSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Decides what each column of a sheet is: as answered, by its name, else by what its values look like. */
final class Columns {
    private final OwnSheet sheet;
    private final int head;
    private final Table table;
    private final Answers answers;
    private final RopeMatch ropes;
    private final Map<Integer, Column> columns = new LinkedHashMap<>();
    private final Set<String> taken = new HashSet<>();
    private final Map<Integer, Integer> fits = new HashMap<>();

    Columns(OwnSheet sheet, int head, Table table, Answers answers, RopeMatch ropes) {
        this.sheet = sheet;
        this.head = head;
        this.table = table;
        this.answers = answers;
        this.ropes = ropes;
    }

    /** One of them could be a member, so well. */
    private record Fit(int column, String member, int fit) {}

    /** The headings of a row, each once: a second one of a name has its number behind it. */
    static List<String> headings(OwnSheet sheet, int head) {
        List<String> names = new ArrayList<>();
        Map<String, Integer> met = new HashMap<>();
        for (int column = 0; column < sheet.rows().get(head).size(); column++) {
            String name = sheet.cell(head, column).replaceAll("\\s+", " ");
            int time = met.merge(name, 1, Integer::sum);
            names.add(name.isEmpty() || time == 1 ? name : name + " " + time);
        }
        return names;
    }

    List<Column> decided() {
        List<String> headings = headings(sheet, head);
        for (int at = 0; at < headings.size(); at++) {
            if (!headings.get(at).isEmpty()) {
                Heading heading = Heading.of(sheet.cell(head, at));
                columns.put(at, new Column(at, headings.get(at), heading.unit(), "", Column.How.NOT, List.of()));
            }
        }
        answered();
        named();
        typesThatAreRopes();
        byValues();
        wanted();
        return new ArrayList<>(columns.values());
    }

    private boolean isOpen(int at) {
        Column column = columns.get(at);
        return column != null && column.isLeftOut() && column.how() == Column.How.NOT;
    }

    private void take(int at, String member, Column.How how) {
        columns.computeIfPresent(at, (any, column) -> column.as(member, how));
        taken.add(member);
    }

    private void answered() {
        for (Column column : List.copyOf(columns.values())) {
            Optional<String> answer = answers.find(Column.question(column.heading()));
            if (answer.isPresent() && answer.get().equals(Question.LEFT_OUT)) {
                columns.put(column.at(), column.as("", Column.How.ANSWERED));
            } else if (answer.isPresent() && table.members().contains(answer.get())) {
                take(column.at(), answer.get(), Column.How.ANSWERED);
            }
        }
    }

    private void named() {
        List<Fit> all = new ArrayList<>();
        for (Column column : columns.values()) {
            Heading heading = Heading.of(sheet.cell(head, column.at()));
            for (TradeWords.Heading member : TradeWords.builtIn().headings()) {
                int fit = member.tables().contains(table.word()) ? heading.fits(member) : 0;
                if (fit > 0) {
                    all.add(new Fit(column.at(), member.member(), fit));
                }
            }
        }
        all.sort(Comparator.comparing(Fit::fit)
                .reversed()
                .thenComparing(each -> table.required().contains(each.member()) ? 0 : 1)
                .thenComparing(Fit::column));
        for (Fit each : all) {
            if (isOpen(each.column()) && !taken.contains(each.member())) {
                take(each.column(), each.member(), Heading.how(each.fit()));
                fits.put(each.column(), each.fit());
            }
        }
        all.forEach(this::askWhereTwoFit);
    }

    /** Two headings that name one thing that every row must say, equally well. */
    private void askWhereTwoFit(Fit other) {
        if (!isOpen(other.column()) || !table.required().contains(other.member())) {
            return;
        }
        for (Column column : List.copyOf(columns.values())) {
            boolean rival = column.member().equals(other.member())
                    && column.how() != Column.How.ANSWERED
                    && fits.getOrDefault(column.at(), 0) == other.fit();
            if (rival) {
                which(other.member(), List.of(column.heading(), heading(other.column())))
                        .filter(chosen -> !chosen.equals(column.heading()))
                        .ifPresent(chosen -> {
                            columns.put(column.at(), column.as("", Column.How.NOT));
                            take(other.column(), other.member(), Column.How.ANSWERED);
                        });
            }
        }
    }

    private String heading(int at) {
        return Optional.ofNullable(columns.get(at)).map(Column::heading).orElse("");
    }

    private Optional<String> which(String member, List<String> headings) {
        return answers.ask(
                new Question("column for " + member, "Which column says the " + member + "?", headings, false));
    }

    /** What is called type or product and holds whole ropes, where no column is called rope. */
    private void typesThatAreRopes() {
        if (table == Table.ROPES || taken.contains("rope")) {
            return;
        }
        List<Column> types = columns.values().stream()
                .filter(column -> List.of("construction", "product").contains(column.member()))
                .filter(column -> column.how() != Column.How.ANSWERED)
                .filter(column -> !sheet.below(head, column.at()).isEmpty()
                        && sheet.below(head, column.at()).stream().allMatch(ropes::isSure))
                .toList();
        if (types.size() == 1) {
            taken.remove(types.get(0).member());
            take(types.get(0).at(), "rope", Column.How.VALUES);
        }
    }

    /** A column all of whose values are ropes of the shop, or the only one of days. */
    private void byValues() {
        for (Column column : List.copyOf(columns.values())) {
            List<String> below = sheet.below(head, column.at());
            if (!isOpen(column.at()) || below.isEmpty()) {
                continue;
            }
            boolean named = table != Table.ROPES && !taken.contains("rope");
            if (named && below.stream().allMatch(ropes::isExact)) {
                take(column.at(), "rope", Column.How.VALUES);
            } else if (table == Table.ORDERS
                    && !taken.contains("due")
                    && below.stream().allMatch(SheetForm::isDay)) {
                take(column.at(), "due", Column.How.VALUES);
            }
        }
    }

    /** What every row must say and no column does: one of those that are left over, or an answer for all rows. */
    private void wanted() {
        for (String member : table.required()) {
            boolean inParts = (member.equals("rope") || member.equals("name"))
                    && taken.contains("diameter")
                    && (taken.contains("construction") || taken.contains("fibre"));
            if (taken.contains(member)
                    || inParts
                    || answers.find(forAll(member)).isPresent()) {
                continue;
            }
            List<String> left = columns.values().stream()
                    .filter(column -> isOpen(column.at()))
                    .filter(column -> !sheet.below(head, column.at()).isEmpty())
                    .map(Column::heading)
                    .toList();
            if (member.equals("usualReel") || member.equals("price")) {
                continue;
            }
            which(member, left).ifPresent(chosen -> columns.values().stream()
                    .filter(column -> column.heading().equals(chosen))
                    .findFirst()
                    .ifPresent(column -> take(column.at(), member, Column.How.ANSWERED)));
        }
    }

    /** The id of the question what all rows say, where the sheet does not. */
    static String forAll(String member) {
        return member + " of all rows";
    }
}
