package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A reel is counted after its plan was made: the sheet says which cut it does not hold any more. */
final class CountedShortTest {
    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    /** Two of 12 m and one of 9 m, the longest last. */
    @BeforeEach
    void planned() throws IOException {
        Path made = TestShop.in(folder).path();
        shop = made.toString();
        Files.writeString(
                made.resolve("orders.csv"),
                """
                order,line,customer,rope,length,end_a,end_b,quantity,due,priority
                1,1,Hollow Quay,DB12,12 m,plain,plain,2,2026-03-06,5
                2,1,Ferry Co,DB12,9 m,plain,plain,1,2026-03-06,5
                """);
        Files.writeString(made.resolve("reels.csv"), "reel,rope,lot,length,full\nR1,DB12,L1,60 m,no\n");
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

    @Test
    void reelThatStillHoldsAll_isNoMoreThanCounted() throws IOException {
        run("stock", "count", shop, "R1", "40 m");
        String sheet = sheet();
        assertTrue(sheet.contains("which changed its length by"), sheet);
        assertFalse(sheet.contains("too little for"), sheet);
    }

    @Test
    void reelThatIsTooShortNow_namesTheFirstCutThatItDoesNotHold() throws IOException {
        run("stock", "count", shop, "R1", "30 m");
        String sheet = sheet();
        assertTrue(
                Pattern.compile("reel R1: 30\\.000 m of it can be counted on now, too little for [12]/1\\.[12]"
                                + " where the plan has it; plan again")
                        .matcher(sheet)
                        .find(),
                sheet);
    }
}
