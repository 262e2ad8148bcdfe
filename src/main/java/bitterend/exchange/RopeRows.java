package bitterend.exchange;

import bitterend.exchange.form.JsonTree;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** {@code ropes.json} as rows of texts, for rows to be added or changed in it. Members that nobody changes stay. */
public final class RopeRows {
    /** The members that a row of a sheet can fill, in the order in which they are written. */
    private static final List<String> MEMBERS = List.of(
            "id", "name", "construction", "fibre", "diameter", "lay", "colour", "mass", "price", "usualReel", "note");

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.USE_BIG_INTEGER_FOR_INTS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private final ObjectNode root;

    private RopeRows(ObjectNode root) {
        this.root = root;
    }

    /** The rows of a text; nothing where it is no object. */
    public static Optional<RopeRows> of(String text) {
        try {
            return JSON.readTree(text) instanceof ObjectNode root ? Optional.of(new RopeRows(root)) : Optional.empty();
        } catch (JsonProcessingException malformed) {
            return Optional.empty();
        }
    }

    /** How many rows there are. */
    public int size() {
        return root.path("ropes").size();
    }

    /** A member of a row as text; empty where there is none. */
    public String text(int row, String member) {
        return root.path("ropes").path(row).path(member).asText();
    }

    /** The row of an id. */
    public Optional<Integer> find(String id) {
        return IntStream.range(0, size())
                .filter(row -> text(row, "id").equals(id))
                .boxed()
                .findFirst();
    }

    /** The row that a new shop begins with, to be replaced. */
    public Optional<Integer> example() {
        return IntStream.range(0, size())
                .filter(row -> text(row, "note").equals(NewRope.NOTE))
                .boxed()
                .findFirst();
    }

    /** The same without a row. */
    public RopeRows without(int row) {
        ObjectNode copy = root.deepCopy();
        copy.withArray("ropes").remove(row);
        return new RopeRows(copy);
    }

    /** The same with these members in a row; in a new one where it is beyond the last. */
    public RopeRows with(int row, Map<String, String> members) {
        ObjectNode copy = root.deepCopy();
        JsonNode there = row < size()
                ? copy.withArray("ropes").get(row)
                : copy.withArray("ropes").addObject();
        if (there instanceof ObjectNode object) {
            MEMBERS.stream().filter(members::containsKey).forEach(name -> object.put(name, members.get(name)));
        }
        return new RopeRows(copy);
    }

    /** The text of the file. */
    public String text() {
        return JsonTree.text(root);
    }
}
