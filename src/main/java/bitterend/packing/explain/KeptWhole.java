package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.packing.Unplanned;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A reel that is not cut into today, since later work needs it: a piece that must be cut today would fit on it, and then the
 * later ones would not.
 *
 * @param reel id of the reel
 * @param day the day on which it is cut
 * @param pieces ids of the pieces that need it
 * @param waiting ids of pieces that are planned on no reel, and would fit on it
 */
public record KeptWhole(String reel, LocalDate day, List<String> pieces, List<String> waiting) {
    public KeptWhole {
        pieces = List.copyOf(pieces);
        waiting = List.copyOf(waiting);
    }

    /**
     * The reels of a plan that are kept so, those in front for which work waits.
     *
     * @param promised reels of the plan in the house that need not be cut today
     * @param unplanned what the plan leaves undone
     */
    public static List<KeptWhole> of(PackingProblem problem, List<ReelDraw> promised, Collection<Unplanned> unplanned) {
        CutDays days = new CutDays(problem);
        Eligibility rules = new Eligibility(problem);
        Set<String> undone = unplanned.stream().map(Unplanned::piece).collect(Collectors.toSet());
        List<KeptWhole> kept = new ArrayList<>();
        for (ReelDraw draw : promised) {
            LocalDate day = days.of(draw);
            List<String> others = problem.pieces().stream()
                    .filter(piece -> !days.lastFor(piece).isAfter(problem.day()))
                    .filter(piece -> wouldBreak(piece, draw, problem, rules))
                    .map(Piece::id)
                    .sorted(NaturalOrder.IDS)
                    .toList();
            if (!others.isEmpty()) {
                List<String> own = draw.cuts().stream()
                        .map(Cut::piece)
                        .sorted(NaturalOrder.IDS)
                        .toList();
                kept.add(new KeptWhole(
                        draw.reel(),
                        day,
                        own,
                        others.stream().filter(undone::contains).toList()));
            }
        }
        kept.sort(Comparator.comparing((KeptWhole each) -> each.waiting().isEmpty())
                .thenComparing(KeptWhole::day)
                .thenComparing(KeptWhole::reel, NaturalOrder.IDS));
        return kept;
    }

    /** Whether a piece fits on the reel as it is, and not beside what the plan puts there. */
    private static boolean wouldBreak(Piece piece, ReelDraw draw, PackingProblem problem, Eligibility rules) {
        Reel reel = problem.reel(draw.reel());
        Optional<Length> cut = piece.lengthOn(reel.rope());
        if (cut.isEmpty() || !rules.allows(piece, reel)) {
            return false;
        }
        Set<Integer> touched = new HashSet<>();
        for (RunDraw run : draw.runs()) {
            touched.add(run.run());
            if (!cut.get().isLongerThan(run.left())) {
                return false;
            }
        }
        boolean fits = false;
        List<Run> runs = reel.runs();
        for (int at = 0; at < runs.size(); at++) {
            boolean fitsHere = !cut.get().isLongerThan(runs.get(at).length());
            if (fitsHere && !touched.contains(at + 1)) {
                return false;
            }
            fits |= fitsHere;
        }
        return fits;
    }
}
