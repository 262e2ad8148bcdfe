package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shackles, turnbuckles and links between the ends of a rope and the points that its length is ordered between. */
final class HardwareTest {
    private static final JsonMapper MAPPER = new JsonMapper();

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void shopWithHardware() throws IOException {
        shop = TestShop.in(folder).path();
        Files.writeString(
                shop.resolve("shop.json"),
                """
                {"format": "bitterend/shop/1", "name": "Northgate Loft", "units": "metric", "currency": "EUR",
                 "day": "2026-03-02", "labour": "48 EUR/h", "cutToNearest": {"wire": "1 mm"},
                 "quote": {"parts": [{"item": "shackle SB12", "price": "14 EUR"},
                                     {"item": "master link", "price": "1 EUR"},
                                     {"item": "master link ML16", "price": "61.50 EUR"}]}}
                """);
        Files.writeString(
                shop.resolve("ropes.json"),
                """
                {"format": "bitterend/ropes/1", "ropes": [
                  {"id": "W12", "construction": "wire", "fibre": "steel", "core": "IWRC", "diameter": "12 mm",
                   "lay": "right ordinary", "mass": "0.5 kg/m", "price": "4 EUR/m", "usualReel": "200 m"}]}
                """);
        Files.writeString(
                shop.resolve("reels.csv"),
                """
                reel,rope,lot,length,uncertainty,full
                R-1,W12,A1,180 m,,no
                """);
        Files.writeString(
                shop.resolve("thimbles.json"),
                """
                {"format": "bitterend/thimbles/1", "thimbles": [], "fittings": [], "hardware": [
                  {"id": "SB12", "kind": "shackle", "inside": "48 mm", "tolerance": "1 mm", "mass": "0.38 kg"},
                  {"id": "SB14", "kind": "shackle", "inside": "56 mm", "tolerance": "1 mm", "mass": "0.5 kg"},
                  {"id": "TB12", "kind": "turnbuckle", "closed": "260 mm", "open": "400 mm", "tolerance": "2 mm",
                   "mass": "1.9 kg"},
                  {"id": "ML16", "kind": "master link", "inside": "160 mm", "mass": "1.2 kg"},
                  {"id": "IL13", "kind": "intermediate link", "inside": "90 mm", "mass": "0.5 kg"}]}
                """);
    }

    private void order(String length, String measured, String endA, String endB, String more) throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                "order,line,rope,length,measured,end a,end b,legs,quantity,tolerance,extension\n1,1,W12," + length + ","
                        + measured + "," + endA + "," + endB + "," + more + "\n");
    }

    private static String said(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), run.err() + run.out());
        return (run.out() + run.err()).replaceAll("\\s+", " ");
    }

    private JsonNode line() throws IOException {
        Run run = Run.of("lengths", shop.toString(), "--json");
        assertEquals(0, run.code(), run.err());
        return MAPPER.readTree(run.out()).path("lines").path(0);
    }

    private String cut() throws IOException {
        return line().path("derivations").path(0).path("cut").asText();
    }

    /**
     * By hand: fork and fork of 45 mm each, a shackle of 48 mm and a turnbuckle half open, (260 + 400)/2 = 330 mm. Over all
     * 10,000 - 48 - 330 - 90 = 9,532; to the shackle 9,862; from the shackle to the second end 10,000 - 48 - 90.
     */
    @ParameterizedTest
    @CsvSource({
        "over all, 9532 mm",
        "SB12 to TB12, 9532 mm",
        "shackle to turnbuckle, 9532 mm",
        "shackle to end, 9862 mm",
        "end to turnbuckle, 9580 mm",
        "end to end, 9910 mm"
    })
    void length_runsBetweenAnyTwoNamedPoints(String points, String cut) throws IOException {
        order("10 m", points, "swaged bore 45 mm with SB12", "swaged bore 45 mm with TB12 half open", ",1,,");
        assertEquals(cut, cut());
    }

    /** Steel does not stretch with the rope: (10,000 - 48 - 330)/1.01 - 90 = 9,436.74. */
    @Test
    void hardware_isTakenOffBeforeTheRopeIsSlackAgain() throws IOException {
        order("10 m", "over all", "swaged bore 45 mm with SB12", "swaged bore 45 mm with TB12 half open", ",1,,1 %");
        assertEquals("9437 mm", cut());
    }

    @ParameterizedTest
    @CsvSource({"closed, 9650 mm", "open, 9510 mm", "open 25 %, 9615 mm", "at 300 mm, 9610 mm"})
    void turnbuckle_countsAsFarAsItIsOpen(String setting, String cut) throws IOException {
        order("10 m", "over all", "swaged bore 45 mm", "swaged bore 45 mm with TB12 " + setting, ",1,,");
        assertEquals(cut, cut());
    }

    /** The order alone knows it: its length, what that may be off, its mass. */
    @Test
    void hardware_mayBeTypedInTheOrder() throws IOException {
        String typed = "swaged bore 45 mm with shackle inside 1 7/8 in +/- 1/16 in mass 0.9 lb";
        order("10 m", "over all", typed, "swaged bore 45 mm", ",1,10 mm,");
        JsonNode hung = line().path("hardware").path(0);
        assertEquals("shackle, inside 47.625 mm", hung.path("item").asText());
        assertEquals("1.5875 mm", hung.path("tolerance").asText());
        assertEquals("408 g", hung.path("mass").asText());
        assertTrue(hung.path("inLength").asBoolean());
        assertEquals("9863 mm", cut());
        String page = said(0, "lengths", shop.toString(), "1/1", "--units", "imperial");
        assertTrue(page.contains("end A: shackle -1 7/8 inside length, +/- 1/16 in order"), page);
    }

    /** 20 mm as ordered, 1 of the shackle, 2 of the turnbuckle; 9.532 m of 0.5 kg/m, 0.38 kg and 1.9 kg. */
    @Test
    void tolerancesAndMasses_addUp() throws IOException {
        order("10 m", "over all", "swaged bore 45 mm with SB12", "swaged bore 45 mm with TB12 half open", ",1,20 mm,");
        String page = said(0, "lengths", shop.toString(), "1/1");
        assertTrue(page.contains("Over its hardware: within 23 mm, 20 mm of the rope as ordered and 3 mm"), page);
        assertTrue(page.contains("A finished assembly weighs about 7.1 kg, rope 4.8 kg and hardware 2.3 kg."), page);
        assertTrue(page.contains("end B: turnbuckle TB12 -330 inside length, half open, +/-"), page);
        String inches = said(0, "lengths", shop.toString(), "1/1", "--units", "imperial");
        assertTrue(inches.contains("end B: turnbuckle TB12 -13 inside length, half open,"), inches);
    }

    /** Four legs: one master link, two intermediate links, four shackles; what another line counts is measured alone. */
    @Test
    void links_areCountedForTheLegsThatShareThem() throws IOException {
        order("3 m", "over all", "swaged bore 45 mm with IL13 + ML16", "swaged bore 45 mm with SB12", "4,2,,");
        assertEquals("2612 mm", cut());
        assertPicked("2 master link ML16", "4 intermediate link IL13", "8 shackle SB12");
        order("3 m", "over all", "swaged bore 45 mm with IL13 + shared ML16", "swaged bore 45 mm", "4,2,,");
        assertEquals("2660 mm", cut());
        assertPicked("4 intermediate link IL13");
        assertFalse(quoted().contains("master link"), quoted());
    }

    private void assertPicked(String... items) throws IOException {
        String quote = quoted();
        for (String item : items) {
            String[] words = item.split(" ", 2);
            assertTrue(quote.contains("\"item\": \"" + words[1] + "\", \"rope\": \"\", \"count\": " + words[0]), quote);
        }
        said(0, "plan", shop.toString(), "--time", "1s");
        String sheet = PageText.of(
                Path.of(Run.of("sheet", shop.toString(), "--all").out().strip()));
        for (String item : items) {
            assertTrue(sheet.contains(item.split(" ", 2)[1]), sheet);
        }
    }

    private String quoted() throws IOException {
        Path request = folder.resolve("request.csv");
        Files.writeString(request, Files.readString(shop.resolve("orders.csv")));
        return said(0, "quote", shop.toString(), request.toString(), "--json");
    }

    @Test
    void quote_pricesHardwareAndNamesWhatHasNoPrice() throws IOException {
        order("3 m", "over all", "swaged bore 45 mm with IL13 + ML16", "swaged bore 45 mm with SB12", "4,1,,");
        quoted();
        String page =
                said(0, "quote", shop.toString(), folder.resolve("request.csv").toString());
        assertTrue(page.contains("shackle SB12 4 14.00"), page);
        assertTrue(page.contains("master link ML16 1 61.50"), page);
        assertTrue(page.contains("without a price of its own: ") && page.contains("intermediate link IL13"), page);
    }

    /** What is on it is the splicer's to hang; on the floor the rope alone is measured. */
    @Test
    void card_saysWhatHangsOnIt() throws IOException {
        order("10 m", "over all", "swaged bore 45 mm with SB12", "swaged bore 45 mm with TB12 half open", ",1,20 mm,");
        said(0, "plan", shop.toString(), "--time", "1s");
        String cards = PageText.of(Path.of(
                Run.of("sheet", shop.toString(), "--all", "--cards").out().strip()));
        assertTrue(
                cards.contains(
                        "Hung on end B, from the rope outwards: turnbuckle TB12, half open, inside 330 mm (70 mm to take up,"
                                + " 70 mm to let out)."),
                cards);
        assertTrue(cards.contains("10 m inside of shackle SB12 to inside of turnbuckle TB12, slack and dry"), cards);
        assertTrue(cards.contains("from 9.977 m to 10.023 m"), cards);
        assertTrue(cards.contains("from 9.602 m to 9.642 m"), cards);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "over all|with SB13|end b: found \"SB13\"|did you mean SB12?",
                "over all|with TB12|end b: found \"turnbuckle TB12\"|closed, half open, open, open 30 % or at 320 mm",
                "over all|with TB12 at 500 mm|at 500 mm|from 260 mm closed to 400 mm open",
                "over all|with SB12 open|shackle SB12 open|only a turnbuckle",
                "over all|with shackl inside 48 mm|end b|shackle, hook, ring, swivel",
                "over all|with shackle inside 48|end b|a length with its unit",
                "over all|with shackle|end b|shackle inside 48 mm",
                "over all||measured: found \"over all\"|hardware on an end, such as with SB12",
                "|with SB12|measured|two points, for hardware hangs on an end: over all, end to SB12",
                "hook to end|with SB12|measured: found \"hook\"|a point of end A: end",
                "end to SB13|with SB12|measured: found \"SB13\"|did you mean SB12?",
                "end to shackle|with SB12 + SB14|measured: found \"shackle\"|the id of one of them",
                "over al|with SB12|measured: found \"over al\"|did you mean over all?"
            })
    void badHardware_isLocated(String measured, String with, String found, String expected) throws IOException {
        String end = "swaged bore 45 mm " + (with == null ? "" : with);
        order("10 m", measured == null ? "" : measured, "swaged bore 45 mm", end, ",1,,");
        String told = said(4, "check", shop.toString());
        assertTrue(told.contains("orders.csv, row 2, ") && told.contains(found) && told.contains(expected), told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"id\": \"X\", \"kind\": \"shackle\", \"inside\": \"0\"}|/hardware/0|inside|above 0",
                "{\"id\": \"X\", \"kind\": \"schackle\", \"inside\": \"9 mm\"}|/hardware/0|kind|turnbuckle",
                "{\"id\": \"X\", \"kind\": \"turnbuckle\", \"inside\": \"9 mm\"}|/hardware/0|closed|a length with its unit",
                "{\"id\": \"X\", \"kind\": \"turnbuckle\", \"closed\": \"9 mm\", \"open\": \"8 mm\"}|/hardware/0|open|above closed"
            })
    void badRows_areLocated(String row, String place, String field, String expected) throws IOException {
        Files.writeString(
                shop.resolve("thimbles.json"),
                "{\"format\": \"bitterend/thimbles/1\", \"thimbles\": [], \"fittings\": [], \"hardware\": [" + row
                        + "]}");
        order("10 m", "over all", "swaged bore 45 mm", "swaged bore 45 mm with X", ",1,,");
        String told = said(4, "check", shop.toString());
        assertTrue(told.contains("thimbles.json, " + place + ", " + field + ":") && told.contains(expected), told);
        assertTrue(told.contains("orders.csv, row 2, end b: found \"X\""), told);
    }

    @Test
    void hardware_hangsOnNoBareEnd() throws IOException {
        order("10 m", "over all", "plain with SB12", "swaged bore 45 mm", ",1,,");
        String told = said(4, "check", shop.toString());
        assertTrue(told.contains("end a: found \"plain with hardware\""), told);
    }

    /** The bench measures the rope alone, 9,622 mm, and the note says so; another shackle is another order. */
    @Test
    void measuredRope_isToldFromTheLengthOverHardware() throws IOException {
        order("10 m", "over all", "swaged bore 45 mm with SB12", "swaged bore 45 mm with TB12 half open", ",1,20 mm,");
        said(0, "stock", "open", shop.toString());
        said(0, "stock", "cut", shop.toString(), "R-1", "9.532 m", "--piece", "1/1.1");
        String measured = said(0, "measure", shop.toString(), "1/1.1", "--came-out", "9.614 m", "--how", "pins");
        assertTrue(measured.contains("8 mm shorter than the 9.622 m wanted pin to pin"), measured);
        String note = said(0, "orders", "deliver", shop.toString(), "1");
        assertTrue(note.contains("10 m finished, over all, swaged bore 45 mm with SB12"), note);
        assertTrue(note.contains("Measured is the rope alone"), note);
        assertEquals(
                note.split("Cautions")[0],
                said(0, "orders", "note", shop.toString(), "1").split("Cautions")[0]);
        String json = said(0, "orders", "note", shop.toString(), "1", "--json");
        assertTrue(json.contains("\"between\": \"over all\""), json);
    }

    @Test
    void otherHardware_isAnotherOrder() throws IOException {
        order("10 m", "over all", "swaged bore 45 mm with SB12", "swaged bore 45 mm", ",1,,");
        said(0, "stock", "open", shop.toString());
        said(0, "stock", "cut", shop.toString(), "R-1", "9.862 m", "--piece", "1/1.1");
        order("10 m", "over all", "swaged bore 45 mm with SB14", "swaged bore 45 mm", ",1,,");
        String told = said(0, "orders", shop.toString());
        assertTrue(told.contains("swaged bore 45 mm with SB12 / swaged bore 45 mm when it was cut"), told);
        order("10 m", "shackle to end", "swaged bore 45 mm with SB12", "swaged bore 45 mm", ",1,,");
        assertTrue(said(0, "orders", shop.toString()).contains("when it was cut"), told);
    }
}
