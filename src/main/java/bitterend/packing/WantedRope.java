package bitterend.packing;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.stock.Reel;
import java.util.Comparator;
import java.util.List;

/** The rope that a piece asks for that is left undone: alone, or with all of its set, which is planned whole or not at all. */
public final class WantedRope {
    private final PackingProblem problem;
    private final Piece piece;
    private final List<Piece> together;

    public WantedRope(PackingProblem problem, Piece piece) {
        this.problem = problem;
        this.piece = piece;
        together = piece.isMatched()
                ? problem.pieces().stream()
                        .filter(other ->
                                other.matching().set().equals(piece.matching().set()))
                        .sorted(Comparator.comparing(Piece::cut).reversed().thenComparing(Piece::id))
                        .toList()
                : List.of(piece);
    }

    /** The pieces of its set that are to be cut, the longest first; the piece itself where it stands alone. */
    public List<Piece> together() {
        return together;
    }

    /** What they are together, laid end to end. */
    public Length inPieces() {
        return together.stream().map(Piece::cut).reduce(Length.ZERO, Length::plus);
    }

    /** What they take together off one run of a reel that they may come off, with what is lost at the cuts between them. */
    public Length takesOn(Reel reel) {
        Length lengths = together.stream()
                .map(each -> each.lengthOn(reel.rope()).orElse(each.cut()))
                .reduce(Length.ZERO, Length::plus);
        return withCuts(lengths, reel.rope());
    }

    private Length withCuts(Length lengths, String rope) {
        return lengths.plus(problem.rope(rope).cutting().loss().times(together.size() - 1));
    }

    /** One length to receive that serves: {@code receive at least 12.020 m of R in one length, for set S (3 pieces)}. */
    public Sentence receive() {
        return Sentence.of("receive at least ")
                .and(withCuts(inPieces(), piece.orderedRope()))
                .and(" of " + piece.orderedRope() + " in one length" + Words.withCertificate(piece.certificate()))
                .and(
                        together.size() > 1
                                ? ", for set " + piece.matching().set() + " (" + together.size() + " pieces)"
                                : "");
    }
}
