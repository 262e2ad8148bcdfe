package bitterend.demand;

import bitterend.measure.Units;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Names the pieces of an order line and gives each what the bench must know of it. */
final class PieceMaker {
    private final Assembly assembly;
    private final String ends;

    PieceMaker(Assembly assembly, Units units) {
        this.assembly = assembly;
        this.ends = EndWords.of(assembly.make().endA(), units) + " / "
                + EndWords.of(assembly.make().endB(), units);
    }

    /** {@code ORDER/LINE.n}, with {@code -part} for a part of a product and {@code -leg} for each leg of several. */
    static List<String> ids(Assembly assembly) {
        Assembly.Ordered ordered = assembly.ordered();
        List<String> ids = new ArrayList<>();
        for (int n = 1; n <= ordered.quantity(); n++) {
            for (int leg = 1; leg <= ordered.legs(); leg++) {
                ids.add(assemblyId(ordered, n) + partSuffix(assembly) + (ordered.legs() == 1 ? "" : "-" + leg));
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
        Assembly.Ordered ordered = assembly.ordered();
        List<String> ids = ids(assembly);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            String id = ids.get(i);
            pieces.add(piece(id, choices.getOrDefault(id, List.of()), matching(i / ordered.legs() + 1)));
        }
        return pieces;
    }

    private Piece piece(String id, List<Piece.RopeChoice> choices, Piece.Matching matching) {
        Assembly.Terms terms = assembly.terms();
        return new Piece(
                id,
                assembly.ordered().source(),
                choices,
                matching,
                terms.certificate(),
                terms.ownRope(),
                assembly.make().finished(),
                ends);
    }

    /** A bond without a name ties the legs of each assembly together, and no more. */
    private Piece.Matching matching(int n) {
        Piece.Matching stated = assembly.terms().matching();
        return stated.bond() == Piece.Bond.NONE || !stated.set().isEmpty()
                ? stated
                : new Piece.Matching(assemblyId(assembly.ordered(), n) + partSuffix(assembly), stated.bond());
    }

    private static String partSuffix(Assembly assembly) {
        String part = assembly.membership().part();
        return part.isEmpty() ? "" : "-" + part;
    }

    private static String assemblyId(Assembly.Ordered ordered, int n) {
        return ordered.source().order() + "/" + ordered.source().line() + "." + n;
    }
}
