package bitterend.demand;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.demand.Derivation.Line;
import bitterend.finding.Finding;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Turns ordered assemblies into pieces to cut. */
public final class DemandModel {
    private final Catalogue catalogue;

    public DemandModel(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The pieces of an order line with their cut lengths on every rope allowed, or the reasons why it cannot be made. */
    public Demanded pieces(Assembly assembly) {
        List<Finding> findings = new ArrayList<>();
        for (String rope : assembly.ropes()) {
            if (catalogue.findRope(rope).isEmpty()) {
                findings.add(problem(assembly, "rope", rope, "a rope of the catalogue"));
            }
        }
        for (EndSpec end : List.of(assembly.make().endA(), assembly.make().endB())) {
            if (!end.termination().equals("plain") || !end.eye().equals(EyeSpec.NONE)) {
                findings.add(problem(assembly, "end", end.termination(), "a plain end"));
            }
        }
        if (!findings.isEmpty()) {
            return new Demanded(List.of(), List.of(), findings);
        }
        List<String> ids = pieceIds(assembly);
        List<Derivation> derivations = assembly.ropes().stream()
                .map(rope -> derivation(assembly, ids, catalogue.rope(rope)))
                .toList();
        return new Demanded(
                ids.stream().map(id -> piece(assembly, id, derivations)).toList(), derivations, findings);
    }

    private static Derivation derivation(Assembly assembly, List<String> ids, Rope rope) {
        FineLength finished = assembly.make().finished().fine();
        Length cut = finished.roundedUpTo(rope.cutting().toNearest());
        List<Line> lines = List.of(
                new Line("finished length", "", finished, Provenance.ORDER),
                new Line(
                        "rounding up",
                        "to the next " + rope.cutting().toNearest().mm() + " mm",
                        cut.fine().minus(finished),
                        Provenance.ARITHMETIC));
        return new Derivation(ids, rope.id(), lines, cut);
    }

    private static Piece piece(Assembly assembly, String id, List<Derivation> derivations) {
        List<Piece.RopeChoice> choices = derivations.stream()
                .filter(derivation -> derivation.pieces().contains(id))
                .map(derivation -> new Piece.RopeChoice(derivation.rope(), derivation.cut()))
                .toList();
        Assembly.Make make = assembly.make();
        return new Piece(
                id,
                assembly.ordered().source(),
                choices,
                matching(assembly, id),
                assembly.terms().certificate(),
                assembly.terms().ownRope(),
                make.finished(),
                make.endA().termination() + " / " + make.endB().termination());
    }

    /** A bond without a name ties the legs of each assembly together, and no more. */
    private static Piece.Matching matching(Assembly assembly, String id) {
        Piece.Matching stated = assembly.terms().matching();
        if (stated.bond() == Piece.Bond.NONE || !stated.set().isEmpty()) {
            return stated;
        }
        String ofAssembly = assembly.ordered().legs() == 1 ? id : id.substring(0, id.lastIndexOf('-'));
        return new Piece.Matching(ofAssembly, stated.bond());
    }

    private static List<String> pieceIds(Assembly assembly) {
        Assembly.Ordered ordered = assembly.ordered();
        String stem = ordered.source().order() + "/" + ordered.source().line() + ".";
        List<String> ids = new ArrayList<>();
        for (int n = 1; n <= ordered.quantity(); n++) {
            String id = stem + n;
            if (ordered.legs() == 1) {
                ids.add(id);
            } else {
                IntStream.rangeClosed(1, ordered.legs()).forEach(leg -> ids.add(id + "-" + leg));
            }
        }
        return List.copyOf(ids);
    }

    private static Finding problem(Assembly assembly, String field, String found, String expected) {
        return Finding.error(assembly.origin().file(), assembly.origin().place(), field, found, expected);
    }
}
