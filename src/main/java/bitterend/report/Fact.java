package bitterend.report;

/**
 * Something to know, as printed.
 *
 * @param label what it is, in lower case
 * @param value what it is worth
 */
public record Fact(String label, String value) {
    @Override
    public String toString() {
        return label + " " + value;
    }
}
