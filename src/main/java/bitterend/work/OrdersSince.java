package bitterend.work;

import bitterend.demand.Piece;
import bitterend.measure.Sentence;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.work.Verdict.Passed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What the orders of a plan say otherwise than when it was made. Days and urgency do not matter to what is cut. */
final class OrdersSince {
    private final Passed plan;
    private final Map<String, Piece> then = new HashMap<>();
    private final Map<String, Piece> now = new HashMap<>();
    private final Set<String> cut = new HashSet<>();

    OrdersSince(Passed plan, ShopToday today) {
        this.plan = plan;
        plan.problem().pieces().forEach(piece -> then.put(piece.id(), piece));
        today.shop().pieces().forEach(piece -> now.put(piece.id(), piece));
        today.rack().ifPresent(rack -> cut.addAll(rack.today().cut().keySet()));
    }

    List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>();
        for (ReelDraw draw : plan.plan().draws()) {
            for (Cut each : draw.cuts()) {
                Piece was = then.get(each.piece());
                if (was != null) {
                    changed(was, draw).ifPresent(remarks::add);
                }
            }
        }
        remarks.addAll(newcomers());
        return remarks;
    }

    private Optional<Remark> changed(Piece was, ReelDraw draw) {
        Piece is = now.get(was.id());
        boolean bars = !cut.contains(was.id());
        if (is == null) {
            return Optional.of(new Remark(
                    draw.reel(),
                    was.id(),
                    Sentence.of("order " + was.order() + ": " + was.id() + " is not ordered any more"
                            + (bars ? "" : ", and is cut")),
                    bars,
                    Remark.About.ANYTHING));
        }
        String rope = plan.problem().reel(draw.reel()).rope();
        Sentence difference = difference(was, is, rope);
        return difference.isEmpty()
                ? Optional.empty()
                : Optional.of(new Remark(
                        draw.reel(),
                        was.id(),
                        Sentence.of("order " + was.order() + " changed: " + was.id() + " ")
                                .and(difference),
                        bars,
                        Remark.About.ANYTHING));
    }

    /** What is asked for otherwise, as the end of a sentence about the piece; empty for nothing. */
    private static Sentence difference(Piece was, Piece is, String rope) {
        if (is.lengthOn(rope).isEmpty()) {
            return Sentence.of("may not be cut from " + rope + " any more");
        }
        if (!was.lengthOn(rope).equals(is.lengthOn(rope))) {
            return Sentence.of("was to be cut at ")
                    .and(was.lengthOn(rope).orElse(was.cut()))
                    .and(", now at ")
                    .and(is.lengthOn(rope).orElse(is.cut()));
        }
        if (!was.hasEndsOf(is)) {
            return Sentence.of("had the ends " + was.ends() + ", now " + is.ends());
        }
        if (!was.certificate().equals(is.certificate()) || was.ownRope() != is.ownRope()) {
            return Sentence.of("needs another certificate, or rope of another owner");
        }
        boolean otherSet = !was.matching().set().equals(is.matching().set())
                || was.matching().bond() != is.matching().bond();
        if (otherSet) {
            return Sentence.of("belongs to another matched set");
        }
        return was.finished().equals(is.finished()) ? Sentence.NONE : Sentence.of("has another finished length");
    }

    /** Work that came since, by order. */
    private List<Remark> newcomers() {
        Map<String, Integer> orders = new TreeMap<>();
        now.values().stream()
                .filter(piece -> !then.containsKey(piece.id()) && !cut.contains(piece.id()))
                .filter(piece ->
                        plan.problem().horizon().holds(piece, plan.problem().calendar()))
                .forEach(piece -> orders.merge(piece.order(), 1, Integer::sum));
        List<Remark> remarks = new ArrayList<>();
        orders.forEach((order, pieces) -> remarks.add(Remark.told(
                "",
                "order " + order + ": " + pieces + (pieces == 1 ? " piece is" : " pieces are") + " not in this plan")));
        return remarks;
    }
}
