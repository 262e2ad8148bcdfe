package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.packing.Eligibility;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.packing.Unplanned;
import bitterend.packing.Words;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says why a piece could not be planned and what would help, by trying every reel against the hard rules. */
final class Shortfall {
    private static final String CALL_BACK = "post its sheet, or call it back with plan --withdraw";

    private final PackingProblem problem;
    private final Packing packing;
    private final PlanPrice prices;
    private final Eligibility rules;
    private final Takers takers;

    Shortfall(PackingProblem problem, Packing packing, PlanPrice prices) {
        this.problem = problem;
        this.packing = packing;
        this.prices = prices;
        rules = new Eligibility(problem);
        takers = new Takers(problem, packing);
    }

    /** Every unplanned piece with its reason, by piece id. */
    List<Unplanned> unplanned() {
        Map<String, RunLoad[]> loads = prices.loads(packing);
        return problem.pieces().stream()
                .filter(piece -> !packing.places().containsKey(piece.id()))
                .sorted(Comparator.comparing(Piece::id, NaturalOrder.IDS))
                .map(piece -> explain(piece, loads))
                .toList();
    }

    private Unplanned explain(Piece piece, Map<String, RunLoad[]> loads) {
        if (!piece.matching().begun().isEmpty()) {
            return new BegunShortfall(problem, rules).of(piece);
        }
        List<Reel> ofRope = problem.reels().stream()
                .filter(reel -> rules.sameRope(piece, reel).isEmpty())
                .toList();
        List<Reel> allowed =
                ofRope.stream().filter(reel -> rules.allows(piece, reel)).toList();
        if (ofRope.isEmpty()) {
            return say(piece, Rule.SAME_ROPE, "no reel of " + piece.orderedRope() + " is in stock", receive(piece));
        }
        if (allowed.isEmpty()) {
            return barred(piece, ofRope);
        }
        Length longest = longestRun(allowed);
        if (fittingRuns(piece, allowed) == 0) {
            return tooLong(piece, ofRope, longest);
        }
        return piece.isMatched() ? setUnplaced(piece) : usedUp(piece, allowed, loads);
    }

    private Unplanned barred(Piece piece, List<Reel> reels) {
        List<Reason> reasons = reels.stream()
                .flatMap(reel -> rules.against(piece, reel).stream())
                .toList();
        String all = String.join(
                "; ", reasons.stream().map(Reason::sentence).distinct().limit(4).toList());
        boolean onTheBench = reasons.stream().allMatch(reason -> reason.rule() == Rule.ISSUED);
        String settle = onTheBench ? CALL_BACK : "release one of these reels";
        return say(piece, reasons.get(0).rule(), all, settle + ", or " + receive(piece));
    }

    private Unplanned tooLong(Piece piece, List<Reel> ofRope, Length longest) {
        List<Reason> bars = ofRope.stream()
                .filter(reel -> fittingRuns(piece, List.of(reel)) > 0)
                .flatMap(reel -> rules.against(piece, reel).stream())
                .toList();
        String barred = bars.stream().map(bar -> "; " + bar.sentence()).collect(Collectors.joining());
        String sentence = "it takes " + Words.of(piece.cut()) + " and the longest sound run it may use is "
                + Words.of(longest) + barred;
        boolean onTheBench = bars.stream().anyMatch(bar -> bar.rule() == Rule.ISSUED);
        return say(piece, Rule.FITS_THE_RUN, sentence, (onTheBench ? CALL_BACK + ", or " : "") + receive(piece));
    }

    private Unplanned setUnplaced(Piece piece) {
        boolean oneReel = piece.matching().bond() == Piece.Bond.ONE_REEL;
        List<Piece> set = problem.pieces().stream()
                .filter(other -> other.matching().set().equals(piece.matching().set()))
                .toList();
        Length wanted = set.stream().map(Piece::cut).reduce(Length.ZERO, Length::plus);
        String sentence = "set " + piece.matching().set() + " (" + set.size() + " pieces, " + Words.of(wanted)
                + ") does not fit on one " + (oneReel ? "reel" : "lot") + " beside the other work"
                + takers.whoTook(runsFor(piece, allowedFor(piece)));
        return say(
                piece,
                oneReel ? Rule.ONE_REEL : Rule.ONE_LOT,
                sentence,
                "receive " + Words.of(wanted) + " of " + piece.orderedRope() + " in one "
                        + (oneReel ? "length" : "lot"));
    }

    private Unplanned usedUp(Piece piece, List<Reel> allowed, Map<String, RunLoad[]> loads) {
        Length most = Length.ZERO;
        for (Reel reel : allowed) {
            RunLoad[] load = loads.get(reel.id());
            for (Run run : prices.draw(reel.id()).runs()) {
                Length left = load == null
                        ? run.length()
                        : load[run.index() - 1].leftOf(
                                run.length(), prices.draw(reel.id()).loss());
                most = Length.max(most, left);
            }
        }
        List<RunId> runs = runsFor(piece, allowed);
        String sentence = "the reels it may use are taken up by other work: it takes " + Words.of(piece.cut())
                + " and at most " + Words.of(most) + " is left in one run" + takers.whoTook(runs);
        String wait = takers.whoMightWait(piece, runs).orElse("other work in " + piece.orderedRope());
        return say(piece, Rule.PLANNED, sentence, receive(piece) + ", or put off " + wait);
    }

    private long fittingRuns(Piece piece, List<Reel> reels) {
        return reels.stream()
                .flatMap(reel -> reel.runs().stream()
                        .filter(run -> rules.fits(piece, reel, run).isEmpty()))
                .count();
    }

    /** The runs that would hold a piece if nothing else were cut there. */
    private List<RunId> runsFor(Piece piece, List<Reel> reels) {
        List<RunId> runs = new ArrayList<>();
        for (Reel reel : reels) {
            for (Run run : reel.runs()) {
                if (rules.fits(piece, reel, run).isEmpty()) {
                    runs.add(new RunId(reel.id(), run.index()));
                }
            }
        }
        return runs;
    }

    private List<Reel> allowedFor(Piece piece) {
        return problem.reels().stream()
                .filter(reel -> rules.allows(piece, reel))
                .toList();
    }

    private static Length longestRun(List<Reel> reels) {
        return reels.stream()
                .flatMap(reel -> reel.runs().stream())
                .map(Run::length)
                .max(Comparator.naturalOrder())
                .orElse(Length.ZERO);
    }

    private static String receive(Piece piece) {
        return "receive at least " + Words.of(piece.cut()) + " of " + piece.orderedRope() + " in one length"
                + (piece.certificate().isEmpty() ? "" : " with a " + piece.certificate() + " certificate");
    }

    private static Unplanned say(Piece piece, Rule rule, String sentence, String help) {
        return new Unplanned(piece.id(), new Reason(rule, piece.id() + ": " + sentence), help);
    }
}
