package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.buying.KnotValue;
import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.measure.Ratio;
import bitterend.measure.Sentence;
import bitterend.packing.Bound;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.LengthBook.Account;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.ReelDraw;
import bitterend.packing.Rule;
import bitterend.packing.RunDraw;
import bitterend.packing.ShopCalendar;
import bitterend.packing.Undone;
import bitterend.packing.Unplanned;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import bitterend.stock.RisingValue;
import bitterend.stock.StockValue;
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
import java.util.Set;
import java.util.TreeMap;
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

    /** A bound is counted in parts of a thousandth of a coin; in no parts at all it would be a bound of anything. */
    @Test
    void scaleOfNothing_isRefused(@TempDir Path folder) throws IOException {
        String text = java.util.stream.IntStream.range(0, 50)
                .mapToObj(seed -> PlanJson.text(randomDocument(new Random(seed))))
                .filter(plan -> plan.contains("\"scale\""))
                .findFirst()
                .orElseThrow();
        for (String scale : List.of("0", "-1")) {
            Files.writeString(
                    folder.resolve("plan.json"), text.replaceFirst("\"scale\": [0-9]+", "\"scale\": " + scale));
            Findings findings = new Findings();
            assertTrue(PlanJson.read(folder.resolve("plan.json"), findings).isEmpty());
            assertEquals("scale", findings.sorted().get(0).field(), scale);
        }
    }

    @Test
    void planInTheOlderForm_isStillReadWithoutItsBounds(@TempDir Path folder) throws IOException {
        Files.writeString(
                folder.resolve("plan.json"),
                """
                {"format": "bitterend/plan/1", "engine": "bitterend 0.9", "seed": 0, "time": "10000 ms",
                 "inputs": {"orders.csv": "00ff"}, "movements": {"E8": 2}, "moved": {"G-1/2.1": "E9"},
                 "currency": "EUR", "minorDigits": 2, "day": "2026-03-02", "cost": "5 EUR",
                 "book": {"before": "10 m", "pieces": "4 m", "cutLoss": "10 mm", "leadTrim": "0", "flaws": "0",
                          "scrap": "0", "kept": "0", "left": "5990 mm", "innerWraps": "0"},
                 "draws": [], "unplanned": [],
                 "bounds": [{"ropes": ["DB12"], "best": "1 EUR", "root": "1 EUR", "scale": 1,
                             "unplannedWeight": 0, "unplannedPrice": 0, "duals": []}]}
                """);
        Findings findings = new Findings();
        PlanDocument document = PlanJson.read(folder.resolve("plan.json"), findings)
                .orElseThrow(() -> new AssertionError(findings.sorted()));
        assertEquals(new PlanFacts.Older(Map.of("E8", 2L), Map.of("G-1/2.1", "E9"), Map.of()), document.facts());
        assertEquals(List.of(), document.plan().bounds());
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

    static PlanDocument randomDocument(Random random) {
        List<ReelDraw> draws = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            draws.add(new ReelDraw("R-" + i, length(random), runs(random), length(random), book(random), cost(random)));
        }
        List<Unplanned> unplanned = List.of(new Unplanned(
                "G-1/2.3",
                new Reason(
                        any(random, List.of(Rule.values())),
                        Sentence.of("Too \"short\", 5 m: ")
                                .and(length(random))
                                .and(" of ")
                                .and(length(random))),
                random.nextBoolean() ? Sentence.NONE : Sentence.of("receive ").and(length(random))));
        Bound bound = new Bound(
                List.of("a", "b"),
                cost(random),
                cost(random),
                1 + random.nextInt(1000),
                Undone.of(random.longs(Undone.CLASSES, 0, 1L << 40).boxed().toList()),
                random.longs(Undone.CLASSES, 0, 1L << 59).boxed().toList(),
                List.of(new Bound.Dual(List.of("G-1/2.1", "G-1/2.2"), random.nextLong() >>> 4)),
                new Bound.Cases(
                        List.of(new Bound.CostProof(cost(random), ProofFormTest.proof())),
                        List.of(new Bound.LeastProof(4, 1 + random.nextInt(99), ProofFormTest.proof()))));
        CutPlan plan = new CutPlan(
                LocalDate.of(2026, 1, 1).plusDays(random.nextInt(1000)),
                draws,
                unplanned,
                book(random),
                cost(random),
                List.of(bound));
        PlanDocument.Made made = new PlanDocument.Made(
                "0.1.0",
                random.nextLong() >> 4,
                "quick",
                Duration.ofMillis(random.nextInt(1_000_000)),
                Map.of("orders.csv", "00ff", "reels.csv", "ff00"),
                List.of());
        MoneyText money = new MoneyText("EUR", random.nextInt(5));
        return new PlanDocument(random.nextInt(3), plan, money, made, facts(plan.day(), random));
    }

    /** A day of a random shop, as its facts are kept. */
    private static PlanFacts facts(LocalDate day, Random random) {
        PackingProblem problem = RandomShop.of(random.nextLong(), ShopSize.SMALL);
        Map<String, Long> movements = new TreeMap<>();
        boolean ledger = random.nextBoolean();
        problem.reels().stream()
                .filter(reel -> ledger)
                .forEach(reel -> movements.put(reel.id(), 1L + random.nextInt(9)));
        return new PlanFacts.Whole(
                ledger ? new PlanFacts.LedgerMark("3f2a", "9c1e") : PlanFacts.LedgerMark.NONE,
                movements,
                new PackingProblem(
                        day,
                        problem.ropes(),
                        problem.pieces(),
                        problem.reels(),
                        values(problem),
                        problem.prices(),
                        problem.pins(),
                        problem.earlier(),
                        new ShopCalendar(
                                Set.of(day.plusDays(1), day.plusDays(40)),
                                new ShopCalendar.Ahead(random.nextInt(3), true),
                                new ShopCalendar.Ahead(random.nextInt(9), false)),
                        problem.horizon(),
                        problem.arrivals()));
    }

    /** Curves as a shop may have them; a random shop has others besides. */
    private static Map<String, StockValue> values(PackingProblem problem) {
        Map<String, StockValue> values = new TreeMap<>();
        problem.ropes()
                .forEach((id, rope) -> values.put(
                        id,
                        problem.values().get(id) instanceof RisingValue rising
                                ? rising
                                : new KnotValue(
                                        rope.price(),
                                        List.of(
                                                new KnotValue.Knot(Length.ofMetres(2), Ratio.percent(40)),
                                                new KnotValue.Knot(Length.ofMetres(9), new Ratio(2, 3))))));
        return values;
    }

    @Test
    void drawWithoutARun_isTold(@TempDir Path folder) throws IOException {
        String text = PlanJson.text(randomDocument(new Random(7)));
        int from = text.indexOf("\"runs\": [");
        String emptied = text.substring(0, from) + "\"runs\": []" + text.substring(text.indexOf("\n      ]", from) + 8);
        Files.writeString(folder.resolve("plan.json"), emptied);
        Findings findings = new Findings();
        assertTrue(PlanJson.read(folder.resolve("plan.json"), findings).isEmpty());
        assertEquals("/draws/0", findings.sorted().get(0).place());
        assertEquals("runs", findings.sorted().get(0).field());
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
        LengthBook book = LengthBook.EMPTY;
        for (Account part : Account.values()) {
            book = book.with(part, length(random));
        }
        return book;
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
