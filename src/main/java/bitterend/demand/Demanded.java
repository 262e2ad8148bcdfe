package bitterend.demand;

import bitterend.finding.Finding;
import java.util.List;

/**
 * What an assembly asks of the bench.
 *
 * @param pieces the pieces to cut; empty when the assembly cannot be made
 * @param derivations how their lengths came about, one for each length and rope
 * @param findings what is wrong with it, or worth knowing
 */
public record Demanded(List<Piece> pieces, List<Derivation> derivations, List<Finding> findings) {
    public Demanded {
        pieces = List.copyOf(pieces);
        derivations = List.copyOf(derivations);
        findings = List.copyOf(findings);
    }
}
