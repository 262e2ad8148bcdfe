package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The week of a plan, for programs and as a page that leads to its sheets. */
final class WeekAnswersTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void planAWeek() throws IOException {
        shop = TestShop.in(folder).path();
        Files.writeString(
                shop.resolve("shop.json"),
                """
                {"format": "bitterend/shop/1", "name": "Northgate Loft", "units": "metric", "currency": "EUR",
                 "day": "2026-03-02", "labour": "48 EUR/h", "horizon": "5 working days",
                 "benchHours": {"monday": "7 h", "tuesday": "7 h", "wednesday": "7 h", "thursday": "7 h"}}
                """);
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,customer,rope,length,end a,end b,quantity,due,priority
                MON,1,Harbour Board,DB12,30 m,plain,plain,1,2026-03-02,5
                WED,1,Port Pilots,DB12,10 m,plain,plain,1,2026-03-04,5
                THU,1,Port Pilots,DB12,90 m,plain,plain,1,2026-03-05,5
                FAR,1,Port Pilots,DB12,400 m,plain,plain,1,2026-03-05,5
                """);
        Files.writeString(shop.resolve("reels.csv"), "reel,rope,length,full\nR1,DB12,45 m,no\n");
        Files.writeString(
                shop.resolve("on-order.csv"), "number,rope,length,quantity,expected\nP-7,DB12,100 m,1,2026-03-03\n");
        Run plan = Run.of("plan", "" + shop, "--effort", "reproducible");
        assertEquals(4, plan.code(), plan.err());
    }

    @Test
    void json_isTheWeek_andNotThePlan() throws IOException {
        Run run = Run.of("show", "" + shop, "week", "--json");
        assertEquals(0, run.code(), run.err());
        JsonNode week = new ObjectMapper().readTree(run.out());
        assertEquals("bitterend/week/1", week.get("format").asText());
        JsonNode monday = week.get("days").get(0);
        assertEquals("2026-03-02", monday.get("day").asText());
        assertEquals(2, monday.get("pieces").asInt());
        assertEquals(1, monday.get("ahead").asInt());
        assertEquals("R1", monday.get("reels").get(0).get("reel").asText());
        assertEquals(2, monday.get("reels").get(0).get("pieces").size());
        JsonNode thursday = week.get("days").get(1);
        assertTrue(thursday.get("reels").get(0).get("onOrder").asBoolean());
        assertEquals("FAR/1.1", thursday.get("undone").get(0).get("piece").asText());
        assertEquals("2026-03-02", week.get("minutes").get(0).get("day").asText());
        assertEquals(420, week.get("minutes").get(0).get("there").asInt());
        assertEquals("P-7", week.get("arrivals").get(0).get("order").asText());
        assertEquals("THU", week.get("risks").get(0).get("order").asText());
        assertEquals(2, week.get("risks").get(0).get("leewayDays").asInt());
        assertFalse(week.has("draws"));
    }

    /** A day leads to its sheets where they were written for this plan; those of an older plan are not led to. */
    @Test
    void daysOfThePage_leadToTheirSheets() throws IOException {
        Path page = Files.createDirectory(folder.resolve("pages of the loft")).resolve("week.html");
        assertFalse(week(page).contains("<a href"), "none are written");
        assertEquals(0, Run.of("sheet", "" + shop).code());
        String html = week(page);
        assertTrue(html.contains("sheet.html\">Sheets of Mon 2026-03-02</a>"), html);
        String address = html.replaceAll("(?s).*<a href=\"([^\"]*)\".*", "$1");
        assertTrue(Files.isRegularFile(page.resolveSibling(address)), address);
        assertEquals(4, Run.of("plan", "" + shop, "--effort", "reproducible").code());
        assertFalse(week(page).contains("<a href"), "these are of plan 1");
    }

    private String week(Path page) throws IOException {
        Run run = Run.of("show", "" + shop, "week", "--html", "" + page);
        assertEquals(0, run.code(), run.err());
        return Files.readString(page);
    }
}
