package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.packing.Bound;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.Reason;
import bitterend.packing.ReelDraw;
import bitterend.packing.Rule;
import bitterend.packing.RunDraw;
import bitterend.packing.Undone;
import bitterend.packing.Unplanned;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PlanJsonTest {

    @Property(tries = 200)
    void plan_isReadAsItWasWritten(@ForAll long seed) throws IOException {
        PlanDocument document = randomDocument(new Random(seed));
        Path folder = Files.createTempDirectory("plan");
        Path file = folder.resolve("plan.json");
        PlanJson.write(file, document);
        Findings findings = new Findings();
        assertEquals(document, PlanJson.read(file, findings).orElseThrow(() -> new AssertionError(findings.sorted())));
        assertEquals(PlanJson.text(document), Files.readString(file));
        assertEquals(List.of(), findings.sorted());
        Files.delete(file);
        Files.delete(folder);
    }

    @Test
    void plan_changedByHand_tellsWhereItCannotBeRead(@TempDir Path folder) throws IOException {
        PlanDocument document = randomDocument(new Random(7));
        String text = PlanJson.text(document)
                .replaceFirst("\"leftOnReel\": \"[0-9]+ mm\"", "\"leftOnReel\": \"12,5 m\"")
                .replaceFirst("\"seed\": -?[0-9]+", "\"seed\": 1.5");
        Files.writeString(folder.resolve("plan.json"), text);
        Findings findings = new Findings();
        assertTrue(PlanJson.read(folder.resolve("plan.json"), findings).isEmpty());
        assertEquals(
                List.of("seed", "leftOnReel"),
                findings.sorted().stream().map(each -> each.field()).toList());
        assertEquals("/draws/0", findings.sorted().get(1).place());
    }

    @Test
    void anotherFormat_isRefused(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("plan.json"), "{\"format\": \"bitterend/plan/99\"}");
        Findings findings = new Findings();
        assertTrue(PlanJson.read(folder.resolve("plan.json"), findings).isEmpty());
        assertEquals("format", findings.sorted().get(0).field());
    }

    @Test
    void aPlanThatCannotBeWritten_leavesTheOldOneAndNoLitter(@TempDir Path folder) throws IOException {
        Path directory = Files.createDirectory(folder.resolve("plan.json"));
        Files.writeString(directory.resolve("old"), "old");
        assertThrows(UncheckedIOException.class, () -> PlanJson.write(directory, randomDocument(new Random(1))));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(directory), left.toList());
        }
        assertEquals("old", Files.readString(directory.resolve("old")));
    }

    private static PlanDocument randomDocument(Random random) {
        List<ReelDraw> draws = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            draws.add(new ReelDraw("R-" + i, length(random), runs(random), length(random), book(random), cost(random)));
        }
        List<Unplanned> unplanned = List.of(
                new Unplanned("G-1/2.3", new Reason(any(random, List.of(Rule.values())), "Too \"short\",\n 5 m."), ""));
        Bound bound = new Bound(
                List.of("a", "b"),
                cost(random),
                cost(random),
                1 + random.nextInt(1000),
                Undone.of(random.longs(Undone.CLASSES, 0, 1L << 40).boxed().toList()),
                random.longs(Undone.CLASSES, 0, 1L << 59).boxed().toList(),
                List.of(new Bound.Dual(List.of("G-1/2.1", "G-1/2.2"), random.nextLong() >>> 4)));
        CutPlan plan = new CutPlan(
                LocalDate.of(2026, 1, 1).plusDays(random.nextInt(1000)),
                draws,
                unplanned,
                book(random),
                cost(random),
                List.of(bound));
        return new PlanDocument(
                plan,
                new MoneyText("EUR", random.nextInt(5)),
                new PlanDocument.Made(
                        "0.1.0",
                        random.nextLong() >> 4,
                        Duration.ofMillis(random.nextInt(1_000_000)),
                        Map.of("orders.csv", "00ff", "reels.csv", "ff00"),
                        Map.of("E8", 3L, "E10", 1L),
                        new PlanDocument.Near(Map.of("G-1/2.1", "E8"), Map.of("G-1/2.2", "E10"))));
    }

    private static List<RunDraw> runs(Random random) {
        List<Cut> cuts = List.of(
                new Cut("G-1/2.1", length(random), length(random)),
                new Cut("\u00d8/1.1", length(random), length(random)));
        RunDraw.Rest rest = any(random, List.of(RunDraw.Rest.values()));
        return List.of(
                new RunDraw(1, length(random), length(random), cuts, length(random), rest),
                new RunDraw(2, length(random), length(random), List.of(), length(random), rest));
    }

    private static LengthBook book(Random random) {
        return new LengthBook(
                length(random),
                length(random),
                length(random),
                length(random),
                length(random),
                length(random),
                length(random),
                length(random),
                length(random));
    }

    private static <T> T any(Random random, List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private static Length length(Random random) {
        return new Length(random.nextInt(500_000));
    }

    private static Cost cost(Random random) {
        return new Cost(random.nextInt(1_000_000_000) - 1000L);
    }
}
