package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * README says that gannet-loft shows every column and member of the files a shop writes. Held against the tables of
 * docs/file-formats.md; of ends, constructions and codes the built-in rows show what the loft has no use for.
 */
final class DemoShowsEverythingTest {
    private static final Path LOFT = Path.of("demo-data", "gannet-loft");
    private static final Path BUILT_IN = Path.of("src", "main", "resources", "bitterend");
    private static final Set<String> WITH_BUILT_IN = Set.of("constructions.json", "splices.json", "codes.json");
    /** Files that the program writes, or that a loft has only of an older version. */
    private static final Set<String> NOT_TYPED = Set.of("values.json");

    /** A demo runs where nothing is installed: there is no server that it could name. LedgerOnAServerTest shows these. */
    private static final Set<String> WANTS_A_SERVER = Set.of("ledger", "server", "loft");

    /** Lists that may have any name, by the heading of their columns. */
    private static final Map<String, String> NAMED =
            Map.of("A request for a price", "requests", "A list of reels that came in", "came-in.csv");

    private static final Pattern HEADING = Pattern.compile("## (.*)");
    private static final Pattern FILE = Pattern.compile("[a-z-]+\\.(json|csv)");
    private static final Pattern ROW = Pattern.compile("\\| ((?:`[^`]+`(?:, )?)+) \\|.*");
    private static final Pattern NAME = Pattern.compile("`([^`]+)`");

    @Test
    void gannetLoft_usesEveryColumnAndMember() throws IOException {
        Map<String, Set<String>> asked = described();
        assertTrue(asked.size() >= 12, asked.keySet().toString());
        Map<String, Set<String>> missing = new TreeMap<>();
        for (Map.Entry<String, Set<String>> file : asked.entrySet()) {
            Set<String> left = new TreeSet<>(file.getValue());
            left.removeAll(shown(file.getKey()));
            if (file.getKey().equals("shop.json")) {
                left.removeAll(WANTS_A_SERVER);
            }
            if (!left.isEmpty()) {
                missing.put(file.getKey(), left);
            }
        }
        assertEquals(Map.of(), missing);
    }

    /** The fields of each file, as the page lists them; the rules of codes are values of a field. */
    private static Map<String, Set<String>> described() throws IOException {
        Map<String, Set<String>> fields = new TreeMap<>();
        String file = "";
        for (String line : Files.readAllLines(Path.of("docs", "file-formats.md"))) {
            Matcher heading = HEADING.matcher(line);
            Matcher row = ROW.matcher(line);
            if (heading.matches()) {
                file = NAMED.getOrDefault(heading.group(1), heading.group(1));
            } else if (row.matches() && (FILE.matcher(file).matches() || file.equals("requests"))) {
                Matcher name = NAME.matcher(row.group(1));
                while (name.find()) {
                    fields.computeIfAbsent(file, key -> new TreeSet<>()).add(name.group(1));
                }
            }
        }
        fields.keySet().removeAll(NOT_TYPED);
        return fields;
    }

    private static Set<String> shown(String file) throws IOException {
        Set<String> shown = new TreeSet<>();
        for (Path source : sources(file)) {
            if (source.toString().endsWith(".csv")) {
                columns(source, shown);
            } else {
                members(new ObjectMapper().readTree(source.toFile()), shown);
            }
        }
        return shown;
    }

    private static List<Path> sources(String file) throws IOException {
        // The columns of a workbook are those of a CSV file: WorkbookRequestTest.
        if (file.equals("requests")) {
            try (Stream<Path> requests = Files.list(LOFT.resolve(file))) {
                return requests.filter(request -> !request.toString().endsWith(".xlsx"))
                        .toList();
            }
        }
        List<Path> sources = new ArrayList<>(List.of(LOFT.resolve(file)));
        if (file.equals("thimbles.json")) {
            sources.add(LOFT.resolve("hardware.csv"));
        }
        if (WITH_BUILT_IN.contains(file)) {
            sources.add(BUILT_IN.resolve(file));
        }
        return sources;
    }

    private static void columns(Path table, Set<String> shown) throws IOException {
        try (MappingIterator<Map<String, String>> rows = new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(table.toFile())) {
            rows.forEachRemaining(row -> row.forEach((name, text) -> {
                if (!text.isBlank()) {
                    shown.add(name);
                }
            }));
        }
    }

    /** Names of members; what a rule of a code is called counts, too. */
    private static void members(JsonNode node, Set<String> shown) {
        node.properties().forEach(member -> {
            shown.add(member.getKey());
            if (member.getKey().equals("rule")) {
                shown.add(member.getValue().asText());
            }
        });
        node.forEach(inner -> members(inner, shown));
    }
}
