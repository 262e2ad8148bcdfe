package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sling of unequal legs, the stays and the pennant of the demo loft, by hand. */
final class DemoSlingsTest {
    private static final String SHOP = "demo-data/gannet-loft";
    private static final JsonMapper MAPPER = new JsonMapper();

    private static String said(String... args) {
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.err());
        return run.out();
    }

    private static JsonNode line(String line) throws IOException {
        return MAPPER.readTree(said("lengths", SHOP, line, "--json"))
                .path("lines")
                .path(0);
    }

    /**
     * Legs: 90 + 160 + 130 mm of links and hook and two thimbles of 84 mm off 2,000 and 3,225 mm; then twice 222.5989 round a
     * thimble, 457.2 tail and 12.7 take-up, up to the next 5 mm. Stays: 9,420 - 26 - 235 - 41 - 41. Pennant: 8 ft 6 in are
     * 2,590.8 mm, less 36 of the shackle and twice 46; then twice 124.7552 round, 576 tail and 103.68 take-up.
     */
    @ParameterizedTest
    @CsvSource({
        "G-2131/1, 2000 mm, 2840 mm",
        "G-2131/2, 3225 mm, 4065 mm",
        "G-2132/1, 9420 mm, 9080 mm",
        "G-2132/2, 2590.8 mm, 4080 mm"
    })
    void cutLengths_areThoseWorkedOutByHand(String line, String finished, String cut) throws IOException {
        JsonNode order = line(line);
        assertEquals(finished, order.path("finished").asText());
        assertEquals(cut, order.path("derivations").path(0).path("cut").asText());
    }

    /** 1.6 m down and 1.2 or 2.8 m out: 3-4-5, and atan(7/4) = 60.26 degrees, which is to be asked about. */
    @Test
    void unequalLegs_hangEachAtItsOwnAngle() throws IOException {
        assertEquals("36.9", line("G-2131/1").path("hang").path("fromVertical").asText());
        assertEquals("60.3", line("G-2131/2").path("hang").path("fromVertical").asText());
        assertTrue(said("lengths", SHOP, "G-2131/2").contains("ask a qualified rigger"));
    }
}
