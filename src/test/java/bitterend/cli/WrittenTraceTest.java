package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was ordered in feet and half inches is told so as long as the piece is remembered, in either system. */
final class WrittenTraceTest {
    private static final String ENDS = "bury-eye length 14 1/2 in pin 4 in / bury-eye length 14 in pin 4 in";

    private final Path shop;

    WrittenTraceTest(@TempDir Path folder) throws IOException {
        shop = DemoShop.copy("gannet-loft", folder);
        change("PS-HALF,,41 ft 6 in,,bury-eye length 14 in", "PS-HALF,,41 ft 6 1/2 in,,bury-eye length 14 1/2 in");
        run("stock", "open", shop.toString());
        run("stock", "cut", shop.toString(), "0415", "14.275 m", "--piece", "G-2109/2.1");
        change("41 ft 6 1/2 in", "41 ft 7 1/2 in");
    }

    private void change(String from, String to) throws IOException {
        Path orders = shop.resolve("orders.csv");
        Files.writeString(orders, Files.readString(orders).replace(from, to));
    }

    private static String run(String... args) {
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.err());
        return run.out().replaceAll("\\s+", " ");
    }

    @Test
    void changedOrder_isToldAsItWasWritten() {
        String told = "ordered 41 ft 6 1/2 in, " + ENDS + " when it was cut, 41 ft 7 1/2 in, " + ENDS + " now;";
        for (String page : new String[] {
            run("stock", "trace", shop.toString(), "G-2109/2.1", "--units", "imperial"),
            run("orders", shop.toString(), "--units", "imperial")
        }) {
            assertTrue(page.contains(told), page);
        }
    }

    /** 41 ft 6 1/2 in are 12,661.9 mm, 41 ft 7 1/2 in 12,687.3 mm; the loft prints metres behind what was written. */
    @Test
    void changedOrder_isToldInMetresBesides() {
        for (String page :
                new String[] {run("stock", "trace", shop.toString(), "G-2109/2.1"), run("orders", shop.toString())}) {
            assertTrue(
                    page.contains("ordered 41 ft 6 1/2 in (12.662 m), bury-eye length 14 1/2 in (368 mm) pin"), page);
            assertTrue(page.contains("when it was cut, 41 ft 7 1/2 in (12.687 m), bury-eye"), page);
        }
    }
}
