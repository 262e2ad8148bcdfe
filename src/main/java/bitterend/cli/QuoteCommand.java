package bitterend.cli;

import bitterend.exchange.CustomerQuoteJson;
import bitterend.exchange.QuoteJson;
import bitterend.exchange.QuoteRequestFile;
import bitterend.exchange.QuoteRequestReading;
import bitterend.exchange.Shop;
import bitterend.exchange.WholeFile;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.finding.Finding;
import bitterend.front.QuotePapers;
import bitterend.front.QuoteUnits;
import bitterend.front.TradePages;
import bitterend.quoting.Quote;
import bitterend.quoting.QuoteRequest;
import bitterend.report.FindingsPage;
import bitterend.report.QuoteTables;
import bitterend.report.page.Document;
import bitterend.report.page.PageMark;
import bitterend.report.page.Wording;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.quotes.KeepQuote;
import bitterend.work.trade.PriceRequest;
import bitterend.work.trade.PriceRequest.Result;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code quote SHOP REQUEST}: what an assembly costs with the waste it causes, and its price. */
@Command(
        name = "quote",
        header = "Prices a request: rope, waste, labour, margin, line by line.",
        description = {
            "",
            "REQUEST is a CSV file with the columns of orders.csv, or a JSON file; it may add",
            "hardware, minutes and test, and how far the customer would give way: shorter,",
            "longer, fewest, most. With --order the lines of one in orders.csv are priced.",
            "",
            "Prints the page for the file, with every inside figure; --customer prints what",
            "the customer may see. How a price is made is set under quote in shop.json.",
            "",
            "Nothing is written, unless --keep files the quote under a number of its own, to",
            "be sent, revised and answered.",
            ""
        },
        commandListHeading = "%nCommands:%n",
        sortOptions = false)
final class QuoteCommand implements Callable<Integer> {
    private static final String FOR_FILE = "With the inside figures: write the quote here as JSON.";

    private final Terminal terminal;

    private final ShopArgument shop = new ShopArgument();

    @Parameters(index = "0", arity = "0..1", paramLabel = "SHOP", description = "The shop folder.")
    private @Nullable Path folder;

    @Parameters(index = "1", arity = "0..1", paramLabel = "REQUEST", description = "The request, a CSV or JSON file.")
    private @Nullable Path file;

    @Option(names = "--order", paramLabel = "ORDER", description = "Price an order of orders.csv instead of a file.")
    private @Nullable String order;

    @Option(
            names = "--from",
            paramLabel = "QUOTE",
            description = "Price the lines of this kept quote again instead of a file.")
    private @Nullable String from;

    @Mixin
    private QuoteKeeping keeping = new QuoteKeeping();

    @Option(names = "--customer", description = "Print the customer's page: no cost, waste or margin.")
    private boolean customer;

    @Mixin
    private AcceptOption accept = new AcceptOption();

    @Option(names = "--apart", description = "Say on the customer's page what each line costs by itself.")
    private boolean apart;

    @Option(
            names = "--quantities",
            paramLabel = "COUNTS",
            converter = Quantities.Text.class,
            description = "Price each line so many times, too, as in 1,2,5,10.")
    private Quantities quantities = Quantities.NONE;

    @Option(names = "--out", paramLabel = "FILE", converter = NewFile.class, description = FOR_FILE)
    private @Nullable Path out;

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private TableFiles tables = new TableFiles();

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private PackingTime time = new PackingTime();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    QuoteCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        long named = Stream.of(file, order, from).filter(Objects::nonNull).count();
        if (folder == null || named != 1) {
            terminal.err()
                    .println("error: name the shop folder, and the file of the request or an order of orders.csv with"
                            + " --order, or a kept quote with --from");
            terminal.err().println("Help: bitterend quote --help");
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        if (out != null && Files.exists(out, LinkOption.NOFOLLOW_LINKS)) {
            terminal.err()
                    .println(Wording.sentence("error: --out: found " + out + ", which is there already; expected a file"
                            + " that is not there yet. Nothing was written."));
            return ExitCode.BAD_INPUT.number();
        }
        shop.folder = folder;
        try (Interrupt interrupt = Interrupt.listening(terminal, "there was a price")) {
            Optional<ShopNow> read = shop.readOrComplain(terminal);
            return (read.isEmpty() ? ExitCode.BAD_INPUT : price(read.get(), interrupt)).number();
        }
    }

    private ExitCode price(ShopNow now, Interrupt interrupt) {
        Shop read = now.shop();
        LocalDate today = day.of(read);
        if (order != null) {
            List<Finding> leftOut = read.leftOut();
            return booked(read, today)
                    .map(each -> price(now, each.acceptedBy(accept.name()), leftOut, List.of(), interrupt))
                    .orElse(ExitCode.BAD_INPUT);
        }
        Optional<QuoteRequestReading> reading = from == null
                ? Optional.of(QuoteRequestFile.read(Objects.requireNonNull(file), shop.folder, read, today))
                : keeping.again(terminal, now, from, today);
        return reading.map(each -> price(now, each, interrupt)).orElse(ExitCode.BAD_INPUT);
    }

    private ExitCode price(ShopNow now, QuoteRequestReading reading, Interrupt interrupt) {
        complain(reading.findings());
        List<Finding> leftOut =
                reading.findings().stream().filter(Finding::leavesOut).toList();
        return reading.request()
                .map(each -> each.acceptedBy(accept.name()))
                .map(each -> keeping.keep
                        ? keep(now, each, reading, leftOut, interrupt)
                        : price(now, each, leftOut, reading.findings(), interrupt))
                .orElse(ExitCode.BAD_INPUT);
    }

    private ExitCode keep(
            ShopNow now,
            QuoteRequest request,
            QuoteRequestReading reading,
            List<Finding> leftOut,
            Interrupt interrupt) {
        QuotePapers papers = new QuotePapers(now.shop(), units.quotes(now.shop()), apart);
        Optional<KeepQuote.Result.Kept> kept = keeping.kept(
                terminal,
                now,
                papers,
                keeping.asked(
                        request,
                        reading.rows(),
                        from,
                        new KeepQuote.Effort(time.most(), time.threads(), quantities.each())),
                interrupt);
        if (kept.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        KeptQuote.Pages pages = kept.get().quote().pages();
        if (customer && isUnfinished(kept.get().priced())) {
            QuoteKeeping.tell(terminal, kept.get().quote(), shop.folder);
            return ExitCode.NOT_ALL_PLANNED;
        }
        List<Finding> all = QuoteFindings.all(leftOut, kept.get().priced());
        show(
                now.shop(),
                kept.get().priced(),
                QuoteFindings.unsaid(all, reading.findings()),
                customer ? pages.forCustomer() : pages.forFile());
        QuoteKeeping.tell(terminal, kept.get().quote(), shop.folder);
        return all.isEmpty() ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }

    private Optional<QuoteRequest> booked(Shop read, LocalDate today) {
        String number = String.valueOf(order);
        Optional<QuoteRequest> found = QuoteRequestFile.ofOrder(read, number, today);
        if (found.isEmpty()) {
            terminal.err().println("error: there is no order " + number + " in orders.csv");
        }
        return found;
    }

    /** @param said what was told of already */
    private ExitCode price(
            ShopNow now, QuoteRequest request, List<Finding> leftOut, List<Finding> said, Interrupt interrupt) {
        Result result = new PriceRequest(now, time.threads())
                .price(request, request.day(), time.most(), quantities.each(), Watcher.NOBODY);
        if (result instanceof Result.NotPriced not) {
            complain(not.problems());
            return ExitCode.BAD_INPUT;
        }
        Quote quote = ((Result.Priced) result).quote();
        if (customer && isUnfinished(quote)) {
            return ExitCode.BAD_INPUT;
        }
        List<Finding> all = QuoteFindings.all(leftOut, quote);
        interrupt.begin("the price is shown");
        show(now.shop(), quote, QuoteFindings.unsaid(all, said), page(now.shop(), quote));
        return all.isEmpty() ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }

    /** Whether there is no page for the customer; what it lacks is told. */
    private boolean isUnfinished(Quote quote) {
        if (quote.isUnfinished()) {
            complain(quote.gaps());
            terminal.err()
                    .println("error: the price for the customer lacks what is said above; state it, or say who accepts"
                            + " that with --accept");
        }
        return quote.isUnfinished();
    }

    private void show(Shop read, Quote quote, List<Finding> unsaid, Document page) {
        QuoteJson json = new QuoteJson(read.settings().money());
        if (out != null && !WholeFile.create(out, json.forTheFile(quote).getBytes(StandardCharsets.UTF_8))) {
            throw new UncheckedIOException(new FileAlreadyExistsException(out.toString()));
        }
        quantities.toldIfAsked(terminal, quote);
        files.write(terminal, page, read.settings().quote().letter().paper());
        QuoteUnits in = units.quotes(read);
        tables.write(
                terminal,
                () -> customer
                        ? new QuoteTables(in.forCustomer(quote)).forCustomer(quote)
                        : new QuoteTables(in.usual()).forFile(quote));
        if (common.json) {
            terminal.out()
                    .print(
                            customer
                                    ? new CustomerQuoteJson(read.settings().money())
                                            .of(quote, apart, PageMark.printedOn(page))
                                    : json.forTheFile(quote));
        } else {
            complain(unsaid);
            terminal.out().print(page.text(terminal.ink()));
        }
    }

    private Document page(Shop read, Quote quote) {
        QuoteUnits in = units.quotes(read);
        return customer
                ? TradePages.forCustomer(read, quote, in.forCustomer(quote), apart)
                : TradePages.forFile(read, quote, in.usual());
    }

    /** Never among what is printed for the customer. */
    private void complain(List<Finding> findings) {
        terminal.err().print(FindingsPage.text(findings, terminal.ink()));
    }
}
