package bitterend.exchange.form;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A row of a table as an object: what is wrong with it is told at the row, not at a pointer. */
final class RowNode extends ObjectNode {
    private static final long serialVersionUID = 1L;

    private final String place;

    RowNode(String place) {
        super(JsonNodeFactory.instance);
        this.place = place;
    }

    /** The row, such as {@code row 12}. */
    String place() {
        return place;
    }
}
