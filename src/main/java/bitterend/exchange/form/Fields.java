package bitterend.exchange.form;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.LookAlike;
import bitterend.measure.Parsed;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * The named fields of one row of a CSV file or one object of a JSON file. Whatever cannot be read is told to the findings,
 * located, and a placeholder stands in for it, so that the other fields are looked at too; {@link #sound()} then says that
 * the whole must not be used.
 */
public final class Fields {
    private final String file;
    private final String place;
    private final Map<String, String> texts;
    private final Findings findings;
    private final Consumer<String> asked;
    private boolean sound = true;

    /**
     * The fields of one place.
     *
     * @param file name of the file
     * @param place {@code row 12} or a JSON pointer
     * @param texts what stands in each field, as typed
     * @param findings where problems are told
     */
    public Fields(String file, String place, Map<String, String> texts, Findings findings) {
        this(file, place, texts, findings, name -> {});
    }

    /** The same where somebody keeps what is asked for: {@code asked} is handed each name. */
    Fields(String file, String place, Map<String, String> texts, Findings findings, Consumer<String> asked) {
        this.file = file;
        this.place = place;
        this.texts = texts;
        this.findings = findings;
        this.asked = asked;
    }

    /** The same place with these texts where a field is blank. */
    public Fields over(Map<String, String> defaults) {
        Map<String, String> merged = new HashMap<>(defaults);
        texts.forEach((name, text) -> {
            if (!text.isBlank()) {
                merged.put(name, text);
            }
        });
        return new Fields(file, place, merged, findings, asked);
    }

    /** The same place with only the named fields, and these texts besides. */
    public Fields only(Set<String> names, Map<String, String> more) {
        Map<String, String> kept = new HashMap<>(texts);
        kept.keySet().retainAll(names);
        kept.putAll(more);
        return new Fields(file, place, kept, findings, asked);
    }

    /** The same fields, none looked at yet, with another text in one of them. */
    public Fields with(String name, String text) {
        Map<String, String> more = new HashMap<>(texts);
        more.put(name, text);
        return new Fields(file, place, more, findings, asked);
    }

    public String file() {
        return file;
    }

    /** Every field that is filled, as it was typed. */
    public Map<String, String> filled() {
        Map<String, String> filled = new TreeMap<>();
        texts.forEach((name, text) -> {
            if (!text.isBlank()) {
                filled.put(name, text.strip());
            }
        });
        return filled;
    }

    public String place() {
        return place;
    }

    /** Whether every field asked for so far could be used. */
    public boolean sound() {
        return sound;
    }

    /** What stands in a field, stripped; nothing when it is blank or not there. */
    public Optional<String> text(String name) {
        asked.accept(name);
        String text = texts.get(name);
        String plain = text == null ? "" : Readings.blanks(text).strip();
        return plain.isEmpty() ? Optional.empty() : Optional.of(plain);
    }

    /** A field that must be filled. */
    public <T> T require(String name, Reading<T> reading, T placeholder) {
        Optional<String> text = text(name);
        if (text.isPresent()) {
            return read(name, text.get(), reading, placeholder);
        }
        error(name, expectedBy(reading));
        return placeholder;
    }

    /** What a reading asks for, as it would tell a mark that means nothing. */
    private static <T> String expectedBy(Reading<T> reading) {
        return reading.read("?").refusal().orElse("some text");
    }

    /** A field that may be blank. */
    public <T> T optional(String name, Reading<T> reading, T whenBlank) {
        Optional<String> text = text(name);
        return text.isPresent() ? read(name, text.get(), reading, whenBlank) : whenBlank;
    }

    private <T> T read(String name, String text, Reading<T> reading, T placeholder) {
        Parsed<T> parsed = reading.read(text);
        parsed.refusal().ifPresent(expected -> error(name, expected));
        return parsed.value().orElse(placeholder);
    }

    /** Tells that an id was met before; {@code places} keeps where each was met first. Placeholders begin with "?". */
    public void once(String name, String id, Map<String, String> places) {
        String first = places.putIfAbsent(id, place);
        if (first != null && !id.startsWith("?")) {
            error(name, "an id of its own; this one is in " + first);
        }
    }

    /** Warns of an id that would be taken for another one met before. */
    public void unlike(String name, String id, LookAlike met) {
        String before = met.before(id);
        if (!before.isEmpty() && !id.startsWith("?")) {
            warning(name, "an id that nobody takes for " + before);
        }
    }

    /** Tells what is wrong with a field and that the whole must not be used. */
    public void error(String name, String expected) {
        sound = false;
        findings.add(Finding.error(file, place, name, text(name).orElse(""), expected));
    }

    /** Tells what the reader should know about a field that is used as it stands. */
    public void warning(String name, String expected) {
        findings.add(Finding.warning(file, place, name, text(name).orElse(""), expected));
    }
}
