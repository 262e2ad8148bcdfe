package bitterend.exchange;

import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Readings;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.UnitPrice;
import bitterend.stock.StockValue;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.PastCuts;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A coil curve as a plan file keeps it: the past it rests on, what holding costs, the metres on the rack that morning, and
 * the worth at each step of its grid. The steps are written as what each adds to the one before, in 1/1000 minor unit,
 * {@code 3*310} standing for three that add as much.
 */
final class CoilForm {
    private static final int MOST_WEEKS = 9_999_999;
    private static final Pattern RISES = Pattern.compile("(?:([1-9][0-9]{0,4})\\*)?([0-9]{1,18})");

    private final MoneyText money;

    CoilForm(MoneyText money) {
        this.money = money;
    }

    JsonTree tree(JsonTree tree, CoilValue value) {
        CoilTerms terms = value.terms();
        List<JsonTree> cuts = new ArrayList<>();
        value.past()
                .counts()
                .forEach((length, count) -> cuts.add(
                        new JsonTree().with("length", LengthText.exact(length)).with("count", count)));
        return tree.with("price", money.exact(terms.price()))
                .with(
                        "coils",
                        new JsonTree()
                                .with("source", value.past().source().word())
                                .with("weeks", value.past().weeks())
                                .with("cuts", cuts)
                                .with("usualReel", LengthText.exact(terms.reel()))
                                .with("interest", RatioText.exact(terms.interest()))
                                .with("room", money.exact(terms.room()))
                                .with("keepFrom", LengthText.exact(terms.floor()))
                                .with("rack", LengthText.exact(value.rack()))
                                .with(
                                        "ownPrice",
                                        money.exact(new Cost(value.own().millisPerMetre())))
                                .with("grid", LengthText.exact(terms.grid()))
                                .with("steps", written(value.steps())));
    }

    private static String written(long[] steps) {
        StringBuilder text = new StringBuilder();
        int at = 1;
        while (at < steps.length) {
            long rise = steps[at] - steps[at - 1];
            int same = 1;
            while (at + same < steps.length && steps[at + same] - steps[at + same - 1] == rise) {
                same++;
            }
            text.append(text.length() == 0 ? "" : " ")
                    .append(same == 1 ? "" : same + "*")
                    .append(rise);
            at += same;
        }
        return text.toString();
    }

    StockValue read(JsonObject entry) {
        UnitPrice price = entry.fields().require("price", money::parseByLength, new UnitPrice(0));
        JsonObject coils = entry.object("coils");
        Fields fields = coils.fields();
        PastCuts past = past(coils);
        long[] steps = fields.require("steps", CoilForm::steps, new long[2]);
        Length reel = fields.require("usualReel", Readings::wantedLength, new Length(1));
        Ratio interest = fields.require("interest", ValuesJson::share, Ratio.ZERO);
        Cost room = fields.require("room", money::parseExact, Cost.ZERO);
        Length floor = fields.require("keepFrom", Readings::allowance, Length.ZERO);
        Length grid = fields.require("grid", Readings::wantedLength, new Length(1));
        Length rack = fields.require("rack", LengthText::parse, Length.ZERO);
        Cost own = fields.require("ownPrice", money::parseExact, Cost.ZERO);
        try {
            CoilTerms terms = new CoilTerms(price, reel, interest, room, floor, grid, steps.length - 1);
            return new CoilValue(past, terms, new UnitPrice(own.millis()), rack, steps);
        } catch (IllegalArgumentException senseless) {
            fields.error("steps", "what a coil is worth at each step, with the terms it follows from");
            return StockValue.NOTHING;
        }
    }

    private static PastCuts past(JsonObject coils) {
        SortedMap<Length, Long> counts = new TreeMap<>();
        for (JsonObject cut : coils.objects("cuts")) {
            Length length = cut.fields().require("length", Readings::workedLength, new Length(1));
            long count = PlanReader.whole(cut.fields(), "count");
            if (count < 1 || counts.put(length, count) != null) {
                cut.fields().error("count", "each length once, cut at least once");
            }
        }
        PastCuts.Source source = coils.fields()
                .require(
                        "source",
                        Readings.word(PastCuts.Source.values(), PastCuts.Source::word),
                        PastCuts.Source.HISTORY);
        int weeks = coils.fields().require("weeks", Readings.whole(1, MOST_WEEKS), 1);
        try {
            return new PastCuts(counts, weeks, source);
        } catch (IllegalArgumentException none) {
            coils.fields().error("cuts", "at least one length");
            return PastCuts.ofReel(Length.ofMetres(1));
        }
    }

    private static Parsed<long[]> steps(String text) {
        List<Long> steps = new ArrayList<>(List.of(0L));
        for (String rise : text.split(" ", -1)) {
            Matcher matcher = RISES.matcher(rise);
            if (!matcher.matches()) {
                return Parsed.refused("what each step adds to the one before, such as 3*0 1550 2*310");
            }
            int times = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
            if (steps.size() + times > CoilTerms.MOST_STEPS + 1) {
                return Parsed.refused("at most " + CoilTerms.MOST_STEPS + " steps");
            }
            for (int i = 0; i < times; i++) {
                try {
                    steps.add(Math.addExact(steps.get(steps.size() - 1), Long.parseLong(matcher.group(2))));
                } catch (ArithmeticException tooLarge) {
                    return Parsed.refused("a worth that can be counted");
                }
            }
        }
        return Parsed.of(steps.stream().mapToLong(Long::longValue).toArray());
    }
}
