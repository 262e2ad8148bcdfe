package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Members;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
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

    private static final Codec<PastCuts.Source> SOURCE =
            Codec.word(PastCuts.Source.values(), PastCuts.Source::word).orElse(PastCuts.Source.HISTORY);
    private static final Codec<Integer> WEEKS = Codec.whole(1, MOST_WEEKS);
    private static final Codec<long[]> STEPS = new Codec<>(CoilForm::written, CoilForm::steps, new long[2]);
    private static final Codec<Length> WANTED = length(Readings::wantedLength, new Length(1));
    private static final Codec<Length> WORKED = length(Readings::workedLength, new Length(1));
    private static final Codec<Length> FLOOR = length(Readings::allowance, Length.ZERO);

    private final MoneyText money;

    CoilForm(MoneyText money) {
        this.money = money;
    }

    /** Prices by length of a currency, exact. */
    static Codec<UnitPrice> price(MoneyText money) {
        return new Codec<>(money::exact, money::parseByLength, new UnitPrice(0));
    }

    StockValue value(Members<StockValue> value) {
        UnitPrice price = value.is("price", each -> ((CoilValue) each).terms().price(), price(money));
        return value.object("coils", each -> each, coils -> coils(coils, price));
    }

    /** A coil curve as an object of its own: its price, and all that it follows from. */
    JsonTree tree(CoilValue value) {
        return Members.tree(this::value, value);
    }

    private StockValue coils(Members<StockValue> coils, UnitPrice price) {
        PastCuts.Source source = coils.is("source", each -> past(each).source(), SOURCE);
        int weeks = coils.is("weeks", each -> past(each).weeks(), WEEKS);
        List<Cut> cuts = coils.list("cuts", each -> cuts(past(each)), CoilForm::cut);
        Length reel = coils.is("usualReel", each -> terms(each).reel(), WANTED);
        Ratio interest = coils.is("interest", each -> terms(each).interest(), ValueForm.SHARE);
        Cost room = coils.is("room", each -> terms(each).room(), PlanForm.cost(money));
        Length floor = coils.is("keepFrom", each -> terms(each).floor(), FLOOR);
        Length rack = coils.is("rack", each -> ((CoilValue) each).rack(), Codec.LENGTH);
        Cost own = coils.is("ownPrice", CoilForm::own, PlanForm.cost(money));
        Length grid = coils.is("grid", each -> terms(each).grid(), WANTED);
        long[] steps = coils.is("steps", each -> ((CoilValue) each).steps(), STEPS);
        try {
            CoilTerms terms = new CoilTerms(price, reel, interest, room, floor, grid, steps.length - 1);
            return new CoilValue(past(coils, cuts, weeks, source), terms, new UnitPrice(own.millis()), rack, steps);
        } catch (IllegalArgumentException senseless) {
            coils.error("steps", "what a coil is worth at each step, with the terms it follows from");
            return StockValue.NOTHING;
        }
    }

    private static PastCuts past(StockValue value) {
        return ((CoilValue) value).past();
    }

    private static CoilTerms terms(StockValue value) {
        return ((CoilValue) value).terms();
    }

    private static Cost own(StockValue value) {
        return new Cost(((CoilValue) value).own().millisPerMetre());
    }

    /** So many pieces of a length. */
    private record Cut(Length length, long count) {}

    private static List<Cut> cuts(PastCuts past) {
        return past.counts().entrySet().stream()
                .map(count -> new Cut(count.getKey(), count.getValue()))
                .toList();
    }

    private static Cut cut(Members<Cut> cut) {
        Cut read = new Cut(cut.is("length", Cut::length, WORKED), cut.is("count", Cut::count, Codec.WHOLE_NUMBER));
        if (read.count() < 1) {
            cut.error("count", "each length once, cut at least once");
        }
        return read;
    }

    private static PastCuts past(Members<StockValue> coils, List<Cut> cuts, int weeks, PastCuts.Source source) {
        SortedMap<Length, Long> counts = new TreeMap<>();
        cuts.forEach(cut -> counts.put(cut.length(), cut.count()));
        if (counts.size() < cuts.size()) {
            coils.error("cuts", "each length once, cut at least once");
        }
        try {
            return new PastCuts(counts, weeks, source);
        } catch (IllegalArgumentException none) {
            coils.error("cuts", "at least one length, each cut at least once");
            return PastCuts.ofReel(Length.ofMetres(1));
        }
    }

    private static Codec<Length> length(Reading<Length> reading, Length placeholder) {
        return new Codec<>(LengthText::exact, reading, placeholder);
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
