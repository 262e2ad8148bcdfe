package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan can be asked for beyond the plan itself. */
final class PlanOptionsTest {
    @TempDir
    private Path folder = Path.of(".");

    @Test
    void explain_saysWhereAPieceIsAndWhatItWouldCostElsewhere() throws IOException {
        Run run = plan("--time", "1s", "--explain", "1002/1.1");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().startsWith("Piece 1002/1.1: off R-10"), run.out());
        assertTrue(run.out().contains("What it would cost elsewhere"), run.out());
    }

    @Test
    void explain_saysWhatAReelCostsByRule() throws IOException {
        Run run = plan("--time", "1s", "--explain", "R-104");
        assertTrue(run.out().startsWith("Reel R-104: "), run.out());
        assertTrue(run.out().contains("What it costs") || run.out().contains("not touched"), run.out());
    }

    @Test
    void explainOfAnUnknownId_isRefusedBeforeAnythingIsPlanned() throws IOException {
        Run run = plan("--explain", "R-999");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("found \"R-999\", expected the id of a piece such as 1001/1.1"), run.err());
        assertFalse(Files.exists(folder.resolve("northgate/plan.json")));
    }

    @Test
    void reproducible_givesTheSameBytesTwice() throws IOException {
        Run first = plan("--effort", "reproducible", "--json");
        Run second = Run.of("plan", folder.resolve("northgate").toString(), "--effort", "reproducible", "--json");
        assertEquals(0, first.code(), first.err());
        assertEquals(first.out(), second.out());
    }

    @Test
    void keep_pinsThePiecesOfAnEarlierPlan() throws IOException {
        TestShop shop = TestShop.in(folder);
        Path kept = folder.resolve("kept.json");
        assertEquals(
                0,
                Run.of("plan", shop.path().toString(), "--time", "1s", "--out", kept.toString())
                        .code());
        shop.with("orders.csv", "1009,1,Port Pilots,DB12,14 m,plain,plain,2,2026-03-03,1");
        Run run = Run.of(
                "plan", shop.path().toString(), "--time", "1s", "--keep", kept.toString(), "--explain", "1001/2.1");
        assertEquals(0, run.code(), run.err());
        assertEquals(0, Run.of("sheet", shop.path().toString()).code());
        assertTrue(run.out().contains("pinned"), run.out());
    }

    @Test
    void keepOfAFileThatIsNoPlan_exitsWithThree() throws IOException {
        Run run = plan("--keep", folder.resolve("northgate/shop.json").toString());
        assertEquals(3, run.code());
        assertTrue(run.err().contains("bitterend/plan/1"), run.err());
    }

    @Test
    void solverConfigWithAnUnknownName_exitsWithThreeAndNamesIt() throws IOException {
        Path config = Files.writeString(
                folder.resolve("mine.xml"),
                "<solver xmlns=\"https://www.optaplanner.org/xsd/solver\"><localSurch/></solver>");
        Run run = plan("--solver-config", config.toString());
        assertEquals(3, run.code());
        assertTrue(run.err().contains("localSurch"), run.err());
    }

    private Run plan(String... options) throws IOException {
        String[] args = new String[options.length + 2];
        args[0] = "plan";
        args[1] = TestShop.in(folder).path().toString();
        System.arraycopy(options, 0, args, 2, options.length);
        return Run.of(args);
    }
}
