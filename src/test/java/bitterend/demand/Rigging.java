package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.rope;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Hardware;
import bitterend.catalogue.Hardware.Kind;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.demand.Assembly.Make;
import bitterend.demand.EndSpec.Options;
import bitterend.demand.Measuring.Between;
import bitterend.demand.Measuring.Points;
import bitterend.exchange.SplicesJson;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Mass;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import java.util.List;
import java.util.stream.Stream;

/** Hardware on the ends of a double braid of 12 mm, and orders that are measured over it, for the tests of the demand model. */
final class Rigging {
    static final Hardware SHACKLE = Hardware.fixed("SB12", Kind.SHACKLE, fine(48), fine(1), new Mass(380));
    static final Hardware LARGER_SHACKLE = Hardware.fixed("SB14", Kind.SHACKLE, fine(56), fine(1), new Mass(500));
    static final Hardware MASTER_LINK = Hardware.fixed("ML16", Kind.MASTER_LINK, fine(160), fine(0), new Mass(0));
    static final Hardware TURNBUCKLE =
            new Hardware("TB12", Kind.TURNBUCKLE, fine(260), fine(400), fine(2), new Mass(1_900));

    static final SpliceBook BOOK =
            SplicesJson.builtIn().hanging(List.of(SHACKLE, LARGER_SHACKLE, MASTER_LINK, TURNBUCKLE));

    static final EndSpec PLAIN = EndSpec.of("plain");
    static final EndSpec EYE = EndSpec.of("double-braid-eye", flat(300));

    /** 100 g a metre. */
    static final Rope BRAID = weighing(100_000);

    private Rigging() {}

    /** So many milligrams a metre. */
    static Rope weighing(long milligrams) {
        Rope rope = rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12));
        return new Rope(
                rope.id(),
                rope.name(),
                rope.identity(),
                new LinearMass(milligrams),
                rope.price(),
                rope.cutting(),
                rope.worth(),
                rope.usualReel());
    }

    /** An eye with this hung on it, from the rope outwards. */
    static EndSpec eyeWith(Hardware... hung) {
        List<HardwareSpec> specs = Stream.of(hung)
                .map(each -> new HardwareSpec(new HardwareSpec.Row(each.id(), setting(each)), false))
                .toList();
        return new EndSpec(
                EYE.termination(), EYE.eye(), EYE.fitting(), new Options(0, false, "", "", Allowance.NOTHING, specs));
    }

    private static HardwareSpec.Setting setting(Hardware hardware) {
        return hardware.isAdjustable()
                ? new HardwareSpec.Open(new Ratio(1, 2), "half open")
                : HardwareSpec.Setting.NOT_STATED;
    }

    /** Measured from one named point to the other, bearing point to bearing point where no point is named. */
    static Make between(String a, String b, Length finished, EndSpec endA, EndSpec endB) {
        Measuring measuring = new Measuring(
                Between.BEARING_POINTS, Diameter.NONE, Ratio.ZERO, Ratio.ZERO, Ratio.ZERO, new Points(a, b));
        return new Make(Written.worked(finished), measuring, endA, endB, Assembly.Extras.NONE);
    }

    static Demanded demanded(Assembly assembly) {
        return Bench.model(BOOK, BRAID).pieces(assembly);
    }
}
