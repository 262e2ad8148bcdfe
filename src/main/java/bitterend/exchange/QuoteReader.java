package bitterend.exchange;

import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.MoneyText;
import bitterend.quoting.QuotedWork;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads back what a filed quote said about its rope and its labour. */
public final class QuoteReader {
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
        Optional<QuotedWork> work = InputFile.named(file, findings)
                .flatMap(input -> JsonDocument.readPart(input, QuoteJson.FORMAT, findings, this::work));
        return findings.hasErrors() ? Optional.empty() : work;
    }

    private QuotedWork work(JsonObject quote) {
        return new QuotedWorkJson(money).read(quote);
    }
}
