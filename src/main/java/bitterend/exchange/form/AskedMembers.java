package bitterend.exchange.form;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.Nearest;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What was asked of every object of a document while it was read. A member that nobody asked for means nothing there: it is
 * a slip of the pen, and told with the names that would have meant something. It knows, too, which objects are rows of a table.
 */
final class AskedMembers {
    private final Map<String, OfObject> byPointer = new LinkedHashMap<>();
    /** Objects that are rows of a table, each itself, with its place. */
    private final IdentityHashMap<JsonNode, String> rows = new IdentityHashMap<>();

    /** A new object that is a row of a table: what is wrong with it is told at the row, not at a pointer. */
    ObjectNode row(String place) {
        ObjectNode row = JsonNodeFactory.instance.objectNode();
        rows.put(row, place);
        return row;
    }

    /** Whether an object is a row of a table. */
    boolean isRow(JsonNode object) {
        return rows.containsKey(object);
    }

    /** Where an object is: its row in a table, else the pointer to it. */
    String placeOf(JsonNode object, String pointer) {
        return rows.getOrDefault(object, pointer);
    }

    /** The names asked for in the object at a place; the same ones however often it is opened. */
    OfObject at(String pointer, JsonNode object) {
        return byPointer.computeIfAbsent(pointer, any -> new OfObject(object));
    }

    /** Tells every member that nobody asked for. */
    void tellOthers(String file, Findings findings) {
        byPointer.forEach((pointer, asked) -> asked.tellOthers(file, pointer, findings));
    }

    /** The names asked for in one object. */
    static final class OfObject {
        private final JsonNode object;
        private final Set<String> names = new LinkedHashSet<>();
        private boolean passed;

        private OfObject(JsonNode object) {
            this.object = object;
        }

        void name(String name) {
            names.add(name);
        }

        /** Its names are free, or it was left before it was read to its end: nothing in it is told. */
        void pass() {
            passed = true;
        }

        private void tellOthers(String file, String pointer, Findings findings) {
            if (passed) {
                return;
            }
            for (Map.Entry<String, JsonNode> member : object.properties()) {
                String name = member.getKey();
                if (!names.contains(name)) {
                    findings.add(Finding.error(
                            file,
                            pointer,
                            name,
                            name,
                            "a member known here: " + String.join(", ", new TreeSet<>(names))
                                    + Nearest.hint(name, names)));
                }
            }
        }
    }
}
