package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Clips;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Fitting;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.Kind;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Yardsticks;
import bitterend.catalogue.Yardsticks.Counted;
import bitterend.catalogue.Yardsticks.Eye;
import bitterend.finding.Nearest;
import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.List;
import java.util.Optional;

/** Works out one end on one rope, or tells why it cannot be made. */
final class EndMaker {
    private final Catalogue catalogue;
    private final SpliceBook splices;
    private final EyeShaper eyes;
    private final HardwareMaker hardware;

    EndMaker(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.splices = catalogue.splices();
        this.eyes = new EyeShaper(splices);
        this.hardware = new HardwareMaker(splices);
    }

    /** The end; empty, with an error told, when it cannot be made. {@code round} is what a ring measures round its inside. */
    Optional<MadeEnd> make(EndSpec spec, Rope rope, String end, FineLength round, Problems problems) {
        Optional<Termination> found = splices.findTermination(spec.termination(), rope);
        if (found.isEmpty()) {
            problems.error(
                    end,
                    spec.termination(),
                    "the id of a termination" + Nearest.hint(spec.termination(), splices.names()));
            return Optional.empty();
        }
        Termination termination = found.get();
        Optional<Sentence> unsuited = termination.suits().refusal(rope);
        if (unsuited.isPresent()) {
            problems.unsuited(
                    end,
                    termination,
                    Sentence.of(spec.termination() + " on " + rope.id() + ", "
                            + rope.identity().described()),
                    unsuited.get());
            return Optional.empty();
        }
        if (!statesWhatItNeeds(spec, termination, end, problems)
                || !tucksSuffice(spec, termination, rope, end, problems)
                || !isCovered(termination, rope, end, problems)
                || !joins(spec, termination, rope, end, problems)
                || !tailSuffices(spec, termination, rope, end, problems)) {
            return Optional.empty();
        }
        Optional<FineLength> pinToBore = pinToBore(spec, rope, end, problems);
        Optional<EyeShape> eye = eyes.shape(spec, rope, end, problems);
        Optional<List<HungHardware>> hung = hardware.hung(spec, termination, end, problems);
        Termination onRope = termination.on(rope);
        return pinToBore.isPresent() && eye.isPresent() && hung.isPresent()
                ? Optional.of(made(spec, rope, end, onRope, ring(termination, eye.get(), round), pinToBore.get())
                        .with(hung.get()))
                : Optional.empty();
    }

    private static EyeShape ring(Termination termination, EyeShape eye, FineLength round) {
        return termination.kind() == Kind.GROMMET ? EyeShape.ring(round) : eye;
    }

    /** Whether a join goes to rope it can be made with; never to unlike lay. */
    private boolean joins(EndSpec spec, Termination row, Rope rope, String end, Problems problems) {
        String to = spec.options().joinedTo();
        if (to.isEmpty()) {
            return true;
        }
        if (row.kind() != Kind.JOIN) {
            problems.error(end, row.id() + " to " + to, "no rope to join: " + row.name() + " joins nothing");
            return false;
        }
        Optional<Rope> other = catalogue.findRope(to);
        if (other.isEmpty()) {
            problems.error(end, to, "the id of a rope in ropes.json that can be used");
            return false;
        }
        if (!row.suits().admits(other.get()) || !other.get().construction().equals(rope.construction())) {
            problems.error(
                    end,
                    row.id() + " to " + to + ", " + other.get().identity().described(),
                    "rope of the same construction");
            return false;
        }
        if (other.get().identity().lay() != rope.identity().lay()) {
            problems.error(
                    end,
                    row.id() + " of " + rope.identity().lay().word() + " lay to "
                            + other.get().identity().lay().word() + " lay",
                    "rope of the same lay: unlike lays are never joined");
            return false;
        }
        if (!other.get().diameter().equals(rope.diameter())) {
            problems.warning(
                    end,
                    Sentence.of(row.id() + " to ").and(other.get().diameter()),
                    Sentence.of("rope of the same diameter; splice to the rope maker's instructions for unlike sizes"));
        }
        return true;
    }

    private MadeEnd made(
            EndSpec spec, Rope rope, String end, Termination termination, EyeShape eye, FineLength pinToBore) {
        Yardsticks bare = sticks(rope, counted(spec, termination, rope), new Eye(eye.round(), eye.across()))
                .withFitting(fittingLength(spec));
        Yardsticks withTail = bare.withTail(Tail.of(termination, spec.options()).length(bare));
        FineLength takeUp = termination.allowance(What.TAKE_UP).length(withTail);
        return new MadeEnd(end, spec, termination, eye, pinToBore, withTail.withTakeUp(takeUp), false, List.of());
    }

    /** Bore or basket of the fitting; where only its depth is stated that, which is longer. */
    private FineLength fittingLength(EndSpec spec) {
        return splices.findFitting(spec.fitting().id())
                .map(Fitting::length)
                .orElse(spec.fitting().pinToBore());
    }

    private Yardsticks sticks(Rope rope, Counted counted, Eye eye) {
        return new Yardsticks(
                rope.diameter(), splices.fids().fid(rope.diameter()), splices.layTurn(rope), counted, eye);
    }

    private Counted counted(EndSpec spec, Termination termination, Rope rope) {
        Counted tucks = Counted.tucks(Tail.tucks(termination, spec.options(), rope));
        Clips clips = termination.layout().clips();
        if (clips.isNone()) {
            return tucks;
        }
        Yardsticks plain = sticks(rope, tucks, Eye.NONE);
        return new Counted(
                tucks.tucks(), clips.count().of(rope.diameter()), clips.saddle().length(plain));
    }

    private static boolean statesWhatItNeeds(EndSpec spec, Termination row, String end, Problems problems) {
        boolean wantsEye = row.kind().wantsEye();
        boolean hasEye = !spec.eye().equals(EyeSpec.NONE);
        boolean hasFitting = !spec.fitting().equals(EndSpec.FittingSpec.NONE);
        if (wantsEye && !hasEye) {
            problems.error(
                    end, row.id() + " without an eye", "the size of its eye, such as " + row.id() + " length 300 mm");
        }
        if (!wantsEye && hasEye) {
            problems.error(end, row.id() + " with an eye", "no eye: " + row.name() + " has none");
        }
        if (row.kind() == Kind.FITTING && !hasFitting) {
            problems.error(
                    end,
                    row.id() + " without a fitting",
                    "a fitting of fittings in thimbles.json or its depth, such as " + row.id() + " bore 45 mm");
        }
        boolean along = end.equals(KnotsAlong.PLACE);
        if (row.kind().isAlong() != along) {
            problems.error(
                    end,
                    row.id(),
                    along
                            ? "a row of the kind " + Kind.KNOT_ALONG.word() + " or " + Kind.LOOP_ALONG.word()
                            : "an end: " + row.name() + " is made along a piece, in the column along");
        }
        if (row.kind() != Kind.FITTING && hasFitting) {
            problems.error(end, row.id() + " with a fitting", "no fitting: " + row.name() + " has none");
        }
        return wantsEye == hasEye
                && (row.kind() == Kind.FITTING) == hasFitting
                && row.kind().isAlong() == along;
    }

    /** Of hand-tucked wire the code in force decides. */
    private static boolean tucksSuffice(EndSpec spec, Termination row, Rope rope, String end, Problems problems) {
        int asked = spec.options().tucks();
        if (row.tucking().isNone()) {
            if (asked > 0 || spec.options().tapered()) {
                problems.error(end, row.id() + " with tucks", "no tucks: " + row.name() + " has none");
                return false;
            }
            return true;
        }
        int least = row.tucking().least(rope.fibre());
        if (asked > 0 && asked < least && !rope.isWire()) {
            problems.error(
                    end,
                    row.id() + " with " + asked + " tucks",
                    "at least " + least + " tucks in " + rope.fibre().word() + " ("
                            + row.tucking().provenance().source() + ")");
            return false;
        }
        return true;
    }

    /** A tail of the order is never shorter than the row's. */
    private boolean tailSuffices(EndSpec spec, Termination row, Rope rope, String end, Problems problems) {
        Allowance asked = spec.options().tail();
        if (asked.isNothing()) {
            return true;
        }
        if (!Tail.mayBeLonger(row)) {
            problems.error(
                    end, row.id() + " with a tail of " + asked.text(), "no tail: " + row.name() + " takes its own");
            return false;
        }
        Yardsticks bare = sticks(rope, counted(spec, row, rope), Eye.NONE);
        FineLength usual = Tail.usual(row.on(rope), spec.options()).length(bare);
        if (asked.length(bare).compareTo(usual) < 0) {
            problems.error(
                    end,
                    Sentence.of(row.id() + " with a tail of " + asked.text()),
                    Sentence.of("at least ").and(usual).and(", its usual tail: a longer one is welcome"));
            return false;
        }
        return true;
    }

    private boolean isCovered(Termination row, Rope rope, String end, Problems problems) {
        for (What what : What.values()) {
            if (!row.allowance(what).covers(rope.diameter())) {
                problems.unsuited(
                        end,
                        row,
                        Sentence.of(row.id() + " on rope of ").and(rope.diameter()),
                        row.allowance(what).isUnknown()
                                ? Sentence.of("the shop's own value for its " + what.word()
                                        + ", in splices.json: none is published")
                                : Sentence.of("a diameter within the table of its " + what.word())
                                        .and(row.allowance(what).limit()));
                return false;
            }
        }
        return true;
    }

    private Optional<FineLength> pinToBore(EndSpec spec, Rope rope, String end, Problems problems) {
        if (spec.fitting().id().isEmpty()) {
            return Optional.of(spec.fitting().pinToBore());
        }
        Optional<Fitting> fitting = splices.findFitting(spec.fitting().id());
        if (fitting.isEmpty()) {
            problems.error(end, spec.fitting().id(), "the id of a fitting in thimbles.json that can be used");
            return Optional.empty();
        }
        if (!fitting.get().takes(rope.diameter())) {
            problems.error(
                    end,
                    Sentence.of("fitting " + fitting.get().id() + " on ").and(rope.diameter()),
                    Sentence.of("rope from ")
                            .and(fitting.get().ropeFrom())
                            .and(" to ")
                            .and(fitting.get().ropeTo())
                            .and(named(
                                    "fittings",
                                    splices.fittings().stream()
                                            .filter(each -> each.takes(rope.diameter()))
                                            .map(Fitting::id)
                                            .toList())));
            return Optional.empty();
        }
        return fitting.map(found -> found.pinToBore().plus(found.growth()));
    }

    /** What takes the rope, to follow what was expected; or that nothing does. */
    static String named(String what, List<String> ids) {
        return ids.isEmpty()
                ? "; no " + what + " of the book take it"
                : "; " + what + " that take it: " + String.join(", ", ids);
    }
}
