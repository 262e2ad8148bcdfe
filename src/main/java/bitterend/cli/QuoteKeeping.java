package bitterend.cli;

import bitterend.exchange.QuoteRequestReading;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.finding.CommandWord;
import bitterend.finding.Findings;
import bitterend.front.QuotePapers;
import bitterend.quoting.QuoteRequest;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.report.FindingsPage;
import bitterend.report.page.Wording;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.quotes.KeepQuote;
import bitterend.work.quotes.KeepQuote.Asked;
import bitterend.work.quotes.KeepQuote.Result;
import bitterend.work.quotes.QuoteBook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Whether a quote is filed, by whom and why. */
final class QuoteKeeping {
    /** What becomes of it when the command is stopped. */
    static final String STOPPED = "a quote that is not priced to its end is not kept";

    @Option(
            names = "--keep",
            description = "File the quote under a number of its own; the file is never written again.")
    boolean keep;

    @Mixin
    private By by = new By();

    /** Who keeps a quote, and why. */
    static final class By {
        @Option(
                names = "--who",
                paramLabel = "NAME",
                converter = Typed.Words.class,
                description = "Who keeps it. Default: the name you are logged in as.")
        private @Nullable String who;

        @Option(
                names = "--note",
                paramLabel = "TEXT",
                defaultValue = "",
                converter = Typed.Words.class,
                description = "Why, in your words.")
        private String note = "";

        /** What is to be kept. */
        Asked asked(
                QuoteRequest request, List<Map<String, String>> rows, @Nullable String from, KeepQuote.Effort effort) {
            Said said = new Said(Who.of(who), note, UUID.randomUUID().toString());
            return new Asked(request, rows, from == null ? "" : from, effort, said);
        }
    }

    /** The lines of a kept quote as a request of today; nothing where there is none. */
    Optional<QuoteRequestReading> again(Terminal terminal, ShopNow now, String number, LocalDate today) {
        return read(terminal, now, number, 0).map(kept -> KeepQuote.again(now, kept, today));
    }

    /** A kept quote; the reason why there is none is told. {@code revision} 0 asks for its last one. */
    static Optional<KeptQuote> read(Terminal terminal, ShopNow now, String number, int revision) {
        Findings findings = new Findings();
        QuoteBook book = new QuoteBook(now.at(), now.shop().settings().money(), findings);
        Optional<KeptQuote> kept = book.read(number, revision);
        terminal.err().print(FindingsPage.text(findings.sorted(), terminal.ink()));
        if (kept.isEmpty() && !findings.hasErrors()) {
            terminal.err().println(QuoteAnswer.none(number, revision, book.names()));
        }
        return kept;
    }

    /** What is to be kept. */
    Asked asked(QuoteRequest request, List<Map<String, String>> rows, @Nullable String from, KeepQuote.Effort effort) {
        return by.asked(request, rows, from, effort);
    }

    /** Keeps it; the reason why not is told. */
    Optional<Result.Kept> kept(Terminal terminal, ShopNow now, QuotePapers papers, Asked asked, Interrupt interrupt) {
        interrupt.begin(STOPPED);
        return orTold(terminal, new KeepQuote(now, papers).keep(asked, Watcher.who(interrupt::isAsked)));
    }

    static Optional<Result.Kept> orTold(Terminal terminal, Result result) {
        if (result instanceof Result.Kept kept) {
            return Optional.of(kept);
        }
        if (result instanceof Result.NotPriced not) {
            terminal.err().print(FindingsPage.text(not.problems(), terminal.ink()));
        } else if (result instanceof Result.Refused refused) {
            terminal.err().println(Wording.sentence("error: " + refused.why() + ". Nothing was kept."));
        }
        return Optional.empty();
    }

    /** Says under which name it is kept. */
    static void tell(Terminal terminal, KeptQuote kept, Path folder) {
        terminal.err()
                .println(Wording.sentence("Kept as " + kept.head().name().words() + "; it holds until "
                        + kept.head().validUntil() + ". To print it again: bitterend quote show "
                        + CommandWord.of(folder.toString()) + " "
                        + CommandWord.of(kept.head().name().number())));
    }
}
