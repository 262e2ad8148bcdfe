package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a coil is worth, as a person at the bench meets it: in the plan, on the sheet, by the command {@code value}. */
final class CoilCurveTest {
    private static final Pattern RACK = Pattern.compile("\"rack\": \"([^\"]* mm)\"");

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void copyTheShed() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
    }

    /** Three long coils, a full reel and one piece: the older curve opened the reel, and called it proven best. */
    @Test
    void piece_comesOffACoilAndNotOffTheFullReel() throws IOException {
        Files.writeString(
                shop.resolve("reels.csv"),
                """
                reel,rope,lot,length,known,full
                C56,BRAID-12,1,56 m,metered,no
                C57,BRAID-12,1,57 m,metered,no
                C58,BRAID-12,1,58 m,metered,no
                F,BRAID-12,1,200 m,metered,yes
                """);
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,quantity
                E-1,1,BRAID-12,16 m,1
                """);
        Run plan = plan();
        assertEquals(0, plan.code(), plan.err());
        assertTrue(plan.out().contains("Reel C56"), plan.out());
        assertFalse(plan.out().contains("Reel F"), plan.out());
        assertTrue(plan.out().contains("proven best"), plan.out());
    }

    @Test
    void plan_saysWhyACoilIsKept() {
        String page = plan().out().replaceAll("\\s+", " ");
        assertTrue(
                page.contains("Coils of this rope are kept from 2.200 m on, since no piece that is counted on is so"),
                page);
    }

    @Test
    void value_printsAndDrawsTheDaysCurveAndWritesNothing() throws IOException {
        Path drawn = folder.resolve("value.html");
        Run value = Run.of("value", "" + shop, "--html", "" + drawn);
        assertEquals(0, value.code(), value.err());
        assertTrue(value.out().contains("On the rack this morning: 61.700 m in coils"), value.out());
        assertTrue(Files.readString(drawn).contains("<polyline"), "the curve is drawn");
        assertFalse(Files.exists(shop.resolve("values.json")));
        assertFalse(Files.exists(shop.resolve("plans")));
    }

    /** What was cut in the morning is not on the rack at noon, but coils stay worth what they were. */
    @Test
    void replanOfTheDay_keepsTheMetresOfTheMorning() throws IOException {
        assertEquals(0, Run.of("stock", "open", "" + shop).code());
        assertEquals(0, plan().code());
        String morning = rack(1);
        assertEquals(0, Run.of("stock", "post", "" + shop, "--reel", "E7").code());
        plan();
        assertEquals(morning, rack(2));
        assertEquals(
                0,
                Run.of("plan", "" + shop, "--day", "2030-01-07", "--time", "1s").code() & ~4);
        assertFalse(morning.equals(rack(3)), "another day has another rack");
    }

    /** At noon the rack is another one, but the plans of the day go by the morning's: value says both. */
    @Test
    void value_showsTheCurveThatThePlansOfTheDayGoBy() throws IOException {
        assertEquals(0, plan().code());
        String before = words(Run.of("value", "" + shop, "--json"));
        StringBuilder more = new StringBuilder(Files.readString(shop.resolve("reels.csv")));
        for (int coil = 1; coil <= 40; coil++) {
            more.append("X").append(coil).append(",BRAID-12,7,40 m,,metered,,2026-03-02,no,\n");
        }
        Files.writeString(shop.resolve("reels.csv"), more);
        Run value = Run.of("value", "" + shop, "--rope", "BRAID-12");
        assertTrue(words(value).contains("when the first plan of the day was made: 61.700 m in coils"), value.out());
        assertTrue(words(value).contains("Now: 1661.700 m"), value.out());
        assertEquals(before, words(Run.of("value", "" + shop, "--json")));
        Run tomorrow = Run.of("value", "" + shop, "--rope", "BRAID-12", "--day", "2026-03-03");
        assertTrue(words(tomorrow).contains("On the rack this morning: 1661.700 m"), tomorrow.out());
    }

    @Test
    void value_saysWhatTheCurveRestsOnAndWhyItEndsWhereItDoes() throws IOException {
        assertTrue(words(Run.of("value", "" + shop))
                .contains("shorter ones are scrap, since no piece that is counted on"));
        Files.delete(shop.resolve("history.csv"));
        String fresh = words(Run.of("value", "" + shop));
        assertTrue(fresh.contains("Known from orders in hand and the usual reel, since no past order"), fresh);
        Path ropes = shop.resolve("ropes.json");
        String text = Files.readString(ropes);
        Files.writeString(ropes, text.replaceAll("\"keepFrom\": \"[^\"]*\"", "\"keepFrom\": \"19 km\""));
        String none = words(Run.of("value", "" + shop));
        assertTrue(none.contains("No coil is kept: the shop keeps none below 19000.000 m, and none is so long."), none);
        Files.writeString(ropes, text.replaceFirst("1.85 EUR/m", "999999999 EUR/m"));
        assertEquals(4, Run.of("value", "" + shop).code(), "a rope is left out");
    }

    @Test
    void gate_tellsOfInterestAndCurvesThatWereChangedSince() throws IOException {
        assertEquals(0, plan().code());
        Path settings = shop.resolve("shop.json");
        String text = Files.readString(settings);
        Files.writeString(settings, text.replace("\"labour\"", "\"interest\": \"30 %\", \"labour\""));
        Run changed = Run.of("plan", "" + shop, "--explain", "E-31/1.1");
        assertTrue(changed.err().contains("interest or room of coils was changed"), changed.err());
        Files.writeString(settings, text);
        curve(", \"typed\": \"yes\"");
        Run typed = Run.of("plan", "" + shop, "--explain", "E-31/1.1");
        assertTrue(typed.err().contains("rope BRAID-12: a curve of the shop's own says now"), typed.err());
    }

    private static String words(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    @Test
    void typedCurve_isKeptAndToldWhatItCosts() throws IOException {
        curve(", \"typed\": \"yes\"");
        Run value = Run.of("value", "" + shop, "--from-history", "--scenarios", "4", "--weeks", "4");
        assertEquals(0, value.code(), value.err());
        String page = value.out().replaceAll("\\s+", " ");
        assertTrue(page.contains("The shop typed a curve of its own for this rope, and plans use that one."), page);
        assertTrue(page.contains("By the shop's own curve coils are kept from 5.000 m on. The coil curve would"), page);
        assertTrue(page.contains("in 4 weeks, with an error of"), page);
        assertTrue(Run.of("value", "" + shop, "--json").out().contains("\"keepFromToday\": \"5000 mm\""));
        assertTrue(plan().out()
                .replaceAll("\\s+", " ")
                .contains("By the shop's own curve coils are kept from 5.000 m on."));
    }

    @Test
    void curveThatWasLearnedOnce_isStaleAndNotUsed() throws IOException {
        curve("");
        Run value = Run.of("value", "" + shop);
        assertEquals(0, value.code(), value.err());
        String page = value.out().replaceAll("\\s+", " ");
        assertTrue(page.contains("It is stale, since it knows nothing of the coils that are on the rack today"), page);
        Run check = Run.of("check", "" + shop);
        assertTrue(check.out().contains("values.json, /values/0, typed: found nothing, expected \"yes\""), check.out());
        assertTrue(value.out().contains("the stale"), value.out());
        Run plan = plan();
        assertTrue(plan.out().replaceAll("\\s+", " ").contains("Coils of this rope are kept from"), plan.out());
        assertTrue(plan.err().contains("the curve of BRAID-12 was learned from the past once"), plan.err());
    }

    @Test
    void write_takesStaleCurvesOutAndFreezesNothing() throws IOException {
        Run nothing = Run.of("value", "" + shop, "--write");
        assertEquals(0, nothing.code());
        assertTrue(nothing.err().contains("nothing to write"), nothing.err());
        assertFalse(Files.exists(shop.resolve("values.json")));
        curve("");
        String before = Files.readString(shop.resolve("values.json"));
        assertEquals(0, Run.of("value", "" + shop, "--write").code());
        assertEquals(before, Files.readString(shop.resolve("values.old.json")));
        assertFalse(Files.readString(shop.resolve("values.json")).contains("knots"));
        curve("");
        assertTrue(Run.of("value", "" + shop, "--write").err().contains("values.old-2.json"));
        assertEquals(before, Files.readString(shop.resolve("values.old.json")), "what was kept first");
        assertEquals(before, Files.readString(shop.resolve("values.old-2.json")));
    }

    @Test
    void planWhoseCurveWasChanged_isRefused() throws IOException {
        assertEquals(0, plan().code());
        Path file = shop.resolve("plans").resolve("1.json");
        String text = Files.readString(file);
        Path changed = folder.resolve("changed.json");
        Files.writeString(changed, RACK.matcher(text).replaceFirst("\"rack\": \"1 m\""));
        Run sheet = Run.of("sheet", "" + shop, "--plan", "" + changed);
        assertEquals(3, sheet.code(), sheet.err());
        assertTrue(sheet.err().contains("CURVE at BRAID-12"), sheet.err());
    }

    private Run plan() {
        return Run.of("plan", "" + shop, "--effort", "reproducible", "--time", "1s")
                .withParts("" + shop);
    }

    private String rack(int plan) throws IOException {
        Matcher rack = RACK.matcher(Files.readString(shop.resolve("plans").resolve(plan + ".json")));
        assertTrue(rack.find());
        return rack.group(1);
    }

    private void curve(String mark) throws IOException {
        Files.writeString(
                shop.resolve("values.json"),
                """
                {"format": "bitterend/values/1", "values": [{"rope": "BRAID-12"%s, "knots": [
                  {"length": "5 m", "share": "15 %%"}, {"length": "40 m", "share": "100 %%"}]}]}
                """
                        .formatted(mark));
    }
}
