package bitterend.demand;

import bitterend.finding.Finding;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What an assembly asks of the bench.
 *
 * @param pieces the pieces to cut; empty when the assembly cannot be made
 * @param derivations how their lengths came about, one for each length and rope
 * @param work what each end of a piece asks of the splicer, on the rope as ordered; empty when it cannot be made
 * @param layouts where each end is marked, on the rope as ordered, then the marks along the piece
 * @param card what the splicer must know besides the marks, on the rope as ordered; nothing when it cannot be made
 * @param findings what is wrong with it, or worth knowing
 * @param remarks what is worth telling once for all lines that share it
 */
public record Demanded(
        List<Piece> pieces,
        List<Derivation> derivations,
        List<EndWork> work,
        List<SpliceLayout> layouts,
        @Nullable SpliceCard card,
        List<Finding> findings,
        List<Finding> remarks) {
    public Demanded {
        pieces = List.copyOf(pieces);
        derivations = List.copyOf(derivations);
        work = List.copyOf(work);
        layouts = List.copyOf(layouts);
        findings = List.copyOf(findings);
        remarks = List.copyOf(remarks);
    }

    /** The splice card; nothing for an assembly that cannot be made. */
    public Optional<SpliceCard> findCard() {
        return Optional.ofNullable(card);
    }

    /** An assembly that cannot be made. */
    static Demanded refused(List<Finding> findings) {
        return new Demanded(List.of(), List.of(), List.of(), List.of(), null, findings, List.of());
    }
}
