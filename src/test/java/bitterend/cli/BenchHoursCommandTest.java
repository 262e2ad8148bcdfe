package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a plan asks of the bench. The small demo loft cuts the halyard and the sheets on Tuesday the 3rd: three eyes of 60 min,
 * in this test; the four dock lines on Friday the 6th, the three lanyards with them.
 */
final class BenchHoursCommandTest {
    private static final String ENDS =
            """
            {"format": "bitterend/splices/1", "terminations": [
              {"id": "double-braid-eye", "minutes": 60}, {"id": "three-strand-eye", "minutes": 30}]}
            """;

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void copyDemo() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        Files.writeString(shop.resolve("splices.json"), ENDS);
    }

    private void hours(String members) throws IOException {
        Path file = shop.resolve("shop.json");
        Files.writeString(file, Files.readString(file).replace("\"labour\"", members + ", \"labour\""));
    }

    private static Run run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), run.err());
        return run;
    }

    /** Tuesday: one reel, 4 min; three cuts, 9 min; three eyes, 180 min; in 2 h 30 min, and nobody there before. */
    @Test
    void dayThatIsTooFull_isSaidOnTheScreenAndDayByDay() throws IOException {
        hours("\"benchHours\": {\"tuesday\": \"2.5 h\", \"friday\": \"2 h 30 min\"}");
        String screen =
                run(0, "plan", shop.toString(), "--effort", "reproducible").out();
        assertTrue(screen.contains("Tue 2026-03-03 is too full by 43 min, of 2 h 30 min there."), screen);
        assertTrue(flat(screen).contains("Due then and not done: E-31/2."), screen);
        String week = run(0, "show", shop.toString(), "week").out();
        assertTrue(
                Pattern.compile("Tue 2026-03-03 +2:30 +0:04 +0:09 +2:17 +0:43")
                        .matcher(week)
                        .find(),
                week);
        assertTrue(flat(week).contains("Not counted, since no minutes are stated: sealed, 3 pieces; whipped, 7"), week);
    }

    /** Of the 193 min of Tuesday 120 are done on Monday. */
    @Test
    void dayThatIsTooFull_hasItsReelBroughtForward() throws IOException {
        hours("\"benchHours\": {\"monday\": \"2 h\", \"tuesday\": \"2.5 h\", \"friday\": \"2 h 30 min\"}");
        run(0, "stock", "open", shop.toString());
        String screen =
                run(0, "plan", shop.toString(), "--effort", "reproducible").out();
        assertTrue(screen.contains("Brought forward to today, since the bench is full later: E7."), screen);
        assertFalse(screen.contains("too full"), screen);
        assertTrue(
                Pattern.compile("today +hook 1 +E7 +BRAID-12").matcher(screen).find(), screen);
        String week = run(0, "show", shop.toString(), "week").out();
        assertTrue(week.contains("Brought forward to today, since the bench is full later: E7."), week);
        assertTrue(Pattern.compile("Mon 2026-03-02, today +1 +3").matcher(week).find(), week);
        assertTrue(Files.readString(shop.resolve("plans/1.json")).contains("\"cutOn\""));
        run(0, "stock", "post", shop.toString(), "--all");
        assertTrue(run(0, "orders", shop.toString()).out().contains("cut"));
    }

    /** Two sheets with an eye of 60 min each in days of 90 min: two days, so they are cut on the working day before. */
    @Test
    void lineThatFillsDays_isCutSoMuchEarlier() throws IOException {
        hours("\"benchHours\": {\"monday\": \"1 h 30 min\", \"tuesday\": \"1.5 h\"}");
        String screen =
                run(0, "plan", shop.toString(), "--effort", "reproducible").out();
        assertTrue(
                Pattern.compile("today +hook 1 +E7 +BRAID-12").matcher(screen).find(), screen);
    }

    @Test
    void hoursThatCannotBeRead_areSaidWithTheirMember() throws IOException {
        hours("\"benchHours\": {\"monday\": \"90 min\", \"sunday\": \"1 h\"}, \"benchMinutes\": {\"cut\": \"long\"}");
        String told = flat(run(3, "plan", shop.toString()).err());
        assertTrue(told.contains("/benchHours, monday: found \"90 min\", expected the hours of all people"), told);
        assertTrue(told.contains("/benchMinutes, cut: found \"long\", expected minutes, such as 3 min"), told);
        assertTrue(told.contains("sunday"), told);
    }

    @Test
    void shopThatStatesNoHours_isToldNothing() {
        assertFalse(run(0, "plan", shop.toString(), "--effort", "reproducible")
                .out()
                .contains("too full"));
        assertFalse(run(0, "show", shop.toString(), "week").out().contains("Bench hours"));
    }

    private static String flat(String page) {
        return page.replaceAll("\\s+", " ");
    }
}
