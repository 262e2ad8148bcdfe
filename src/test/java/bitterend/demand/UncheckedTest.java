package bitterend.demand;

import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.one;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Construction;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.Kind;
import bitterend.catalogue.Termination.What;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is from memory is marked wherever it is shown: in every row, on the card, in the derivation, in warnings. */
final class UncheckedTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final EndSpec PLAIN = EndSpec.of("plain");
    private static final List<What> ON_THE_CARD =
            List.of(What.TAIL, What.TAKE_UP, What.MARGIN, What.ROOM, What.SLIP_KNOT);

    /** Every end; what is made along a piece is asked of its derivation in {@link WeeklySplicesTest}. */
    static Stream<String> rows() {
        return BOOK.terminations().stream().filter(row -> !row.kind().isAlong()).map(Termination::id);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyRow_marksWhatIsFromMemory(String id) {
        Termination row = BOOK.terminations().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
        SpliceBook book = row.allowance(What.TAIL).isUnknown()
                ? Bench.change(BOOK, id, each -> Bench.withLength(each, What.TAIL, 200))
                : BOOK;
        Demanded demanded = model(book, rope(row)).pieces(one(make(Length.ofMetres(40), end(row), PLAIN)));
        assertEquals(1, demanded.pieces().size(), demanded.findings()::toString);
        Termination made = book.findTermination(id, rope(row)).orElseThrow();
        for (What what : ON_THE_CARD) {
            if (made.allowance(what).provenance().grade() == Grade.MEMORY) {
                String caution = demanded.layouts().get(0).caution();
                assertTrue(caution.contains("From memory, unchecked: "), caution);
                assertTrue(caution.substring(caution.indexOf("From memory")).contains(what.word()), caution);
                assertTrue(caution.endsWith(demanded.work().get(0).unchecked()), "on the card");
            }
        }
        demanded.derivations().get(0).lines().stream()
                .filter(line -> line.provenance().source().contains("from memory")
                        && !line.label().endsWith("tail"))
                .forEach(line -> assertEquals(Grade.MEMORY, line.provenance().grade(), line::toString));
        demanded.derivations().get(0).lines().stream()
                .filter(line -> line.provenance().grade() == Grade.MEMORY)
                .forEach(line -> assertTrue(!line.provenance().verified(), line::toString));
    }

    /** A lay that is not typed is from memory, and so is what it makes of the dead end of a wedge socket. */
    @Test
    void layThatIsNotTyped_isMarked() {
        Rope wire = Bench.rope(Kinds.WIRE, Kinds.STEEL, mm(32));
        EndSpec wedge = new EndSpec(
                "wedge-socket", EyeSpec.NONE, new EndSpec.FittingSpec("", Bench.fine(80)), EndSpec.Options.NONE);
        SpliceLayout layout = model(BOOK, wire)
                .pieces(one(make(Length.ofMetres(10), wedge, PLAIN)))
                .layouts()
                .get(0);
        assertTrue(layout.caution().endsWith("From memory, unchecked: lay of the rope."), layout.caution());
    }

    /** A spread that is a guess is said to be one. */
    @Test
    void guessedSpread_isMarkedInItsWarning() {
        Rope laid = Bench.rope(Kinds.THREE_STRAND, Kinds.MANILA, mm(12));
        Assembly.Asked tight = new Assembly.Asked(
                new Tolerance(bitterend.measure.Written.worked(new Length(1)), bitterend.measure.Ratio.ZERO),
                Tolerance.NONE,
                Tolerance.NONE,
                List.of());
        Assembly.Make make = new Assembly.Make(
                bitterend.measure.Written.worked(Length.ofMetres(10)),
                Measuring.USUAL,
                EndSpec.of("three-strand-eye", flat(300)),
                PLAIN,
                Assembly.Extras.NONE,
                tight);
        String told = model(BOOK, laid).pieces(one(make)).findings().stream()
                .map(Finding::expected)
                .reduce("", String::concat);
        assertTrue(told.contains("no tighter than the take-up is known, 12 mm, from memory"), told);
    }

    private static EndSpec end(Termination row) {
        if (row.kind() == Kind.EYE || row.kind() == Kind.LOOP) {
            return EndSpec.of(row.id(), flat(400));
        }
        return row.kind() == Kind.FITTING
                ? new EndSpec(row.id(), EyeSpec.NONE, new EndSpec.FittingSpec("", Bench.fine(80)), EndSpec.Options.NONE)
                : EndSpec.of(row.id());
    }

    /** A rope that the row suits. */
    private static Rope rope(Termination row) {
        List<Rope> ropes = new ArrayList<>();
        for (Construction construction : Kinds.constructions()) {
            Stream<Fibre> fibres = construction.equals(Kinds.WIRE)
                    ? Stream.of(Kinds.STEEL)
                    : Kinds.fibres().stream().filter(fibre -> !fibre.equals(Kinds.STEEL));
            fibres.forEach(fibre -> ropes.add(Bench.rope(construction, fibre, mm(12))));
        }
        Optional<Rope> suited =
                ropes.stream().filter(rope -> row.suits().admits(rope)).findFirst();
        return suited.orElseThrow();
    }
}
