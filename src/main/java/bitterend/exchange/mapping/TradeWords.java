package bitterend.exchange.mapping;

import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.finding.Findings;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The words that sheets of the trade use, in several languages, for what the files of a shop call by one word each. */
final class TradeWords {
    private static final String FILE = "/bitterend/trade-words.json";
    private static final List<String> LANGUAGES = List.of("en", "de", "fr", "es", "nl", "no");
    /** Read once: the file comes with the program. */
    private static final TradeWords BUILT_IN = read();

    private final List<Heading> headings;
    private final Map<String, Map<String, String>> values;

    private TradeWords(List<Heading> headings, Map<String, Map<String, String>> values) {
        this.headings = headings;
        this.values = values;
    }

    /**
     * What a column can be called.
     *
     * @param member what it is in the file of the shop
     * @param tables the tables that have it
     * @param words as sheets call it, in plain letters
     */
    record Heading(String member, Set<String> tables, List<String> words) {}

    /** A phrase of a list and what it means there. */
    record Phrase(String words, String meaning) {}

    static TradeWords builtIn() {
        return BUILT_IN;
    }

    List<Heading> headings() {
        return headings;
    }

    /** What a whole text means in a list of values. */
    Optional<String> meaning(String list, String text) {
        return Optional.ofNullable(values.getOrDefault(list, Map.of()).get(plain(text)));
    }

    /** The phrases of a list, the longest first, so that none is read as a part of itself. */
    List<Phrase> phrases(String list) {
        return values.getOrDefault(list, Map.of()).entrySet().stream()
                .map(entry -> new Phrase(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparing((Phrase phrase) -> phrase.words().length())
                        .reversed()
                        .thenComparing(Phrase::words))
                .toList();
    }

    /** Small letters without accents, anything else than letters and figures as one blank. */
    static String plain(String text) {
        String low = text.toLowerCase(Locale.ROOT)
                .replace("\u00df", "ss")
                .replace("\u00f8", "o")
                .replace("\u00e6", "ae")
                .replace("\u0153", "oe")
                .replace("\u2300", "o");
        return Normalizer.normalize(low, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }

    private static TradeWords read() {
        Findings findings = new Findings();
        TradeWords words = JsonDocument.readPart(
                        new InputFile(FILE, text(), ""), "bitterend/words/1", findings, TradeWords::of)
                .orElseThrow(() -> new IllegalStateException(FILE + ": " + findings.sorted()));
        if (findings.hasErrors()) {
            throw new IllegalStateException(FILE + ": " + findings.sorted());
        }
        return words;
    }

    private static TradeWords of(JsonObject document) {
        List<Heading> headings = new ArrayList<>();
        for (JsonObject row : document.objects("headings")) {
            String member = row.fields().text("member").orElseThrow();
            List<String> words = new ArrayList<>(List.of(plain(member)));
            words.addAll(words(row));
            headings.add(new Heading(
                    member, Set.of(row.fields().text("tables").orElseThrow().split(" ")), words));
        }
        Map<String, Map<String, String>> values = new TreeMap<>();
        for (JsonObject row : document.objects("values")) {
            String word = row.fields().text("word").orElseThrow();
            Map<String, String> list =
                    values.computeIfAbsent(row.fields().text("list").orElseThrow(), any -> new TreeMap<>());
            list.put(plain(word), word);
            words(row).forEach(each -> list.put(each, word));
        }
        return new TradeWords(headings, values);
    }

    private static List<String> words(JsonObject row) {
        return LANGUAGES.stream()
                .flatMap(language -> row.texts(language).stream())
                .map(TradeWords::plain)
                .distinct()
                .toList();
    }

    private static String text() {
        try (InputStream in = TradeWords.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("no " + FILE + " in the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new IllegalStateException("cannot read " + FILE, unreadable);
        }
    }
}
