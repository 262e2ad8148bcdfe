package bitterend.measure.formula;

import bitterend.measure.LengthText;

/** What a name of a formula stands for. */
public enum Kind {
    LENGTH("a length"),
    NUMBER("a number"),
    TEXT("a text");

    private final String words;

    Kind(String words) {
        this.words = words;
    }

    /** {@code a length}, as messages name it. */
    public String words() {
        return words;
    }

    /** What a usual value shows its name to be: a length has a unit, a number has none, all else is a text. */
    public static Kind of(String text) {
        if (Quantity.number(text).value().isPresent()) {
            return NUMBER;
        }
        return LengthText.parseFine(text).value().isPresent() ? LENGTH : TEXT;
    }
}
