package bitterend.packing.explain;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Sentence;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Reason;
import bitterend.packing.Rule;
import bitterend.packing.WantedRope;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.RopeToCount;
import bitterend.packing.bench.Workbench;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a matched set asks for as a whole, and which reels would take all that is left of it. */
final class SetQuestion {
    private final PackingProblem problem;
    private final Workbench bench;
    private final RackState rack;
    private final Piece piece;
    private final Eligibility rules;
    private final WantedRope wanted;
    private final List<Piece> rest;
    private final Map<String, List<Reel>> holders;

    SetQuestion(Workbench bench, RackState rack, Piece piece) {
        this.problem = bench.problem();
        this.bench = bench;
        this.rack = rack;
        this.piece = piece;
        rules = new Eligibility(problem);
        wanted = new WantedRope(problem, piece);
        rest = piece.isMatched() ? wanted.together() : List.of();
        holders = problem.reels().stream()
                .filter(reel -> rules.sameRope(piece, reel).isEmpty())
                .filter(reel -> rules.begunSet(piece, reel).isEmpty())
                .collect(Collectors.groupingBy(
                        reel -> PlanPrice.holderOf(bond(), reel),
                        () -> new TreeMap<>(NaturalOrder.IDS),
                        Collectors.toList()));
    }

    private Bond bond() {
        return piece.matching().bond();
    }

    private Rule rule() {
        return bond() == Bond.ONE_REEL ? Rule.ONE_REEL : Rule.ONE_LOT;
    }

    /** What the set is, and what it is bound to. */
    Reason told() {
        String open = rest.size() == 1 ? "1 piece" : rest.size() + " pieces";
        List<CutMate> cut = piece.matching().begun();
        String set = "set " + piece.matching().set() + ": ";
        if (cut.isEmpty()) {
            return new Reason(
                    rule(),
                    Sentence.of(set + open + ", ").and(wanted.inPieces()).and(" in all, to come off " + one(bond())));
        }
        boolean toTheReel = bond() == Bond.ONE_REEL;
        String origins = cut.stream()
                .map(mate -> mate.origin(toTheReel))
                .distinct()
                .sorted(NaturalOrder.IDS)
                .collect(Collectors.joining(" and "));
        return new Reason(
                Rule.BEGUN_SET,
                Sentence.of(set + (cut.size() == 1 ? "1 piece is" : cut.size() + " pieces are") + " cut, off " + origins
                                + "; " + open + ", ")
                        .and(wanted.inPieces())
                        .and(" in all, " + (rest.size() == 1 ? "is" : "are") + " left and must match"));
    }

    private static String one(Bond bond) {
        return bond == Bond.ONE_REEL ? "one reel" : "one lot";
    }

    /** Why a reel cannot take the piece, although it could if it stood alone: all that is left must go there. */
    Optional<Reason> against(Reel reel) {
        List<Reel> holder = holders.getOrDefault(PlanPrice.holderOf(bond(), reel), List.of());
        return takesAll(allowed(holder, Set.of()))
                ? Optional.empty()
                : Optional.of(new Reason(
                        rule(),
                        "no room for all that is left of set "
                                + piece.matching().set() + " on "
                                + (bond() == Bond.ONE_REEL ? reel.id() : PlanPrice.lotOf(reel))
                                + " beside the other work"));
    }

    /** Reels that would take the set if the shop settled something, rope that is coming, and what else a person may do. */
    List<Reason> help() {
        List<Reason> help = new ArrayList<>();
        for (List<Reel> holder : holders.values()) {
            if (!takesAll(allowed(holder, Set.of())) && takesAll(allowed(holder, Rule.toSettle()))) {
                help.addAll(toSettle(holder));
            }
        }
        help.addAll(onOrder());
        new RopeToCount(bench, rack).before(wanted).ifPresent(told -> help.add(new Reason(Rule.CLEAR_OF_FLAWS, told)));
        if (piece.matching().begun().isEmpty()) {
            help.add(new Reason(Rule.PLANNED, wanted.receive()));
        } else {
            help.add(new Reason(
                    Rule.BEGUN_SET,
                    "else a person decides: the set is released (orders release) and its rest comes off other"
                            + " rope, or all of it is made again (orders again)"));
        }
        return help;
    }

    /** The reels on order that would do for all of it; none for a set that is begun. */
    List<Reason> onOrder() {
        return piece.matching().begun().isEmpty() ? new RopeToCome(bench, rack).takes("the set", rest) : List.of();
    }

    private List<Reason> toSettle(List<Reel> holder) {
        return holder.stream()
                .flatMap(reel -> rest.stream()
                        .flatMap(each -> bars(each, reel).stream())
                        .map(bar -> new Reason(
                                bar.rule(),
                                Sentence.of(reel.id() + (reel.lot().isEmpty() ? "" : " (lot " + reel.lot() + ")")
                                                + " would do for the set if this were settled: ")
                                        .and(bar.sentence()))))
                .distinct()
                .toList();
    }

    private List<Reason> bars(Piece each, Reel reel) {
        return List.of(
                        rules.onHold(each, reel),
                        rules.reserved(each, reel),
                        rules.ownRope(each, reel),
                        rules.certificate(each, reel),
                        rules.useBy(each, reel),
                        rules.pinned(each, reel),
                        rules.issued(each, reel),
                        rules.comesInTime(each, reel))
                .stream()
                .flatMap(Optional::stream)
                .toList();
    }

    /** The reels that every piece of the set may come off, but for bars of these rules. */
    private List<Reel> allowed(List<Reel> holder, Set<Rule> settled) {
        return holder.stream()
                .filter(reel -> rest.stream()
                        .allMatch(each -> rules.sameRope(each, reel).isEmpty()
                                && bars(each, reel).stream().allMatch(bar -> settled.contains(bar.rule()))))
                .toList();
    }

    private boolean takesAll(List<Reel> reels) {
        return !reels.isEmpty() && new SetRoom(bench, rack, reels).takes(rest);
    }
}
