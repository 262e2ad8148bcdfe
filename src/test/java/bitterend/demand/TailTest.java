package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Bench.rope;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Clips;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Layout;
import bitterend.catalogue.PartCount;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination;
import bitterend.demand.EndSpec.FittingSpec;
import bitterend.demand.EndSpec.Options;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An order may state a longer tail, more tucks; clips hold a tail in their order. */
final class TailTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final Rope BRAID = rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12));
    private static final Rope LAID = rope(Kinds.THREE_STRAND, Kinds.POLYESTER, mm(12));
    private static final Rope WIRE = rope(Kinds.WIRE, Kinds.STEEL, mm(12));
    private static final EndSpec PLAIN = EndSpec.of("plain");

    /** A row whose marks follow its tail, or that has no marks of its own, may have a longer one; no join, ring or bare end. */
    @ParameterizedTest
    @CsvSource({
        "double-braid-eye, true",
        "bury-eye, true",
        "three-strand-eye, true",
        "seized-eye, true",
        "clip-eye, true",
        "hasty-eye, false",
        "wire-grommet, false",
        "fibre-grommet, false",
        "short-splice, false",
        "end-for-end-join, false",
        "sealed, false",
        "plain, false"
    })
    void row_saysWhetherItsTailMayBeLonger(String id, boolean may) {
        assertEquals(may, Tail.mayBeLonger(row(id)));
    }

    @Test
    void tail_whereTheRowHasItsOwnIsRefused() {
        Demanded demanded = made(LAID, end("short-splice", EyeSpec.NONE, fine(900)));
        assertEquals(
                "short-splice with a tail of 900 mm: no tail: "
                        + row("short-splice").name() + " takes its own",
                told(demanded));
    }

    /** The usual tail of a double braid eye is one fid, 252 mm of 12 mm rope; a longer one is welcome, a shorter one is not. */
    @Test
    void tail_isAtLeastTheUsualOne() {
        assertEquals("", told(made(BRAID, eye(2_520_000))));
        assertEquals(
                "double-braid-eye with a tail of 251.9999 mm: at least 252 mm, its usual tail: a longer one is welcome",
                told(made(BRAID, eye(2_519_999))));
    }

    /** A margin of 3 diameters, 36 mm, goes on top of the usual tail of 252 mm, until the order's own is as long as both. */
    @Test
    void margin_goesWhereTheTailIsLongerByAsMuch() {
        assertEquals(List.of(fine(36)), margins(eye(2_520_000)));
        assertEquals(List.of(fine(36)), margins(eye(2_879_999)));
        assertEquals(List.of(), margins(eye(2_880_000)));
        assertEquals(List.of(fine(36)), margins(EndSpec.of("double-braid-eye", flat(300))));
    }

    /** Each strand makes half the tucks of a join on its side: eight in all are four, fewer are refused (29 CFR 1926.251(d)). */
    @Test
    void tucks_ofAJoinAreToldOfOneSide() {
        EndSpec join = new EndSpec("short-splice", EyeSpec.NONE, FittingSpec.NONE, new Options(8, false, "", ""));
        Finding remark = made(LAID, join).remarks().get(0);
        assertEquals("short-splice on R with 4 full tucks", remark.found());
        assertTrue(remark.expected().startsWith("5 full tucks in every synthetic ("), remark::expected);
        assertTrue(remark.expected().endsWith("); fewer than 4 are refused"), remark::expected);
    }

    @Test
    void tucks_ofAnEyeAreToldAsTheyAre() {
        EndSpec eye = new EndSpec("three-strand-eye", flat(300), FittingSpec.NONE, new Options(4, false, "", ""));
        Finding remark = made(LAID, eye).remarks().get(0);
        assertEquals("three-strand-eye on R with 4 full tucks", remark.found());
        assertTrue(remark.expected().endsWith("); fewer than 4 are refused"), remark::expected);
    }

    @Test
    void memory_isMarkedBehindItsFigure() {
        assertEquals(", from memory", Unchecked.mark(of(Grade.MEMORY)));
        assertEquals("", Unchecked.mark(of(Grade.PRACTICE)));
    }

    /**
     * Thirteen clips on 12 mm wire, 6 diameters apart and two saddles of 36 mm: a tail of 936 mm, the first clip at 54 mm, the
     * second at 918 mm, the rest every 72 mm between. Beyond the twelfth they have no number.
     */
    @Test
    void clips_areNumberedUpToTwelve() {
        List<Mark> clips = clips(thirteen());
        assertEquals(13, clips.size());
        assertEquals(List.of("first clip", "second clip", "third clip"), names(clips.subList(0, 3)));
        assertEquals(List.of("eleventh clip", "twelfth clip", "further clip"), names(clips.subList(10, 13)));
        assertEquals(
                List.of(fine(54), fine(918), fine(126)),
                clips.subList(0, 3).stream().map(Mark::distance).toList());
        assertEquals(
                List.of(fine(774), fine(846)),
                clips.subList(11, 13).stream().map(Mark::distance).toList());
    }

    @Test
    void clips_sayWhereTheySit() {
        assertEquals(
                List.of(
                        "its centre; one saddle of rope is left beyond it",
                        "its centre; hard against the thimble, saddle on the live part",
                        "its centre; evenly between, saddle on the live part"),
                purposes(clips(made(WIRE, EndSpec.of("clip-eye", flat(300))))));
        assertEquals(
                "its centre; next to the middle of the overlap, saddle on the live part",
                purposes(clips(made(WIRE, EndSpec.of("clip-joint")))).get(1));
        assertFalse(made(WIRE, EndSpec.of("wire-tucked-eye", flat(300))).layouts().get(0).marks().stream()
                .anyMatch(mark -> mark.name().endsWith("clip")));
    }

    private static Demanded thirteen() {
        SpliceBook book = Bench.change(BOOK, "clip-eye", row -> {
            Clips clips = row.layout().clips();
            Layout layout = new Layout(
                    row.layout().marks(),
                    row.layout().counts(),
                    new Clips(clips.item(), PartCount.of(13), clips.saddle(), clips.torques()),
                    row.layout().rings());
            return new Termination(
                    row.id(),
                    row.family(),
                    row.name(),
                    row.kind(),
                    row.suits(),
                    row.tucking(),
                    row.allowances(),
                    row.onRope(),
                    layout,
                    row.work(),
                    row.provenance());
        });
        return model(book, WIRE).pieces(one(Bench.make(Length.ofMetres(10), EndSpec.of("clip-eye", flat(300)), PLAIN)));
    }

    private static List<Mark> clips(Demanded demanded) {
        return demanded.layouts().get(0).marks().stream()
                .filter(mark -> mark.name().endsWith(" clip"))
                .toList();
    }

    private static List<String> names(List<Mark> marks) {
        return marks.stream().map(Mark::name).toList();
    }

    private static List<String> purposes(List<Mark> marks) {
        return marks.stream().map(Mark::purpose).map(Sentence::exact).toList();
    }

    private static Allowance of(Grade grade) {
        return new Allowance(List.of(new Term.Fixed(fine(10))), new Provenance("", grade, false));
    }

    private static Termination row(String id) {
        return BOOK.terminations().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** An eye of 300 mm with a tail of so many ten-thousandths of a millimetre. */
    private static EndSpec eye(long tail) {
        return end("double-braid-eye", flat(300), new FineLength(tail));
    }

    private static EndSpec end(String id, EyeSpec eye, FineLength tail) {
        Allowance asked = new Allowance(List.of(new Term.Fixed(tail)), Provenance.ORDER);
        return new EndSpec(id, eye, FittingSpec.NONE, new Options(0, false, "", "", asked));
    }

    private static Demanded made(Rope rope, EndSpec end) {
        return model(BOOK, rope).pieces(one(Bench.make(Length.ofMetres(10), end, PLAIN)));
    }

    private static List<FineLength> margins(EndSpec end) {
        return made(BRAID, end).derivations().get(0).lines().stream()
                .filter(line -> line.label().equals("end A: margin of the take-up"))
                .map(Derivation.Line::amount)
                .toList();
    }

    private static String told(Demanded demanded) {
        return demanded.findings().stream()
                .filter(Finding::isError)
                .map(each -> each.found() + ": " + each.expected())
                .collect(Collectors.joining("\n"));
    }
}
