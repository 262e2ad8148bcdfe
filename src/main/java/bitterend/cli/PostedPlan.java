package bitterend.cli;

import bitterend.day.RecordedPlan;
import bitterend.day.ShopFacts;
import bitterend.exchange.OrderedPieces;
import bitterend.exchange.PlanFolder;
import bitterend.exchange.Shop;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.report.FindingsPage;
import bitterend.stock.Ledger;
import bitterend.stock.StockValue;
import bitterend.store.SqliteLedger;
import bitterend.work.Gate;
import bitterend.work.Plans;
import bitterend.work.Remark;
import bitterend.work.ShopToday;
import bitterend.work.TornSets;
import bitterend.work.Verdict;
import bitterend.work.WhichPlan;
import bitterend.work.WhichPlan.Meant;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The plan that cuts are booked from, through the gate and held against the reels that are named. */
final class PostedPlan {
    private final Terminal terminal;
    private final ShopArgument at = new ShopArgument();
    private final Findings findings = new Findings();
    private final boolean beforeCount;

    /** Looks for a plan whose cuts, where {@code beforeCount} is said, came before the counts of their reels. */
    PostedPlan(Terminal terminal, Path folder, boolean beforeCount) {
        this.terminal = terminal;
        this.beforeCount = beforeCount;
        at.folder = folder;
    }

    /**
     * What is booked.
     *
     * @param plan the plan; nothing when none may be booked from
     * @param words which plan and which reels
     * @param guard refuses what would tear a set, asked while no one else can book
     * @param code what the command ends with when none may
     */
    record Choice(@Nullable RecordedPlan plan, String words, Consumer<Ledger.Stock> guard, ExitCode code) {
        static Choice none(ExitCode code) {
            return new Choice(null, "", stock -> {}, code);
        }

        Optional<RecordedPlan> recorded() {
            return Optional.ofNullable(plan);
        }
    }

    Choice choose(@Nullable String named, Set<String> reels, Set<String> pieces) {
        ShopToday.Rack rack = rack();
        Plans plans = at.plans(findings);
        Meant meant = named == null
                ? new WhichPlan(plans, rack).of(reels, pieces, findings)
                : PlanName.read(named, plans, findings)
                        .<Meant>map(Meant.One::new)
                        .orElse(new Meant.None());
        if (meant instanceof Meant.Several several) {
            terminal.err()
                    .println("error: more than one plan could be meant: "
                            + several.plans().stream().map(String::valueOf).collect(Collectors.joining(", "))
                            + ". Its number stands on every page and tag: give it with --plan N.");
            return Choice.none(ExitCode.BAD_COMMAND_LINE);
        }
        if (meant instanceof Meant.None && findings.size() == 0) {
            new PlanChoice(plans).plan(null, findings);
        }
        terminal.err().print(new FindingsPage(terminal.ink()).text(findings.sorted()));
        return meant instanceof Meant.One one
                ? gated(plans, one.plan(), reels, pieces)
                : Choice.none(ExitCode.BAD_INPUT);
    }

    private ShopToday.Rack rack() {
        try (Ledger ledger = SqliteLedger.openToRead(at.folder)) {
            return ShopToday.Rack.of(ledger);
        }
    }

    private Choice gated(Plans plans, PlanFolder.Kept kept, Set<String> reels, Set<String> pieces) {
        Optional<Shop> shop = at.readOrComplain(terminal);
        if (shop.isEmpty()) {
            return Choice.none(ExitCode.BAD_INPUT);
        }
        GateTold.Passage passage = new GateTold(terminal, at, plans).pass(kept, shop.get());
        return passage.passed()
                .map(passed -> held(passed, passage.remarks(), booked(passed, reels, pieces), shop.get()))
                .orElseGet(() -> Choice.none(passage.code()));
    }

    private Choice held(Verdict.Passed passed, List<Remark> remarks, Set<String> booked, Shop shop) {
        List<Remark> bars = remarks.stream()
                .filter(remark -> remark.bars() && booked.contains(remark.reel()))
                .filter(remark -> !(beforeCount && remark.isCount()))
                .toList();
        if (!bars.isEmpty()) {
            bars.forEach(bar -> terminal.err().println("error: " + bar.sentence()));
            Set<String> open = new TreeSet<>(booked);
            bars.forEach(bar -> open.remove(bar.reel()));
            terminal.err().println("Nothing was booked. Plan again with plan --from, then post that plan.");
            if (bars.stream().allMatch(Remark::isCount)) {
                terminal.err().println("If it was counted after these cuts: stock post ... --before-count.");
            }
            if (!open.isEmpty()) {
                terminal.err()
                        .println("Nothing has changed of " + told(open) + ": name " + (open.size() == 1 ? "it" : "them")
                                + " with --reel and --plan " + passed.number() + ".");
            }
            return Choice.none(ExitCode.STOCK_CHANGED);
        }
        RecordedPlan recorded = new RecordedPlan(
                Gate.name(passed.kept()),
                passed.number(),
                passed.plan(),
                passed.kept().document().facts().movements(),
                facts(shop, passed.problem()));
        return new Choice(
                recorded,
                "plan " + passed.number() + ": " + told(booked),
                stock -> TornSets.refuse(passed.plan(), booked, shop.pieces(), stock),
                ExitCode.DONE);
    }

    /** What is worth keeping is what the plan says is. */
    private static ShopFacts facts(Shop shop, PackingProblem problem) {
        Map<String, Length> keepFrom = new TreeMap<>();
        problem.values()
                .forEach((rope, value) ->
                        keepFrom.put(rope, value.keepFrom().orElse(new Length(StockValue.LONGEST_MM))));
        return new ShopFacts(OrderedPieces.of(shop), keepFrom);
    }

    private static String told(Set<String> reels) {
        return (reels.size() == 1 ? "reel " : "reels ") + String.join(", ", reels);
    }

    private static Set<String> booked(Verdict.Passed passed, Set<String> reels, Set<String> pieces) {
        Set<String> booked = new TreeSet<>(bitterend.finding.NaturalOrder.IDS);
        for (ReelDraw draw : passed.plan().draws()) {
            boolean all = reels.isEmpty() && pieces.isEmpty();
            boolean named = draw.cuts().stream().map(Cut::piece).anyMatch(pieces::contains);
            if (all || named || reels.contains(draw.reel())) {
                booked.add(draw.reel());
            }
        }
        return booked;
    }
}
