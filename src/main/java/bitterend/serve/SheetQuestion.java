package bitterend.serve;

import bitterend.exchange.mapping.Question;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/**
 * A question about a sheet as it is shown.
 *
 * @param field what its answer is sent as
 * @param words as a person is asked
 * @param choices what may be chosen, each sent as its number from 0
 * @param open whether another answer may be typed
 */
public record SheetQuestion(String field, String words, List<FormField.Choice> choices, boolean open) {
    private static final int FEW = 6;
    /** What another answer is sent as, behind the field. */
    static final String OTHER = "-other";

    public SheetQuestion {
        choices = List.copyOf(choices);
    }

    static SheetQuestion of(Question question) {
        List<FormField.Choice> choices = new ArrayList<>();
        for (String choice : question.choices()) {
            choices.add(new FormField.Choice(Integer.toString(choices.size()), choice));
        }
        return new SheetQuestion(field(question.id()), question.words(), choices, question.open());
    }

    /** A text of a sheet as a name that a form can have, whatever is in it. */
    static String field(String text) {
        return "q-" + Base64.getUrlEncoder().withoutPadding().encodeToString(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Whether its choices are seen at one look. */
    public boolean isShort() {
        return choices.size() <= FEW;
    }

    /** What is sent with another answer. */
    public String other() {
        return field + OTHER;
    }
}
