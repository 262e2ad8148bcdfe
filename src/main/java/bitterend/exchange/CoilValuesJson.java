package bitterend.exchange;

import bitterend.exchange.form.JsonTree;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the command {@code value} answers to other programs: the coil curves of a day, as a plan file keeps them. */
public final class CoilValuesJson {
    private CoilValuesJson() {}

    /** {@code {"format": "bitterend/coils/1", ...}}, by rope. */
    public static String text(Map<String, CoilValue> values, ShopValues own, MoneyText money) {
        List<JsonTree> ropes = new ArrayList<>();
        values.forEach((rope, value) -> {
            JsonTree tree = new JsonTree()
                    .with("rope", rope)
                    .with(
                            "used",
                            own.typed().containsKey(rope)
                                    ? "typed"
                                    : own.learned().containsKey(rope) ? "coils, not the stale one" : "coils");
            keepFrom(own, rope, value).ifPresent(from -> tree.with("keepFromToday", LengthText.exact(from)));
            ropes.add(tree.with(new CoilForm(money).tree(value)));
        });
        return new JsonTree()
                .with("format", "bitterend/coils/1")
                .with("ropes", ropes)
                .text();
    }

    /** By the curve that is used. */
    private static Optional<Length> keepFrom(ShopValues own, String rope, StockValue coils) {
        StockValue typed = own.typed().get(rope);
        return (typed == null ? coils : typed).keepFrom();
    }
}
