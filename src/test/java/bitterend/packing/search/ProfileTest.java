package bitterend.packing.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.order.CuttingOrder;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.impl.io.jaxb.SolverConfigIO;

final class ProfileTest {
    private static final Path FOLDER = Path.of("solver-config");
    private static final Map<String, Profile> BUILT_IN = Map.of(
            "quick.xml", Profile.quick(),
            "thorough.xml", Profile.thorough(),
            "reproducible.xml", Profile.reproducible());

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path temp;

    @Test
    void everyFile_holdsAProfileOfTheProgram() throws IOException {
        List<Path> files = files();
        assertEquals(
                BUILT_IN.keySet().stream().sorted().toList(),
                files.stream()
                        .map(file -> file.getFileName().toString())
                        .sorted()
                        .toList());
        for (Path file : files) {
            Profile read = read(file);
            Profile known =
                    Objects.requireNonNull(BUILT_IN.get(file.getFileName().toString()));
            assertEquals(known.shapingPercent(), read.shapingPercent());
            Map<String, Integer> properties = new TreeMap<>();
            moves(read.config())
                    .getMoveIteratorFactoryCustomProperties()
                    .forEach((name, value) -> properties.put(name, Integer.valueOf(value)));
            assertEquals(BenchMoves.USUAL, properties);
            assertEquals(text(known), text(read), file.toString());
        }
    }

    @Test
    void everyFile_plansAShop() throws IOException {
        PackingProblem shop = RandomShop.of(4, ShopSize.SMALL);
        Packing start = new GreedyPacker(shop).best();
        for (Path file : files()) {
            Effort effort = new Effort(Duration.ofSeconds(2), 3_000, 1, 1, () -> false, progress -> {});
            Packing found = Search.improve(shop, start, effort, read(file), Cost.ZERO);
            assertEquals(List.of(), PlanChecker.check(shop, new CuttingOrder(shop).plan(found)));
            assertTrue(new PlanPrice(shop).of(found).compareTo(new PlanPrice(shop).of(start)) <= 0);
        }
    }

    @Test
    void shaping_isReadFromTheFile() throws IOException {
        Path file = temp.resolve("mine.xml");
        String text = Files.readString(FOLDER.resolve("quick.xml"));
        Files.writeString(file, text.replace("\"shapingPercent\" value=\"10\"", "\"shapingPercent\" value=\"37\""));
        assertEquals(37, read(file).shapingPercent());
    }

    @ParameterizedTest
    @CsvSource({
        "<acceptedCountLimit>, <acceptedCuontLimit>, row 30, acceptedCuontLimit",
        "search.BenchMoves, search.BenchMovse, row 16, bitterend.packing.search.BenchMovse",
        "\"repack\", \"repakc\", row 21, repakc",
        "value=\"100\", value=\"many\", row 23, many",
        "PT60S, 60 s, row 11, 60 s"
    })
    void mistake_isToldWithItsRow(String right, String wrong, String place, String found) throws IOException {
        String text = Files.readString(FOLDER.resolve("thorough.xml"));
        assertTrue(text.contains(right), right);
        String tag = right.startsWith("<") ? right.replace("<", "</") : right;
        List<Finding> findings = findings(
                text.replace(right, wrong).replace(tag, right.startsWith("<") ? wrong.replace("<", "</") : wrong));
        assertEquals(1, findings.size(), findings.toString());
        assertEquals(place, findings.get(0).place());
        assertTrue(findings.get(0).found().contains(found), findings.toString());
    }

    @Test
    void severalMistakes_areAllTold() throws IOException {
        String text = Files.readString(FOLDER.resolve("thorough.xml"))
                .replace("\"repack\"", "\"repakc\"")
                .replace("search.BenchMoves", "search.BenchMovse");
        assertEquals(2, findings(text).size());
    }

    @Test
    void tornFile_isTold() throws IOException {
        List<Finding> findings = findings("<solver xmlns=\"https://www.optaplanner.org/xsd/solver\">");
        assertEquals(1, findings.size(), findings.toString());
        assertEquals("well-formed XML", findings.get(0).expected());
    }

    @Test
    void missingFile_isTold() {
        Findings findings = new Findings();
        assertTrue(Profile.read(temp.resolve("none.xml"), findings).isEmpty());
        assertEquals("no file that can be read", findings.sorted().get(0).found());
    }

    private List<Finding> findings(String text) throws IOException {
        Path file = temp.resolve("mine.xml");
        Files.writeString(file, text);
        Findings findings = new Findings();
        assertTrue(Profile.read(file, findings).isEmpty());
        return findings.sorted();
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(file -> file.toString().endsWith(".xml")).sorted().toList();
        }
    }

    private static Profile read(Path file) {
        Findings findings = new Findings();
        Profile profile = Profile.read(file, findings).orElse(null);
        assertEquals(List.of(), findings.sorted());
        return Objects.requireNonNull(profile);
    }

    /** The profile as the solver writes it; the properties of the moves are looked at apart. */
    private static String text(Profile profile) {
        SolverConfig config = profile.config();
        moves(config).setMoveIteratorFactoryCustomProperties(null);
        StringWriter text = new StringWriter();
        new SolverConfigIO().write(config, text);
        return text.toString();
    }

    private static MoveIteratorFactoryConfig moves(SolverConfig config) {
        LocalSearchPhaseConfig phase =
                (LocalSearchPhaseConfig) config.getPhaseConfigList().get(0);
        return (MoveIteratorFactoryConfig) phase.getMoveSelectorConfig();
    }
}
