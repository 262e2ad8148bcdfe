package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What one person should not lift is marked where it is lifted. The 51 lb (23 kg) is OSHA's, on the NIOSH recommendations;
 * the ropes of the demo shop weigh 0.112 and 0.142 kg a metre.
 */
final class HeavyTest {
    private static final String TWO = ": two people or a hoist";

    private final Path shop;

    HeavyTest(@TempDir Path folder) throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
    }

    private String page(String... options) throws IOException {
        String[] args = new String[options.length + 3];
        args[0] = "sheet";
        args[2] = "--all";
        args[1] = shop.toString();
        System.arraycopy(options, 0, args, 3, options.length);
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.err());
        return PageText.of(Path.of(run.out().strip()));
    }

    private void plan() {
        Run run = Run.of("plan", shop.toString(), "--effort", "reproducible");
        assertEquals(0, run.code(), run.err());
    }

    /** 28.64 m of 0.112 kg/m are 3.208 kg, 62 m 6.944 kg; 6.72 m of 0.142 kg/m are 0.954 kg. */
    @Test
    void heavyPiecesAndReels_areMarkedOnSheetAndTag() throws IOException {
        Files.writeString(
                shop.resolve("splices.json"), "{\"format\": \"bitterend/splices/1\", \"handlingLimit\": \"3 kg\"}");
        plan();
        String sheet = page();
        assertTrue(sheet.contains("3.3 kg" + TWO), "the piece");
        assertTrue(sheet.contains("rope alone 7 kg: a hoist"), "the reel: 4 kg is the limit of two");
        assertFalse(sheet.contains("0.96 kg"), "a light piece");
        String tags = page("--tags");
        assertTrue(tags.contains("3.3 kg" + TWO), "its tag");
        assertFalse(tags.contains("0.96 kg"), "a light piece's tag");
    }

    /** 62 m of 0.112 kg/m are 6.944 kg: beyond one person, within two where a shop says so. */
    @Test
    void shopsOwnLimitOfTwo_isMinded() throws IOException {
        Files.writeString(
                shop.resolve("splices.json"),
                "{\"format\": \"bitterend/splices/1\", \"handlingLimit\": \"3 kg\", \"handlingLimitOfTwo\": \"7 kg\"}");
        plan();
        assertTrue(page().contains("rope alone 7 kg" + TWO), "the reel");
    }

    @Test
    void nothingIsMarkedBelowTheLimitOfTheHandbook() throws IOException {
        massOfTheReel("22.4 kg");
        plan();
        assertFalse(page().contains(TWO), "22.4 kg, and 23 kg is the limit");
        assertFalse(page("--tags").contains(TWO), "tags");
    }

    @Test
    void reelWhoseMassIsStated_isJudgedByIt() throws IOException {
        massOfTheReel("25 kg");
        plan();
        assertTrue(page().contains("25 kg" + TWO), "the reel");
    }

    /** States what reel E7 weighs, of which the day cuts. */
    private void massOfTheReel(String mass) throws IOException {
        Path reels = shop.resolve("reels.csv");
        String text = Files.readString(reels);
        Files.writeString(
                reels,
                text.replaceAll("(?m)^(reel,.*)$", "$1,mass")
                        .replaceAll("(?m)^(E7,.*)$", "$1," + mass)
                        .replaceAll("(?m)^(E(8|9|10),.*)$", "$1,"));
    }
}
