package bitterend.exchange.mapping;

import bitterend.finding.Finding;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A sheet as far as it is understood.
 *
 * @param file the file it is from
 * @param sheet its name inside the file; empty where the file is one sheet
 * @param about the file of the shop that it goes into; empty where that is not known
 * @param head where its headings are, such as {@code row 3}
 * @param headings its headings, each once
 * @param columns what each is taken for
 * @param questions what is open
 * @param rows its rows in the words of the file
 * @param passed places of rows that say nothing of their own, such as sums, and of those that were left out
 * @param waiting places of rows that wait for an answer
 * @param wrong what cannot be read
 * @param settled what is known of such sheets now, by id of the question
 * @param kept what holds for it since it was answered last time, in words
 */
public record Understood(
        String file,
        String sheet,
        Optional<Table> about,
        String head,
        List<String> headings,
        List<Column> columns,
        List<Question> questions,
        List<Row> rows,
        List<String> passed,
        List<String> waiting,
        List<Finding> wrong,
        Map<String, String> settled,
        List<String> kept) {
    public Understood {
        headings = List.copyOf(headings);
        columns = List.copyOf(columns);
        questions = List.copyOf(questions);
        rows = List.copyOf(rows);
        passed = List.copyOf(passed);
        waiting = List.copyOf(waiting);
        wrong = List.copyOf(wrong);
        settled = new TreeMap<>(settled);
        kept = List.copyOf(kept);
    }

    /**
     * One row.
     *
     * @param place where it is in the sheet
     * @param members what it says, by the words of the file
     */
    public record Row(String place, Map<String, String> members) {
        public Row {
            members = new TreeMap<>(members);
        }

        /** What it says of a member; empty where it says nothing. */
        public String text(String member) {
            return Optional.ofNullable(members.get(member)).orElse("");
        }
    }
}
