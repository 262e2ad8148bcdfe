package bitterend.exchange;

import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.quoting.QuotedWork;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads back what a filed quote said about its rope and its labour. */
public final class QuoteReader {
    private static final Pattern AMOUNT = Pattern.compile("(?<number>-?[0-9]{1,12}(?:\\.[0-9]{1,7})?) [A-Z]{3}");
    private static final Reading<Integer> PIECES = Readings.whole(0, 1_000_000);
    private static final Reading<Integer> MINUTES = Readings.whole(0, 10_000_000);

    private final MoneyText money;
    private final Findings findings = new Findings();

    public QuoteReader(MoneyText money) {
        this.money = money;
    }

    /** What was wrong with the last file. */
    public List<Finding> findings() {
        return findings.sorted();
    }

    /** The rope of a quote that was written with {@code --out}; nothing when it cannot be read. */
    public Optional<QuotedWork> read(Path file) {
        Path whole = file.toAbsolutePath();
        Path folder = whole.getParent() == null ? whole : whole.getParent();
        Optional<QuotedWork> work = InputFile.require(folder, String.valueOf(whole.getFileName()), findings)
                .flatMap(input -> JsonDocument.readPart(input, QuoteJson.FORMAT, findings, this::work));
        return findings.hasErrors() ? Optional.empty() : work;
    }

    private QuotedWork work(JsonObject quote) {
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
        }
        long minutes = 0;
        for (JsonObject line : quote.objects("lines")) {
            Fields fields = line.fields();
            minutes += (long) fields.optional("minutes", MINUTES, 0) * fields.optional("quantity", PIECES, 0);
        }
        return new QuotedWork(quote.fields().require("request", Readings::orderId, "?"), ropes, minutes);
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
