package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A reel that goes out of date before its work must be cut is cut in time, and the pages say why. */
final class UseByCommandTest {
    private static final String ORDERS =
            """
            order,line,customer,rope,length,end a,end b,quantity,due
            THU,1,Port Pilots,DB12,50 m,plain,plain,1,2026-03-05
            """;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void reelIsPromisedForItsLastDay_andTheReasonIsSaid() throws IOException {
        String shop = shop("2026-03-03");
        String page = flat(Run.of("plan", shop, "--time", "300ms").out());
        assertTrue(
                page.contains("Cut before its work must be, since it is to be used by then: reel R1, Tue 2026-03-03."),
                page);
        String week = flat(Run.of("show", shop, "week").out());
        assertTrue(week.contains("2026-03-03 R1"), week);
        assertEquals(2, Run.of("sheet", shop, "--day", "2026-03-05").code());
        assertEquals(0, Run.of("sheet", shop, "--day", "2026-03-03").code());
        String told = flat(Run.of("show", shop, "tables").out());
        assertTrue(
                told.contains("Promised for Tue 2026-03-03, the last day of the reel, and planned again by then."),
                told);
    }

    /** Promised for Thursday; then its papers turn out to say Tuesday. */
    @Test
    void lastDayThatIsCorrectedToBeforeThePromise_isToldOf() throws IOException {
        String shop = shop("2026-04-30");
        assertEquals(0, Run.of("stock", "open", shop).code());
        assertEquals(0, Run.of("plan", shop, "--time", "300ms").code());
        assertEquals(
                0,
                Run.of("stock", "correct", shop, "R1", "--use-by", "2026-03-03").code());
        Run sheet = Run.of("sheet", shop, "--all");
        assertEquals(0, sheet.code(), sheet.err());
        String told = PageText.of(Path.of(shop, "sheet.html"));
        assertTrue(
                told.contains("R1 is to be used by 2026-03-03 now, and the plan cuts it on 2026-03-05: cut it by then"),
                told);
        assertEquals(0, Run.of("stock", "post", shop, "--reel", "R1").code());
    }

    private String shop(String useBy) throws IOException {
        Path shop = TestShop.in(folder).path();
        Files.writeString(shop.resolve("orders.csv"), ORDERS);
        Files.writeString(shop.resolve("reels.csv"), "reel,rope,length,use by\nR1,DB12,60 m," + useBy + "\n");
        Files.writeString(
                shop.resolve("shop.json"),
                """
                {"format": "bitterend/shop/1", "name": "Northgate Loft", "units": "metric", "currency": "EUR",
                 "day": "2026-03-02", "labour": "48 EUR/h", "horizon": "5 working days"}
                """);
        return shop.toString();
    }

    private static String flat(String page) {
        return page.replaceAll("\\s+", " ");
    }
}
