package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code calibrate} from the outside. */
final class CalibrateCommandTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void aShopWithEyes() throws IOException {
        shop = TestShop.in(folder)
                .with("orders.csv", "1003,1,Port Pilots,DB12,10 m,double-braid-eye perimeter 600 mm,plain,10,,")
                .path();
        measured("10721 mm", "10723 mm", "10725 mm", "10722 mm", "10724 mm", "11723 mm");
    }

    @Test
    void calibrate_tellsTheFitTheOutlierAndTheEffect() {
        Run run = Run.of("calibrate", shop.toString());
        assertEquals(0, run.code(), run.err());
        Golden.check("cli/calibrate.txt", run.out());
        run.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        assertFalse(Files.exists(shop.resolve("splices.json")));
    }

    @Test
    void calibrateInInches_isTheSamePage() {
        Run run = Run.of("calibrate", shop.toString(), "--units", "imperial");
        assertEquals(0, run.code(), run.err());
        Golden.check("cli/calibrate-imperial.txt", run.out());
        run.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }

    @Test
    void calibrateAsJson_isForPrograms() {
        Run run = Run.of("calibrate", shop.toString(), "--json");
        assertTrue(run.out().contains("\"format\": \"bitterend/calibration/1\""), run.out());
        assertTrue(run.out().contains("\"outliers\": [\n        \"M6\"\n      ]"), run.out());
    }

    @Test
    void calibrateWrite_changesTheLengthsFromThenOn() {
        assertEquals(0, Run.of("calibrate", shop.toString(), "--write").code());
        Run lengths = Run.of("lengths", shop.toString(), "1003/1");
        assertTrue(lengths.out().contains("calibrated on 5 measured assemblies"), lengths.out());
        assertEquals(0, Run.of("calibrate", shop.toString(), "--write").code());
        assertTrue(Files.exists(shop.resolve("splices.json.old")));
    }

    @Test
    void badRow_isLeftOutAndTheRestIsLearned() throws IOException {
        measured("10721 mm", "10723 mm", "10725 mm", "ten metres");
        Run run = Run.of("calibrate", shop.toString(), "--write");
        assertEquals(4, run.code(), run.err());
        assertTrue(run.err().contains("left out: measured.csv, row 5, cut: found \"ten metres\""), run.err());
        assertTrue(Files.readString(shop.resolve("splices.json")).contains("calibrated on 3 measured assemblies"));
    }

    /** Once the shop has measured an end on a rope nobody is told to splice one first. */
    @Test
    void calibratedEnd_isVerifiedOnItsRope() {
        String first = "splice and measure one before cutting";
        assertTrue(Run.of("check", shop.toString()).err().contains(first)
                || Run.of("check", shop.toString()).out().contains(first));
        Run.of("calibrate", shop.toString(), "--write");
        Run after = Run.of("check", shop.toString());
        assertFalse((after.out() + after.err()).contains(first), after.out() + after.err());
    }

    /** Two ends of 30 and 10 minutes share 80 as 60 and 20; a third assembly is booked without minutes. */
    @Test
    void minutes_areSharedByThoseThatAreSet() throws IOException {
        Files.writeString(
                shop.resolve("splices.json"),
                """
                {"format": "bitterend/splices/1", "terminations": [
                  {"id": "double-braid-eye", "minutes": 30}, {"id": "whipped", "minutes": 10}]}
                """);
        String head = "id,rope,end a,end b,cut,finished,splicer,minutes\n";
        String row = "%s,DB12,double-braid-eye perimeter 600 mm,%s,10722 mm,10 m,%s,%s\n";
        Files.writeString(
                shop.resolve("measured.csv"),
                head
                        + row.formatted("M1", "whipped", "Jansen", "80")
                        + row.formatted("M2", "whipped", "Okafor", "40 min")
                        + row.formatted("M3", "whipped", "Okafor", "")
                        + row.formatted("M4", "plain", "Okafor", "51"));
        String told = Run.of("calibrate", shop.toString()).out();
        assertTrue(told.matches("(?s).*double-braid-eye +DB12 +3 +47 +30\n.*"), told);
        assertTrue(told.matches("(?s).*whipped +DB12 +2 +15 +10\n.*"), told);
        String json = Run.of("calibrate", shop.toString(), "--json").out().replaceAll("\\s+", " ");
        assertTrue(json.contains("\"ends\": 3, \"mean\": 47, \"set\": 30"), json);
        String one = Run.of("calibrate", shop.toString(), "--splicer", "Jansen").out();
        assertTrue(one.matches("(?s).*double-braid-eye +DB12 +1 +60 +30\n.*"), one);
        Files.delete(shop.resolve("splices.json"));
        String none = Run.of("calibrate", shop.toString()).out();
        assertTrue(none.matches("(?s).*double-braid-eye +DB12 +3 +37 +none\n.*"), none);
        assertTrue(none.matches("(?s).*whipped +DB12 +2 +30 +none\n.*"), none);
    }

    @Test
    void oneSplicer_isLearnedFromAlone() {
        assertEquals(
                0, Run.of("calibrate", shop.toString(), "--splicer", "Jansen").code());
        Run nobody = Run.of("calibrate", shop.toString(), "--splicer", "Janssen");
        assertEquals(3, nobody.code());
        assertTrue(nobody.err().contains("did you mean Jansen?"), nobody.err());
    }

    @Test
    void tooFewAssemblies_areNotFitted() throws IOException {
        measured("10721 mm", "10723 mm");
        Run run = Run.of("calibrate", shop.toString(), "--write");
        assertEquals(3, run.code());
        assertTrue(run.err().contains("at least three"), run.err());
        assertFalse(Files.exists(shop.resolve("splices.json")));
    }

    @Test
    void withoutMeasurements_theFileIsAskedFor() throws IOException {
        Files.delete(shop.resolve("measured.csv"));
        Run run = Run.of("calibrate", shop.toString());
        assertEquals(3, run.code());
        assertTrue(run.err().contains("measured.csv"), run.err());
    }

    private void measured(String... cuts) throws IOException {
        StringBuilder rows = new StringBuilder("id,rope,end a,cut,finished,splicer\n");
        for (int i = 0; i < cuts.length; i++) {
            rows.append("M%d,DB12,double-braid-eye perimeter 600 mm,%s,10 m,Jansen\n".formatted(i + 1, cuts[i]));
        }
        Files.writeString(shop.resolve("measured.csv"), rows.toString());
    }
}
