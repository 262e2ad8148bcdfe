package bitterend.cli;

import bitterend.day.OrderBook;
import bitterend.day.Part;
import bitterend.day.RecordedPlan;
import bitterend.day.SameSteps;
import bitterend.day.ShopFacts;
import bitterend.exchange.OrderedPieces;
import bitterend.exchange.PlanFolder;
import bitterend.exchange.Shop;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.packing.PackingProblem;
import bitterend.report.FindingsPage;
import bitterend.stock.Ledger;
import bitterend.stock.Ordered;
import bitterend.stock.StockValue;
import bitterend.store.SqliteLedger;
import bitterend.work.BookingRules;
import bitterend.work.Gate;
import bitterend.work.Plans;
import bitterend.work.Remark;
import bitterend.work.SamePlans;
import bitterend.work.ShopToday;
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
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The plan that cuts are booked from, through the gate and held against the reels that are named. */
final class PostedPlan {
    private final Terminal terminal;
    private final ShopArgument at = new ShopArgument();
    private final Findings findings = new Findings();
    private final Part part;
    private final boolean beforeCount;

    /** Looks for the plan that a part was cut by; {@code beforeCount} where its cuts came before counts of their reels. */
    PostedPlan(Terminal terminal, Path folder, Part part, boolean beforeCount) {
        this.terminal = terminal;
        this.part = part;
        this.beforeCount = beforeCount;
        at.folder = folder;
    }

    /**
     * What is booked.
     *
     * @param plan the plan; nothing when none may be booked from
     * @param words which plan and which reels
     * @param rules of the sets and reels, asked while no one else can book
     * @param code what the command ends with when none may
     */
    record Choice(@Nullable RecordedPlan plan, String words, Function<Ledger.Stock, Set<String>> rules, ExitCode code) {
        static Choice none(ExitCode code) {
            return new Choice(null, "", stock -> Set.of(), code);
        }

        Optional<RecordedPlan> recorded() {
            return Optional.ofNullable(plan);
        }
    }

    /**
     * The plan.
     *
     * @param named its number or file; null where nobody said
     * @param typed the command as it was typed, without the plan
     */
    Choice choose(@Nullable String named, String typed) {
        ShopToday.Rack rack = rack();
        Plans plans = at.plans(findings);
        Meant meant = named == null
                ? new WhichPlan(plans, rack).of(new TreeSet<>(part.reels()), new TreeSet<>(part.upTo()), findings)
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
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
        return meant instanceof Meant.One one ? gated(plans, one.plan(), typed) : Choice.none(ExitCode.BAD_INPUT);
    }

    private ShopToday.Rack rack() {
        try (Ledger ledger = SqliteLedger.openToRead(at.folder)) {
            return ShopToday.Rack.of(ledger);
        }
    }

    private Choice gated(Plans plans, PlanFolder.Kept kept, String typed) {
        Optional<Shop> shop = at.readOrComplain(terminal);
        if (shop.isEmpty()) {
            return Choice.none(ExitCode.BAD_INPUT);
        }
        GateTold.Passage passage = new GateTold(terminal, at, plans).pass(kept, shop.get());
        return passage.passed()
                .map(passed -> held(plans, passed, passage.remarks(), shop.get(), typed))
                .orElseGet(() -> Choice.none(passage.code()));
    }

    private Choice held(Plans plans, Verdict.Passed passed, List<Remark> remarks, Shop shop, String typed) {
        ShopToday.Rack rack = rack();
        SameSteps same = SamePlans.of(passed.kept(), plans, rack);
        PostedPart posted = new PostedPart(passed, part, rack, same);
        List<Remark> bars = remarks.stream()
                .filter(posted::isBarredBy)
                .filter(remark -> !(beforeCount && remark.isCount()))
                .toList();
        if (!bars.isEmpty()) {
            new PostingAdvice(terminal, at.folder, posted, typed).tell(bars);
            return Choice.none(ExitCode.STOCK_CHANGED);
        }
        RecordedPlan recorded = new RecordedPlan(
                Gate.name(passed.kept()),
                passed.number(),
                passed.plan(),
                passed.kept().document().facts().movements(),
                facts(shop, passed.problem(), same));
        return new Choice(
                recorded,
                "plan " + passed.number() + ": " + PostedPart.told(posted.reels()),
                new BookingRules(passed, shop.pieces(), posted.pieces(), part.found()),
                ExitCode.DONE);
    }

    /** What is worth keeping is what the plan says is; what was cut all the same was ordered as the plan says. */
    private ShopFacts facts(Shop shop, PackingProblem problem, SameSteps same) {
        Map<String, Length> keepFrom = new TreeMap<>();
        problem.values()
                .forEach((rope, value) ->
                        keepFrom.put(rope, value.keepFrom().orElse(new Length(StockValue.LONGEST_MM))));
        OrderBook book = OrderedPieces.book(shop);
        Map<String, Ordered> ordered = new TreeMap<>(book.ordered());
        problem.pieces().stream()
                .filter(piece -> part.found().wasCut(piece.id()))
                .forEach(piece -> ordered.put(piece.id(), book.planned(piece)));
        return new ShopFacts(ordered, keepFrom, same);
    }
}
