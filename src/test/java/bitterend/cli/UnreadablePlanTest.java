package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan that the shop works by and whose file cannot be read is told of, never passed over. */
final class UnreadablePlanTest {
    @TempDir
    private Path folder = Path.of("");

    private static Run run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), run.err());
        return run;
    }

    @Test
    void everyVerbThatGoesByThePlan_namesTheFileAndWhatIsWrong() throws IOException {
        String shop = DemoShop.copy("eider-shed", folder).toString();
        run(0, "stock", "open", shop);
        run(0, "plan", shop, "--effort", "reproducible");
        run(0, "sheet", shop, "--reel", "E8", "--issue");
        Path file = Path.of(shop, "plans", "1.json");
        String whole = Files.readString(file);
        Files.writeString(file, whole.replace("\"draws\"", "\"drawz\""));
        for (List<String> verb : List.of(
                List.of("orders", shop),
                List.of("plan", shop, "--time", "1s"),
                List.of("plan", shop, "--time", "1s", "--withdraw"),
                List.of("sheet", shop),
                List.of("stock", "short", shop),
                List.of("stock", "post", shop, "--all"))) {
            String told = run(3, verb.toArray(String[]::new)).err().replaceAll("\\s+", " ");
            assertTrue(told.contains("1.json"), told);
            assertTrue(told.contains("draw"), told);
        }
        assertTrue(run(3, "orders", shop).err().replaceAll("\\s+", " ").contains("Put the file back from a copy"));
        Files.writeString(file, whole);
        run(0, "orders", shop);
        Files.delete(file);
        run(0, "plan", shop, "--effort", "reproducible");
    }
}
