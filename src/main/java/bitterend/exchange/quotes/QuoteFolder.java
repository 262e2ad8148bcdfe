package bitterend.exchange.quotes;

import bitterend.exchange.WholeFile;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.NaturalOrder;
import bitterend.measure.MoneyText;
import bitterend.quoting.Quote;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.quoting.life.QuoteName;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The kept quotes of a shop, {@code quotes/Q-2601.1.json} and so on: each is written once and never again. */
public final class QuoteFolder {
    /** The folder of the quotes inside a shop folder. */
    public static final String NAME = "quotes";
    /** No quote is revised more often. */
    public static final int MOST_REVISIONS = 999;

    private static final Pattern FILE = Pattern.compile("(.+)\\.([1-9][0-9]{0,2})\\.json");
    private static final Comparator<QuoteName> IN_ORDER =
            Comparator.comparing(QuoteName::number, NaturalOrder.IDS).thenComparing(QuoteName::revision);

    private final Path folder;
    private final MoneyText money;

    /** The quotes of a shop, in its money. */
    public QuoteFolder(Path shop, MoneyText money) {
        folder = shop.resolve(NAME);
        this.money = money;
    }

    /**
     * A quote that is to be kept.
     *
     * @param quote the quote under a name
     * @param pages its pages
     * @param rows the lines of its request
     * @param from the quote it was drawn up from; empty for none
     */
    public record Draft(
            Function<QuoteName, Quote> quote,
            BiFunction<Quote, QuoteName, KeptQuote.Pages> pages,
            List<Map<String, String>> rows,
            String from,
            Instant at,
            Said said) {
        public Draft {
            rows = List.copyOf(rows);
        }
    }

    /** Every quote and revision there is, in the order of their numbers. */
    public List<QuoteName> names() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> FILE.matcher(String.valueOf(file.getFileName())))
                    .filter(Matcher::matches)
                    .map(name -> new QuoteName(name.group(1), Integer.parseInt(name.group(2))))
                    .sorted(IN_ORDER)
                    .toList();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** The last revision of each quote, in the order of their numbers. */
    public List<QuoteName> last() {
        Map<String, QuoteName> last = new TreeMap<>(NaturalOrder.IDS);
        names().forEach(name -> last.put(name.number(), name));
        return List.copyOf(last.values());
    }

    /** The last revision of a quote. */
    public Optional<QuoteName> last(String number) {
        return last().stream().filter(name -> name.number().equals(number)).findFirst();
    }

    /** A kept quote; what is wrong with its file is told to the findings. */
    public Optional<KeptQuote> read(QuoteName name, Findings findings) {
        String file = file(name);
        return InputFile.require(folder, file, findings)
                .flatMap(input -> new KeptQuoteJson(money).read(input, findings))
                .filter(kept -> isNamed(kept, name, file, findings));
    }

    private static boolean isNamed(KeptQuote kept, QuoteName name, String file, Findings findings) {
        if (!kept.head().name().equals(name)) {
            findings.add(Finding.error(file, "", "quote", "" + kept.head().name(), "" + name));
            return false;
        }
        return true;
    }

    /** A kept quote as it lies in its file, for programs: all of it, or what the customer may see. */
    public String json(QuoteName name, boolean customer) {
        Findings findings = new Findings();
        return InputFile.require(folder, file(name), findings)
                .flatMap(input -> customer
                        ? JsonDocument.readPart(
                                        input, KeptQuoteJson.FORMAT, findings, object -> object.object("forCustomer"))
                                .map(JsonObject::text)
                        : Optional.of(input.text()))
                .orElse("");
    }

    /** Keeps a quote under this name; not when there is one of it. What this has returned from is kept. */
    public boolean keep(Draft draft, QuoteName name) {
        try {
            Files.createDirectories(folder);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        byte[] bytes = new KeptQuoteJson(money).text(draft, name).getBytes(StandardCharsets.UTF_8);
        return WholeFile.create(folder.resolve(file(name)), bytes);
    }

    private static String file(QuoteName name) {
        return name.number() + "." + name.revision() + ".json";
    }
}
