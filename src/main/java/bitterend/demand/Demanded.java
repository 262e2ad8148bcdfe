package bitterend.demand;

import bitterend.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What an assembly asks of the bench.
 *
 * @param pieces the pieces to cut; empty when the assembly cannot be made
 * @param derivations how their lengths came about, one for each length and rope
 * @param work what each end of a piece asks of the splicer, on the rope as ordered; empty when it cannot be made
 * @param papers what the splicer of a piece is handed
 * @param findings what is wrong with it, or worth knowing
 * @param remarks what is worth telling once for all lines that share it
 */
public record Demanded(
        List<Piece> pieces,
        List<Derivation> derivations,
        List<EndWork> work,
        BenchPapers papers,
        List<Finding> findings,
        List<Finding> remarks) {
    /** How the advice begins to make one of several first, since nobody has checked the numbers of its end. */
    public static final String MAKE_ONE_FIRST = "splice and measure one before ";

    public Demanded {
        pieces = List.copyOf(pieces);
        derivations = List.copyOf(derivations);
        work = List.copyOf(work);
        findings = List.copyOf(findings);
        remarks = List.copyOf(remarks);
    }

    /** Where each end is marked, on the rope as ordered, then the marks along the piece. */
    public List<SpliceLayout> layouts() {
        return papers.layouts();
    }

    /** The splice card, on the rope as ordered; nothing for an assembly that cannot be made. */
    public Optional<SpliceCard> findCard() {
        return papers.findCard();
    }

    /** The same with what its ends ask of the bench said of each piece: working days of finishing, minutes of labour. */
    public Demanded timed(int days, int minutes) {
        List<Piece> timed =
                pieces.stream().map(piece -> piece.timed(days, minutes)).toList();
        return new Demanded(timed, derivations, work, papers, findings, remarks);
    }

    /** An assembly that cannot be made. */
    static Demanded refused(List<Finding> findings) {
        return new Demanded(List.of(), List.of(), List.of(), BenchPapers.NONE, findings, List.of());
    }
}
