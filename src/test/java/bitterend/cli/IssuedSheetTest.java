package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet on the bench is cut as it is printed, whatever is planned meanwhile: the same runs, the same order. */
final class IssuedSheetTest {
    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    @BeforeEach
    void issue() throws IOException {
        shop = DemoShop.copy("eider-shed", folder).toString();
        run("stock", "open", shop);
        run("plan", shop, "--effort", "reproducible");
        run("sheet", shop, "--all", "--issue");
    }

    private static Run run(String... args) {
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.err());
        return run;
    }

    /** Of each reel the pieces run by run, as a plan has them. */
    private Map<String, List<List<String>>> cuts(int plan) throws IOException {
        JsonNode document = new ObjectMapper().readTree(Files.readString(Path.of(shop, "plans", plan + ".json")));
        Map<String, List<List<String>>> cuts = new TreeMap<>();
        for (JsonNode draw : document.path("draws")) {
            List<List<String>> runs = new ArrayList<>();
            for (JsonNode run : draw.path("runs")) {
                List<String> pieces = new ArrayList<>();
                run.path("cuts").forEach(cut -> pieces.add(cut.path("piece").asText()));
                runs.add(pieces);
            }
            cuts.put(draw.path("reel").asText(), runs);
        }
        return cuts;
    }

    @Test
    void planMadeAgain_keepsRunsAndOrderOfEverySheet() throws IOException {
        run("plan", shop, "--effort", "reproducible");
        assertEquals(cuts(1), cuts(2));
    }

    /** The run in front of the flaw is gone then, and the runs behind are counted anew. */
    @Test
    void planMadeAfterTheFirstCuts_keepsTheRest() throws IOException {
        List<List<String>> sheet = cuts(1).getOrDefault("E8", List.of());
        run("stock", "post", shop, "--plan", "1", "--piece", sheet.get(0).get(0));
        run("plan", shop, "--effort", "reproducible");
        List<String> left = new ArrayList<>();
        cuts(2).getOrDefault("E8", List.of()).forEach(left::addAll);
        assertEquals(sheet.get(1), left);
        run("stock", "post", shop, "--plan", "1", "--piece", sheet.get(1).get(0));
        run("stock", "verify", shop);
    }

    /** With the number of the later plan the first cut of the sheet books that piece alone. */
    @Test
    void laterNumber_booksWhatTheSheetSays() throws IOException {
        run("plan", shop, "--effort", "reproducible");
        String first = cuts(1).getOrDefault("E8", List.of()).get(0).get(0);
        run("stock", "post", shop, "--plan", "2", "--piece", first);
        String cut = run("stock", "history", shop, "E8").out().replaceAll("\\s+", "");
        assertEquals(2, cut.split("pieceE-32/", -1).length, cut);
    }
}
