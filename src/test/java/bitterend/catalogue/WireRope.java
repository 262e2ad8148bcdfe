package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.UnitPrice;

/** A wire rope for tests. */
final class WireRope {
    private WireRope() {}

    static Rope of(Diameter diameter) {
        return new Rope(
                "W",
                "a wire rope",
                new RopeIdentity(Kinds.WIRE, Kinds.STEEL, "", "", diameter, Lay.RIGHT_ORDINARY, "", "", ""),
                new LinearMass(0),
                new UnitPrice(1000),
                new Rope.Cutting(new Length(5), new Length(5)),
                new Rope.Worth(Length.ofMetres(1), Length.ofMetres(100)),
                Length.ofMetres(200));
    }
}
