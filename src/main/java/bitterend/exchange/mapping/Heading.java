package bitterend.exchange.mapping;

import bitterend.finding.Nearest;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A heading taken apart: {@code Länge (m)} is called Länge, and its bare figures are metres; so are those of {@code Metres left}.
 *
 * @param name without its unit, in plain letters
 * @param unit as it is written; empty for none
 */
record Heading(String name, String unit) {
    private static final Pattern BRACKETS = Pattern.compile("(.+?)\\s*[(\\[](.+?)[)\\]]\\s*(.*)");
    private static final Pattern BEHIND = Pattern.compile("(.+?)(?:\\s+in\\s+|,\\s*|\\s+|\\s*/\\s*)(\\S+)");
    private static final int NAMED = 100;
    private static final int NEAR = 80;
    private static final int PARTLY = 60;
    private static final int SHORTEST_NEAR = 5;
    private static final int SHORTEST_PART = 4;

    static Heading of(String cell) {
        String text = cell.replaceAll("\\s+", " ").strip();
        Matcher brackets = BRACKETS.matcher(text);
        if (brackets.matches()) {
            return new Heading(
                    TradeWords.plain(brackets.group(1) + " " + brackets.group(3)),
                    brackets.group(2).strip());
        }
        Matcher behind = BEHIND.matcher(text);
        if (behind.matches()
                && TradeWords.builtIn().meaning("unit", behind.group(2)).isPresent()) {
            return new Heading(TradeWords.plain(behind.group(1)), behind.group(2));
        }
        for (String word : text.split(" ")) {
            if (word.length() >= SHORTEST_PART
                    && TradeWords.builtIn().meaning("unit", word).isPresent()) {
                return new Heading(TradeWords.plain(text), word);
            }
        }
        String diameter = text.equals("\u00d8") || text.equals("\u2300") ? "o" : TradeWords.plain(text);
        return new Heading(diameter, "");
    }

    /** How well this names a member: 100 for its name or another word for it, less for what is near or a part. */
    int fits(TradeWords.Heading member) {
        List<String> words = member.words();
        if (words.contains(name)) {
            return NAMED;
        }
        Optional<String> near = name.length() < SHORTEST_NEAR ? Optional.empty() : Nearest.of(name, words);
        if (near.isPresent() && near.get().length() >= SHORTEST_NEAR) {
            return NEAR;
        }
        String whole = " " + name + " ";
        return words.stream()
                .filter(word -> word.length() >= SHORTEST_PART && whole.contains(" " + word + " "))
                .mapToInt(word -> PARTLY + Math.min(19, word.length()))
                .max()
                .orElse(0);
    }

    static Column.How how(int fit) {
        return fit >= NAMED ? Column.How.NAMED : fit >= NEAR ? Column.How.NEAR : Column.How.PARTLY;
    }

    /** The length that bare figures have as their unit, as files write it. */
    Optional<String> lengthUnit() {
        return unit.equals("\"") ? Optional.of("in") : TradeWords.builtIn().meaning("unit", unit);
    }
}
