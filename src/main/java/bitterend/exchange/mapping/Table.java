package bitterend.exchange.mapping;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The files of a shop that a sheet can be brought into. */
public enum Table {
    ORDERS("orders", "order rope length"),
    REELS("reels", "reel rope length"),
    ROPES("ropes", "name price usualReel");

    /** What together says which rope it is, where no column does alone. */
    static final Set<String> PARTS_OF_ROPE = Set.of("construction", "fibre", "diameter", "colour");

    private final String word;
    private final String required;

    Table(String word, String required) {
        this.word = word;
        this.required = required;
    }

    /** As an answer says it. */
    public String word() {
        return word;
    }

    /** What every row must say. */
    List<String> required() {
        return List.of(required.split(" "));
    }

    /** Everything that a column of a sheet can be there. */
    public List<String> members() {
        return TradeWords.builtIn().headings().stream()
                .filter(heading -> heading.tables().contains(word))
                .map(TradeWords.Heading::member)
                .toList();
    }

    /** Whether a member says which rope it is, alone or with others. */
    static boolean isOfRope(String member) {
        return member.equals("rope") || member.equals("name") || PARTS_OF_ROPE.contains(member);
    }

    static Optional<Table> of(String word) {
        return Arrays.stream(values())
                .filter(table -> table.word.equals(word.strip()))
                .findFirst();
    }
}
