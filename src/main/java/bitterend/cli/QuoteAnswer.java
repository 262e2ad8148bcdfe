package bitterend.cli;

import bitterend.exchange.Shop;
import bitterend.exchange.quotes.QuotesJson;
import bitterend.quoting.life.QuoteName;
import bitterend.report.page.Wording;
import bitterend.work.ShopNow;
import bitterend.work.quotes.AnswerQuote;
import bitterend.work.quotes.AnswerQuote.Result;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** A kept quote that something happens to, who says so and on which day. */
final class QuoteAnswer {
    @Mixin
    StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "QUOTE", description = "Number of the quote, such as Q-2601.")
    String number = "";

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private StockNote note = new StockNote();

    /** Does it, and tells how the quote stands then. */
    int tell(Terminal terminal, BiFunction<AnswerQuote, LocalDate, Result> verb) {
        Optional<ShopNow> read = at.shop().readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Shop shop = read.get().shop();
        AnswerQuote answer = new AnswerQuote(read.get(), note.caller(at), note.text);
        Result result = verb.apply(answer, day.of(shop));
        if (result instanceof Result.Refused refused) {
            terminal.err().println(Wording.sentence("error: " + refused.why() + ". Nothing was changed."));
            return ExitCode.BAD_INPUT.number();
        }
        tell(terminal, shop, (Result.Done) result);
        return ExitCode.DONE.number();
    }

    private void tell(Terminal terminal, Shop shop, Result.Done done) {
        if (at.common.json) {
            terminal.out()
                    .print(new QuotesJson(shop.settings().money()).booked(done.quote(), done.event(), done.told()));
            return;
        }
        terminal.out()
                .println(Wording.sentence("Quote " + done.quote().head().name().words() + " is "
                        + done.quote().state().word() + "."));
        done.told().forEach(line -> terminal.out().println(Wording.sentence(capital(line) + ".")));
        if (done.event() > 0) {
            terminal.out().println("Event " + done.event() + ".");
        }
    }

    private static String capital(String line) {
        return line.startsWith("orders.csv") ? line : line.substring(0, 1).toUpperCase(Locale.ROOT) + line.substring(1);
    }

    /** That there is no such quote, with those there are. */
    static String none(String number, int revision, List<QuoteName> names) {
        List<QuoteName> ours =
                names.stream().filter(name -> name.number().equals(number)).toList();
        String there = (ours.isEmpty() ? names : ours)
                .stream().map(QuoteName::toString).distinct().collect(Collectors.joining(", "));
        return Wording.sentence("error: there is no kept quote " + number
                + (revision == 0 ? "" : ", revision " + revision) + "; there "
                + (there.isEmpty() ? "are none yet" : "are " + there) + ".");
    }
}
