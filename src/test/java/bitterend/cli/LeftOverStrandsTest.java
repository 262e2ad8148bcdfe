package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Four rings take two pieces of rope and leave the strands of two rings: those are in the pieces, never rope in stock. */
final class LeftOverStrandsTest {
    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    private static Run run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), run.err());
        return run;
    }

    /** A row of the balance, in millimetres. */
    private long millimetres(String row) {
        Matcher found = Pattern.compile("(?m)^" + row + " +([0-9]+)\\.([0-9]{3}) m")
                .matcher(run(0, "stock", "verify", shop).out());
        assertTrue(found.find(), row);
        return Long.parseLong(found.group(1) + found.group(2));
    }

    @Test
    void strandsLeftOfRings_areNoStock() throws IOException {
        Path demo = DemoShop.copy("gannet-loft", folder);
        shop = demo.toString();
        Path orders = demo.resolve("orders.csv");
        String headings = Files.readAllLines(orders).get(0);
        String rings = Files.readAllLines(orders).stream()
                .filter(row -> row.startsWith("G-2116,1,"))
                .findFirst()
                .orElseThrow();
        Files.writeString(orders, headings + "\n" + rings + "\n");
        Files.delete(demo.resolve("pins.csv"));
        run(0, "stock", "open", shop);
        long before = millimetres("on the rack");
        run(0, "plan", shop, "--effort", "reproducible");
        run(0, "stock", "post", shop, "--all");
        long pieces = millimetres("in good pieces");
        assertTrue(pieces > 0, "no ring was cut");
        assertEquals(
                before,
                millimetres("on the rack")
                        + pieces
                        + millimetres("cut loss")
                        + millimetres("scrap: trims, flaws, samples, ends"));
        assertEquals(0, millimetres("in spare pieces"));
    }
}
