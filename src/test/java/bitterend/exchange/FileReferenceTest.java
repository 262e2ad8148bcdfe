package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.FileReference.Member;
import bitterend.exchange.form.CsvColumns;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables of docs/file-formats.md name what the readers ask for: nothing more, nothing less. */
final class FileReferenceTest {
    private static final FileReference REFERENCE = FileReference.builtIn();
    private static final Map<String, CsvColumns> COLUMNS = Map.of(
            OrdersCsv.NAME, OrdersCsv.COLUMNS,
            ReelsCsv.NAME, ReelsCsv.COLUMNS,
            OffersCsv.NAME, OffersCsv.COLUMNS,
            SuppliersCsv.NAME, SuppliersCsv.COLUMNS,
            CustomersCsv.NAME, CustomersCsv.COLUMNS,
            OnOrderCsv.NAME, OnOrderCsv.COLUMNS,
            MeasuredCsv.NAME, MeasuredCsv.COLUMNS);

    /** Settings of an older value curve, which are read to be told of. */
    private static final Set<String> GONE = Set.of("asGoodAsNew", "value", "coilCharge", "ageCredit");

    @TempDir
    private Path shop = Path.of("");

    @Test
    void columns_areThoseOfTheReaders() {
        COLUMNS.forEach((file, columns) -> assertEquals(new TreeSet<>(columns.all()), names(file, any -> true), file));
    }

    @Test
    void requiredColumns_areMarked() {
        for (String file :
                List.of(ReelsCsv.NAME, OffersCsv.NAME, SuppliersCsv.NAME, CustomersCsv.NAME, OnOrderCsv.NAME)) {
            Set<String> marked = REFERENCE.members(file).stream()
                    .filter(member -> member.usual().equals("required"))
                    .map(Member::name)
                    .collect(Collectors.toCollection(TreeSet::new));
            assertTrue(
                    marked.containsAll(Objects.requireNonNull(COLUMNS.get(file)).required()), file + ": " + marked);
        }
    }

    /** What a reader asks for is what it offers in place of a name that nobody knows. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "shop.json;/;member",
                "shop.json;/prices;prices member",
                "shop.json;/quote;quote member",
                "shop.json;/letter;letter member",
                "shop.json;/ledger;ledger member",
                "ropes.json;/ropes/0 /ropes/17;member",
                "thimbles.json;/thimbles/0 /thimbles/5;thimble",
                "thimbles.json;/fittings/0;fitting"
            })
    void members_areThoseThatTheReaderAsksFor(String file, String pointers, String table) throws IOException {
        copyLoft();
        ObjectNode root =
                (ObjectNode) new JsonMapper().readTree(shop.resolve(file).toFile());
        for (String pointer : pointers.split(" ")) {
            JsonNode object = pointer.equals("/") ? root : root.at(pointer);
            ((ObjectNode) object).put("nobodyKnows", "this");
        }
        Files.writeString(shop.resolve(file), root.toString());

        Set<String> offered = new TreeSet<>();
        ShopFolder.read(shop).findings().stream()
                .filter(finding ->
                        finding.file().equals(file) && finding.field().equals("nobodyKnows"))
                .map(finding -> finding.expected()
                        .replaceFirst("a member known here: ", "")
                        .replaceFirst("[;:].*", ""))
                .forEach(asked -> offered.addAll(List.of(asked.split(", "))));
        offered.removeAll(GONE);

        assertEquals(offered, names(file, member -> member.table().equals(table)), pointers);
    }

    private static Set<String> names(String file, Predicate<Member> of) {
        return REFERENCE.members(file).stream()
                .filter(of)
                .map(Member::name)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The demo loft, and a server that its ledger would be on. */
    private void copyLoft() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data", "gannet-loft"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, shop.resolve(file.getFileName()));
            }
        }
        Path settings = shop.resolve("shop.json");
        Files.writeString(
                settings,
                Files.readString(settings)
                        .replaceFirst(
                                "\\{", "{\"ledger\": {\"server\": \"lofts.example/ropes\", \"loft\": \"gannet\"},"));
    }
}
