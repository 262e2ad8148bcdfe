package bitterend.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import bitterend.measure.Length;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.GreedyStrategy;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import bitterend.stock.Undo;
import bitterend.store.SqliteLedger;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Posting the plans of random shops: the rack afterwards is what the plan said it would be. */
final class RandomPostingTest {
    private static final long SHOPS = Math.max(20, Long.getLong("shops", 200) / 10);
    private static final String WHO = "a rigger";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void postedPlan_leavesTheRackAsPlanned() throws IOException {
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            CutPlan plan = plan(shop);
            try (Ledger ledger = opened(shop)) {
                RecordedPlan recorded = recorded(shop, plan);
                Posting posting = new Posting(ledger, WHO);
                assertEquals(0, posting.post(recorded, Part.ALL).already());
                assertRack(seed, shop, plan, ledger);
                assertEquals(List.of(), ledger.verify(), "shop " + seed);
                assertEquals(List.of(), posting.post(recorded, Part.ALL).written(), "posted twice, shop " + seed);
            }
        }
    }

    @Test
    void postingPieceByPiece_comesToTheSame() throws IOException {
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            CutPlan plan = plan(shop);
            try (Ledger ledger = opened(shop)) {
                RecordedPlan recorded = recorded(shop, plan);
                Posting posting = new Posting(ledger, WHO);
                SplittableRandom random = new SplittableRandom(seed);
                List<String> pieces = plan.draws().stream()
                        .flatMap(draw -> draw.cuts().stream())
                        .map(cut -> cut.piece())
                        .toList();
                for (int i = 0; i < pieces.size(); i++) {
                    String piece = pieces.get(random.nextInt(pieces.size()));
                    posting.post(recorded, new Part(List.of(), List.of(piece), Found.AS_PLANNED));
                }
                posting.post(recorded, Part.ALL);
                assertRack(seed, shop, plan, ledger);
                assertEquals(List.of(), ledger.verify(), "shop " + seed);
            }
        }
    }

    @Test
    void undoingEverything_bringsTheRackBack() throws IOException {
        for (long seed = 0; seed < SHOPS / 4; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            CutPlan plan = plan(shop);
            try (Ledger ledger = opened(shop)) {
                List<Movement> written = new Posting(ledger, WHO)
                        .post(recorded(shop, plan), Part.ALL)
                        .written();
                if (!written.isEmpty()) {
                    new Undo(ledger, Event.Act.of(Event.Kind.UNDONE, WHO, ""))
                            .event(written.get(0).event());
                }
                Map<String, Reel> standing = standing(ledger);
                assertEquals(shop.reels(), List.copyOf(standing.values()), "shop " + seed);
                assertEquals(List.of(), ledger.verify(), "shop " + seed);
                new Posting(ledger, WHO).post(recorded(shop, plan), Part.ALL);
                assertEquals(List.of(), ledger.verify(), "posted again, shop " + seed);
            }
        }
    }

    private static CutPlan plan(PackingProblem shop) {
        return new DayPlanner(new GreedyStrategy()).plan(shop, Effort.of(Duration.ofSeconds(1)));
    }

    private Ledger opened(PackingProblem shop) throws IOException {
        Files.deleteIfExists(folder.resolve(SqliteLedger.NAME));
        SqliteLedger.create(folder, Clock.systemUTC(), Event.Act.of(Event.Kind.OPENED, WHO, ""), books -> shop.reels()
                .forEach(reel -> books.append(new Entry(Kind.RECEIVED, reel, ""))));
        return SqliteLedger.open(folder, Clock.systemUTC());
    }

    private static RecordedPlan recorded(PackingProblem shop, CutPlan plan) {
        return new RecordedPlan("plan-1", plan, shop.reels().stream().collect(Collectors.toMap(Reel::id, reel -> 1L)));
    }

    private static Map<String, Reel> standing(Ledger ledger) {
        return ledger.read(Ledger.Stock::holdings).stream()
                .filter(holding -> !holding.gone())
                .collect(Collectors.toMap(Holding::id, Holding::reel, (one, other) -> one, java.util.TreeMap::new));
    }

    private static void assertRack(long seed, PackingProblem shop, CutPlan plan, Ledger ledger) {
        Map<String, Reel> standing = standing(ledger);
        Map<String, ReelDraw> draws = new HashMap<>();
        plan.draws().forEach(draw -> draws.put(draw.reel(), draw));
        for (Reel before : shop.reels()) {
            ReelDraw draw = draws.get(before.id());
            Reel after = standing.remove(before.id());
            if (draw == null) {
                assertEquals(before, after, "shop " + seed);
            } else {
                assertReel(seed, before, draw, after);
            }
        }
        Length kept = standing.values().stream().map(Reel::length).reduce(Length.ZERO, Length::plus);
        assertEquals(plan.book().kept(), kept, "coils of shop " + seed);
        List<Movement> cuts = ledger.read(Ledger.Stock::ofPieces);
        assertEquals(
                plan.draws().stream().mapToInt(draw -> draw.cuts().size()).sum(), cuts.size(), "cuts of shop " + seed);
    }

    private static void assertReel(
            long seed, Reel before, ReelDraw draw, @org.jspecify.annotations.Nullable Reel after) {
        String name = "shop " + seed + " reel " + before.id();
        RunDraw last = draw.runs().get(draw.runs().size() - 1);
        if (last.rest() == RunDraw.Rest.SCRAP) {
            assertEquals(null, after, name);
            return;
        }
        if (after == null) {
            fail(name + " is gone");
            return;
        }
        assertEquals(draw.leftOnReel().plus(draw.book().innerWraps()), after.length(), name);
        assertEquals(Length.ZERO, after.contents().leadTrim(), name);
        List<Length> runsBehind =
                before.runs().stream().skip(draw.runs().size()).map(Run::length).collect(Collectors.toList());
        if (last.left().isPositive()) {
            runsBehind.add(0, last.left());
        }
        assertEquals(runsBehind, after.runs().stream().map(Run::length).toList(), name);
    }
}
