package bitterend.day;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.CutPlan;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.Unplanned;
import bitterend.packing.Words;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What a new plan does otherwise than the earlier one, and why. */
public final class Changes {
    private final PackingProblem day;
    private final Map<String, Reel> reels = new HashMap<>();
    private final Eligibility rules;

    /** Looks at the day that the new plan was made for. */
    public Changes(PackingProblem day) {
        this.day = day;
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
    public record Change(String piece, String was, String now, String why) {}

    /** Every piece that is still open and planned otherwise, by id. */
    public List<Change> since(CutPlan earlier, CutPlan now) {
        Map<String, String> before = places(earlier);
        Map<String, String> after = places(now);
        Map<String, String> unplanned = new TreeMap<>();
        for (Unplanned each : now.unplanned()) {
            unplanned.put(each.piece(), each.reason().sentence());
        }
        List<Change> changes = new ArrayList<>();
        day.pieces().stream()
                .sorted(Comparator.comparing(Piece::id, NaturalOrder.IDS))
                .forEach(piece -> {
                    String was = before.getOrDefault(piece.id(), "");
                    String is = after.getOrDefault(piece.id(), "");
                    if (!was.equals(is)) {
                        String why = is.isEmpty()
                                ? unplanned.getOrDefault(piece.id(), "")
                                : was.isEmpty() ? "new, or not planned before" : why(piece, was);
                        changes.add(new Change(piece.id(), was, is, why));
                    }
                });
        return changes;
    }

    private static Map<String, String> places(CutPlan plan) {
        Map<String, String> places = new HashMap<>();
        plan.draws().forEach(draw -> draw.cuts().forEach(cut -> places.put(cut.piece(), draw.reel())));
        return places;
    }

    private String why(Piece piece, String was) {
        Reel reel = reels.get(was);
        if (reel == null) {
            return "nothing is left of reel " + was;
        }
        Optional<Reason> rule = rules.against(piece, reel);
        if (rule.isPresent()) {
            return rule.get().sentence();
        }
        long longest = reel.runs().stream()
                .map(Run::length)
                .mapToLong(length -> length.mm())
                .max()
                .orElse(0);
        long cut = piece.lengthOn(reel.rope()).orElseThrow().mm();
        return cut > longest
                ? "the longest sound run of reel " + was + " is " + Words.of(new bitterend.measure.Length(longest))
                        + " now"
                : "other work takes its place on reel " + was + ", or it costs less so";
    }
}
