package bitterend.exchange.form;

import bitterend.measure.Parsed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The members of one JSON object on their way out of a record or into one. Every method names a member and the part of the
 * record that it holds: out it writes the part and hands it back, in it reads the member and hands back what it found.
 *
 * @param <R> the record
 */
public final class Members<R> {
    private final @Nullable R record;
    private final JsonTree tree = new JsonTree();
    private final @Nullable JsonObject object;

    private Members(@Nullable R record, @Nullable JsonObject object) {
        this.record = record;
        this.object = object;
    }

    /** A record as an object of a document. */
    public static <R> JsonTree tree(Form<R> form, R record) {
        Members<R> members = new Members<>(record, null);
        form.through(members);
        return members.tree;
    }

    /** The record that stands in an object; what cannot be read is told, with something in its place. */
    public static <R> R read(Form<R> form, JsonObject object) {
        return form.through(new Members<>(null, object));
    }

    /** A member that is always there. */
    public <V> V is(String name, Function<? super R, V> part, Codec<V> codec) {
        if (object != null) {
            return object.fields().require(name, codec.in(), codec.placeholder());
        }
        V value = part.apply(record());
        tree.with(name, codec.out().apply(value));
        return value;
    }

    /** A member that is left out where it says nothing else than a missing one. */
    public <V> V mayBe(String name, Function<? super R, V> part, Codec<V> codec, V missing) {
        if (object != null) {
            return object.fields().optional(name, codec.in(), missing);
        }
        V value = part.apply(record());
        if (!value.equals(missing)) {
            tree.with(name, codec.out().apply(value));
        }
        return value;
    }

    /** A member that is always written and may be missing, as in files of before. */
    public <V> V written(String name, Function<? super R, V> part, Codec<V> codec, V missing) {
        return object != null ? object.fields().optional(name, codec.in(), missing) : is(name, part, codec);
    }

    /** An object inside this one. */
    public <V> V object(String name, Function<? super R, V> part, Form<V> form) {
        if (object != null) {
            return read(form, object.object(name));
        }
        V value = part.apply(record());
        tree.with(name, tree(form, value));
        return value;
    }

    /** An object that is always written and may be missing, as in files of before. */
    public <V> V writtenObject(String name, Function<? super R, V> part, Form<V> form, V missing) {
        return object != null && !object.has(name) ? missing : object(name, part, form);
    }

    /** An object that is left out where it says nothing else than a missing one. */
    public <V> V mayBeObject(String name, Function<? super R, V> part, Form<V> form, V missing) {
        if (object != null) {
            return object.has(name) ? read(form, object.object(name)) : missing;
        }
        V value = part.apply(record());
        return value.equals(missing) ? value : object(name, part, form);
    }

    /** A list of objects. */
    public <V> List<V> list(String name, Function<? super R, ? extends List<V>> part, Form<V> form) {
        if (object != null) {
            return object.objects(name).stream().map(each -> read(form, each)).toList();
        }
        List<V> values = part.apply(record());
        tree.with(name, values.stream().map(each -> tree(form, each)).toList());
        return values;
    }

    /** A list of objects that is left out where it is empty. */
    public <V> List<V> mayBeList(String name, Function<? super R, ? extends List<V>> part, Form<V> form) {
        return object == null && part.apply(record()).isEmpty() ? List.of() : list(name, part, form);
    }

    /** A list of plain values. */
    public <V> List<V> values(String name, Function<? super R, ? extends List<V>> part, Codec<V> codec) {
        if (object == null) {
            List<V> values = part.apply(record());
            tree.with(name, (Object) values.stream().map(codec.out()).toList());
            return values;
        }
        List<V> values = new ArrayList<>();
        for (String text : object.texts(name)) {
            Parsed<V> value = codec.in().read(text);
            value.refusal().ifPresent(expected -> object.fields().error(name, expected));
            values.add(value.value().orElse(codec.placeholder()));
        }
        return values;
    }

    /** A list of plain values that is left out where it is empty. */
    public <V> List<V> mayBeValues(String name, Function<? super R, ? extends List<V>> part, Codec<V> codec) {
        return object == null && part.apply(record()).isEmpty() ? List.of() : values(name, part, codec);
    }

    /** A list of texts. */
    public List<String> texts(String name, Function<? super R, ? extends List<String>> part) {
        if (object != null) {
            return object.texts(name);
        }
        List<String> texts = part.apply(record());
        tree.with(name, (Object) texts);
        return texts;
    }

    /** An object whose names are free, each with a value of one kind. */
    public <V> Map<String, V> free(String name, Function<? super R, ? extends Map<String, V>> part, Codec<V> codec) {
        if (object == null) {
            Map<String, V> values = part.apply(record());
            JsonTree inner = new JsonTree();
            values.forEach((key, value) -> inner.with(key, codec.out().apply(value)));
            tree.with(name, inner);
            return values;
        }
        Map<String, V> values = new LinkedHashMap<>();
        JsonObject inner = object.object(name);
        inner.names().forEach(key -> values.put(key, inner.fields().require(key, codec.in(), codec.placeholder())));
        return values;
    }

    /** The same, left out where it is empty. */
    public <V> Map<String, V> mayBeFree(
            String name, Function<? super R, ? extends Map<String, V>> part, Codec<V> codec) {
        return object == null && part.apply(record()).isEmpty() ? Map.of() : free(name, part, codec);
    }

    /** The same object for another part of the record: its members stand among these. */
    public <V> V among(Function<? super R, V> part, Form<V> form) {
        if (object != null) {
            return read(form, object);
        }
        V value = part.apply(record());
        tree.with(tree(form, value));
        return value;
    }

    /** Tells what is wrong with a member that was read; nothing on the way out. */
    public void error(String name, String expected) {
        if (object != null) {
            object.fields().error(name, expected);
        }
    }

    /** Says that the rest of the object is not read. */
    public void leave() {
        if (object != null) {
            object.leave();
        }
    }

    /** Whether a member is there: what is read, or what the record would write. */
    public boolean has(String name, Function<? super R, Boolean> part) {
        return object != null ? object.has(name) : part.apply(record());
    }

    /** A record that is written in one way and read in another, such as a row that a shop may type, too. */
    public R whole(Function<R, JsonTree> out, Function<JsonObject, R> in) {
        if (object != null) {
            return in.apply(object);
        }
        tree.with(out.apply(record()));
        return record();
    }

    /** Members that follow from the others: written for other programs and not read. */
    public void follow(Function<R, JsonTree> out, String... names) {
        if (object != null) {
            object.mayHave(names);
        } else {
            tree.with(out.apply(record()));
        }
    }

    private R record() {
        return Objects.requireNonNull(record);
    }
}
