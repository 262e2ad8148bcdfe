package bitterend.exchange;

import bitterend.exchange.form.JsonTree;
import bitterend.measure.MoneyText;
import bitterend.packing.explain.LateRope;

/** What would be left undone if rope came later, for programs. */
public final class LateRopeJson {
    private static final String FORMAT = "bitterend/late/1";

    private final MoneyText money;

    public LateRopeJson(MoneyText money) {
        this.money = money;
    }

    /** The answer as one document. */
    public String text(LateRope late) {
        return new JsonTree()
                .with("format", FORMAT)
                .with("day", late.day().toString())
                .with("delays", late.delays().stream().map(LateRopeJson::delay).toList())
                .with("undoneThen", late.hits().stream().map(LateRopeJson::hit).toList())
                .with("notCutAheadThen", (Object) late.waiting())
                .with("inTimeAllTheSame", (Object) late.spared())
                .with("undoneInAnyCase", late.undone())
                .with("costsMore", money.exact(late.more()))
                .text();
    }

    private static JsonTree delay(LateRope.Delay delay) {
        return new JsonTree()
                .with("orderOfRope", delay.now().order())
                .with("expected", delay.now().expected().toString())
                .with("countedFrom", delay.now().from().toString())
                .with("expectedThen", delay.then().expected().toString())
                .with("countedFromThen", delay.then().from().toString());
    }

    private static JsonTree hit(LateRope.Hit hit) {
        JsonTree tree = new JsonTree()
                .with("order", hit.order())
                .with("customer", hit.customer())
                .with("pieces", (Object) hit.pieces())
                .with("cutBy", hit.cutBy().toString());
        return hit.waits() ? tree.with("cutThen", hit.from().toString()).with("workingDaysLate", hit.late()) : tree;
    }
}
