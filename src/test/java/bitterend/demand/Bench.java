package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Construction;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Lay;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Thimble;
import bitterend.catalogue.Tucking;
import bitterend.demand.Assembly.Extras;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Assembly.Ordered;
import bitterend.demand.Assembly.Origin;
import bitterend.demand.Assembly.Terms;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.UnitPrice;
import bitterend.measure.Written;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Ropes and orders for the tests of the demand model. */
final class Bench {
    private Bench() {}

    static Diameter mm(long mm) {
        return Diameter.ofMillimetres(mm);
    }

    /** Thousandths of an inch. */
    static Diameter mil(long thousandths) {
        return new Diameter(thousandths * 254);
    }

    static FineLength fine(long mm) {
        return FineLength.ofMillimetres(mm);
    }

    static Rope rope(Construction construction, Fibre fibre, Diameter diameter) {
        return new Rope(
                "R",
                "a rope",
                new RopeIdentity(
                        construction,
                        fibre,
                        construction.equals(Kinds.WIRE) ? "IWRC" : "",
                        "",
                        diameter,
                        Lay.NONE,
                        "",
                        "",
                        ""),
                new LinearMass(0),
                new UnitPrice(1000),
                new Rope.Cutting(new Length(10), new Length(1)),
                new Rope.Worth(Length.ofMetres(1), Length.ofMetres(100)),
                Length.ofMetres(200));
    }

    static EyeSpec flat(long mm) {
        return new EyeSpec.FlatLength(fine(mm), Diameter.NONE);
    }

    static EyeSpec flatOnPin(long mm, long pin) {
        return new EyeSpec.FlatLength(fine(mm), mm(pin));
    }

    static Make make(Length finished, EndSpec endA, EndSpec endB) {
        return new Make(Written.worked(finished), Measuring.USUAL, endA, endB, Extras.NONE);
    }

    static Assembly one(Make make) {
        return order(1, 1, make, Terms.USUAL, "R");
    }

    static Assembly order(int quantity, int legs, Make make, Terms terms, String... ropes) {
        Piece.Source source = new Piece.Source("100", "1", LocalDate.MAX, 5);
        return new Assembly(
                new Origin("orders.csv", "row 2"),
                new Ordered(source, "", "", quantity, legs),
                List.of(ropes),
                make,
                terms);
    }

    static DemandModel model(SpliceBook splices, Rope... ropes) {
        return new DemandModel(new Catalogue(List.of(ropes), splices));
    }

    /** The amount of the one line with this label. */
    static FineLength amount(Derivation derivation, String label) {
        return derivation.lines().stream()
                .filter(line -> line.label().equals(label))
                .map(Derivation.Line::amount)
                .reduce((a, b) -> {
                    throw new AssertionError("two lines " + label);
                })
                .orElseThrow(() -> new AssertionError("no line " + label + " in " + derivation.lines()));
    }

    /** The same book with one row changed. */
    static SpliceBook change(SpliceBook book, String id, UnaryOperator<Termination> change) {
        return book.withTerminations(book.terminations().stream()
                .map(row -> row.id().equals(id) ? change.apply(row) : row)
                .toList());
    }

    static Termination copy(Termination row, Map<What, Allowance> allowances, Tucking tucking) {
        return new Termination(
                row.id(),
                row.family(),
                row.name(),
                row.kind(),
                row.suits(),
                tucking,
                allowances,
                row.onRope(),
                row.layout(),
                row.work(),
                row.provenance());
    }

    /** The same row with a fixed length in place of one of its allowances. */
    static Termination withLength(Termination row, What what, long mm) {
        Map<What, Allowance> allowances = new EnumMap<>(What.class);
        allowances.putAll(row.allowances());
        allowances.put(what, new Allowance(List.of(new Term.Fixed(fine(mm))), Provenance.ARITHMETIC));
        return copy(row, allowances, row.tucking());
    }

    static Tucking withoutProjection(Tucking tucking) {
        return new Tucking(
                tucking.natural(),
                tucking.other(),
                tucking.form(),
                Allowance.NOTHING,
                tucking.advised(),
                tucking.provenance());
    }

    static SpliceBook withThimbles(SpliceBook book, Thimble... thimbles) {
        return book.withHardware(List.of(thimbles), book.fittings());
    }
}
