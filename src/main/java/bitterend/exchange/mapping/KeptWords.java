package bitterend.exchange.mapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Says in words what was answered about sheets with these headings before and holds for this one, too. */
final class KeptWords {
    private KeptWords() {}

    /**
     * Answers that change what every row means, such as {@code figures of Length are in m}.
     *
     * @param kept by id of the question
     */
    static List<String> of(Map<String, String> kept) {
        List<String> words = new ArrayList<>();
        kept.forEach((id, answer) -> {
            if (id.startsWith(CellWords.UNIT)) {
                words.add("figures of " + id.substring(CellWords.UNIT.length()) + " are in " + answer);
            } else if (id.equals(SheetForm.DAYS)) {
                words.add("days are written " + answer.replace('-', ' '));
            } else if (id.equals(SheetForm.DECIMAL)) {
                words.add("the decimal sign is a " + answer);
            } else if (id.equals(CellWords.PRICE_BY)) {
                words.add("prices are for " + answer + " of rope");
            } else if (id.equals(RowReading.BLANK_ORDER)) {
                words.add("rows without an order number are "
                        + (answer.equals(Question.LEFT_OUT) ? answer : "of the order above"));
            }
        });
        return words;
    }
}
