package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On which of the days ahead rope is short, by rope and day, with those who wait and what would help. */
final class StockShortTest {
    private static final String ORDERS =
            """
            order,line,customer,rope,length,end a,end b,quantity,due,priority
            MON,1,Harbour Board,DB12,30 m,plain,plain,1,2026-03-02,5
            THU,1,Port Pilots,DB12,50 m,plain,plain,2,2026-03-05,5
            """;

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void aWeek() throws IOException {
        shop = TestShop.in(folder).path();
        Files.writeString(shop.resolve("orders.csv"), ORDERS);
        Files.writeString(
                shop.resolve("shop.json"),
                """
                {"format": "bitterend/shop/1", "name": "Northgate Loft", "units": "metric", "currency": "EUR",
                 "day": "2026-03-02", "labour": "48 EUR/h", "horizon": "5 working days"}
                """);
    }

    @Test
    void untilBeforeTheDay_isRefusedAsPlanDoes() {
        for (List<String> verb : List.of(List.of("stock", "short"), List.of("plan"))) {
            List<String> words = new ArrayList<>(verb);
            words.addAll(List.of(shop.toString(), "--day", "2026-03-05", "--until", "2026-03-04"));
            Run run = Run.of(words.toArray(String[]::new));
            assertEquals(2, run.code(), run.out());
            assertTrue(run.err().contains("--until 2026-03-04 is before the day of the plan, 2026-03-05"), run.err());
        }
    }

    @Test
    void shortage_isToldByRopeAndDay_withWhoWaits() throws IOException {
        reels("reel,rope,length\nR1,DB12,85 m\n");
        Run told = asked(4);
        String page = flat(told.out());
        assertTrue(page.contains("Short: DB12 from Thu 2026-03-05 on, 50.0"), page);
        assertTrue(page.contains("THU/1 Port Pilots"), page);
        assertFalse(page.contains("MON/1 Harbour"), page);
        JsonNode days = json(4).get("ropes").get(0).get("days");
        assertEquals("2026-03-02", days.get(0).get("cutBy").asText());
        assertEquals("0 mm", days.get(0).get("shortUpTo").asText());
        assertEquals("2026-03-05", days.get(1).get("cutBy").asText());
        assertEquals("85000 mm", days.get(0).get("there").asText());
        assertEquals("54990 mm", days.get(1).get("there").asText(), "less Monday's 30 m and a cut");
        assertEquals(1, days.get(1).get("undone").size());
        assertEquals(
                "Port Pilots", days.get(1).get("undone").get(0).get("customer").asText());
    }

    @Test
    void metresAreThere_butNoRunTakesThePiece() throws IOException {
        reels("reel,rope,length\nR1,DB12,45 m\nR2,DB12,45 m\nR3,DB12,45 m\n");
        JsonNode day = json(4).get("ropes").get(0).get("days").get(1);
        assertEquals("104990 mm", day.get("there").asText(), "more than is wanted");
        assertEquals(2, day.get("undone").size());
    }

    @Test
    void nothingIsShort_isSaid() throws IOException {
        reels("reel,rope,length\nR1,DB12,185 m\n");
        Run told = asked(0);
        assertTrue(told.out().contains("No rope is short"), told.out());
    }

    @Test
    void ropeThatIsEnoughWithWhatComes_isSaid() throws IOException {
        reels("reel,rope,length\nR1,DB12,130 m\n");
        Files.writeString(shop.resolve("on-order.csv"), "number,rope,length,expected\nP-7,DB12,100 m,2026-03-02\n");
        String page = flat(asked(0).out());
        assertTrue(page.contains("Enough only if what is on order comes in time: DB12."), page);
        reels("reel,rope,length\nR1,DB12,185 m\n");
        assertFalse(flat(asked(0).out()).contains("Enough only"));
    }

    @Test
    void reelsThatWouldHelp_areNamedWithWhatKeepsTheWorkOffThem() throws IOException {
        reels(
                """
                reel,rope,length,state,for order,use by,held
                R1,DB12,35 m,free,,,
                R2,DB12,60 m,on hold,,,
                R3,DB12,60 m,free,,2026-03-01,
                R4,DB12,60 m,reserved,7,,
                R5,DB12,60 m,free,,,55 m for customer Sloop Tern until 2026-03-06
                """);
        String page = flat(asked(4).out());
        for (String help : List.of(
                "R2 is on hold",
                "R3 was to be used by 2026-03-01",
                "R4 is kept for order 7",
                "of reel R5 55.000 m held for customer Sloop Tern until 2026-03-06")) {
            assertTrue(page.contains(help), help + ": " + page);
        }
        JsonNode rope = json(4).get("ropes").get(0);
        assertEquals("40000 mm", rope.get("there").asText(), "R1, and 5 m of R5");
        assertEquals("115000 mm", rope.get("held").asText(), "R4, and 55 m of R5");
        JsonNode day = rope.get("days").get(1);
        assertEquals("9990 mm", day.get("there").asText(), "less Monday's 30 m and a cut");
        assertEquals("115000 mm", day.get("held").asText());
    }

    @Test
    void until_looksNoFurther() throws IOException {
        reels("reel,rope,length\nR1,DB12,35 m\n");
        assertEquals(0, run("--until", "2026-03-03").code());
        assertEquals(4, run("--until", "2026-03-05").code());
    }

    @Test
    void question_writesNothing_andPagesAreWrittenWhereAsked() throws IOException {
        reels("reel,rope,length\nR1,DB12,85 m\n");
        Path page = folder.resolve("short.html");
        assertEquals(
                4,
                run("--html", "" + page, "--pdf", "" + folder.resolve("short.pdf"))
                        .code());
        assertFalse(Files.exists(shop.resolve("plans")));
        String html = Files.readString(page);
        assertTrue(html.contains("<svg") && html.contains("50.0 short"), "the picture of the days");
        assertTrue(Files.size(folder.resolve("short.pdf")) > 1_000);
        assertTrue(run("--units", "imperial").out().contains("164"), "50 m are 164 ft");
    }

    /** What is short is told by the advice, too, by the same verb: on its page, on its papers and to programs. */
    @Test
    void purchasersPage_hasTheForecast() throws IOException {
        reels("reel,rope,length\nR1,DB12,85 m\n");
        Files.writeString(
                shop.resolve("offers.csv"),
                "offer,supplier,rope,length,price\nA,Northquay Cordage,DB12,100 m,196 EUR\n");
        Path page = folder.resolve("buy.html");
        Run buy = Run.of("buy", "" + shop, "--time", "300ms", "--html", "" + page);
        assertTrue(flat(buy.out()).contains("Short: DB12 from Thu 2026-03-05 on, 50.0"), buy.out() + buy.err());
        assertTrue(flat(buy.out()).contains("THU/1 Port Pilots"), buy.out());
        assertTrue(Files.readString(page).contains("50.0 short"), "the picture of the days");
        JsonNode json = new ObjectMapper()
                .readTree(Run.of("buy", "" + shop, "--time", "300ms", "--json").out());
        assertEquals(json(4), json.get("shortage"));
    }

    /** What the days before are cut from is no longer there for a later day; the last line counts the rack as it is. */
    @Test
    void ropeOfADay_isWhatTheDaysBeforeLeave() throws IOException {
        reels("reel,rope,length\nR1,DB12,185 m\n");
        JsonNode rope = json(0).get("ropes").get(0);
        assertEquals("185000 mm", rope.get("there").asText());
        assertEquals("185000 mm", rope.get("days").get(0).get("there").asText());
        assertEquals("154990 mm", rope.get("days").get(1).get("there").asText());
    }

    private void reels(String text) throws IOException {
        Files.writeString(shop.resolve("reels.csv"), text);
    }

    private Run run(String... more) {
        List<String> line = new ArrayList<>(List.of("stock", "short", "" + shop, "--time", "200ms"));
        line.addAll(List.of(more));
        return Run.of(line.toArray(String[]::new));
    }

    private Run asked(int code) {
        Run run = run();
        assertEquals(code, run.code(), run.err() + run.out());
        return run;
    }

    private JsonNode json(int code) throws IOException {
        Run run = run("--json");
        assertEquals(code, run.code(), run.err() + run.out());
        return new ObjectMapper().readTree(run.out());
    }

    private static String flat(String page) {
        return page.replaceAll("\\s+", " ");
    }
}
