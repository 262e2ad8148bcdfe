package bitterend.serve;

import bitterend.measure.Parsed;
import io.javalin.http.Context;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A form as it was sent: every field is understood by the rules of the files, and what is wrong is said at its field. */
final class Form {
    private final Map<String, String> typed = new TreeMap<>();
    private final Map<String, String> wrong = new TreeMap<>();

    private Form() {}

    /** A form that nobody has filled in. */
    static Form blank() {
        return new Form();
    }

    static Form of(Context request) {
        Form form = new Form();
        request.formParamMap().keySet().forEach(field -> form.typed.put(field, Sent.text(request, field)));
        return form;
    }

    /** What was typed into a field; empty where nothing was. */
    String text(String field) {
        return typed.getOrDefault(field, "");
    }

    /** Whether the field was sent at all. */
    boolean has(String field) {
        return typed.containsKey(field);
    }

    /** A field that must be filled; where it is not, or cannot be understood, what stands in for it. */
    <T> T must(String field, Function<String, Parsed<T>> rule, T standIn) {
        if (text(field).isEmpty()) {
            wrong(field, "expected " + rule.apply("?").refusal().orElse("some words"));
            return standIn;
        }
        return or(field, rule, standIn);
    }

    /** A field that may be empty. */
    <T> T or(String field, Function<String, Parsed<T>> rule, T whenEmpty) {
        T read = may(field, rule);
        return read == null ? whenEmpty : read;
    }

    /** A field that may be empty; nothing where it is, or cannot be understood. */
    <T> @Nullable T may(String field, Function<String, Parsed<T>> rule) {
        if (text(field).isEmpty()) {
            return null;
        }
        Parsed<T> read = rule.apply(text(field));
        read.refusal().ifPresent(expected -> wrong(field, "found \"" + text(field) + "\", expected " + expected));
        return read.value().orElse(null);
    }

    /** Says what is wrong with a field; what is said first stays. */
    void wrong(String field, String words) {
        wrong.putIfAbsent(field, words);
    }

    boolean sound() {
        return wrong.isEmpty();
    }

    /** What is wrong with a field; empty where nothing is. */
    String wrongAt(String field) {
        return wrong.getOrDefault(field, "");
    }
}
