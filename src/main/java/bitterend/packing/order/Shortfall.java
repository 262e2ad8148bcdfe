package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Eligibility;
import bitterend.packing.HeldWords;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.RunId;
import bitterend.packing.Unplanned;
import bitterend.packing.WantedRope;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.RopeToCount;
import bitterend.packing.bench.Takers;
import bitterend.packing.bench.Workbench;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Says why a piece could not be planned and what would help, by trying every reel against the hard rules. */
final class Shortfall {
    private final PackingProblem problem;
    private final Workbench bench;
    private final RackState rack;
    private final Eligibility rules;
    private final Takers takers;
    private final BarredReels barred;
    private final RopeToCount count;

    Shortfall(Workbench bench, RackState rack) {
        this.problem = bench.problem();
        this.bench = bench;
        this.rack = rack;
        rules = new Eligibility(problem);
        takers = new Takers(bench, rack);
        barred = new BarredReels(bench, rack, rules);
        count = new RopeToCount(bench, rack);
    }

    /** Every unplanned piece with its reason, by piece id. */
    List<Unplanned> unplanned() {
        return problem.pieces().stream()
                .filter(piece -> !rack.isPlanned(bench.numberOf(piece.id())))
                .sorted(Comparator.comparing(Piece::id, NaturalOrder.IDS))
                .map(this::explain)
                .toList();
    }

    private Unplanned explain(Piece piece) {
        if (!piece.matching().begun().isEmpty()) {
            return new BegunShortfall(problem, rules).of(piece, countFirst(new WantedRope(problem, piece)));
        }
        List<Reel> ofRope = problem.reels().stream()
                .filter(reel -> rules.sameRope(piece, reel).isEmpty())
                .toList();
        List<Reel> allowed =
                ofRope.stream().filter(reel -> rules.allows(piece, reel)).toList();
        if (ofRope.isEmpty()) {
            return say(
                    piece,
                    Rule.SAME_ROPE,
                    Sentence.of("no reel of " + piece.orderedRope() + " is in stock"),
                    receive(piece));
        }
        if (allowed.isEmpty()) {
            return barred(piece, ofRope);
        }
        Length longest = longestRun(allowed);
        if (fittingRuns(piece, allowed) == 0) {
            return tooLong(piece, ofRope, longest);
        }
        return piece.isMatched() ? setUnplaced(piece) : usedUp(piece, allowed);
    }

    private Unplanned barred(Piece piece, List<Reel> reels) {
        List<Reason> reasons = reels.stream()
                .flatMap(reel -> rules.against(piece, reel).stream())
                .toList();
        Sentence all = Sentence.joined(
                "; ", reasons.stream().map(Reason::sentence).distinct().limit(4).toList());
        return say(
                piece,
                reasons.get(0).rule(),
                all,
                Sentence.of(barred.settle(piece)).and(receive(piece)));
    }

    private Unplanned tooLong(Piece piece, List<Reel> ofRope, Length longest) {
        List<Reason> bars = ofRope.stream()
                .filter(reel -> fittingRuns(piece, List.of(reel)) > 0)
                .flatMap(reel -> rules.against(piece, reel).stream())
                .toList();
        List<Sentence> told = new ArrayList<>();
        told.add(Sentence.of("it takes ")
                .and(piece.cut())
                .and(" and the longest sound run it may use is ")
                .and(longest));
        bars.forEach(bar -> told.add(bar.sentence()));
        told.addAll(HeldWords.inTheWayOf(piece, reels(piece), problem.day()));
        return say(
                piece,
                Rule.FITS_THE_RUN,
                Sentence.joined("; ", told),
                Sentence.of(barred.settle(piece)).and(receive(piece)));
    }

    private Unplanned setUnplaced(Piece piece) {
        boolean oneReel = piece.matching().bond() == Piece.Bond.ONE_REEL;
        WantedRope wanted = new WantedRope(problem, piece);
        List<BarredReels.Bar> bars = barred.toBeGivenFree(piece);
        Sentence sentence = Sentence.of("set " + piece.matching().set() + " ("
                        + wanted.together().size() + " pieces, ")
                .and(wanted.inPieces())
                .and(") does not fit on one " + (oneReel ? "reel" : "lot") + " beside the other work")
                .and(takers.whoTook(homesOf(piece)))
                .and(inTheHouse(piece, bars));
        return say(
                piece,
                oneReel ? Rule.ONE_REEL : Rule.ONE_LOT,
                sentence,
                Sentence.of(barred.settle(bars)).and(receive(wanted)));
    }

    private Unplanned usedUp(Piece piece, List<Reel> allowed) {
        Length most = Length.ZERO;
        for (Reel reel : allowed) {
            for (Run run : reel.runs()) {
                long free = rack.free(bench.numberOf(new RunId(reel.id(), run.index())));
                most = Length.max(most, new Length(free));
            }
        }
        int[] runs = homesOf(piece);
        List<BarredReels.Bar> bars = barred.toBeGivenFree(piece);
        Sentence sentence = Sentence.of("what the other work leaves is too short for it: it takes ")
                .and(piece.cut())
                .and(" and at most ")
                .and(most)
                .and(" is left in one run")
                .and(takers.whoTook(runs))
                .and(inTheHouse(piece, bars));
        String wait = takers.whoMightWait(piece, runs)
                .map(others -> ", or put off " + others)
                .orElse("");
        return say(
                piece,
                Rule.PLANNED,
                sentence,
                Sentence.of(barred.settle(bars)).and(receive(piece)).and(wait));
    }

    private List<Reel> reels(Piece piece) {
        return problem.reels().stream()
                .filter(reel -> rules.allows(piece, reel))
                .toList();
    }

    /** Rope in the house that is held or could be given free; empty for none. */
    private Sentence inTheHouse(Piece piece, List<BarredReels.Bar> bars) {
        List<Sentence> told = new ArrayList<>(HeldWords.inTheWayOf(piece, reels(piece), problem.day()));
        bars.stream()
                .limit(BarredReels.NAMED)
                .map(bar -> bar.reason().sentence())
                .forEach(told::add);
        if (bars.size() > BarredReels.NAMED) {
            told.add(Sentence.of(bars.size() - BarredReels.NAMED + " more such"));
        }
        return told.isEmpty() ? Sentence.NONE : Sentence.of("; ").and(Sentence.joined("; ", told));
    }

    private long fittingRuns(Piece piece, List<Reel> reels) {
        return reels.stream()
                .flatMap(reel -> reel.runs().stream()
                        .filter(run -> rules.fits(piece, reel, run).isEmpty()))
                .count();
    }

    /** The runs that would hold a piece if nothing else were cut there. */
    private int[] homesOf(Piece piece) {
        return bench.asListed().of(bench.numberOf(piece.id()));
    }

    private static Length longestRun(List<Reel> reels) {
        return reels.stream()
                .flatMap(reel -> reel.runs().stream())
                .map(Run::length)
                .max(Comparator.naturalOrder())
                .orElse(Length.ZERO);
    }

    private Sentence receive(Piece piece) {
        return receive(new WantedRope(problem, piece));
    }

    /** Rope to receive, and before it rope to count: nobody buys what may be there. */
    private Sentence receive(WantedRope wanted) {
        return countFirst(wanted).and(wanted.receive());
    }

    private Sentence countFirst(WantedRope wanted) {
        return count.before(wanted).map(told -> told.and(", or ")).orElse(Sentence.NONE);
    }

    private static Unplanned say(Piece piece, Rule rule, Sentence sentence, Sentence help) {
        return new Unplanned(
                piece.id(), new Reason(rule, Sentence.of(piece.id() + ": ").and(sentence)), help);
    }
}
