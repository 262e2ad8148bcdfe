package bitterend.exchange;

import bitterend.buying.KnotValue;
import bitterend.catalogue.Rope;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.Members;
import bitterend.exchange.form.Readings;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.UnitPrice;
import bitterend.stock.RisingValue;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilValue;
import java.util.List;

/**
 * The day's value curve of a rope as a plan file keeps it: the coil curve by all that it follows from and its steps, a typed
 * one by its knots, that of older plans by its terms.
 */
final class ValueForm {
    /** A share from 0 to 1. */
    static final Codec<Ratio> SHARE = new Codec<>(RatioText::exact, ValuesJson::share, Ratio.ZERO);

    private static final Codec<Length> WANTED = new Codec<>(LengthText::exact, Readings::wantedLength, new Length(1));
    private static final Codec<Length> PRESENT = new Codec<>(LengthText::exact, Readings::presentLength, new Length(1));

    private final MoneyText money;

    ValueForm(MoneyText money) {
        this.money = money;
    }

    StockValue value(Members<StockValue> value) {
        if (value.has("coils", each -> each instanceof CoilValue)) {
            return new CoilForm(money).value(value);
        }
        UnitPrice price = value.is("price", ValueForm::price, CoilForm.price(money));
        return value.has("knots", each -> each instanceof KnotValue) ? typed(value, price) : rising(value, price);
    }

    private static UnitPrice price(StockValue value) {
        if (value instanceof KnotValue typed) {
            return typed.price();
        }
        return rising(value).price();
    }

    private static RisingValue rising(StockValue value) {
        if (value instanceof RisingValue rising) {
            return rising;
        }
        throw new IllegalArgumentException("a plan file keeps no value curve such as " + value);
    }

    private StockValue rising(Members<StockValue> value, UnitPrice price) {
        Length keepFrom = value.is("keepFrom", each -> rising(each).worth().keepFrom(), WANTED);
        Length asGoodAsNew =
                value.is("asGoodAsNew", each -> rising(each).worth().asGoodAsNew(), WANTED.orElse(keepFrom));
        if (asGoodAsNew.isShorterThan(keepFrom)) {
            value.error("asGoodAsNew", "a length not shorter than keepFrom");
            asGoodAsNew = keepFrom;
        }
        return new RisingValue(
                price,
                new Rope.Worth(keepFrom, asGoodAsNew),
                value.is("shareAtKeepFrom", each -> rising(each).shareAtKeepFrom(), SHARE),
                value.is("coilCharge", each -> rising(each).coilCharge(), PlanForm.cost(money)));
    }

    private static StockValue typed(Members<StockValue> value, UnitPrice price) {
        List<KnotValue.Knot> knots = value.list("knots", each -> ((KnotValue) each).knots(), ValueForm::knot);
        try {
            return new KnotValue(price, knots);
        } catch (IllegalArgumentException falling) {
            value.error("knots", "at least one knot, of rising length, whose shares never fall");
            return StockValue.NOTHING;
        }
    }

    /** A knot of a typed curve, here and in values.json. */
    static KnotValue.Knot knot(Members<KnotValue.Knot> knot) {
        return new KnotValue.Knot(
                knot.is("length", KnotValue.Knot::length, PRESENT), knot.is("share", KnotValue.Knot::share, SHARE));
    }
}
