package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ropes of every kind and the splices that lofts make weekly, on the demo loft, by hand. */
final class DemoRopesTest {
    private static final JsonMapper MAPPER = new JsonMapper();

    private final Path folder;

    DemoRopesTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private static String said(String... args) {
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.err());
        return run.out();
    }

    /**
     * 6 mm HMPE: 1,800 + 864 + 155.52; 1,000 + 960; an eye of 120 mm laid flat is 249.5 round: 3,000 - 120 + 249.5 + 450 + 99.
     * 6 mm plait: 1,200 + 360; 6,000 + 138 + 4 x 48 + 150 + 309.5 round the loop. 24 mm hemp, three tucks: 6,500 - 300 + 638.1 +
     * 324 + 144 + 36. 1x19: 8,400 less twice 40. All up to the next 10 mm, wire to the next 5.
     */
    @ParameterizedTest
    @CsvSource({
        "G-2151/1, 2820 mm",
        "G-2151/2, 1960 mm",
        "G-2151/3, 3680 mm",
        "G-2151/4, 1560 mm",
        "G-2151/5, 6790 mm",
        "G-2152/3, 7350 mm",
        "G-2152/4, 8320 mm",
        "G-2152/6, 18000 mm"
    })
    void cutLengths_areThoseWorkedOutByHand(String line, String cut) throws IOException {
        assertEquals(
                cut,
                MAPPER.readTree(said("lengths", "demo-data/gannet-loft", line, "--json"))
                        .path("lines")
                        .path(0)
                        .path("derivations")
                        .path(0)
                        .path("cut")
                        .asText());
    }

    /** What floats, what a construction asks to be minded, and a blend by its shares stand with the reels on the sheet. */
    @Test
    void sheet_saysWhatTheRopesAre() throws IOException {
        Path shop = DemoShop.copy("gannet-loft", folder);
        Path orders = shop.resolve("orders.csv");
        List<String> few = Files.readAllLines(orders).stream()
                .filter(line -> line.startsWith("order,") || line.startsWith("G-2152,"))
                .toList();
        Files.write(orders, few);
        Files.delete(shop.resolve("pins.csv"));
        said("plan", shop.toString(), "--effort", "reproducible");
        String sheet =
                PageText.of(Path.of(said("sheet", shop.toString(), "--all").strip()));
        for (String words : List.of(
                "<span class=\"label\">in water</span> <b>floats</b>",
                "polyester 40 % + polypropylene 60 % 3-strand",
                "steel wire 1x19",
                "1x19 is a single strand",
                "Flag halyard by the loft&#39;s own measure",
                "shrinks up to 10 % when it is first wetted",
                "rope alone 17 kg")) {
            assertTrue(sheet.contains(words) || sheet.contains(words.replace("&#39;", "'")), words);
        }
    }
}
