package bitterend.serve;

import java.util.List;

/**
 * A form as it is shown.
 *
 * @param path where it is sent
 * @param what the deed that it asks for
 * @param title what people call that
 * @param about the reel or lot that it is about; may be empty
 * @param fields what is filled in
 * @param button what sends it
 * @param booking the id that it is booked under
 * @param open whether it is shown at once
 * @param wrong why it was not booked; empty where it was not sent
 */
public record FormView(
        String path,
        String what,
        String title,
        String about,
        List<FormField> fields,
        String button,
        String booking,
        boolean open,
        String wrong) {
    public FormView {
        fields = List.copyOf(fields);
    }

    /** A form that was not sent. */
    FormView(
            String path,
            String what,
            String title,
            String about,
            List<FormField> fields,
            String button,
            String booking,
            boolean open) {
        this(path, what, title, about, fields, button, booking, open, "");
    }

    /** As it was sent, opened, with what was said of it; a form that was not sent stays as it is. */
    FormView of(Form form, String refused) {
        return form.text("what").equals(what)
                ? new FormView(
                        path,
                        what,
                        title,
                        about,
                        fields.stream().map(field -> field.of(form)).toList(),
                        button,
                        booking,
                        true,
                        refused)
                : this;
    }

    /** The same under another id. */
    FormView under(String id) {
        return new FormView(path, what, title, about, fields, button, id, open, wrong);
    }

    /** The same with something in a field to begin with. */
    FormView with(String field, String value) {
        List<FormField> filled = fields.stream()
                .map(each -> each.name().equals(field) ? each.with(value) : each)
                .toList();
        return new FormView(path, what, title, about, filled, button, booking, open, wrong);
    }
}
