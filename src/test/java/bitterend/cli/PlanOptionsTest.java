package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a plan can be asked for beyond the plan itself. */
final class PlanOptionsTest {
    @TempDir
    private Path folder = Path.of(".");

    @Test
    void explain_saysWhereAPieceIsAndWhatItWouldCostElsewhere() throws IOException {
        Run run = explained("1002/1.1");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().startsWith("Piece 1002/1.1: off R-10"), run.out());
        assertTrue(run.out().contains("What it would cost elsewhere"), run.out());
    }

    @Test
    void explain_saysWhatAReelCostsByRule() throws IOException {
        Run run = explained("R-104");
        assertTrue(run.out().startsWith("Reel R-104: "), run.out());
        assertTrue(run.out().contains("What it costs") || run.out().contains("not touched"), run.out());
    }

    @Test
    void explainOfAnUnknownId_isRefusedWithAnExample() throws IOException {
        Run run = explained("R-999");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("found \"R-999\", expected the id of a piece such as 1001/1.1"), run.err());
    }

    @Test
    void explainWhereNothingIsPlanned_saysSoAndPlansNothing() throws IOException {
        Run run = plan("--explain", "1001/1.1");
        assertEquals(3, run.code());
        assertTrue(run.err().contains("there is no plan yet: make one first with bitterend plan " + folder), run.err());
        assertFalse(Files.exists(folder.resolve("northgate/plans")));
    }

    @Test
    void explainAsJson_isTheAnswerAndNotThePlan() throws IOException {
        assertTrue(explained("1002/1.1", "--json").out().contains("\"bitterend/explain/1\""));
        assertTrue(explained("R-104", "--json").out().contains("\"bitterend/explain/1\""));
    }

    @Test
    void bothQuestionsAsJson_areRefusedAsTwoDocuments() throws IOException {
        Run run = explained("R-104", "--shares", "--json");
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertTrue(run.err().contains("--explain and --shares are two answers, and --json prints one"), run.err());
        Run forPeople = plan("--explain", "R-104", "--shares");
        assertEquals(0, forPeople.code(), forPeople.err());
        assertTrue(forPeople.out().contains("What each order caused"), forPeople.out());
    }

    @Test
    void questionAndPlanningInOne_isRefused() throws IOException {
        assertEquals(2, plan("--explain", "1001/1.1", "--from", "1").code());
        assertEquals(
                2,
                plan("--shares", "--out", folder.resolve("x.json").toString()).code());
    }

    @Test
    void reproducible_givesTheSameBytesOnAnyNumberOfThreads() throws IOException {
        Path one = folder.resolve("one.json");
        Path four = folder.resolve("four.json");
        assertEquals(
                0,
                plan("--effort", "reproducible", "--threads", "1", "--out", one.toString())
                        .code());
        assertEquals(
                0,
                plan("--effort", "reproducible", "--threads", "4", "--out", four.toString())
                        .code());
        assertEquals(Files.readString(one), Files.readString(four));
        Run none = plan("--threads", "0");
        assertEquals(2, none.code());
        assertTrue(none.err().contains("expected a number of threads from 1 to 1000"), none.err());
    }

    @Test
    void reproducible_givesTheSameBytesTwice() throws IOException {
        Path one = folder.resolve("one.json");
        Path two = folder.resolve("two.json");
        Run first = plan("--effort", "reproducible", "--json", "--out", one.toString());
        Run second = plan("--effort", "reproducible", "--out", two.toString());
        assertEquals(0, first.code(), first.err());
        assertEquals(0, second.code(), second.err());
        assertEquals(first.out(), Files.readString(one));
        assertEquals(Files.readString(one), Files.readString(two));
    }

    @Test
    void keep_pinsThePiecesOfAnEarlierPlan() throws IOException {
        TestShop shop = TestShop.in(folder);
        String path = shop.path().toString();
        Path kept = folder.resolve("kept.json");
        assertEquals(
                0,
                Run.of("plan", path, "--time", "1s", "--out", kept.toString()).code());
        shop.with("orders.csv", "1009,1,Port Pilots,DB12,14 m,plain,plain,2,2026-03-03,1");
        assertEquals(
                0,
                Run.of("plan", path, "--time", "1s", "--keep", kept.toString()).code());
        assertEquals(0, Run.of("plan", path, "--time", "1s", "--keep", "1").code());
        Run run = Run.of("plan", path, "--explain", "1001/2.1");
        assertEquals(0, run.code(), run.err());
        assertEquals(0, Run.of("sheet", path).code());
        assertTrue(run.out().contains("pinned"), run.out());
    }

    @Test
    void keepOfAFileThatIsNoPlan_exitsWithThree() throws IOException {
        Run run = plan("--keep", folder.resolve("northgate/shop.json").toString());
        assertEquals(3, run.code());
        assertTrue(run.err().contains("bitterend/plan/2"), run.err());
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

    private String shop() throws IOException {
        Path shop = folder.resolve("northgate");
        return (Files.exists(shop) ? shop : TestShop.in(folder).path()).toString();
    }

    private Run explained(String id, String... more) throws IOException {
        assertEquals(0, plan("--time", "1s").code());
        String[] args = {"plan", folder.resolve("northgate").toString(), "--explain", id};
        return Run.of(Stream.concat(Stream.of(args), Stream.of(more)).toArray(String[]::new));
    }

    private Run plan(String... options) throws IOException {
        String[] args = new String[options.length + 2];
        args[0] = "plan";
        args[1] = shop();
        System.arraycopy(options, 0, args, 2, options.length);
        return Run.of(args);
    }
}
