package bitterend.packing.order;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Written;
import bitterend.packing.Eligibility;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Open pieces of one order line of which nothing but the number tells one from another; a pinned piece is equal to none. */
public final class EqualPieces {
    private final Eligibility rules;
    private final List<Piece> pieces;

    public EqualPieces(PackingProblem problem) {
        rules = new Eligibility(problem);
        pieces = problem.pieces().stream()
                .filter(piece -> !rules.kindOf(piece).isPinned())
                .sorted(Comparator.comparing(Piece::id, NaturalOrder.IDS))
                .toList();
    }

    /** What two equal pieces have in common, the matched set apart. */
    private record Alike(Piece.Source source, String part, PieceKind kind, Written finished, String ends) {}

    private record InSet(Alike alike, Piece.Matching matching) {}

    /** Groups of two or more, each by number. */
    public List<List<Piece>> groups() {
        Map<InSet, List<Piece>> groups = new LinkedHashMap<>();
        pieces.forEach(
                piece -> groups.computeIfAbsent(new InSet(alike(piece), piece.matching()), any -> new ArrayList<>())
                        .add(piece));
        return severals(groups);
    }

    /** Equal matched sets of one order line, each an assembly of its own that nobody has begun, by number. */
    public List<List<List<Piece>>> sets() {
        Map<String, List<Piece>> bySet = new LinkedHashMap<>();
        pieces.stream().filter(Piece::isMatched).forEach(piece -> bySet.computeIfAbsent(
                        piece.matching().set(), any -> new ArrayList<>())
                .add(piece));
        Map<List<Object>, List<List<Piece>>> groups = new LinkedHashMap<>();
        bySet.values().stream().filter(EqualPieces::isOneAssembly).forEach(set -> groups.computeIfAbsent(
                        List.of(
                                set.get(0).matching().bond(),
                                set.get(0).matching().released(),
                                set.stream().map(this::alike).toList()),
                        any -> new ArrayList<>())
                .add(set));
        return severals(groups);
    }

    private static <K, T> List<List<T>> severals(Map<K, List<T>> groups) {
        return groups.values().stream().filter(group -> group.size() > 1).toList();
    }

    /** Whether all legs of the set are open, and all of one assembly. */
    private static boolean isOneAssembly(List<Piece> set) {
        return set.size() == set.get(0).pieceId().legs()
                && set.stream()
                                .map(piece -> piece.pieceId().assembly())
                                .distinct()
                                .count()
                        == 1;
    }

    private Alike alike(Piece piece) {
        return new Alike(piece.source(), piece.pieceId().part(), rules.kindOf(piece), piece.finished(), piece.ends());
    }
}
