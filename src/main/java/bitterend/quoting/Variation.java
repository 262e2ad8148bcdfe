package bitterend.quoting;

import bitterend.measure.Money;

/**
 * What the customer could have in place of a line, or of the whole request, with its price by real packing.
 *
 * @param kind in which way it differs
 * @param line the line whose place it takes; of {@link Kind#APART} the line itself
 * @param changed what would be made
 * @param price of what would be made
 * @param total of the whole request then, before tax; of {@link Kind#APART} the price
 */
public record Variation(Kind kind, String line, QuoteLine changed, BuildUp price, Money total) {
    /** In which way it differs. */
    public enum Kind {
        /** The line ordered by itself. */
        APART("apart"),
        /** Another line that the request names. */
        INSTEAD("instead"),
        /** A length or a quantity near what was asked, within what the customer would take, that costs less. */
        CHEAPER("cheaper"),
        /** The same line so many times. */
        QUANTITY("quantity");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word used in files. */
        public String word() {
            return word;
        }
    }
}
