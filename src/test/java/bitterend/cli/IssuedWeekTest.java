package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo week is planned again while sheets of it are out: each stays to the millimetre, whatever its pieces could do else. */
final class IssuedWeekTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void copyDemo() throws IOException {
        shop = DemoShop.copy("gannet-loft", folder);
    }

    /** Pieces of a sheet that is out have no other homes any more; they were put in order when they had. */
    @Test
    void everySheetIsOut_andStaysInItsOrder() throws IOException {
        run(4, "plan", shop.toString(), "--time", "1s");
        run(0, "sheet", shop.toString(), "--all", "--issue");
        Map<String, JsonNode> issued = cuts(1);
        run(4, "plan", shop.toString(), "--time", "1s");
        assertEquals(issued, cuts(2));
    }

    @Test
    void sheetOfAReelThatIsHeldInPart_keepsAllItsPieces() throws IOException {
        run(0, "stock", "open", shop.toString());
        run(0, "stock", "reserve", shop.toString(), "0421", "G-2102", "--length", "30 m", "--until", "2026-03-06");
        run(4, "plan", shop.toString(), "--time", "1s");
        run(0, "sheet", shop.toString(), "--reel", "0421", "--issue");
        JsonNode sheet = Objects.requireNonNull(cuts(1).get("0421"));
        assertFalse(sheet.isEmpty());
        run(4, "plan", shop.toString(), "--time", "1s");
        assertEquals(sheet, cuts(2).get("0421"));
        run(0, "stock", "release", shop.toString(), "0421");
        run(4, "plan", shop.toString(), "--time", "1s");
        assertEquals(sheet, cuts(3).get("0421"));
    }

    /** What a plan cuts off the first run of each reel that it cuts, less reels on order: their sheets are never issued. */
    private Map<String, JsonNode> cuts(int plan) throws IOException {
        Map<String, JsonNode> cuts = new TreeMap<>();
        JSON.readTree(shop.resolve("plans/" + plan + ".json").toFile())
                .get("draws")
                .forEach(draw -> cuts.put(draw.get("reel").asText(), draw.findPath("cuts")));
        cuts.keySet().removeIf(reel -> reel.contains(":"));
        return cuts;
    }

    private static void run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), run.err());
    }
}
