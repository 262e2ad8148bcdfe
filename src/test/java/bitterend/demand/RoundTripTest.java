package bitterend.demand;

import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Bench.rope;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.Kind;
import bitterend.catalogue.Termination.What;
import bitterend.exchange.SplicesJson;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every termination: ordered, cut to the computed length, spliced with a known take-up, and measured. */
final class RoundTripTest {
    private static final long FINISHED = 40_000;
    private static final FineLength TRUE_TAKE_UP = new FineLength(1_234_567);
    /** Rows whose tail is the shop's own value. */
    private static final List<String> OPEN =
            List.of("wire-sleeve-eye", "seized-eye", "seized-eye-eight", "seized-eye-flat", "seized-eye-racking");

    private static final SpliceBook BOOK = book();

    private static SpliceBook book() {
        SpliceBook book = SplicesJson.builtIn();
        for (String id : OPEN) {
            book = Bench.change(book, id, row -> with(row, What.TAIL, FineLength.ofMillimetres(180)));
        }
        return book;
    }

    static Stream<String> terminations() {
        return BOOK.terminations().stream().filter(row -> !row.kind().isAlong()).map(Termination::id);
    }

    @ParameterizedTest
    @MethodSource("terminations")
    void assembly_comesOutAtItsFinishedLength(String id) {
        SpliceBook known = Bench.change(BOOK, id, row -> with(row, What.TAKE_UP, TRUE_TAKE_UP));
        Termination row = known.terminations().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
        Rope rope = suited(row);
        Derivation derivation = model(known, rope)
                .pieces(one(make(new Length(FINISHED), end(row), EndSpec.of("plain"))))
                .derivations()
                .get(0);
        long measured = spliced(row, derivation);
        // cut to the next millimetre: never short, never a millimetre long
        assertTrue(measured >= FINISHED * 10_000, id + ": " + measured);
        assertTrue(measured < (FINISHED + 1) * 10_000, id + ": " + measured);
    }

    /** What the splicer does: leaves the tail, lays the eye, loses the take-up; then measures from its bearing point. */
    private static long spliced(Termination row, Derivation derivation) {
        int ends = row.id().equals("plain") ? 2 : 1; // the other end is plain too
        long left = derivation.cut().fine().units() - ends * TRUE_TAKE_UP.units();
        left -= tail(row, derivation).units();
        if (row.kind() == Kind.EYE || row.kind() == Kind.LOOP) {
            left -= Bench.amount(derivation, "end A: round the eye").units();
            left += 3_000_000; // a flat eye of 300 mm bears at its crown
        }
        if (row.allowances().containsKey(What.RETURN)) {
            left -= 450_000; // back to the mouth: as far as its depth, where no more is known of the fitting
        }
        return row.kind() == Kind.FITTING ? left + 450_000 : left;
    }

    private static FineLength tail(Termination row, Derivation derivation) {
        boolean hasTail =
                row.allowances().containsKey(What.TAIL) || !row.tucking().isNone();
        return hasTail ? Bench.amount(derivation, "end A: tail") : FineLength.ZERO;
    }

    private static EndSpec end(Termination row) {
        return switch (row.kind()) {
            case EYE, LOOP, LOOP_ALONG -> EndSpec.of(row.id(), Bench.flat(300));
            case FITTING -> new EndSpec(
                    row.id(), EyeSpec.NONE, new EndSpec.FittingSpec("", Bench.fine(45)), EndSpec.Options.NONE);
            case BARE, JOIN, GROMMET, KNOT_ALONG -> EndSpec.of(row.id());
        };
    }

    private static Rope suited(Termination row) {
        return Kinds.constructions().stream()
                .flatMap(construction -> Kinds.fibres().stream().map(fibre -> rope(construction, fibre, mm(12))))
                .filter(rope -> row.suits().admits(rope))
                .findFirst()
                .orElseThrow();
    }

    private static Termination with(Termination row, What what, FineLength length) {
        Map<What, Allowance> allowances = new EnumMap<>(What.class);
        allowances.putAll(row.allowances());
        allowances.put(what, new Allowance(List.of(new Term.Fixed(length)), Provenance.ARITHMETIC));
        return Bench.copy(row, allowances, row.tucking());
    }
}
