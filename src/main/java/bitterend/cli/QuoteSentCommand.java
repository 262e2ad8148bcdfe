package bitterend.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code quote sent SHOP QUOTE}. */
@Command(name = "sent", header = "Notes that a kept quote went out to the customer.", sortOptions = false)
final class QuoteSentCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private QuoteAnswer quote = new QuoteAnswer();

    QuoteSentCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        return quote.tell(terminal, (answer, day) -> answer.sent(quote.number, day));
    }
}
