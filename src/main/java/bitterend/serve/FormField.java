package bitterend.serve;

import java.util.List;

/**
 * A field of a form as it is shown.
 *
 * @param kind how it is filled in
 * @param name what it is sent as
 * @param label what people read above it
 * @param value what is in it
 * @param example how it may be filled in; may be empty
 * @param choices what may be chosen, or what is offered while one types
 * @param wrong what is wrong with it; empty where nothing is
 */
public record FormField(
        Kind kind, String name, String label, String value, String example, List<Choice> choices, String wrong) {
    public FormField {
        choices = List.copyOf(choices);
    }

    /** How a field is filled in. */
    public enum Kind {
        TYPED,
        CHOSEN,
        TICKED
    }

    /**
     * One of what may be chosen.
     *
     * @param value what is sent
     * @param words what is read
     */
    public record Choice(String value, String words) {}

    /** A field that is typed into. */
    static FormField typed(String name, String label, String example) {
        return new FormField(Kind.TYPED, name, label, "", example, List.of(), "");
    }

    /** One of a few. */
    static FormField chosen(String name, String label, List<Choice> choices) {
        return new FormField(Kind.CHOSEN, name, label, "", "", choices, "");
    }

    /** Said by a tick. */
    static FormField ticked(String name, String label) {
        return new FormField(Kind.TICKED, name, label, "", "", List.of(), "");
    }

    /** Typed, while these are offered. */
    FormField offering(List<Choice> offered) {
        return new FormField(kind, name, label, value, example, offered, wrong);
    }

    /** With this in it to begin with. */
    FormField with(String other) {
        return new FormField(kind, name, label, other, example, choices, wrong);
    }

    /** As it was sent, with what is wrong with it. */
    FormField of(Form form) {
        return new FormField(kind, name, label, form.text(name), example, choices, form.wrongAt(name));
    }
}
