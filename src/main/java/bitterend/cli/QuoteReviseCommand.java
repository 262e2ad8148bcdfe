package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.QuoteRequestFile;
import bitterend.exchange.QuoteRequestReading;
import bitterend.exchange.Shop;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.exchange.quotes.QuotesJson;
import bitterend.finding.Finding;
import bitterend.front.QuotePapers;
import bitterend.quoting.QuoteRequest;
import bitterend.quoting.life.QuoteChange;
import bitterend.report.FindingsPage;
import bitterend.report.QuoteChangesPage;
import bitterend.report.page.Wording;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.quotes.AnswerQuote;
import bitterend.work.quotes.KeepQuote;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code quote revise SHOP QUOTE [REQUEST]}: the next revision of a kept quote, and what it changed. */
@Command(
        name = "revise",
        header = "Draws up a kept quote anew as its next revision, and says what changed.",
        description = {
            "",
            "Of another REQUEST, or of the same lines at the prices of today. The earlier",
            "revisions stay as they are. What changed is listed line by line; quote show",
            "prints the new page.",
            ""
        },
        sortOptions = false)
final class QuoteReviseCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Parameters(index = "1", paramLabel = "QUOTE", description = "Number of the quote, such as Q-2601.")
    private String number = "";

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "REQUEST",
            description = "The request as it is now, a CSV or JSON file. Default: the same lines.")
    private @Nullable Path file;

    @Mixin
    private QuoteKeeping.By by = new QuoteKeeping.By();

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private PackingTime time = new PackingTime();

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private AcceptOption accept = new AcceptOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    QuoteReviseCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try (Interrupt interrupt = Interrupt.listening(terminal, "there was a price")) {
            Optional<ShopNow> read = shop.readOrComplain(terminal);
            return (read.isEmpty() ? ExitCode.BAD_INPUT : revise(read.get(), interrupt)).number();
        }
    }

    private ExitCode revise(ShopNow now, Interrupt interrupt) {
        LocalDate today = day.of(now.shop());
        Optional<KeptQuote> before = QuoteKeeping.read(terminal, now, number, 0);
        if (before.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        Optional<String> bar = new AnswerQuote(now, act -> act, "").barOfRevision(number, today);
        if (bar.isPresent()) {
            terminal.err().println(Wording.sentence("error: " + bar.get() + ". Nothing was kept."));
            return ExitCode.BAD_INPUT;
        }
        QuoteRequestReading reading = file == null
                ? KeepQuote.again(now, before.get(), today)
                : QuoteRequestFile.read(file, shop.folder, now.shop(), today);
        terminal.err().print(FindingsPage.text(reading.findings(), terminal.ink()));
        return reading.request()
                .map(request -> revise(now, before.get(), request.acceptedBy(accept.name()), reading, interrupt))
                .orElse(ExitCode.BAD_INPUT);
    }

    private ExitCode revise(
            ShopNow now, KeptQuote before, QuoteRequest request, QuoteRequestReading reading, Interrupt interrupt) {
        interrupt.begin(QuoteKeeping.STOPPED);
        Shop read = now.shop();
        KeepQuote verb = new KeepQuote(now, new QuotePapers(read, units.quotes(read), false));
        Optional<KeepQuote.Result.Kept> kept = QuoteKeeping.orTold(
                terminal,
                verb.revise(
                        number,
                        by.asked(
                                request,
                                reading.rows(),
                                before.head().from(),
                                new KeepQuote.Effort(time.most(), time.threads(), List.of())),
                        Watcher.who(interrupt::isAsked)));
        if (kept.isEmpty()) {
            return ExitCode.BAD_INPUT;
        }
        KeptQuote after = kept.get().quote();
        List<QuoteChange> changes = QuoteChange.between(before.work(), after.work());
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> new QuotesJson(read.settings().money())
                                .changes(after.head().name(), changes),
                        () -> new QuoteChangesPage(units.figures(read))
                                .of(
                                        after.head().name(),
                                        changes,
                                        before.head().total(),
                                        after.head().total())));
        QuoteKeeping.tell(terminal, after, shop.folder);
        return reading.findings().stream().noneMatch(Finding::leavesOut) ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }
}
