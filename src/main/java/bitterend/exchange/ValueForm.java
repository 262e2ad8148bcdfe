package bitterend.exchange;

import bitterend.buying.KnotValue;
import bitterend.catalogue.Rope;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Readings;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.UnitPrice;
import bitterend.stock.RisingValue;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import java.util.ArrayList;
import java.util.List;

/**
 * The day's value curve of a rope as a plan file keeps it: the coil curve by all that it follows from and its steps, a typed
 * one by its knots, that of older plans by its terms.
 */
final class ValueForm {
    private final MoneyText money;

    ValueForm(MoneyText money) {
        this.money = money;
    }

    JsonTree tree(String rope, StockValue value) {
        JsonTree tree = new JsonTree().with("rope", rope);
        if (value instanceof CoilValue coils) {
            return new CoilForm(money).tree(tree, coils);
        }
        if (value instanceof RisingValue rising) {
            return tree.with("price", money.exact(rising.price()))
                    .with("keepFrom", LengthText.exact(rising.worth().keepFrom()))
                    .with("asGoodAsNew", LengthText.exact(rising.worth().asGoodAsNew()))
                    .with("shareAtKeepFrom", RatioText.exact(rising.shareAtKeepFrom()))
                    .with("coilCharge", money.exact(rising.coilCharge()));
        }
        if (value instanceof KnotValue learned) {
            return tree.with("price", money.exact(learned.price()))
                    .with("knots", learned.knots().stream().map(ValueForm::knot).toList());
        }
        throw new IllegalArgumentException("a plan file keeps no value curve such as " + value);
    }

    private static JsonTree knot(KnotValue.Knot knot) {
        return new JsonTree()
                .with("length", LengthText.exact(knot.length()))
                .with("share", RatioText.exact(knot.share()));
    }

    StockValue read(JsonObject entry) {
        if (entry.has("coils")) {
            return new CoilForm(money).read(entry);
        }
        UnitPrice price = entry.fields().require("price", money::parseByLength, new UnitPrice(0));
        return entry.has("knots") ? learned(entry, price) : rising(entry.fields(), price);
    }

    private StockValue rising(Fields fields, UnitPrice price) {
        Length keepFrom = fields.require("keepFrom", Readings::wantedLength, new Length(1));
        Length asGoodAsNew = fields.require("asGoodAsNew", Readings::wantedLength, keepFrom);
        if (asGoodAsNew.isShorterThan(keepFrom)) {
            fields.error("asGoodAsNew", "a length not shorter than keepFrom");
            asGoodAsNew = keepFrom;
        }
        return new RisingValue(
                price,
                new Rope.Worth(keepFrom, asGoodAsNew),
                fields.require("shareAtKeepFrom", ValuesJson::share, Ratio.ZERO),
                fields.require("coilCharge", money::parseExact, Cost.ZERO));
    }

    private static StockValue learned(JsonObject entry, UnitPrice price) {
        List<KnotValue.Knot> knots = new ArrayList<>();
        for (JsonObject each : entry.objects("knots")) {
            knots.add(new KnotValue.Knot(
                    each.fields().require("length", Readings::presentLength, new Length(1)),
                    each.fields().require("share", ValuesJson::share, Ratio.ZERO)));
        }
        try {
            return new KnotValue(price, knots);
        } catch (IllegalArgumentException falling) {
            entry.fields().error("knots", "at least one knot, of rising length, whose shares never fall");
            return StockValue.NOTHING;
        }
    }
}
