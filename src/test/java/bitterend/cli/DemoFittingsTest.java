package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fittings that a shop starts with: in the demo loft each is ordered, picked, priced and drawn on its card. */
final class DemoFittingsTest {
    private static final List<String> ORDERS = List.of("order,", "G-2115,", "G-2116,", "G-2117,", "G-2131,", "G-2132,");

    private final Path shop;

    DemoFittingsTest(@TempDir Path folder) throws IOException {
        shop = DemoShop.copy("gannet-loft", folder);
        Path orders = shop.resolve("orders.csv");
        List<String> few = Files.readAllLines(orders).stream()
                .filter(line -> ORDERS.stream().anyMatch(line::startsWith))
                .toList();
        Files.write(orders, few);
        Files.delete(shop.resolve("pins.csv"));
    }

    private static Run run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), run.err() + run.out());
        return run;
    }

    private String page(String... options) throws IOException {
        String[] args = new String[options.length + 3];
        args[0] = "sheet";
        args[2] = "--all";
        args[1] = shop.toString();
        System.arraycopy(options, 0, args, 3, options.length);
        return PageText.of(Path.of(run(0, args).out().strip()));
    }

    /** One of each kind of fitting, seizing, ring and joint, drawn and marked; the sheet with what is picked for them. */
    @ParameterizedTest
    @ValueSource(strings = {"metric", "imperial"})
    void sheetAndCards_readAsTheGoldenFiles(String units) throws IOException {
        run(0, "plan", shop.toString(), "--effort", "reproducible");
        Golden.check("sheet/fittings-" + units + ".html", unstamped(page("--units", units)));
        Golden.check("sheet/cards-fittings-" + units + ".html", unstamped(page("--cards", "--units", units)));
    }

    /** Without its style, and without when and from what it was made. */
    private String unstamped(String page) {
        return page.replaceAll("(?s)<style>.*?</style>", "<style/>")
                .replaceAll("(?s)<p class=\"made\">Planned.*?</p>", "")
                .replace(shop.toString(), "SHOP");
    }

    @Test
    void everyFitting_isPickedAndDrawn() throws IOException {
        run(0, "plan", shop.toString(), "--time", "1s");
        String sheet = page();
        for (String item : List.of(
                "thimble light-8",
                "thimble heavy-1/2in",
                "thimble TW6",
                "sleeve, for 6 mm rope",
                "fitting spelter-13",
                "fitting wedge-13",
                "wire rope clip, for 12.7 mm rope",
                "wire rope clip for the dead end of a wedge socket, for 12.7 mm rope",
                "seizing wire 3/32 in",
                "whipping twine, 3 m for a stitched eye, for 10 mm rope",
                "seizing stuff for a round seizing of ten turns, 3.5 mm thick",
                "seizing stuff for a flat seizing of ten turns, 3.5 mm thick",
                "seizing stuff for a racking seizing of ten turns, 3.175 mm thick")) {
            assertTrue(sheet.contains(item), item + "\n" + sheet.substring(sheet.indexOf("To pick")));
        }
        String cards = page("--cards");
        for (String made : List.of(
                "wedge socket",
                "poured terminal",
                "clip joint of two wire ropes",
                "wire eye with clips",
                "wire turn-back eye with sleeve",
                "swaged fitting",
                "eye with two round seizings",
                "eye with two flat seizings",
                "eye with two racking seizings",
                "stitched and whipped eye in plaited rope",
                "12-strand bury eye in HMPE, lock stitched")) {
            assertTrue(cards.contains(": " + made + "</h3>"), made);
        }
        assertTrue(cards.contains("Its thimble is from a dealer's sheet of light stainless thimbles"), "card G-2117/3");
        int ends = cards.split("<section class=\"card\">", -1).length - 1;
        assertTrue(cards.split("<svg", -1).length - 1 >= ends - 1, "drawings for " + ends + " cards");
    }

    /** A thimble of the start is used, and told once a day until the shop types its own. */
    @Test
    void thimbleOfTheStart_isToldToBeMeasured() throws IOException {
        String told = run(0, "check", shop.toString()).out().replaceAll("\\s+", " ");
        assertTrue(told.contains("thimble light-8, from a dealer's sheet of light stainless thimbles"), told);
        assertTrue(told.contains("the shop's own measurements in thimbles.json: sheets differ by up to 15 %"), told);
        String lengths = run(0, "lengths", shop.toString(), "G-2117/3").out().replaceAll("\\s+", " ");
        assertTrue(lengths.contains("unverified"), lengths);
        assertTrue(lengths.contains("a dealer's sheet of light stainless thimbles"), lengths);
    }

    @Test
    void fittings_arePriced() throws IOException {
        Path request = shop.resolve("fittings.csv");
        Files.writeString(
                request,
                """
                line,customer,rope,length,end a,end b,quantity,hardware,minutes
                1,yacht Sanderling,W6,3.1 m,wire-sleeve-eye thimble TW6,swaged fork-6,2,9.40 EUR,20 min
                2,yacht Sanderling,W-HALF,7.4 m,wedge-socket bore 82 mm,plain,1,,15 min
                """);
        String inside = words(run(0, "quote", shop.toString(), request.toString(), "--time", "1s"));
        assertTrue(inside.contains("hardware 18.80 9.40"), inside);
        assertTrue(
                inside.contains("without a price of its own: fitting, pin to bore 82 mm, for 12.7 mm rope."), inside);
        assertTrue(
                inside.contains("wire rope clip for the dead end of a wedge socket, for 12.7 mm 1 2.30 rope"),
                () -> "a long name goes on in the next row of the page: " + inside);
    }

    /** Of an order in the book every part has a price of the shop's list; 31.00 + 2.30 and 46.00 + 2 x 0.60 by hand. */
    @Test
    void everyPartThatIsOrdered_hasAPrice() {
        for (String order : List.of("G-2115", "G-2116", "G-2117")) {
            String inside = words(run(0, "quote", shop.toString(), "--order", order, "--time", "1s"));
            assertFalse(inside.contains("without a price of its own"), inside);
            assertTrue(inside.contains("hardware"), inside);
            if (order.equals("G-2115")) {
                assertTrue(inside.contains("hardware 33.30 33.30"), inside);
                assertTrue(inside.contains("hardware 47.20 47.20"), inside);
            }
        }
    }

    private static String words(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    /** Torque is the clip maker's: as typed, with its source, or said to be his. */
    @Test
    void torque_isPrintedAsTyped() throws IOException {
        String maker = run(0, "lengths", shop.toString(), "G-2115/4").out().replaceAll("\\s+", " ");
        assertTrue(maker.contains("torque of the nuts: as the clip maker states"), maker);
        Files.writeString(
                shop.resolve("splices.json"),
                """
                {"format": "bitterend/splices/1", "terminations": [
                  {"id": "wire-sleeve-eye", "allowances": {"tail": {"is": "34 mm"}}},
                  {"id": "seized-eye", "allowances": {"tail": {"is": "16 diameters"}}},
                  {"id": "clip-eye", "clips": {"torque": [
                    {"upTo": "1/2 in", "is": "88 Nm", "source": "sheet of our clips", "grade": "C"},
                    {"upTo": "5/8 in", "is": "129 Nm", "source": "sheet of our clips", "grade": "C"}]}}]}
                """);
        String typed = run(0, "lengths", shop.toString(), "G-2115/4").out().replaceAll("\\s+", " ");
        assertTrue(typed.contains("torque of the nuts: 88 Nm (sheet of our clips)"), typed);
    }

    /** A shank that grows by 3 mm when it is pressed takes 3 mm off the cut; cuts are rounded up to 5 mm. */
    @Test
    void growth_ofAShankComesOffTheCut() throws IOException {
        String before = run(0, "lengths", shop.toString(), "G-2117/1", "--json").out();
        Path thimbles = shop.resolve("thimbles.json");
        Files.writeString(
                thimbles,
                Files.readString(thimbles)
                        .replace("\"pinToBore\": \"46 mm\"", "\"pinToBore\": \"46 mm\", \"growth\": \"3 mm\""));
        String after = run(0, "lengths", shop.toString(), "G-2117/1", "--json").out();
        assertTrue(before.contains("\"amount\": \"-46 mm\""), before);
        assertTrue(after.contains("\"amount\": \"-49 mm\""), after);
    }
}
