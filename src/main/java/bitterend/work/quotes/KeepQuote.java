package bitterend.work.quotes;

import bitterend.exchange.CustomerColumns;
import bitterend.exchange.QuoteRequestFile;
import bitterend.exchange.QuoteRequestReading;
import bitterend.exchange.TableText;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.exchange.quotes.QuoteFolder;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.quoting.Quote;
import bitterend.quoting.QuoteRequest;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.quoting.life.QuoteName;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.trade.PriceRequest;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Prices a request and files the quote under a number and a revision of its own, never to be written again. */
public final class KeepQuote {
    private static final Pattern COUNTED = Pattern.compile("Q-([0-9]{1,9})");

    private final ShopNow now;
    private final Paper paper;

    /**
     * @param now the shop
     * @param paper who makes the pages of a quote that are filed with it
     */
    public KeepQuote(ShopNow now, Paper paper) {
        this.now = now;
        this.paper = paper;
    }

    /** Makes the pages of a quote under its name. */
    @FunctionalInterface
    public interface Paper extends BiFunction<Quote, QuoteName, KeptQuote.Pages> {}

    /**
     * What is to be priced and kept.
     *
     * @param request the request
     * @param rows its lines, what is filled by column
     * @param from the quote that it was drawn up from; empty for none
     * @param effort how long it may take, and how often each line is priced besides
     * @param said who keeps it, and why
     */
    public record Asked(QuoteRequest request, List<Map<String, String>> rows, String from, Effort effort, Said said) {
        public Asked {
            rows = rows.stream().map(Map::copyOf).toList();
        }
    }

    /**
     * How it is priced.
     *
     * @param time pack no longer than this at a time
     * @param threads so many at most
     * @param quantities how often each line is priced besides, as often as that
     */
    public record Effort(Duration time, int threads, List<Integer> quantities) {
        public Effort {
            quantities = List.copyOf(quantities);
        }
    }

    /** What became of it. */
    public sealed interface Result {
        /**
         * It is filed.
         *
         * @param quote as it was read back from its file
         * @param priced the quote with all that stands behind it
         */
        record Kept(KeptQuote quote, Quote priced) implements Result {}

        /** It cannot be priced; nothing was filed. */
        record NotPriced(List<Finding> problems) implements Result {
            public NotPriced {
                problems = List.copyOf(problems);
            }
        }

        /** It may not be filed; nothing was. */
        record Refused(String why) implements Result {}
    }

    /** Files it under the number of its request where that is free, else under the next; as its first revision. */
    public Result keep(Asked asked, Watcher watcher) {
        return filed(asked, watcher, quote -> {
            Set<String> taken = new TreeSet<>();
            folder().names().forEach(name -> taken.add(name.number()));
            String stated = asked.request().id();
            boolean own = isStated(asked) && !taken.contains(stated);
            return new QuoteName(own ? stated : next(taken, asked.request().day()), 1);
        });
    }

    /** Files it as the next revision of a quote; not of one that was accepted. */
    public Result revise(String number, Asked asked, Watcher watcher) {
        return filed(asked, watcher, quote -> {
            QuoteName last = folder().last(number).orElse(new QuoteName(number, QuoteFolder.MOST_REVISIONS));
            return new QuoteName(number, last.revision() + 1);
        });
    }

    /** The lines of a kept quote as a request of a day, priced by nobody yet. */
    public static QuoteRequestReading again(ShopNow now, KeptQuote kept, LocalDate day) {
        Set<String> filled = new TreeSet<>();
        kept.rows().forEach(row -> filled.addAll(row.keySet()));
        List<String> columns =
                QuoteRequestFile.columnNames().stream().filter(filled::contains).toList();
        TableText table = new TableText(',', "\n", List.of()).plus(columns);
        for (Map<String, String> row : kept.rows()) {
            table = table.plus(
                    columns.stream().map(column -> row.getOrDefault(column, "")).toList());
        }
        return QuoteRequestFile.typed(
                kept.head().name().number(), table, now.at().folder(), now.shop(), day);
    }

    private Result filed(Asked asked, Watcher watcher, Function<Quote, QuoteName> naming) {
        PriceRequest.Result result = new PriceRequest(now, asked.effort().threads())
                .price(
                        asked.request(),
                        asked.request().day(),
                        asked.effort().time(),
                        asked.effort().quantities(),
                        watcher);
        if (result instanceof PriceRequest.Result.NotPriced not) {
            return new Result.NotPriced(not.problems());
        }
        if (watcher.stop().getAsBoolean()) {
            return new Result.Refused("it was stopped before it was priced to the end");
        }
        Quote quote = ((PriceRequest.Result.Priced) result).quote();
        QuoteFolder.Draft draft = new QuoteFolder.Draft(
                name -> quote.numbered(name.number(), name.revision()),
                paper,
                withCustomer(asked),
                asked.from(),
                now.at().clock().instant(),
                asked.said());
        QuoteName name = naming.apply(quote);
        while (name.revision() <= QuoteFolder.MOST_REVISIONS && !folder().keep(draft, name)) {
            name = naming.apply(quote);
        }
        if (name.revision() > QuoteFolder.MOST_REVISIONS) {
            return new Result.Refused("there is no quote " + name.number() + " that may have another revision");
        }
        Findings findings = new Findings();
        return folder().read(name, findings)
                .<Result>map(kept -> new Result.Kept(
                        kept,
                        quote.numbered(
                                kept.head().name().number(), kept.head().name().revision())))
                .orElse(new Result.Refused("the file of quote " + name + " does not hold what was written"));
    }

    /** A number that looks like one of ours, or that is not merely the name of a file. */
    private static boolean isStated(Asked asked) {
        String id = asked.request().id();
        return COUNTED.matcher(id).matches() || asked.rows().stream().anyMatch(row -> id.equals(row.get("order")));
    }

    private static List<Map<String, String>> withCustomer(Asked asked) {
        List<Map<String, String>> rows = new ArrayList<>();
        for (Map<String, String> row : asked.rows()) {
            Map<String, String> more = new TreeMap<>(row);
            more.remove("order");
            CustomerColumns.fill(
                    more, asked.request().customer(), asked.request().recipient());
            rows.add(more);
        }
        return rows;
    }

    /** One more than the highest of ours; the first of all begins with the year, {@code Q-2601}. */
    private static String next(Set<String> taken, LocalDate day) {
        long highest = (day.getYear() % 100) * 100L;
        for (String number : taken) {
            Matcher counted = COUNTED.matcher(number);
            if (counted.matches()) {
                highest = Math.max(highest, Long.parseLong(counted.group(1)));
            }
        }
        return "Q-" + (highest + 1);
    }

    private QuoteFolder folder() {
        return new QuoteFolder(now.at().folder(), now.shop().settings().money());
    }
}
