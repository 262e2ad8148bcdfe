package bitterend.exchange.form;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One object of a JSON file: its plain members as {@link Fields}, its inner objects by name. */
public final class JsonObject {
    private final String file;
    private final String pointer;
    private final JsonNode node;
    private final Findings findings;
    private final AskedMembers document;
    private final AskedMembers.OfObject asked;
    private final Fields fields;

    JsonObject(String file, String pointer, JsonNode node, Findings findings, AskedMembers document) {
        this.file = file;
        this.pointer = pointer;
        this.node = node;
        this.findings = findings;
        this.document = document;
        this.asked = document.at(pointer, node);
        Map<String, String> texts = plainMembers(node);
        if (!document.isRow(node)) {
            texts.forEach((name, text) -> CsvTable.tellUnseen(file, pointer, name, text, findings));
        }
        this.fields = new Fields(file, pointer, texts, findings, asked::name);
    }

    /** Members that are texts, numbers, true or false; numbers as they are written. */
    public Fields fields() {
        return fields;
    }

    /** Whether there is a member of this name. */
    public boolean has(String name) {
        asked.name(name);
        return node.hasNonNull(name);
    }

    /** Whether the member of this name is an object, where a plain text would do as well. */
    public boolean isObject(String name) {
        asked.name(name);
        return node.path(name).isObject();
    }

    /** An object inside this one; an empty one where there is none. */
    public JsonObject object(String name) {
        JsonNode inner = member(name);
        if (!inner.isMissingNode() && !inner.isObject()) {
            fields.error(name, "an object, in { and }");
        }
        return new JsonObject(file, document.placeOf(inner, pointer + "/" + escaped(name)), inner, findings, document);
    }

    /** The objects of a list inside this one; none where there is no list. */
    public List<JsonObject> objects(String name) {
        List<JsonObject> objects = new ArrayList<>();
        JsonNode list = list(name);
        for (int i = 0; i < list.size(); i++) {
            String inner = document.placeOf(list.get(i), pointer + "/" + escaped(name) + "/" + i);
            if (list.get(i).isObject()) {
                objects.add(new JsonObject(file, inner, list.get(i), findings, document));
            } else {
                findings.add(Finding.error(file, inner, "", list.get(i).asText(), "an object, in { and }"));
            }
        }
        return objects;
    }

    /** The texts of a list inside this one. */
    public List<String> texts(String name) {
        return entries(name).stream()
                .map(entry -> entry.filled().getOrDefault("", ""))
                .toList();
    }

    /** Each text of a list inside this one as the one field, without a name, of a place of its own. */
    public List<Fields> entries(String name) {
        List<Fields> entries = new ArrayList<>();
        JsonNode list = list(name);
        for (int i = 0; i < list.size(); i++) {
            String place = pointer + "/" + escaped(name) + "/" + i;
            if (list.get(i).isValueNode()) {
                entries.add(new Fields(file, place, Map.of("", list.get(i).asText()), findings));
            } else {
                findings.add(Finding.error(file, place, "", "", "a text"));
            }
        }
        return entries;
    }

    /** A list inside this one, told where something else stands there; an empty one where there is none. */
    private JsonNode list(String name) {
        JsonNode list = member(name);
        if (!list.isMissingNode() && !list.isArray()) {
            fields.error(name, "a list, in [ and ]");
        }
        return list.isArray() ? list : MissingNode.getInstance();
    }

    private JsonNode member(String name) {
        asked.name(name);
        return node.path(name);
    }

    /** Names of all members, in the order of the file: here every name means something. */
    public List<String> names() {
        asked.pass();
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** Members that may be there and are not read: words for people, or what follows from the others. */
    public void mayHave(String... names) {
        List.of(names).forEach(asked::name);
    }

    /** Says that the rest is not looked at, so that nobody takes what was not read for a slip of the pen. */
    public void leave() {
        asked.pass();
    }

    /** The object as a document of its own, whatever is in it. */
    public String text() {
        asked.pass();
        return JsonTree.text(node);
    }

    private static Map<String, String> plainMembers(JsonNode node) {
        Map<String, String> texts = new HashMap<>();
        for (Map.Entry<String, JsonNode> member : node.properties()) {
            if (member.getValue().isValueNode() && !member.getValue().isNull()) {
                texts.put(member.getKey(), member.getValue().asText());
            }
        }
        return texts;
    }

    private static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }
}
