package bitterend.exchange;

import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.exchange.form.JsonTree;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.MassText;
import bitterend.measure.MoneyText;

/** Writes a rope as a member of {@code ropes.json}, every member stated, so that what is read back is what was written. */
final class RopeForm {
    private RopeForm() {}

    static JsonTree tree(Rope rope, MoneyText money) {
        RopeIdentity identity = rope.identity();
        JsonTree tree = new JsonTree()
                .with("id", rope.id())
                .with("name", rope.name())
                .with("construction", identity.construction().word())
                .with("fibre", identity.fibre().word());
        stated(tree, "makeUp", identity.makeUp().word());
        stated(tree, "core", identity.core());
        stated(tree, "grade", identity.grade());
        tree.with("diameter", DiameterText.exact(identity.diameter()))
                .with("lay", identity.lay().word());
        stated(tree, "finish", identity.finish());
        stated(tree, "colour", identity.colour());
        stated(tree, "tracer", identity.tracer());
        tree.with("mass", MassText.exact(rope.mass()))
                .with("price", money.exact(rope.price()))
                .with("cutLoss", LengthText.exact(rope.cutting().loss()))
                .with("cutToNearest", LengthText.exact(rope.cutting().toNearest()))
                .with("keepFrom", LengthText.exact(rope.worth().keepFrom()))
                .with("asGoodAsNew", LengthText.exact(rope.worth().asGoodAsNew()))
                .with("usualReel", LengthText.exact(rope.usualReel()));
        return rope.layLength().equals(FineLength.ZERO)
                ? tree
                : tree.with("layLength", LengthText.exact(rope.layLength()));
    }

    private static void stated(JsonTree tree, String name, String text) {
        if (!text.isEmpty()) {
            tree.with(name, text);
        }
    }
}
