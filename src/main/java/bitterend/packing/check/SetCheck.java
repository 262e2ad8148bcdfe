package bitterend.packing.check;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.ReelDraw;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Checks that matched sets are planned whole or not at all, and come off one lot or one reel. */
final class SetCheck {
    private final Facts facts;
    private final Faults faults;
    private final Map<String, Reel> reelOf = new HashMap<>();

    SetCheck(Facts facts, Faults faults, CutPlan plan) {
        this.facts = facts;
        this.faults = faults;
        for (ReelDraw draw : plan.draws()) {
            for (Cut cut : draw.cuts()) {
                facts.findReel(draw.reel()).ifPresent(reel -> reelOf.put(cut.piece(), reel));
            }
        }
    }

    void check() {
        Map<String, List<Piece>> sets = new TreeMap<>();
        for (Piece piece : facts.problem().pieces()) {
            if (piece.matching().bond() != Bond.NONE) {
                sets.computeIfAbsent(piece.matching().set(), set -> new ArrayList<>())
                        .add(piece);
            }
        }
        sets.forEach(this::check);
    }

    private void check(String set, List<Piece> pieces) {
        List<Piece> planned =
                pieces.stream().filter(piece -> reelOf.containsKey(piece.id())).toList();
        faults.unless(
                planned.isEmpty() || planned.size() == pieces.size(),
                Check.SET_WHOLE,
                set,
                planned.size() + " of the " + pieces.size() + " pieces of the set are planned");
        boolean toTheReel = pieces.stream().anyMatch(piece -> piece.matching().bond() == Bond.ONE_REEL);
        if (toTheReel) {
            one(Check.ONE_REEL, set, planned, Reel::id);
        } else {
            one(Check.ONE_LOT, set, planned, reel -> reel.rope() + ", " + Facts.lot(reel));
        }
    }

    private void one(Check check, String set, List<Piece> planned, Function<Reel, String> source) {
        TreeSet<String> sources = new TreeSet<>();
        for (Piece piece : planned) {
            Reel reel = reelOf.get(piece.id());
            if (reel != null) {
                sources.add(source.apply(reel));
            }
        }
        faults.unless(sources.size() <= 1, check, set, "the set comes off " + String.join(" and ", sources));
    }
}
