package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.quoting.BuildUp.Item;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.FreightWithin;
import bitterend.quoting.QuotedLine;
import bitterend.quoting.QuotedWork;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a quote said about its rope, its labour and its prices, out of its JSON for the file. */
public final class QuotedWorkJson {
    private static final Pattern AMOUNT = Pattern.compile("(?<number>-?[0-9]{1,12}(?:\\.[0-9]{1,7})?) [A-Z]{3}");
    private static final Reading<Integer> PIECES = Readings.whole(0, 1_000_000);
    private static final Reading<Integer> MINUTES = Readings.whole(0, 10_000_000);
    private static final Reading<Kind> KIND = Readings.word(Kind.values(), Kind::words);

    private final MoneyText money;

    /** In the money of the shop; a quote in another is refused. */
    public QuotedWorkJson(MoneyText money) {
        this.money = money;
    }

    /** The work of a quote; what cannot be read is told. */
    public QuotedWork read(JsonObject quote) {
        List<QuotedWork.Drawn> ropes = new ArrayList<>();
        for (JsonObject rope : quote.objects("ropes")) {
            Fields fields = rope.fields();
            ropes.add(new QuotedWork.Drawn(
                    fields.require("rope", Readings::id, "?"),
                    fields.require("pieces", PIECES, 0),
                    fields.require("cut", LengthText::parse, Length.ZERO)
                            .plus(fields.require("cutLoss", LengthText::parse, Length.ZERO)),
                    fields.require("drawn", LengthText::parse, Length.ZERO),
                    fields.require("chargedTotal", this::amount, Cost.ZERO)));
            rope.leave();
        }
        List<QuotedLine> lines = new ArrayList<>();
        for (JsonObject line : quote.objects("lines")) {
            lines.add(line(line));
        }
        String request = quote.fields().require("request", Readings::orderId, "?");
        quote.leave();
        return new QuotedWork(request, ropes, lines);
    }

    private QuotedLine line(JsonObject line) {
        Fields fields = line.fields();
        List<Item> items = new ArrayList<>();
        for (JsonObject item : line.objects("items")) {
            items.add(new Item(
                    item.fields().require("item", KIND, Kind.ROUNDING),
                    item.fields().require("amount", this::coins, Money.ZERO)));
        }
        List<QuotedLine.End> ends = new ArrayList<>();
        for (JsonObject end : line.objects("work")) {
            ends.add(new QuotedLine.End(
                    end.fields().require("end", Readings::text, "?"),
                    end.fields().optional("minutes", MINUTES, 0)));
        }
        QuotedLine read = new QuotedLine(
                fields.require("line", Codec.ANY.in(), "?"),
                new QuotedLine.What(
                        fields.require("rope", Readings::id, "?"),
                        fields.optional("finished", Codec.ANY.in(), ""),
                        fields.optional("ends", Codec.ANY.in(), ""),
                        fields.optional("legs", PIECES, 1),
                        fields.optional("quantity", PIECES, 1),
                        fields.optional("ownRope", Readings::yesOrNo, false),
                        fields.optional("sample", LengthText::parse, Length.ZERO)),
                fields.optional("cut", LengthText::parse, Length.ZERO),
                fields.optional("drawn", LengthText::parse, Length.ZERO),
                fields.optional("minutes", MINUTES, 0),
                ends,
                within(fields),
                items,
                fields.optional("price", this::coins, Money.ZERO));
        line.leave();
        return read;
    }

    private Optional<FreightWithin> within(Fields line) {
        FreightWithin read = new FreightWithin(
                line.optional("freightInRope", this::coins, Money.ZERO),
                line.optional("freightInWaste", this::coins, Money.ZERO));
        return line.text("freightInRope").map(there -> read);
    }

    private Parsed<Money> coins(String text) {
        return amount(text).map(Cost::rounded);
    }

    /** An exact amount of the shop's currency. */
    private Parsed<Cost> amount(String text) {
        Matcher parts = AMOUNT.matcher(text);
        if (!parts.matches() || !text.endsWith(" " + money.currency())) {
            return Parsed.refused("an exact amount such as " + money.exact(new Cost(1_250_500)));
        }
        BigDecimal millis = new BigDecimal(parts.group("number")).movePointRight(money.minorDigits() + 3);
        return millis.stripTrailingZeros().scale() > 0
                ? Parsed.refused("an exact amount such as " + money.exact(new Cost(1_250_500)))
                : Parsed.of(new Cost(millis.longValueExact()));
    }
}
