package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.finding.Finding;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ropes, thimbles, metal ends, hardware and products as tables: the same catalogue as from JSON. */
final class CatalogueTablesTest {
    private static final Path LOFT = Path.of("demo-data", "gannet-loft");

    @TempDir
    private Path shop = Path.of("");

    @Test
    void tables_giveTheCatalogueOfTheJsonFiles() throws IOException {
        copyLoft();
        Shop before = ShopFolder.read(shop).shop().orElseThrow();
        table("ropes.json", "ropes", "ropes.csv");
        tablesOfThimbles();
        products();
        for (String json : List.of("ropes.json", "thimbles.json", "assemblies.json")) {
            Files.delete(shop.resolve(json));
        }

        ShopReading reading = ShopFolder.read(shop);
        Shop after = reading.shop().orElseThrow(() -> new AssertionError(reading.findings()));

        assertEquals(before.catalogue().ropes(), after.catalogue().ropes());
        assertEquals(
                before.catalogue().splices().thimbles().stream()
                        .map(each -> each.id() + each.groove())
                        .toList(),
                after.catalogue().splices().thimbles().stream()
                        .map(each -> each.id() + each.groove())
                        .toList());
        assertEquals(
                before.catalogue().splices().fittings(),
                after.catalogue().splices().fittings());
        assertEquals(
                before.catalogue().splices().hardware(),
                after.catalogue().splices().hardware());
        assertEquals(
                before.orders().stream()
                        .map(OrderLine::demanded)
                        .map(each -> each.pieces())
                        .toList(),
                after.orders().stream()
                        .map(OrderLine::demanded)
                        .map(each -> each.pieces())
                        .toList());
    }

    @Test
    void oneRowThatCannotBeUsed_isToldAtItsRow_andLeavesTheOthers() throws IOException {
        copyLoft();
        table("ropes.json", "ropes", "ropes.csv");
        Files.delete(shop.resolve("ropes.json"));
        List<String> lines = Files.readAllLines(shop.resolve("ropes.csv"));
        int row = lines.size();
        lines.set(row - 1, lines.get(row - 1).replaceAll("\"\\d+ mm\"", "\"thick\""));
        Files.write(shop.resolve("ropes.csv"), lines);

        ShopReading reading = ShopFolder.read(shop);

        assertTrue(reading.shop().isPresent(), () -> reading.findings().toString());
        Finding told = reading.findings().stream()
                .filter(finding ->
                        finding.file().equals("ropes.csv") && finding.field().equals("diameter"))
                .findFirst()
                .orElseThrow();
        assertEquals("row " + row, told.place());
        assertEquals("diameter", told.field());
        assertEquals("thick", told.found());
    }

    @Test
    void unitsInTheHeading_titleAboveIt_andSemicolons_areRead() throws IOException {
        Path eider = Path.of("demo-data", "eider-shed");
        copy(eider);
        Files.delete(shop.resolve("ropes.json"));
        Files.writeString(
                shop.resolve("ropes.csv"),
                """
                        Our ropes;;;;;;;
                        ID;Construction;Fibre;Diameter (mm);Lay;Price (EUR/m);Usual reel (m);Keep from (m)
                        BRAID-12;double braid;polyester;12;;1.85;200;

                        LAID-14;3-strand;polyester;14;right ordinary;1.45;220;2
                        """);

        ShopReading reading = ShopFolder.read(shop);

        Shop read = reading.shop().orElseThrow(() -> new AssertionError(reading.findings()));
        assertEquals(
                List.of("BRAID-12", "LAID-14"),
                read.catalogue().ropes().stream().map(each -> each.id()).toList());
        assertTrue(read.digests().containsKey("ropes.csv"));
    }

    @Test
    void bothFormsOfTheRopes_areRefused() throws IOException {
        copyLoft();
        table("ropes.json", "ropes", "ropes.csv");

        ShopReading reading = ShopFolder.read(shop);

        assertFalse(reading.shop().isPresent());
        assertTrue(reading.findings().stream()
                .anyMatch(finding -> finding.file().equals("ropes.csv")
                        && finding.expected().equals("one of the two: move the other away")));
    }

    @Test
    void idOfTheOtherFile_isNoIdForAThimble() throws IOException {
        copyLoft();
        String id = json("thimbles.json").get("thimbles").get(0).get("id").asText();
        Files.writeString(shop.resolve("hardware.csv"), "id,kind,inside\n" + id + ",shackle,60 mm\n");

        List<Finding> findings = ShopFolder.read(shop).findings();

        assertTrue(
                findings.stream()
                        .anyMatch(finding -> finding.file().equals("hardware.csv")
                                && finding.place().equals("row 2")
                                && finding.expected().startsWith("an id that no other")),
                findings::toString);
    }

    private void tablesOfThimbles() throws IOException {
        for (String list : List.of("thimbles", "fittings")) {
            table("thimbles.json", list, list.equals("fittings") ? "metal-ends.csv" : list + ".csv");
        }
    }

    private void products() throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        for (JsonNode product : json("assemblies.json").get("products")) {
            Map<String, String> line = plain(product.path("line"));
            line.put("product", product.get("id").asText());
            line.put("name", product.path("name").asText());
            line.put("parameters", pairs(product.path("parameters")));
            List<String> items = new ArrayList<>();
            product.path("hardware")
                    .forEach(item -> items.add(item.get("item").asText() + ": "
                            + item.path("count").asText("1")));
            line.put("hardware", String.join("; ", items));
            rows.add(line);
            product.path("parts").forEach(part -> rows.add(plain(part)));
        }
        write("assemblies.csv", rows);
    }

    private static String pairs(JsonNode object) {
        return object.properties().stream()
                .map(each -> each.getKey() + ": " + each.getValue().asText())
                .collect(Collectors.joining("; "));
    }

    private void table(String json, String list, String csv) throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        json(json).path(list).forEach(each -> rows.add(plain(each)));
        if (!rows.isEmpty()) {
            write(csv, rows);
        }
    }

    private static Map<String, String> plain(JsonNode object) {
        return object.properties().stream()
                .filter(each -> each.getValue().isValueNode())
                .collect(Collectors.toMap(
                        each -> words(each.getKey()), each -> each.getValue().asText()));
    }

    /** A member as a column: {@code usualReel} is {@code usual reel}. */
    private static String words(String member) {
        return member.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }

    private void write(String csv, List<Map<String, String>> rows) throws IOException {
        Set<String> columns = new LinkedHashSet<>();
        rows.forEach(row -> columns.addAll(row.keySet()));
        Stream<String> lines = rows.stream().map(row -> columns.stream()
                .map(column -> '"' + row.getOrDefault(column, "").replace("\"", "\"\"") + '"')
                .collect(Collectors.joining(",")));
        Files.write(
                shop.resolve(csv),
                Stream.concat(Stream.of(String.join(",", columns)), lines).toList());
    }

    private JsonNode json(String name) throws IOException {
        return new JsonMapper().readTree(shop.resolve(name).toFile());
    }

    private void copyLoft() throws IOException {
        copy(LOFT);
    }

    private void copy(Path from) throws IOException {
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, shop.resolve(file.getFileName()));
            }
        }
    }
}
