package bitterend.day;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Arrival;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.Eligibility;
import bitterend.packing.Horizon;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.ReelDraw;
import bitterend.packing.Unplanned;
import bitterend.packing.order.EqualPieces;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What a new plan does otherwise than the earlier one, and why. */
public final class Changes {
    private static final int MOST_NAMED = 3;

    private final PackingProblem day;
    private final Map<String, Reel> reels = new HashMap<>();
    private final Set<String> ids = new HashSet<>();
    private final Set<String> stillOpen;
    private final Eligibility rules;

    /**
     * Looks at the day that the new plan was made for.
     *
     * @param stillOpen ids of what is ordered and not cut, also where the plan does not look at it
     */
    public Changes(PackingProblem day, Set<String> stillOpen) {
        this.day = day;
        this.stillOpen = Set.copyOf(stillOpen);
        day.pieces().forEach(piece -> ids.add(piece.id()));
        rules = new Eligibility(day);
        day.reels().forEach(reel -> reels.put(reel.id(), reel));
    }

    /**
     * One piece that is planned otherwise.
     *
     * @param piece the piece
     * @param was reel it was planned on; empty when it was not
     * @param now reel it is planned on; empty when it is not
     * @param why one sentence
     */
    public record Change(String piece, String was, String now, Sentence why) {}

    /** Every piece that is still open and planned otherwise, or not looked at any more, by id; equal pieces that only exchange numbers are not. */
    public List<Change> since(CutPlan earlier, CutPlan now) {
        Map<String, String> before = places(earlier);
        Map<String, String> after = places(now);
        new Exchanged(before, after).settle(new EqualPieces(day));
        Map<String, Sentence> unplanned = new TreeMap<>();
        for (Unplanned each : now.unplanned()) {
            unplanned.put(each.piece(), each.reason().sentence());
        }
        List<Change> changes = new ArrayList<>();
        day.pieces().forEach(piece -> {
            String was = before.getOrDefault(piece.id(), "");
            String is = after.getOrDefault(piece.id(), "");
            if (!was.equals(is)) {
                Sentence why = is.isEmpty()
                        ? unplanned.getOrDefault(piece.id(), Sentence.NONE)
                        : was.isEmpty() ? Sentence.of("new, or not planned before") : why(piece, was, before, now);
                changes.add(new Change(piece.id(), was, is, why));
            }
        });
        before.forEach((piece, was) -> {
            if (!ids.contains(piece) && stillOpen.contains(piece)) {
                changes.add(new Change(piece, was, "", notLookedAt(piece)));
            }
        });
        changes.sort(Comparator.comparing(Change::piece, NaturalOrder.IDS));
        return changes;
    }

    /** Why a piece that was promised is no part of the question any more. */
    private Sentence notLookedAt(String piece) {
        Horizon horizon = day.horizon();
        return Sentence.of(horizon.waitingOf(piece)
                .map(Changes::waits)
                .orElseGet(() -> horizon.isTodayAlone()
                        ? "today is planned alone"
                        : "it need not be cut by " + horizon.until() + ", and is planned later"));
    }

    private static String waits(Horizon.Waiting what) {
        String more = what.order().isEmpty() ? ", and none is on order" : ", until " + what.order() + " is here";
        return "it waits while " + what.rope() + " is short" + more;
    }

    private static Map<String, String> places(CutPlan plan) {
        Map<String, String> places = new HashMap<>();
        plan.draws().forEach(draw -> draw.cuts().forEach(cut -> places.put(cut.piece(), draw.reel())));
        return places;
    }

    private Sentence why(Piece piece, String was, Map<String, String> before, CutPlan now) {
        Reel reel = reels.get(was);
        if (reel == null) {
            return Sentence.of(
                    Arrival.isIdOfOne(was)
                            ? "reel " + was + " is not on order any more"
                            : "nothing is left of reel " + was);
        }
        Optional<Reason> rule = rules.against(piece, reel);
        if (rule.isPresent()) {
            return rule.get().sentence();
        }
        Length cut = piece.lengthOn(reel.rope()).orElseThrow();
        Length longest = reel.runs().stream().map(Run::length).reduce(Length.ZERO, Length::max);
        return cut.isLongerThan(longest)
                ? Sentence.of("the longest sound run of reel " + was + " is ")
                        .and(longest)
                        .and(" now")
                : Sentence.of(beside(piece, reel, before, now));
    }

    /** Whether there is room left on the reel in the new plan, and if not, what takes it. */
    private static String beside(Piece piece, Reel reel, Map<String, String> before, CutPlan now) {
        Map<Integer, Length> left = new HashMap<>();
        List<String> newcomers = new ArrayList<>();
        for (ReelDraw draw : now.draws()) {
            if (draw.reel().equals(reel.id())) {
                draw.runs().stream()
                        .filter(run -> !run.cuts().isEmpty())
                        .forEach(run -> left.put(run.run(), run.left()));
                draw.cuts().stream()
                        .map(Cut::piece)
                        .filter(other -> !reel.id().equals(before.get(other)))
                        .forEach(newcomers::add);
            }
        }
        Length cut = piece.lengthOn(reel.rope()).orElseThrow();
        boolean hasRoom =
                reel.runs().stream().anyMatch(run -> !cut.isLongerThan(left.getOrDefault(run.index(), run.length())));
        if (hasRoom) {
            return "there is room for it on reel " + reel.id() + ", but "
                    + (piece.isMatched()
                            ? "the whole of its set " + piece.matching().set() + " is cut off other rope now"
                            : "the plan costs less so");
        }
        if (newcomers.isEmpty()) {
            return "there is no room for it on reel " + reel.id() + " beside the work that stays there";
        }
        TradedPlaces traded = new TradedPlaces(before, now);
        List<String> first = newcomers.stream()
                .filter(other -> !traded.isForItsPart(other, piece.id()))
                .toList();
        List<String> named = first.isEmpty() ? newcomers : first;
        String takes = listed(named) + (named.size() == 1 ? " takes" : " take") + " its place on reel " + reel.id();
        return first.isEmpty() ? takes + " and it the place of others in turn: the plan costs less so" : takes;
    }

    private static String listed(List<String> pieces) {
        int more = pieces.size() - MOST_NAMED;
        return more <= 0
                ? String.join(", ", pieces)
                : String.join(", ", pieces.subList(0, MOST_NAMED)) + " and " + more + " more";
    }
}
