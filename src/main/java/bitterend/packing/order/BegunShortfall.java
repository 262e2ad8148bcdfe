package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.Unplanned;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Why what is left of a begun set could not be planned: only rope that matches its cut pieces will do. */
final class BegunShortfall {
    private final PackingProblem problem;
    private final Eligibility rules;

    BegunShortfall(PackingProblem problem, Eligibility rules) {
        this.problem = problem;
        this.rules = rules;
    }

    /** @param first what is to be done before rope is looked for, with its "or"; empty for nothing */
    Unplanned of(Piece piece, Sentence first) {
        Unplanned left = of(piece);
        return new Unplanned(left.piece(), left.reason(), first.and(left.help()));
    }

    private Unplanned of(Piece piece) {
        List<Reel> ofRope = problem.reels().stream()
                .filter(reel -> rules.sameRope(piece, reel).isEmpty())
                .toList();
        List<Reel> matching = ofRope.stream()
                .filter(reel -> rules.begunSet(piece, reel).isEmpty())
                .toList();
        List<Reel> allowed =
                matching.stream().filter(reel -> rules.allows(piece, reel)).toList();
        List<Reason> bars = matching.stream()
                .flatMap(reel -> rules.against(piece, reel).stream())
                .distinct()
                .toList();
        if (matching.isEmpty()) {
            Rule rule = ofRope.isEmpty() ? Rule.SAME_ROPE : Rule.BEGUN_SET;
            return say(piece, rule, Sentence.of("no rope on the rack matches"));
        }
        if (allowed.isEmpty()) {
            return say(piece, bars.get(0).rule(), sentences(bars));
        }
        Length longest = longestRun(allowed);
        boolean fits = allowed.stream().anyMatch(reel -> fits(piece, reel));
        return fits ? noRoom(piece) : say(piece, Rule.FITS_THE_RUN, tooLong(piece, longest, bars));
    }

    private Unplanned noRoom(Piece piece) {
        List<Piece> rest = problem.pieces().stream()
                .filter(other -> other.matching().set().equals(piece.matching().set()))
                .toList();
        Length wanted = rest.stream().map(Piece::cut).reduce(Length.ZERO, Length::plus);
        return say(
                piece,
                toTheReel(piece) ? Rule.ONE_REEL : Rule.ONE_LOT,
                Sentence.of("what is left of the set (" + rest.size() + (rest.size() == 1 ? " piece, " : " pieces, "))
                        .and(wanted)
                        .and(") does not fit on what matches, beside the other work"));
    }

    private static Sentence tooLong(Piece piece, Length longest, List<Reason> bars) {
        Sentence told = Sentence.of("it takes ")
                .and(piece.cut())
                .and(" and the longest sound run that matches is ")
                .and(longest);
        return bars.isEmpty() ? told : told.and("; ").and(sentences(bars));
    }

    private static Sentence sentences(List<Reason> reasons) {
        return Sentence.joined(
                "; ", reasons.stream().map(Reason::sentence).limit(4).toList());
    }

    private boolean fits(Piece piece, Reel reel) {
        return reel.runs().stream().anyMatch(run -> rules.fits(piece, reel, run).isEmpty());
    }

    private static Length longestRun(List<Reel> reels) {
        return reels.stream()
                .flatMap(reel -> reel.runs().stream())
                .map(Run::length)
                .max(Comparator.naturalOrder())
                .orElse(Length.ZERO);
    }

    private static boolean toTheReel(Piece piece) {
        return piece.matching().bond() == Piece.Bond.ONE_REEL;
    }

    private static String cutOf(Piece piece) {
        return piece.matching().begun().stream()
                .collect(Collectors.groupingBy(
                        mate -> mate.origin(toTheReel(piece)),
                        Collectors.mapping(mate -> mate.piece(), Collectors.joining(", "))))
                .entrySet()
                .stream()
                .sorted(java.util.Map.Entry.comparingByKey())
                .map(entry -> entry.getValue() + (entry.getValue().contains(", ") ? " are" : " is") + " cut off "
                        + entry.getKey())
                .collect(Collectors.joining(", "));
    }

    private static Unplanned say(Piece piece, Rule rule, Sentence why) {
        String set = "set " + piece.matching().set();
        Sentence sentence = Sentence.of(piece.id() + ": " + set + " is begun, " + cutOf(piece) + ", and ")
                .and(why);
        return new Unplanned(
                piece.id(),
                new Reason(rule, sentence),
                Sentence.of("find or release rope that matches; else " + set
                        + " is to be released or made again whole, which a person decides (orders release,"
                        + " orders again)"));
    }
}
