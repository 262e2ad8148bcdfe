package bitterend.exchange.mapping;

import java.util.List;

/**
 * Something that a sheet leaves open, asked once.
 *
 * @param id what it is answered by: {@code days}, {@code unit Length}
 * @param words as a person is asked
 * @param choices what may be answered
 * @param open whether another answer than these will do
 */
public record Question(String id, String words, List<String> choices, boolean open) {
    /** What leaves a column, or a value with its rows, out. */
    public static final String LEFT_OUT = "left out";

    public Question {
        choices = List.copyOf(choices);
    }

    /** The same with the reason why it is asked, if there is one. */
    Question since(String why) {
        return why.isEmpty() ? this : new Question(id, words + " " + why, choices, open);
    }

    /** Whether this is an answer to it. */
    public boolean takes(String answer) {
        return open ? !answer.isBlank() : choices.contains(answer);
    }
}
