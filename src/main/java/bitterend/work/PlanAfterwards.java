package bitterend.work;

import bitterend.exchange.PlanFacts;
import bitterend.exchange.PlanFolder.Kept;
import bitterend.finding.CommandWord;
import bitterend.finding.Findings;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import bitterend.work.Verdict.Passed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What something that was booked on the rack is to the plan in force: off which of its reels nothing can be posted any more,
 * and what to do. It is asked when the booking stands, and says nothing where the plan cannot be read.
 */
public final class PlanAfterwards {
    private final ShopAccess at;

    public PlanAfterwards(ShopAccess at) {
        this.at = at;
    }

    /** After the ledger was begun: a plan that was made without it is posted off none of its reels. */
    public List<String> opened() {
        return found().map(this::opened).orElse(List.of());
    }

    private List<String> opened(Found found) {
        List<ReelDraw> open = found.open();
        List<String> barred = open.stream()
                .filter(draw -> bars(found.since(draw, found.history(draw))))
                .map(ReelDraw::reel)
                .toList();
        return barred.isEmpty()
                ? List.of()
                : List.of(plan(found) + " was not made with this ledger, and nothing can be posted off "
                        + (barred.size() == open.size() ? "its reels" : "reel " + String.join(", ", barred)) + "; "
                        + first("REEL") + again());
    }

    /** After these movements were booked, as one event; nothing of what could not be posted before either. */
    public List<String> booked(List<Movement> movements) {
        return (movements.isEmpty() ? Optional.<Found>empty() : found())
                .map(found -> {
                    List<String> told = new ArrayList<>();
                    Set<String> reels = movements.stream()
                            .map(movement -> movement.entry().reel())
                            .collect(Collectors.toSet());
                    found.open().stream()
                            .filter(draw -> reels.contains(draw.reel()))
                            .forEach(draw -> told.addAll(booked(found, draw, movements)));
                    return told;
                })
                .orElse(List.of());
    }

    private List<String> booked(Found found, ReelDraw draw, List<Movement> movements) {
        List<Movement> history = found.history(draw);
        List<Movement> before = history.stream()
                .filter(movement -> movements.stream().noneMatch(one -> one.number() == movement.number()))
                .toList();
        List<Remark> now = found.since(draw, history);
        String reel = CommandWord.of(draw.reel());
        if (found.ledger().isBefore(draw.reel())) {
            boolean more = barring(now) > barring(found.since(draw, before));
            return more
                    ? List.of(plan(found) + " cuts " + pieces(found, draw) + " off reel " + draw.reel()
                            + ", and was made before the ledger was begun; " + first(reel) + again())
                    : List.of();
        }
        if (bars(found.since(draw, before))) {
            return List.of();
        }
        if (now.stream().anyMatch(Remark::isHold)) {
            return List.of(plan(found) + " cuts " + pieces(found, draw) + " off reel " + draw.reel()
                    + ", and nothing is posted off it while it is on hold; when that is over: bitterend stock release "
                    + shop() + " " + reel + "; else " + again());
        }
        if (bars(now)) {
            boolean gone = history.get(history.size() - 1).entry().gone();
            return List.of(plan(found) + " cuts " + pieces(found, draw) + " off reel " + draw.reel()
                    + ", and nothing can be posted off it any more; " + (gone ? "" : first(reel)) + again());
        }
        List<String> ruledBefore = found.ruledOut(draw, before);
        List<String> pieces = found.ruledOut(draw, history).stream()
                .filter(piece -> !ruledBefore.contains(piece))
                .toList();
        return pieces.isEmpty()
                ? List.of()
                : List.of(plan(found) + " cuts off reel " + draw.reel() + " what may not come off it any more: "
                        + String.join(", ", pieces) + "; " + again());
    }

    private static boolean bars(List<Remark> remarks) {
        return barring(remarks) > 0;
    }

    private static long barring(List<Remark> remarks) {
        return remarks.stream().filter(Remark::bars).count();
    }

    private static String plan(Found found) {
        return "plan " + found.kept().document().number();
    }

    private static String pieces(Found found, ReelDraw draw) {
        int open = draw.cuts().size() - found.posted(draw).size();
        return open + (open == 1 ? " piece" : " pieces");
    }

    /** The bench may have begun: nothing that is cut is to be planned again. */
    private String first(String reel) {
        return "what is cut already is booked first, bitterend stock post " + shop() + " --reel " + reel
                + " says how; ";
    }

    private String shop() {
        return CommandWord.of(at.named());
    }

    private String again() {
        return "plan again: bitterend plan " + shop();
    }

    private Optional<Found> found() {
        Plans plans = at.plans(new Findings());
        return at.keepsLedger()
                ? plans.inForce()
                        .flatMap(number -> plans.read(number, new Findings()))
                        .flatMap(kept -> found(plans, kept))
                : Optional.empty();
    }

    private Optional<Found> found(Plans plans, Kept kept) {
        if (!(kept.document().facts() instanceof PlanFacts.Whole whole)) {
            return Optional.empty();
        }
        ShopToday.Rack rack =
                at.reading(ledger -> ShopToday.Rack.of(ledger, kept.document().plan()));
        return Optional.of(
                new Found(kept, whole, rack, new LedgerSince(whole, Gate.name(kept), SamePlans.of(kept, plans, rack))));
    }

    /** The plan in force beside the rack as it is now. */
    private record Found(Kept kept, PlanFacts.Whole facts, ShopToday.Rack rack, LedgerSince ledger) {
        /** What is not posted whole; of rope on order nothing is in the ledger. */
        List<ReelDraw> open() {
            return kept.document().plan().draws().stream()
                    .filter(draw -> !facts.problem().isComing(draw.reel()))
                    .filter(draw -> posted(draw).size() < draw.cuts().size())
                    .toList();
        }

        List<Movement> history(ReelDraw draw) {
            return rack.histories().getOrDefault(draw.reel(), List.of());
        }

        Set<String> posted(ReelDraw draw) {
            return ledger.posted(draw, history(draw));
        }

        List<Remark> since(ReelDraw draw, List<Movement> history) {
            return ledger.of(draw, history);
        }

        /** Its open pieces that the papers of the reel, or whom it is kept for, keep from it after these movements of it. */
        List<String> ruledOut(ReelDraw draw, List<Movement> history) {
            if (history.isEmpty()) {
                return List.of();
            }
            Reel reel = history.get(history.size() - 1).entry().after();
            Set<String> cut = rack.today().cut().keySet();
            Set<String> ruled =
                    ReelRules.of(
                                    new Passed(
                                            kept,
                                            facts.problem(),
                                            kept.document().plan()),
                                    Map.of(reel.id(), reel))
                            .stream()
                            .filter(Remark::bars)
                            .map(Remark::piece)
                            .collect(Collectors.toSet());
            return draw.cuts().stream()
                    .map(Cut::piece)
                    .filter(piece -> ruled.contains(piece) && !cut.contains(piece))
                    .toList();
        }
    }
}
