package bitterend.cli;

import bitterend.work.quotes.AnswerQuote.Accepting;
import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code quote accept SHOP QUOTE}: a quote becomes an order. */
@Command(
        name = "accept",
        header = "Notes that a kept quote is accepted, and writes its lines into orders.csv.",
        description = {
            "",
            "Each line of the order keeps the line of the quote it came of, in the column",
            "quote. The version of orders.csv before is kept. quote back takes all of it",
            "back.",
            ""
        },
        sortOptions = false)
final class QuoteAcceptCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private QuoteAnswer quote = new QuoteAnswer();

    @Option(
            names = "--order",
            paramLabel = "ORDER",
            converter = Typed.OrderId.class,
            description = "Number of the order. Default: that of the quote.")
    private String order = "";

    @Option(
            names = "--due",
            paramLabel = "DATE",
            converter = Typed.Day.class,
            description = "Day all of it is due. Default: as the request says.")
    private @Nullable LocalDate due;

    QuoteAcceptCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Map<String, String> stated = due == null ? Map.of() : Map.of("due", due.toString());
        return quote.tell(terminal, (answer, day) -> answer.accepted(quote.number, day, new Accepting(order, stated)));
    }
}
