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

/** Legs of slings: their length from height and spread and back, their angles, unequal legs, how they are matched. */
final class HangingLegsTest {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final String LINK = "swaged bore 45 mm with IL13 + ML16";

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void shopWithLinks() throws IOException {
        shop = TestShop.in(folder).path();
        Files.writeString(
                shop.resolve("ropes.json"),
                """
                {"format": "bitterend/ropes/1", "ropes": [
                  {"id": "W12", "construction": "wire", "fibre": "steel", "core": "IWRC", "diameter": "12 mm",
                   "lay": "right ordinary", "mass": "0.5 kg/m", "price": "4 EUR/m", "usualReel": "200 m",
                   "cutToNearest": "1 mm"}]}
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
                  {"id": "ML16", "kind": "master link", "inside": "160 mm", "mass": "1.2 kg"},
                  {"id": "IL13", "kind": "intermediate link", "inside": "90 mm", "mass": "0.5 kg"}]}
                """);
    }

    private void lines(String... rows) throws IOException {
        StringBuilder text = new StringBuilder(
                "order,line,rope,length,measured,hang,end a,end b,legs,set,match,use,set tolerance\n");
        int line = 1;
        for (String row : rows) {
            text.append("7,").append(line++).append(",W12,").append(row).append('\n');
        }
        Files.writeString(shop.resolve("orders.csv"), text.toString());
    }

    private static String said(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), run.err() + run.out());
        return (run.out() + run.err()).replaceAll("\\s+", " ");
    }

    private JsonNode line(int number) throws IOException {
        Run run = Run.of("lengths", shop.toString(), "--json");
        assertEquals(0, run.code(), run.err());
        return MAPPER.readTree(run.out()).path("lines").path(number - 1);
    }

    /** 3-4-5, and a square of angles: each way of saying it is the same leg of 5 m, 4 m high and 3 m out. */
    @ParameterizedTest
    @CsvSource({
        ",height 4 m; spread 6 m",
        ",spread 6 m; height 4 m",
        ",height 4 m; out 3 m",
        ",height 4 m; spread 3600 mm by 4.8 m",
        "5 m,height 4 m",
        "5 m,out 3 m",
        "5 m,spread 6 m"
    })
    void length_followsFromHeightAndSpread_andBack(String length, String hang) throws IOException {
        lines((length == null ? "" : length) + ",over all," + hang + "," + LINK + ",swaged bore 45 mm,4,,,lifting,");
        JsonNode leg = line(1);
        assertEquals("5000 mm", leg.path("finished").asText());
        // by hand: 5,000 - 90 - 160 - 45 - 45
        assertEquals("4660 mm", leg.path("derivations").path(0).path("cut").asText());
        JsonNode hung = leg.path("hang");
        assertEquals(hang, hung.path("stated").asText());
        assertEquals("4000 mm", hung.path("height").asText());
        assertEquals("6000 mm", hung.path("spread").asText());
        assertEquals("36.9", hung.path("fromVertical").asText());
        assertEquals("73.8", hung.path("included").asText());
        assertEquals("53.1", hung.path("fromHorizontal").asText());
    }

    /** 60 from the vertical, 120 included and 30 from the horizontal are one angle, and still no wide one. */
    @ParameterizedTest
    @CsvSource({
        "60 degrees from the vertical",
        "120 degrees included",
        "30 degrees from the horizontal",
        "height 1500 mm"
    })
    void anglesOfThreeKinds_areOne(String angle) throws IOException {
        lines("3 m,over all," + angle + "," + LINK + ",swaged bore 45 mm,2,,,lifting,");
        JsonNode hung = line(1).path("hang");
        assertEquals("60.0", hung.path("fromVertical").asText());
        assertEquals("120.0", hung.path("included").asText());
        assertEquals("30.0", hung.path("fromHorizontal").asText());
        assertEquals("1500 mm", hung.path("height").asText());
        assertFalse(said(0, "check", shop.toString()).contains("qualified rigger"));
    }

    @Test
    void legAboveSixtyDegrees_sendsToAQualifiedRigger() throws IOException {
        lines("3 m,over all,60.01 degrees from the vertical," + LINK + ",swaged bore 45 mm,2,,,lifting,");
        String told = said(0, "check", shop.toString());
        assertTrue(
                told.contains("warning: orders.csv, row 2, hang: a leg 60.1 degrees from the vertical, 29.9 from"
                        + " the horizontal, 120.1 included between opposite legs; wanted: at most 60 degrees from the"
                        + " vertical, 120 included, 30 from the horizontal: ask a qualified rigger"),
                told);
        assertTrue(said(0, "lengths", shop.toString(), "7/1").contains("ask a qualified rigger"));
        said(0, "plan", shop.toString(), "--time", "1s");
        String cards = PageText.of(Path.of(
                Run.of("sheet", shop.toString(), "--all", "--cards").out().strip()));
        assertTrue(cards.contains("ask a qualified rigger"), cards);
    }

    /** Two pairs of unequal legs, lines of their own, from one master link: two links, one of them counted. */
    @Test
    void unequalLegs_areLinesOfTheirOwn() throws IOException {
        lines(
                ",over all,height 4 m; out 3 m," + LINK + ",swaged bore 45 mm,2,S7,lot,lifting,10 mm",
                ",over all,height 3 m; out 4.2 m,swaged bore 45 mm with IL13 + shared ML16,swaged bore 45 mm,2,S7,lot,"
                        + "lifting,10 mm");
        assertEquals("5000 mm", line(1).path("finished").asText());
        // sqrt(9 + 17.64) = 5.16140 m
        assertEquals("5162 mm", line(2).path("finished").asText());
        assertEquals("54.5", line(2).path("hang").path("fromVertical").asText());
        assertEquals("1", line(1).path("hardware").path(1).path("count").asText());
        assertEquals("0", line(2).path("hardware").path(1).path("count").asText());
        String page = said(0, "lengths", shop.toString(), "7/2");
        assertTrue(page.contains("Each leg is worked out by itself"), page);
        assertTrue(page.contains("its length is worked out from height 3 m; out 4.2 m"), page);
        assertTrue(page.contains("Matched at the bench: measure the first leg when it is made"), page);
        assertTrue(page.contains("each with its own ordered length."), page);
        String inches = said(0, "lengths", shop.toString(), "7/2", "--units", "imperial");
        assertTrue(inches.contains("spans 9 ft 10 1/8 in and reaches 13 ft 9 3/8 in out"), inches);
    }

    @Test
    void legsWithoutAngle_areNotTakenForChecked() throws IOException {
        lines("3 m,pin to pin,,swaged bore 45 mm,swaged bore 45 mm,4,,,lifting,");
        String page = said(0, "lengths", shop.toString(), "7/1");
        assertTrue(page.contains("Angle of the legs not checked, no height and spread stated"), page);
        assertTrue(page.contains("how near they must come is not stated (set tolerance)"), page);
    }

    @Test
    void quote_saysHowItsLegsHang() throws IOException {
        lines(",over all,height 1 m; spread 4 m," + LINK + ",swaged bore 45 mm,4,,,lifting,");
        Path request = folder.resolve("request.csv");
        Files.copy(shop.resolve("orders.csv"), request);
        String page = said(0, "quote", shop.toString(), request.toString());
        assertTrue(
                page.contains("legs 63.5 degrees from the vertical, 26.5 from the horizontal, above 60 degrees: ask a"
                        + " qualified rigger"),
                page);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "|height 4 m|not more, and not less",
                "5 m|height 4 m; spread 6 m|not more, and not less",
                "|height 4 m; height 3 m|with a semicolon between them",
                "|height 4; spread 6 m|a length with its unit",
                "5 m|height 6 m|not above the length of the leg",
                "5 m|spread 10 m|a leg that spans some height",
                "5 m|90 degrees from the vertical|below 90 degrees from the vertical",
                "5 m|180 degrees included|below 180 included",
                "5 m|0 degrees from the horizontal|above 0 from the horizontal",
                "|0 degrees from the vertical; out 1 m|reaches nowhere out",
                "|0.001 degrees from the vertical; out 1000 m|a leg of at most 1000 m",
                "5 m|45 degrees|with a semicolon between them",
                "5 m|hieght 4 m|two of height 2.4 m"
            })
    void badTriangles_areLocated(String length, String hang, String expected) throws IOException {
        lines((length == null ? "" : length) + ",over all," + hang + "," + LINK + ",swaged bore 45 mm,4,,,,");
        String told = said(4, "check", shop.toString());
        assertTrue(told.contains("orders.csv, row 2, hang: found \"" + hang + "\"") && told.contains(expected), told);
    }

    /** Three points 10 ft apart lie 5.77 ft out, not 5: a spread is between opposite points. */
    @Test
    void spreadOfThreeLegs_isRefused() throws IOException {
        lines(",over all,height 13 ft; spread 10 ft," + LINK + ",swaged bore 45 mm,3,,,,");
        String told = said(4, "check", shop.toString());
        assertTrue(
                told.contains("orders.csv, row 2, hang: found \"height 13 ft; spread 10 ft\", expected out 1.8 m"),
                told);
    }

    /** Height and spread run from the outermost bearings: a length that leaves hardware out is no side of that triangle. */
    @Test
    void legThatIsMeasuredShort_isRefused() throws IOException {
        lines("5 m,IL13 to end,height 4 m," + LINK + ",swaged bore 45 mm,4,,,,");
        String told = said(4, "check", shop.toString());
        assertTrue(told.contains("hang: found \"height 4 m\", expected a length over all its hardware"), told);
    }

    @Test
    void lineWithoutLengthAndHang_isRefusedAtItsLength() throws IOException {
        lines(",pin to pin,,swaged bore 45 mm,swaged bore 45 mm,,,,,");
        assertTrue(said(4, "check", shop.toString()).contains("orders.csv, row 2, length: found nothing"));
    }

    /** A master link that each line leaves to another is fetched by nobody. */
    @Test
    void linkThatNoLineCounts_isWarnedOf() throws IOException {
        String shared = "5 m,over all,,swaged bore 45 mm with shared ML16,swaged bore 45 mm,2,,,,";
        lines(shared);
        String told = said(0, "check", shop.toString());
        assertTrue(
                told.contains("orders.csv, row 2, end a: found \"shared ML16\", expected a line of the same order that"
                        + " counts it"),
                told);
        String quoted =
                said(0, "quote", shop.toString(), shop.resolve("orders.csv").toString());
        assertTrue(quoted.contains("a line of the same order that counts it"), quoted);
        lines(shared, "5 m,over all,,swaged bore 45 mm with ML16,swaged bore 45 mm,2,,,,");
        assertFalse(said(0, "check", shop.toString()).contains("shared ML16"));
    }
}
