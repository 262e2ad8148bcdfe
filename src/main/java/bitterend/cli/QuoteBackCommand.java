package bitterend.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code quote back SHOP QUOTE}. */
@Command(
        name = "back",
        header = "Takes back the last thing that happened to a kept quote.",
        description = {
            "",
            "That it was sent, accepted or declined. With an acceptance its lines are taken",
            "out of orders.csv again; not once pieces of them are cut.",
            ""
        },
        sortOptions = false)
final class QuoteBackCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private QuoteAnswer quote = new QuoteAnswer();

    QuoteBackCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        return quote.tell(terminal, (answer, day) -> answer.back(quote.number, day));
    }
}
