package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A flaw is found on a reel after its plan was made: the sheet says where, of what kind, and in which pieces it lies. */
final class FlawInPlanTest {
    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    /** Three of 10 m; the maker's join at 40 m is known to the plan. */
    @BeforeEach
    void planned() throws IOException {
        Path made = TestShop.in(folder).path();
        shop = made.toString();
        Files.writeString(
                made.resolve("orders.csv"),
                """
                order,line,customer,rope,length,end_a,end_b,quantity,due,priority
                1,1,Hollow Quay,DB12,10 m,plain,plain,3,2026-03-06,5
                """);
        Files.writeString(
                made.resolve("reels.csv"),
                "reel,rope,lot,length,full,flaws\nR1,DB12,L1,60 m,no,40 m to 41 m: maker's join\n");
        run("stock", "open", shop);
        run("plan", shop, "--time", "300ms");
    }

    private String run(String... args) {
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.err());
        return run.out();
    }

    private String sheet() throws IOException {
        run("sheet", shop, "--all");
        return PageText.of(Path.of(shop, "sheet.html"));
    }

    /** The pieces in the order in which they come off the reel. */
    private List<String> cuts() throws IOException {
        String sheet = sheet();
        return IntStream.rangeClosed(1, 3)
                .mapToObj(piece -> "1/1." + piece)
                .sorted((one, other) -> Integer.compare(sheet.lastIndexOf(one), sheet.lastIndexOf(other)))
                .toList();
    }

    @Test
    void acrossTwoPieces_namesBoth() throws IOException {
        List<String> cuts = cuts();
        run("stock", "flaw", shop, "R1", "9 m to 12 m: chafed");
        String sheet = sheet();
        assertTrue(sheet.contains("): 9.000 m to 12.000 m, chafed"), sheet);
        assertTrue(
                sheet.contains("reel R1: flaw 9.000 m to 12.000 m, chafed: lies in " + cuts.get(0) + ", " + cuts.get(1)
                        + "; plan again"),
                sheet);
        assertFalse(sheet.contains("maker's join: lies in"), sheet);
        assertTrue(Run.of("show", shop).err().contains(", chafed: lies in " + cuts.get(0) + ", " + cuts.get(1)));
    }

    @Test
    void atOneMark_withItsUncertainty() throws IOException {
        String last = cuts().get(2);
        run("stock", "flaw", shop, "R1", "30.6 m +/- 0.6 m: cut strand");
        String sheet = sheet();
        assertTrue(sheet.contains("flaw 30.600 m +/- 0.600 m, cut strand: lies in " + last + "; plan again"), sheet);
    }

    @Test
    void beyondTheLastPiece_isToldWithItsPlaceAlone() throws IOException {
        run("stock", "flaw", shop, "R1", "50 m: cut strand");
        String sheet = sheet();
        assertTrue(sheet.contains("): 50.000 m, cut strand"), sheet);
        assertFalse(sheet.contains("lies in"), sheet);
    }

    /** Once a piece is off, the mark that is typed is counted from the new end. */
    @Test
    void afterTheFirstPieceIsPosted_isCountedFromTheNewEnd() throws IOException {
        List<String> cuts = cuts();
        run("stock", "post", shop, "--piece", cuts.get(0));
        run("stock", "flaw", shop, "R1", "2 m to 3 m: chafed");
        String sheet = sheet();
        assertTrue(
                sheet.contains("reel R1: flaw 2.000 m to 3.000 m, chafed: lies in " + cuts.get(1) + "; plan again"),
                sheet);
    }

    @Test
    void takenBack_isNotToldAnyMore() throws IOException {
        run("stock", "flaw", shop, "R1", "2 m to 3 m: chafed");
        run("stock", "undo", shop, "3");
        assertFalse(sheet().contains("chafed"));
    }
}
