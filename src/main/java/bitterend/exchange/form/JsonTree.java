package bitterend.exchange.form;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Builds JSON objects member by member and writes them: two blanks of indent, members in the order in which they were
 * added, a line feed on every system. The same content gives the same bytes.
 */
public final class JsonTree {
    private static final ObjectWriter WRITER = new JsonMapper().writer(printer());

    private final Map<String, Object> members = new LinkedHashMap<>();

    /** Adds a text, a whole number, a truth value or a list of these. */
    public JsonTree with(String name, Object value) {
        members.put(name, value);
        return this;
    }

    /** Adds an object. */
    public JsonTree with(String name, JsonTree inner) {
        members.put(name, inner.members);
        return this;
    }

    /** Adds a list of objects. */
    public JsonTree with(String name, List<JsonTree> inner) {
        members.put(name, inner.stream().map(each -> each.members).toList());
        return this;
    }

    /** Adds every member of another object. */
    public JsonTree with(JsonTree others) {
        members.putAll(others.members);
        return this;
    }

    /** The text of the whole document, a line feed at its end. */
    public String text() {
        try {
            return WRITER.writeValueAsString(members) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("texts, numbers and lists can always be written", impossible);
        }
    }

    /** The text of a document that was read and changed, in the same form. */
    public static String text(JsonNode document) {
        try {
            return WRITER.writeValueAsString(document) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("what was read can be written", impossible);
        }
    }

    private static DefaultPrettyPrinter printer() {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        Separators separators = Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator("");
        return new DefaultPrettyPrinter(separators).withObjectIndenter(indent).withArrayIndenter(indent);
    }
}
