package bitterend.exchange;

import bitterend.exchange.form.LocalForm;
import bitterend.measure.Parsed;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;

/** What people type on the page, by the {@code locale} of their shop: brought into the form of the files before it is read. */
public final class TypedText {
    private static final Set<String> DAYS = Set.of("due");
    /** Columns with lengths and shares in them, alone or among words. */
    private static final Set<String> FIGURES = Set.of(
            "length",
            "spare",
            "sample",
            "tolerance",
            "eye tolerance",
            "set tolerance",
            "extension",
            "shrinkage",
            "bedding",
            "measured",
            "with",
            "hang",
            "end a",
            "end b",
            "along",
            "marks");

    /** In the form of the files alone. */
    public static final TypedText OF_FILES = new TypedText(LocalForm.NONE);

    private final LocalForm form;

    public TypedText(Settings settings) {
        this(settings.locale());
    }

    private TypedText(LocalForm form) {
        this.form = form;
    }

    /** A rule for text with figures in it. */
    public <T> Function<String, Parsed<T>> figures(Function<String, Parsed<T>> rule) {
        return text -> form.figures(text).then(rule);
    }

    /** A rule for days. */
    public <T> Function<String, Parsed<T>> day(Function<String, Parsed<T>> rule) {
        return text -> form.day(text).then(rule);
    }

    /** A cell of the order book in the form of the file, by what its column holds; any other is as it was typed. */
    public Parsed<String> cell(String column, String text) {
        String plain = column.strip().toLowerCase(Locale.ROOT);
        if (text.isBlank()) {
            return Parsed.of(text);
        }
        return DAYS.contains(plain) ? form.day(text) : FIGURES.contains(plain) ? form.figures(text) : Parsed.of(text);
    }
}
