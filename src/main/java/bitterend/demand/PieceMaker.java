package bitterend.demand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Names the pieces of an order line and gives each what the bench must know of it. */
final class PieceMaker {
    private final Assembly assembly;
    private final int rings;
    private final String ends;

    PieceMaker(Assembly assembly, int rings) {
        this.assembly = assembly;
        this.rings = rings;
        this.ends = EndWords.of(assembly.make().endA()) + " / "
                + EndWords.of(assembly.make().endB());
    }

    /**
     * The pieces of an order line, or of one part of it. A piece may hold the strands of several rings: three fibre rings
     * take one piece, a fourth a second.
     */
    static List<PieceId> ids(Assembly assembly, int rings) {
        Assembly.Ordered ordered = assembly.ordered();
        List<PieceId> ids = new ArrayList<>();
        if (rings > 1) {
            int wanted = ordered.pieces();
            for (int n = 1; n <= (wanted + rings - 1) / rings; n++) {
                ids.add(partOf(assembly, n));
            }
            return ids;
        }
        for (int n = 1; n <= ordered.quantity(); n++) {
            for (int leg = 1; leg <= ordered.legs(); leg++) {
                ids.add(partOf(assembly, n).leg(leg, ordered.legs()));
            }
        }
        return ids;
    }

    /** One piece for each id, with the cut length of every derivation that names it. */
    List<Piece> pieces(List<Derivation> derivations) {
        Map<String, List<Piece.RopeChoice>> choices = new HashMap<>();
        for (Derivation derivation : derivations) {
            Piece.RopeChoice choice = new Piece.RopeChoice(derivation.rope(), derivation.cut());
            derivation.pieces().forEach(id -> choices.computeIfAbsent(id, any -> new ArrayList<>())
                    .add(choice));
        }
        return ids(assembly, rings).stream()
                .map(id -> piece(id, choices.getOrDefault(id.text(), List.of())))
                .toList();
    }

    private Piece piece(PieceId id, List<Piece.RopeChoice> choices) {
        Assembly.Terms terms = assembly.terms();
        return new Piece(
                id,
                assembly.ordered().source(),
                choices,
                matching(id),
                terms.certificate(),
                terms.ownRope(),
                assembly.make().finished(),
                ends);
    }

    /** A bond without a name ties the legs of each assembly together, and no more. */
    private Piece.Matching matching(PieceId id) {
        Piece.Matching stated = assembly.terms().matching();
        return stated.bond() == Piece.Bond.NONE || !stated.set().isEmpty()
                ? stated
                : new Piece.Matching(partOf(assembly, id.number()).text(), stated.bond());
    }

    private static PieceId partOf(Assembly assembly, int number) {
        Piece.Source source = assembly.ordered().source();
        return PieceId.of(source.order(), source.line(), number)
                .part(assembly.membership().part());
    }
}
