package bitterend.exchange.mapping;

import java.util.List;

/**
 * One column of a sheet and what it is taken for.
 *
 * @param at which, from 0
 * @param heading as it is in the sheet; a second one of a name has its number behind it
 * @param unit of its bare figures, as its heading says; empty for none
 * @param member what it is in the file of the shop; empty where it is left out
 * @param how it was known
 * @param samples the first three of its values, before and after
 */
public record Column(int at, String heading, String unit, String member, How how, List<Sample> samples) {
    public Column {
        samples = List.copyOf(samples);
    }

    /** How a column was known. */
    public enum How {
        NAMED("by its name"),
        PARTLY("by a word in its name"),
        NEAR("by a name near it"),
        VALUES("by its values"),
        ANSWERED("as answered"),
        NOT("");

        private final String words;

        How(String words) {
            this.words = words;
        }

        /** For people. */
        public String words() {
            return words;
        }
    }

    /** A value as it is in the sheet, and in the file of the shop. */
    public record Sample(String before, String after) {}

    /** Whether it is left out. */
    public boolean isLeftOut() {
        return member.isEmpty();
    }

    Column as(String other, How known) {
        return new Column(at, heading, unit, other, known, samples);
    }

    Column with(List<Sample> shown) {
        return new Column(at, heading, unit, member, how, shown);
    }

    /** The heading of a member; the member itself where no column is it. */
    static String heading(List<Column> columns, String member) {
        return columns.stream()
                .filter(column -> column.member().equals(member))
                .map(Column::heading)
                .findFirst()
                .orElse(member);
    }

    /** The id of the question what it is. */
    public static String question(String heading) {
        return "column " + heading;
    }
}
