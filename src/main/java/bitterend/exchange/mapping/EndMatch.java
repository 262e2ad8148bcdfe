package bitterend.exchange.mapping;

import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Thimble;
import bitterend.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Meets an end in somebody's words with the ends that a shop makes: {@code soft eye 30 cm}, {@code thimble}, {@code whipped}. */
final class EndMatch {
    private static final Pattern SIZE = Pattern.compile(
            "(?<![\\p{L}0-9])([0-9]+(?:\\.[0-9]+)?|[0-9]+ [0-9]+/[0-9]+|[0-9]+/[0-9]+) ?(mm|cm|m|in|inch(?:es)?|ft|\")(?![\\p{L}])");
    private static final Pattern PARTS = Pattern.compile("\\s*(?:[/;+&]|,(?!\\d)|\\s(?:and|und|et|y|en|og)\\s)\\s*");
    private static final String EYE = "eye";
    private static final String THIMBLE = "thimble";
    private static final Set<String> BARE = Set.of("whipped", "sealed", "plain", "back-splice");
    private static final String BOTH = "both ends";
    private static final String ONE = "end a alone";

    private final SpliceBook book;
    private final Units units;
    private final Answers answers;
    /** Whether the last end waits for the thimble that goes into it. */
    private boolean thimbleAsked;

    EndMatch(SpliceBook book, Units units, Answers answers) {
        this.book = book;
        this.units = units;
        this.answers = answers;
    }

    /** Both ends of a rope from one cell. */
    record Both(String a, String b) {}

    /** An end as files write it; nothing while it is asked. Figures are in the form of the files. */
    Optional<String> of(String text, Rope rope) {
        String first = text.strip().split(" ")[0];
        if (book.names().contains(first)) {
            return Optional.of(text.strip());
        }
        thimbleAsked = false;
        Optional<String> made = made(text, rope);
        return made.isPresent() || thimbleAsked ? made : asked(text, rope);
    }

    private Optional<String> made(String text, Rope rope) {
        StringBuilder rest = new StringBuilder(text.toLowerCase(Locale.ROOT));
        Matcher size = SIZE.matcher(rest);
        String length = "";
        if (size.find()) {
            String unit = size.group(2).startsWith("in") || size.group(2).equals("\"") ? "in" : size.group(2);
            length = size.group(1) + " " + unit;
            rest.replace(size.start(), size.end(), " ");
        }
        StringBuilder words = new StringBuilder(" " + TradeWords.plain(rest.toString()) + " ");
        List<String> meant = new ArrayList<>();
        for (TradeWords.Phrase phrase : TradeWords.builtIn().phrases("end")) {
            int at = words.indexOf(" " + phrase.words() + " ");
            if (at >= 0) {
                words.replace(at, at + phrase.words().length() + 2, " ");
                meant.add(phrase.meaning());
            }
        }
        for (TradeWords.Phrase small : TradeWords.builtIn().phrases("small")) {
            int at = words.indexOf(" " + small.words() + " ");
            if (at >= 0) {
                words.replace(at, at + small.words().length() + 2, " ");
            }
        }
        return words.toString().isBlank() ? one(meant, length, rope) : Optional.empty();
    }

    private Optional<String> one(List<String> meant, String length, Rope rope) {
        if (meant.contains(THIMBLE) && length.isEmpty() && meant.stream().allMatch(word -> isEye(word))) {
            return onThimble(rope);
        }
        if (meant.size() != 1) {
            return Optional.empty();
        }
        String word = meant.get(0);
        if (BARE.contains(word) && length.isEmpty()) {
            return Optional.of(word);
        }
        if (word.equals("bowline") && !length.isEmpty()) {
            return Optional.of("bowline length " + length);
        }
        return word.equals(EYE) && !length.isEmpty() ? eye(rope, "length " + length) : Optional.empty();
    }

    private static boolean isEye(String word) {
        return word.equals(THIMBLE) || word.equals(EYE);
    }

    /** The eye that is usual on such a rope: the first row that is for it and not for any rope. */
    private Optional<String> eye(Rope rope, String size) {
        return book.terminations().stream()
                .filter(row -> row.kind() == Termination.Kind.EYE || row.kind() == Termination.Kind.LOOP)
                .filter(row -> !row.suits().constructions().isEmpty())
                .filter(row -> row.suits().admits(rope))
                .findFirst()
                .map(row -> row.id() + " " + size);
    }

    /** An eye on the one thimble of the shop that takes the rope. */
    private Optional<String> onThimble(Rope rope) {
        List<String> able = book.thimbles().stream()
                .filter(thimble -> thimble.takes(rope.diameter()))
                .map(Thimble::id)
                .toList();
        if (able.isEmpty()) {
            return Optional.empty();
        }
        if (able.size() == 1) {
            return eye(rope, "thimble " + able.get(0));
        }
        Optional<String> answer = answers.ask(new Question(
                "thimble " + rope.id(), "Which thimble goes into the eyes of " + rope.id() + "?", able, false));
        thimbleAsked = answer.isEmpty();
        return answer.flatMap(id -> eye(rope, "thimble " + id));
    }

    private Optional<String> asked(String text, Rope rope) {
        boolean metric = units == Units.METRIC;
        List<String> choices = List.of(
                metric ? "length 150 mm" : "length 6 in",
                metric ? "length 300 mm" : "length 12 in",
                "whipped",
                "sealed",
                "plain");
        return answers.ask(new Question(
                        "end " + text,
                        "What is the end \"" + text
                                + "\"? The inside length of an eye, or an end as orders.csv has it.",
                        choices,
                        true))
                .flatMap(answer -> answer.startsWith("length ")
                        ? eye(rope, answer)
                        : answer.equals(THIMBLE) ? onThimble(rope) : Optional.of(answer));
    }

    /** Both ends from one cell: two with a sign between them, or one of which it is asked whether it is both. */
    Optional<Both> both(String text, Rope rope) {
        String plain = " " + TradeWords.plain(text) + " ";
        for (TradeWords.Phrase phrase : TradeWords.builtIn().phrases("both")) {
            if (plain.contains(" " + phrase.words() + " ")) {
                return of(without(text, phrase.words()), rope).map(end -> new Both(end, end));
            }
        }
        String[] parts = PARTS.split(text);
        if (parts.length == 2) {
            Optional<String> a = of(parts[0], rope);
            Optional<String> b = of(parts[1], rope);
            return a.isEmpty() || b.isEmpty() ? Optional.empty() : Optional.of(new Both(a.get(), b.get()));
        }
        Optional<String> end = of(text, rope);
        if (end.isEmpty() || BARE.contains(end.get())) {
            return end.map(each -> new Both(each, each));
        }
        return answers.ask(new Question("ends " + text, "Is \"" + text + "\" at both ends?", List.of(BOTH, ONE), false))
                .map(answer -> new Both(end.get(), answer.equals(BOTH) ? end.get() : "plain"));
    }

    private static String without(String text, String words) {
        String plain = TradeWords.plain(text.replace(".", "\u0001")).replace('\u0001', '.');
        return (" " + keepFigures(text, plain) + " ")
                .replace(" " + words + " ", " ")
                .strip();
    }

    /** Plain letters lose the point of a figure: where there is one, only case is taken away. */
    private static String keepFigures(String text, String plain) {
        return text.matches(".*[0-9]\\.[0-9].*") ? text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ") : plain;
    }
}
