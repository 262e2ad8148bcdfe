package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rope that nobody is likely to want. */
final class StockIdleTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void shop() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        Files.writeString(
                shop.resolve("history.csv"),
                """
                order,line,customer,rope,quantity,length,end a,end b,due,placed
                H-1,1,sloop,BRAID-12,1,10 m,sealed,sealed,,2025-11-10
                H-2,1,sloop,BRAID-12,1,10 m,sealed,sealed,,2025-11-17
                """);
        Files.writeString(shop.resolve("orders.csv"), "order,line,customer,rope,quantity,length,end a,end b,due\n");
        reels("E1,BRAID-12,9 m,free,,,", "E2,BRAID-12,200 m,free,,,2025-09-01");
    }

    private void reels(String... rows) throws IOException {
        Files.writeString(
                shop.resolve("reels.csv"),
                "reel,rope,length,state,for order,use by,received\n" + String.join("\n", rows) + "\n");
    }

    private Run idle(String... more) {
        List<String> args = new ArrayList<>(List.of("stock", "idle", shop.toString()));
        args.addAll(List.of(more));
        Run run = Run.of(args.toArray(String[]::new));
        assertEquals(0, run.code(), run.out() + run.err());
        return run;
    }

    private static String flat(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    @Test
    void coilOnWhichNothingFits_isIdle_andAReelIsNot() {
        String told = flat(idle());
        assertTrue(told.contains("E1 BRAID-12 9.000 3.12 6.85 no past or ordered piece fits"), told);
        assertFalse(told.contains("E2"), told);
    }

    /** 200 m at some 10 m a week last 20 weeks; what nothing fits on is used by nobody. */
    @Test
    void reelThatLastsTooLong_isIdle_byTheWeeksThatAreAsked() {
        String told = flat(idle("--weeks", "19"));
        assertTrue(told.contains("E2 BRAID-12 200.000 2025-09-01 343.28 49.25 lasts 20 weeks"), told);
        String feet = flat(idle("--weeks", "19", "--units", "imperial"));
        assertTrue(feet.contains("2025-09-01"), "a day stays whole in feet, too: " + feet);
        assertFalse(flat(idle("--weeks", "20")).contains("E2 "));
        String json = idle("--weeks", "19", "--json").out();
        assertTrue(json.contains("\"format\": \"bitterend/idle/1\""), json);
        assertTrue(json.contains("\"weeks\": 20"), json);
    }

    @Test
    void lastDayThatIsPastOrNear_isIdle_reservedRopeIsNot() throws IOException {
        reels(
                "E1,BRAID-12,100 m,free,,2026-03-01,",
                "E2,BRAID-12,100 m,free,,2026-06-01,",
                "E3,BRAID-12,100 m,free,,2026-06-02,",
                "E4,BRAID-12,100 m,reserved,R-1,2026-03-01,");
        String told = flat(idle("--day", "2026-03-02"));
        assertTrue(told.contains("last day was 2026-03-01"), told);
        assertTrue(told.contains("last day is 2026-06-01"), told);
        assertFalse(told.contains("E3") || told.contains("E4"), told);
    }

    /** Interest and room: 12 % a year on the price of the rope, and the room of 52 weeks. */
    @Test
    void keepingIt_costsInterestAndRoom_theDearestFirst() throws IOException {
        Path settings = shop.resolve("shop.json");
        String text = Files.readString(settings);
        Files.writeString(
                settings,
                text.replaceFirst("\"interest\"[^,]*,", "")
                        .replaceFirst("\"room\"[^,]*,", "")
                        .replaceFirst("\\{", "{\"interest\": \"10 %\", \"room\": \"0.50 EUR\", "));
        reels("E1,BRAID-12,9 m,free,,,", "E2,BRAID-12,8 m,free,,,");
        String told = flat(idle());
        // 9 m at 1.85 EUR/m: 1.665 EUR of interest and 26 EUR of room
        assertTrue(told.contains(" 27.66 ") || told.contains(" 27.67 "), told);
        assertTrue(told.indexOf("E1 BRAID") < told.indexOf("E2 BRAID"), told);
    }

    /** Nothing of the rope was ever cut, but 3 pieces of 60 m are booked: one on E1, two on E2, none on E3. */
    @Test
    void reelThatBookedWorkIsCutFrom_isNotIdle_whatIsBeyondItIs() throws IOException {
        Files.writeString(
                shop.resolve("history.csv"), "order,line,customer,rope,quantity,length,end a,end b,due,placed\n");
        reels("E1,BRAID-12,70 m,free,,,", "E2,BRAID-12,150 m,free,,,", "E3,BRAID-12,200 m,free,,,");
        Files.writeString(
                shop.resolve("orders.csv"),
                "order,line,rope,quantity,length,end a,end b,due\nO-1,1,BRAID-12,3,60 m,sealed,sealed,2026-06-01\n");
        String told = flat(idle());
        assertFalse(told.contains("E1 ") || told.contains("E2 "), told);
        assertTrue(told.contains("E3 BRAID-12"), told);
        assertTrue(told.contains("none was ever cut, booked work needs none of it"), told);
    }
}
