package bitterend.demand;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Rope;
import bitterend.demand.Derivation.Line;
import bitterend.finding.Finding;
import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns ordered assemblies into pieces to cut, or says why they cannot be made. */
public final class DemandModel {
    private final Catalogue catalogue;
    private final EndMaker ends;
    private final Feasibility feasibility;
    private final CodeNotes codes;
    private final Watch watch;
    private final LegNotes notes;

    public DemandModel(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.ends = new EndMaker(catalogue);
        this.feasibility = new Feasibility(catalogue.splices());
        this.codes = new CodeNotes(catalogue.splices());
        this.watch = new Watch(catalogue.splices().bench());
        this.notes = new LegNotes(catalogue.splices());
    }

    /**
     * The pieces of an order line with their cut lengths on every rope allowed. Findings tell why it cannot be made, or
     * what to watch; a substitute on which it cannot be made is left out with a warning.
     */
    public Demanded pieces(Assembly assembly) {
        Problems problems = new Problems(assembly.origin());
        Optional<Leg> ordered = leg(assembly, assembly.ropes().get(0), "rope", problems);
        if (ordered.isEmpty()) {
            return Demanded.refused(problems.findings());
        }
        List<Finding> findings = new ArrayList<>(problems.findings());
        List<Leg> legs = new ArrayList<>(List.of(ordered.get()));
        for (String substitute : assembly.ropes().subList(1, assembly.ropes().size())) {
            Problems ofSubstitute = new Problems(assembly.origin());
            leg(assembly, substitute, "substitutes", ofSubstitute).ifPresent(legs::add);
            findings.addAll(ofSubstitute.asWarningsAbout(substitute));
        }
        List<Derivation> derivations = derivations(assembly, legs);
        return new Demanded(
                new PieceMaker(assembly, ordered.get().rings()).pieces(derivations),
                derivations,
                ordered.get().ends().stream()
                        .map(end -> end.work(ordered.get().rope()))
                        .toList(),
                papers(assembly, ordered.get()),
                findings,
                problems.remarks());
    }

    private BenchPapers papers(Assembly assembly, Leg leg) {
        return BenchPapers.of(() -> leg.layouts(), () -> new CardMaker(leg).card(codes.inForce(leg, assembly.terms())));
    }

    /** The take-up that a finished assembly shows, made with this cut length; its finished length is as measured. */
    public TakeUp takeUp(Assembly assembly, FineLength cut) {
        Problems problems = new Problems(assembly.origin());
        Optional<Leg> leg = made(assembly, assembly.ropes().get(0), "rope", problems);
        if (leg.isEmpty()
                || !feasibility.knowsItsPoints(leg.get(), problems)
                || !feasibility.reachesRoundMeasuringPins(leg.get(), problems)) {
            return TakeUp.unknown(problems.findings());
        }
        return new TakeUpReader().read(leg.get(), cut, problems);
    }

    private Optional<Leg> leg(Assembly assembly, String ropeId, String field, Problems problems) {
        Optional<Leg> leg = made(assembly, ropeId, field, problems);
        leg.ifPresent(made -> {
            feasibility.check(made, assembly, problems);
            if (!problems.hasErrors()) {
                watch.over(made, assembly, problems);
            }
        });
        return problems.hasErrors() ? Optional.empty() : leg;
    }

    private Optional<Leg> made(Assembly assembly, String ropeId, String field, Problems problems) {
        Optional<Rope> rope = catalogue.findRope(ropeId);
        if (rope.isEmpty()) {
            problems.error(field, ropeId, "the id of a rope in ropes.json that can be used");
            return Optional.empty();
        }
        problems.naming(new EndsThatDo(catalogue.splices(), rope.get(), assembly.terms()));
        Measuring measuring = assembly.make().measuring();
        FineLength round = measuring.round(assembly.make().finished().exact());
        Optional<MadeEnd> endA = ends.make(assembly.make().endA(), rope.get(), "end A", round, problems);
        Optional<MadeEnd> endB = ends.make(assembly.make().endB(), rope.get(), "end B", round, problems);
        List<KnotsAlong> along = along(assembly, rope.get(), problems);
        if (endA.isEmpty() || endB.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Leg(
                rope.get(),
                assembly.make(),
                new MeasuredPoints(measuring.points()).over(known(endA.get(), endB.get())),
                along,
                catalogue.splices().bench().findCounter(rope.get()).stream().toList()));
    }

    /** Knots and loops along a piece; one that cannot be made is told. */
    private List<KnotsAlong> along(Assembly assembly, Rope rope, Problems problems) {
        List<KnotsAlong> along = new ArrayList<>();
        for (Assembly.Along wanted : assembly.make().extras().along()) {
            ends.make(wanted.spec(), rope, KnotsAlong.PLACE, FineLength.ZERO, problems)
                    .ifPresent(each -> along.add(new KnotsAlong(wanted.count(), each)));
        }
        if (!along.isEmpty() && !assembly.make().asked().marks().isEmpty()) {
            problems.error(
                    "marks",
                    "marks and " + along.get(0).each().termination().id(),
                    "marks or knots along: a place moves with each knot before it");
        }
        return along;
    }

    /** Both ends; of two spliced alike both seldom take up more than usual. */
    private static List<MadeEnd> known(MadeEnd endA, MadeEnd endB) {
        boolean alike = endA.isSpliced()
                && endA.termination().id().equals(endB.termination().id());
        return alike ? List.of(endA.asTwin(), endB.asTwin()) : List.of(endA, endB);
    }

    private List<Derivation> derivations(Assembly assembly, List<Leg> legs) {
        List<String> ids = PieceMaker.ids(assembly, legs.get(0).rings()).stream()
                .map(PieceId::text)
                .toList();
        FineLength sample = assembly.make().extras().sample().exact();
        List<Derivation> derivations = new ArrayList<>();
        for (Leg leg : legs) {
            if (!sample.isPositive()) {
                derivations.add(derivation(assembly, leg, ids, FineLength.ZERO));
                continue;
            }
            derivations.add(derivation(assembly, leg, ids.subList(0, 1), sample));
            if (ids.size() > 1) {
                derivations.add(derivation(assembly, leg, ids.subList(1, ids.size()), FineLength.ZERO));
            }
        }
        return derivations;
    }

    private Derivation derivation(Assembly assembly, Leg leg, List<String> ids, FineLength sample) {
        List<Line> lines = leg.lines(sample);
        List<Sentence> words = new ArrayList<>();
        inherited(assembly).forEach(taken -> words.add(Sentence.of(taken)));
        words.addAll(notes.of(leg));
        words.addAll(new HangNotes(leg, assembly).all());
        words.addAll(new HardwareNotes(leg, assembly.ordered().legs()).all());
        if (leg.rings() > 1) {
            words.add(Sentence.of("a piece holds the strands of " + leg.rings() + " rings: "
                    + PieceMaker.ids(assembly, leg.rings()).size()
                    + " for "
                    + assembly.ordered().pieces()
                    + "; strands that are left are no stock"));
        }
        codes.inForce(leg, assembly.terms()).map(CodeInForce::asks).ifPresent(words::addAll);
        return new Derivation(ids, leg.rope().id(), lines, Leg.sum(lines).roundedUp(), words);
    }

    private static List<String> inherited(Assembly assembly) {
        List<String> taken = assembly.membership().inherited();
        return taken.isEmpty()
                ? List.of()
                : List.of("from product " + assembly.ordered().product() + ": " + String.join(", ", taken));
    }
}
