package bitterend.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code quote decline SHOP QUOTE}. */
@Command(name = "decline", header = "Notes that the customer declined a kept quote.", sortOptions = false)
final class QuoteDeclineCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private QuoteAnswer quote = new QuoteAnswer();

    QuoteDeclineCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        return quote.tell(terminal, (answer, day) -> answer.declined(quote.number, day));
    }
}
