package bitterend.work;

import bitterend.day.Part;
import bitterend.day.ReelSince;
import bitterend.day.SameSteps;
import bitterend.exchange.PlanFolder;
import bitterend.finding.Findings;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.stock.Movement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Which plan was cut by, when nobody says: the one in force, unless the bench may hold the paper of another one for the
 * same reels. That may be any plan that is issued, or was made for the same day, and cuts one of those reels otherwise
 * while nothing has changed the reel since. Of a plan of another day the bench holds no paper but what is issued. Where no
 * reel is named, what is issued and not posted was cut, of whichever plan it is; of a reel that is named, what the only plan
 * says that issued it.
 */
public final class WhichPlan {
    private final Plans plans;
    private final ShopToday.Rack rack;
    private final SheetsOut out;

    private WhichPlan(Plans plans, ShopToday.Rack rack, SheetsOut out) {
        this.plans = plans;
        this.rack = rack;
        this.out = out;
    }

    /** By what the plans and the ledger of a shop say now. */
    public static WhichPlan at(ShopNow shop, Plans plans) {
        ShopToday.Rack rack = shop.at().reading(ShopToday.Rack::of);
        return new WhichPlan(plans, rack, new SheetsOut(plans, rack, shop.stillOpen()));
    }

    /** What is meant. */
    public sealed interface Meant {
        /** This plan and no other. */
        record One(PlanFolder.Kept plan) implements Meant {}

        /** More than one could be. */
        record Several(List<Integer> plans) implements Meant {
            public Several {
                plans = List.copyOf(plans);
            }
        }

        /** None is in force, or it cannot be read. */
        record None() implements Meant {}
    }

    /**
     * The plan by which a part was cut; where there is none, or it cannot be read, the findings tell.
     *
     * @param named its number or file; null where nobody says
     */
    public Meant of(@Nullable String named, Part part, Findings findings) {
        NamedPlan names = new NamedPlan(plans);
        Meant meant = named == null
                ? of(new TreeSet<>(part.reels()), new TreeSet<>(part.upTo()), findings)
                : names.read(named, findings).<Meant>map(Meant.One::new).orElse(new Meant.None());
        if (meant instanceof Meant.None && findings.size() == 0) {
            names.orInForce(null, findings);
        }
        return meant;
    }

    /**
     * The plan that is meant.
     *
     * @param reels the reels that were cut; empty for the work at hand
     * @param pieces pieces that were cut
     * @param findings where what cannot be read is told
     */
    private Meant of(Set<String> reels, Set<String> pieces, Findings findings) {
        if (reels.isEmpty() && pieces.isEmpty()) {
            List<PlanFolder.Kept> onTheBench = out.plans();
            if (onTheBench.size() > 1) {
                return new Meant.Several(onTheBench.stream()
                        .map(plan -> plan.document().number())
                        .toList());
            }
            if (onTheBench.size() == 1) {
                return new Meant.One(onTheBench.get(0));
            }
        }
        Optional<PlanFolder.Kept> inForce = plans.inForce().flatMap(number -> plans.read(number, findings));
        if (inForce.isEmpty()) {
            return new Meant.None();
        }
        LocalDate day = inForce.get().document().plan().day();
        boolean mine = !draws(inForce.get(), reels, pieces).isEmpty();
        List<Integer> could = new ArrayList<>();
        PlanFolder.Kept other = null;
        for (PlanFolder.Kept each : others(inForce.get())) {
            Map<String, ReelDraw> theirs = draws(each, reels, pieces);
            if (!each.document().plan().day().equals(day)) {
                theirs.keySet().retainAll(plans.issuedReels(each.document().number()));
            }
            SameSteps alike = SameSteps.of(
                    inForce.get().document().plan(),
                    inForce.get().document().facts().movements(),
                    List.of(new SameSteps.Other(Gate.name(each), each.document().plan())),
                    rack.today().cut().keySet());
            SameSteps booked = SamePlans.of(each, plans, rack);
            boolean otherwise = theirs.keySet().stream()
                    .anyMatch(reel -> !alike.isCutAlike(reel, Gate.name(each)) && isOpen(each, reel, booked));
            if (otherwise) {
                could.add(each.document().number());
                other = each;
            }
        }
        if (mine) {
            could.add(inForce.get().document().number());
        }
        if (could.size() > 1) {
            return theOneThatIsOut(could, reels, pieces)
                    .<Meant>map(Meant.One::new)
                    .orElseGet(() -> new Meant.Several(could));
        }
        return new Meant.One(mine || other == null ? inForce.get() : other);
    }

    /** Of the plans that could be meant the only one that has sheets of all these reels out. */
    private Optional<PlanFolder.Kept> theOneThatIsOut(List<Integer> could, Set<String> reels, Set<String> pieces) {
        List<PlanFolder.Kept> issued = could.stream()
                .flatMap(number -> plans.needed(number).stream())
                .filter(plan -> plans.issuedReels(plan.document().number())
                        .containsAll(draws(plan, reels, pieces).keySet()))
                .toList();
        return issued.size() == 1 ? Optional.of(issued.get(0)) : Optional.empty();
    }

    private Map<String, ReelDraw> draws(PlanFolder.Kept plan, Set<String> reels, Set<String> pieces) {
        Set<String> meant = reels.isEmpty() && pieces.isEmpty()
                ? ReelDays.of(plan.document(), plans).atHand()
                : reels;
        Map<String, ReelDraw> draws = new HashMap<>();
        for (ReelDraw draw : plan.document().plan().draws()) {
            boolean named = draw.cuts().stream().map(Cut::piece).anyMatch(pieces::contains);
            if (named || meant.contains(draw.reel())) {
                draws.put(draw.reel(), draw);
            }
        }
        return draws;
    }

    /** Whether cuts of the reel may still be booked from this plan, and some are not. */
    private boolean isOpen(PlanFolder.Kept plan, String reel, SameSteps booked) {
        long seen = plan.document().facts().movements().getOrDefault(reel, -1L);
        List<Movement> history = rack.histories().getOrDefault(reel, List.of());
        ReelSince since = new ReelSince(history, seen, Gate.name(plan), booked);
        Set<String> open = new HashSet<>();
        plan.document().plan().draws().stream()
                .filter(draw -> draw.reel().equals(reel))
                .forEach(draw -> draw.cuts().forEach(cut -> open.add(cut.piece())));
        open.removeAll(rack.today().cut().keySet());
        return seen >= 0 && since.changes().isEmpty() && !open.isEmpty();
    }

    /** Plans beside the one in force that may lie on the bench: of its day, or issued. */
    private List<PlanFolder.Kept> others(PlanFolder.Kept inForce) {
        LocalDate day = inForce.document().plan().day();
        List<PlanFolder.Kept> others = new ArrayList<>();
        Set<Integer> issued = new TreeSet<>(plans.issuedPlans());
        issued.removeIf(number -> plans.issuedReels(number).isEmpty());
        List<Integer> numbers = plans.numbers();
        boolean sameDay = true;
        for (int i = numbers.size() - 1; i >= 0; i--) {
            int number = numbers.get(i);
            if (number == inForce.document().number() || !(sameDay || issued.contains(number))) {
                continue;
            }
            Optional<PlanFolder.Kept> read = plans.read(number, new Findings());
            boolean ofDay =
                    read.map(plan -> plan.document().plan().day().equals(day)).orElse(false);
            sameDay &= ofDay;
            if (ofDay || issued.contains(number)) {
                read.ifPresent(others::add);
            }
        }
        return others.stream()
                .sorted(java.util.Comparator.comparing(plan -> plan.document().number()))
                .toList();
    }
}
