package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import bitterend.exchange.FileReference.Member;
import bitterend.exchange.form.JsonTree;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The schemas in docs/schemas, by which an editor helps whoever types the JSON files of a shop. They are made of the tables of
 * docs/file-formats.md, which are held against the readers; {@code -Dgolden.rewrite=true} writes them anew. A validator of
 * JSON Schema 2020-12 is the referee.
 */
final class SchemasTest {
    private static final FileReference REFERENCE = FileReference.builtIn();
    private static final JsonMapper JSON = new JsonMapper();
    /** For each file its lists and objects, by the table that says what is in them. */
    private static final Map<String, Map<String, String>> INSIDE = Map.of(
            "shop.json",
                    Map.of(
                            "prices", "prices member",
                            "quote", "quote member",
                            "letter", "letter member",
                            "ledger", "ledger member"),
            "ropes.json", Map.of("ropes", "member"),
            "thimbles.json", Map.of("thimbles", "thimble", "fittings", "fitting", "hardware", "hardware"),
            "assemblies.json", Map.of("products", "member"),
            "constructions.json", Map.of("constructions", "member", "fibres", "member", "makeUps", "member"),
            "splices.json", Map.of("terminations", "member of a row"));

    private static Map<String, String> inside(String file) {
        return INSIDE.getOrDefault(file, Map.of());
    }

    static Stream<String> files() {
        return INSIDE.keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("files")
    void schema_isWhatTheReferenceSays(String file) {
        Golden.checkPage(Path.of("docs", "schemas", name(file)), schema(file));
    }

    @ParameterizedTest
    @MethodSource("files")
    void demo_holdsToTheSchema_andASlipDoesNot(String file) throws IOException {
        JsonSchema schema = JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(schema(file));
        int looked = 0;
        for (Path each : List.of(
                Path.of("demo-data", "gannet-loft", file),
                Path.of("demo-data", "eider-shed", file),
                Path.of("src", "main", "resources", "bitterend", file))) {
            if (Files.exists(each)) {
                JsonNode document = JSON.readTree(each.toFile());
                assertEquals(Set.of(), schema.validate(document), each + ": what the schema refuses");
                assertSlipsAreSeen(file, schema, document);
                looked++;
            }
        }
        assertTrue(looked > 0, file);
    }

    private static void assertSlipsAreSeen(String file, JsonSchema schema, JsonNode sound) {
        for (String inside : inside(file).keySet()) {
            ObjectNode document = sound.deepCopy();
            JsonNode member = document.path(inside);
            JsonNode object = member.isArray() && !member.isEmpty() ? member.get(0) : member;
            if (object instanceof ObjectNode row) {
                row.put("colourr", "white");
                Set<ValidationMessage> told = schema.validate(document);
                assertFalse(told.isEmpty(), file + ": colourr in " + inside);
            }
        }
    }

    private static String name(String file) {
        return file.replace(".json", ".schema.json");
    }

    private static String schema(String file) {
        boolean settings = file.equals("shop.json");
        JsonTree properties = new JsonTree();
        properties.with("format", new JsonTree().with("const", "bitterend/" + file.replace(".json", "") + "/1"));
        if (settings) {
            members(file, "member").forEach(member -> properties.with(member.name(), described(file, member)));
        } else {
            inside(file).keySet().stream()
                    .sorted()
                    .forEach(list -> properties.with(
                            list,
                            new JsonTree()
                                    .with("type", "array")
                                    .with("items", object(file, inside(file).getOrDefault(list, "")))));
        }
        return new JsonTree()
                .with("$schema", "https://json-schema.org/draft/2020-12/schema")
                .with("title", file + " of a shop")
                .with("type", "object")
                .with("properties", properties)
                .with("required", settings ? required(members(file, "member")) : List.of("format"))
                .with("additionalProperties", !settings)
                .text();
    }

    private static JsonTree described(String file, Member member) {
        String table = inside(file).get(member.name());
        JsonTree described = table == null ? new JsonTree() : object(file, table);
        if (member.name().equals("format")) {
            described.with("const", "bitterend/shop/1");
        }
        return described.with(
                "description",
                member.what()
                        + (member.usual().isEmpty() || member.usual().equals("required")
                                ? ""
                                : "; default: " + member.usual()));
    }

    private static JsonTree object(String file, String table) {
        List<Member> members = members(file, table);
        JsonTree properties = new JsonTree();
        members.forEach(member -> properties.with(member.name(), described("", member)));
        return new JsonTree()
                .with("type", "object")
                .with("properties", properties)
                .with("required", required(members))
                .with("additionalProperties", false);
    }

    private static List<String> required(List<Member> members) {
        return members.stream()
                .filter(member -> member.usual().equals("required"))
                .map(Member::name)
                .toList();
    }

    /** Each member once, as a table may speak of it twice. */
    private static List<Member> members(String file, String table) {
        Map<String, Member> members = new LinkedHashMap<>();
        REFERENCE.members(file).stream()
                .filter(member -> member.table().equals(table))
                .forEach(member -> members.putIfAbsent(member.name(), member));
        return List.copyOf(members.values());
    }
}
