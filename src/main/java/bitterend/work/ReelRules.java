package bitterend.work;

import bitterend.demand.Piece;
import bitterend.measure.Sentence;
import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.Eligibility;
import bitterend.packing.ReelDraw;
import bitterend.packing.Rule;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the reels of a plan are today, their papers and whom they are kept for, against the pieces that are planned off them. */
final class ReelRules {
    private static final Set<Rule> OF_TODAY =
            EnumSet.of(Rule.SAME_ROPE, Rule.RESERVED, Rule.OWN_ROPE, Rule.CERTIFICATE, Rule.USE_BY);

    private ReelRules() {}

    /**
     * What bars pieces.
     *
     * @param today the reels as they are
     */
    static List<Remark> of(Verdict.Passed plan, Map<String, Reel> today) {
        Eligibility rules = new Eligibility(plan.problem());
        CutDays days = new CutDays(plan.problem());
        Map<String, Piece> pieces = new HashMap<>();
        plan.problem().pieces().forEach(piece -> pieces.put(piece.id(), piece));
        List<Remark> remarks = new ArrayList<>();
        for (ReelDraw draw : plan.plan().draws()) {
            Reel reel = today.get(draw.reel());
            if (reel != null) {
                beforeItsCut(reel, plan.plan().day(), days.of(draw)).ifPresent(remarks::add);
            }
            for (Cut cut : draw.cuts()) {
                Piece piece = pieces.get(cut.piece());
                if (reel != null && piece != null) {
                    rules.all(piece, reel).stream()
                            .filter(reason -> OF_TODAY.contains(reason.rule()))
                            .map(reason -> Remark.barring(
                                    reel.id(),
                                    piece.id(),
                                    Sentence.of(piece.id() + ": ").and(reason.sentence())))
                            .forEach(remarks::add);
                }
            }
        }
        return remarks;
    }

    /** It may still be cut in time, so that nothing is barred. */
    private static Optional<Remark> beforeItsCut(Reel reel, LocalDate planned, LocalDate cut) {
        LocalDate last = reel.papers().useBy();
        return last.isBefore(cut) && !last.isBefore(planned)
                ? Optional.of(Remark.told(
                        reel.id(),
                        "reel " + reel.id() + " is to be used by " + last + " now, and the plan cuts it on " + cut
                                + ": cut it by then, or plan again"))
                : Optional.empty();
    }
}
