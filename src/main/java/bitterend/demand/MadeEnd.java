package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Part;
import bitterend.catalogue.Rope;
import bitterend.catalogue.Seizing;
import bitterend.catalogue.SeizingFormula;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.Kind;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Yardsticks;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.List;

/**
 * One end worked out on one rope.
 *
 * @param name {@code end A} or {@code end B}
 * @param spec the end as ordered
 * @param termination how it is made
 * @param eye its eye, {@link EyeShape#NONE} without one
 * @param pinToBore of a fitting the centre of its pin to the bottom of its bore; zero without one
 * @param yardsticks what its allowances are counted in, tail included
 * @param twin whether the other end of the piece is made alike, so that what one takes up more the other may take up less
 * @param hardware what hangs on it, from the rope outwards
 */
record MadeEnd(
        String name,
        EndSpec spec,
        Termination termination,
        EyeShape eye,
        FineLength pinToBore,
        Yardsticks yardsticks,
        boolean twin,
        List<HungHardware> hardware) {
    /** How the caution of a row begins that only sends to the rope's maker, as every page does. */
    static final String FOLLOW_THE_MAKER = "Follow the rope maker";

    private static final String STRETCHES = "In rope that stretches much the eye can open until the thimble tumbles out"
            + " (TB 55-1900-232-10 p. 2-52).";

    MadeEnd {
        hardware = List.copyOf(hardware);
    }

    /** The same beside another that is made alike. */
    MadeEnd asTwin() {
        return new MadeEnd(name, spec, termination, eye, pinToBore, yardsticks, true, hardware);
    }

    FineLength length(What what) {
        return allowance(what).length(yardsticks);
    }

    Allowance allowance(What what) {
        return switch (what) {
            case TAIL -> Tail.of(termination, spec.options());
            case MARGIN -> Tail.margin(termination, spec.options(), yardsticks, twin);
            default -> termination.allowance(what);
        };
    }

    /** Whether something is spliced, sewn or knotted here, so that rope is taken up. */
    boolean isSpliced() {
        return termination.kind() != Kind.FITTING && !termination.allowances().isEmpty();
    }

    boolean hasEye() {
        return termination.kind().wantsEye();
    }

    /** From the cut end to the throat: what is trimmed, the tail and the rope round the eye. */
    FineLength toThroat() {
        FineLength tail = length(What.TRIM).plus(length(What.TAIL)).plus(length(What.RETURN));
        return hasEye() ? tail.plus(eye.round()) : tail;
    }

    /** B: throat to bearing point, in the way the finished length is measured. The eye must reach round its pin. */
    FineLength throatToBearing(Measuring measuring) {
        FineLength ofEye =
                switch (measuring.between()) {
                    case BEARING_POINTS, CIRCUMFERENCE -> eye.used();
                    case FLAT, OUTSIDE -> eye.flat();
                    case ON_PINS -> hasEye() ? eye.on(measuring.pin(), yardsticks.rope()) : eye.used();
                };
        return ofEye.plus(pinToBore);
    }

    /** What a length is measured from at this end when it is finished. */
    Sentence bearingWords(Measuring measuring) {
        if (hasEye()) {
            Sentence point = Sentence.of("bearing point of the finished " + name);
            return eye.firm() ? point : point.and(lying(measuring));
        }
        return Sentence.of(pinToBore.isPositive() ? "centre of the pin of " + name : name);
    }

    /** How a soft eye lies while it is measured so: on a pin it is shorter than flat. */
    private Sentence lying(Measuring measuring) {
        Diameter pin = measuring.between() == Measuring.Between.ON_PINS ? measuring.pin() : eye.pin();
        FineLength bearing = throatToBearing(measuring);
        if (bearing.equals(eye.flat())) {
            return Sentence.of(", laid flat");
        }
        return pin.equals(Diameter.NONE)
                ? Sentence.of(", opened round")
                : Sentence.of(", on a pin of ").and(pin.asLength());
    }

    /** Rope and thimble beyond the bearing point, when the finished length is measured over the outside. */
    FineLength beyondBearing() {
        return hasEye() ? yardsticks.rope().asLength().plus(eye.crown()) : FineLength.ZERO;
    }

    /** The same with this hung on it. */
    MadeEnd with(List<HungHardware> hung) {
        return new MadeEnd(name, spec, termination, eye, pinToBore, yardsticks, twin, hung);
    }

    /** Hardware that the finished length is measured over, from the rope outwards. */
    List<HungHardware> measured() {
        return hardware.stream().filter(HungHardware::inLength).toList();
    }

    /** The point that a finished length runs to at this end. */
    Sentence point() {
        List<HungHardware> over = measured();
        if (!over.isEmpty()) {
            return Sentence.of(
                    "inside of " + over.get(over.size() - 1).hardware().name());
        }
        if (hasEye()) {
            return Sentence.of("bearing point of " + name);
        }
        return Sentence.of(pinToBore.isPositive() ? "pin of " + name : name);
    }

    /** The same measured over its hardware up to here: so many of it, from the rope outwards. */
    MadeEnd measuredOver(int count) {
        List<HungHardware> counted = new ArrayList<>();
        for (HungHardware each : hardware) {
            counted.add(each.measured(counted.size() < count));
        }
        return with(counted);
    }

    /** Parts of the row, the hardware of one leg, and the thimble or fitting that the order names. */
    private List<EndWork.Picked> picked(Termination.Work work) {
        List<EndWork.Picked> picked = new ArrayList<>();
        if (spec.eye() instanceof EyeSpec.OnThimble lined) {
            picked.add(new EndWork.Picked("thimble " + lined.thimble(), 1));
        }
        if (!spec.fitting().id().isEmpty()) {
            picked.add(new EndWork.Picked("fitting " + spec.fitting().id(), 1));
        } else if (spec.fitting().pinToBore().isPositive()) {
            picked.add(new EndWork.Picked(
                    "fitting, pin to bore " + LengthText.exact(spec.fitting().pinToBore()), yardsticks.rope(), 1));
        }
        if (yardsticks.counted().clips() > 0) {
            picked.add(new EndWork.Picked(
                    termination.layout().clips().item(),
                    yardsticks.rope(),
                    yardsticks.counted().clips()));
        }
        hardware.stream()
                .filter(each -> !each.shared() && !each.hardware().kind().isShared())
                .map(HungHardware::picked)
                .forEach(picked::add);
        for (Part part : work.parts()) {
            int count = part.count().of(yardsticks.rope());
            if (count > 0) {
                picked.add(new EndWork.Picked(item(part), yardsticks.rope(), count));
            }
        }
        return picked;
    }

    /** A seizing is picked as so much stuff. */
    private String item(Part part) {
        Seizing seizing = part.seizing();
        if (seizing == null) {
            return part.item();
        }
        Diameter stuff = new Diameter(yardsticks.rope().times(seizing.stuff()).units());
        return part.item() + ", " + LengthText.exact(stuff.asLength()) + " thick, "
                + LengthText.exact(
                        SeizingFormula.whole(yardsticks.rope(), stuff, seizing).roundedUpTo(new Length(10)))
                + " each";
    }

    /** What to read before it is made on this rope. */
    String caution(Rope rope) {
        String caution = termination.work().caution();
        boolean stretches = hasEye() && eye.firm() && rope.fibre().nature().stretches();
        if (!stretches) {
            return caution;
        }
        return caution.startsWith(FOLLOW_THE_MAKER) ? STRETCHES : STRETCHES + " " + caution;
    }

    /** What it asks of the splicer on this rope. */
    EndWork work(Rope rope) {
        Termination.Work work = termination.work();
        return new EndWork(
                name,
                termination.id(),
                termination.name(),
                work.minutes(),
                picked(work),
                caution(rope),
                termination.isVerified(),
                Unchecked.sentence(this, rope),
                hardware);
    }
}
