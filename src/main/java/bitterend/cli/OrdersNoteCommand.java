package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.day.PackingNote;
import bitterend.exchange.PackingNoteForm;
import bitterend.exchange.Settings;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.report.Figures;
import bitterend.report.PackingNotePage;
import bitterend.report.page.Document;
import bitterend.stock.LedgerException;
import bitterend.work.orders.AskNotes;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code orders note SHOP ORDER}: packing notes once more. */
@Command(
        name = "note",
        header = "Prints the packing notes of an order again, as they went out.",
        description = {
            "",
            "Of all its deliveries, or of the one named by the number on its note. Records",
            "nothing, and needs no order book: an order may have left orders.csv.",
            ""
        },
        sortOptions = false)
final class OrdersNoteCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", arity = "0..1", paramLabel = "ORDER", description = "Number of the order.")
    private @Nullable String order;

    @Option(names = "--delivery", paramLabel = "NUMBER", description = "This delivery, by the number on its note.")
    private @Nullable Long delivery;

    @Mixin
    private PageFiles files = new PageFiles();

    OrdersNoteCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Long number = delivery;
        String named = order;
        if ((number == null) == (named == null)) {
            throw new LedgerException.Contradictory("name an ORDER, or else one --delivery");
        }
        AskNotes verb = new AskNotes(at.access());
        AskNotes.Result result = number != null ? verb.ofDelivery(number) : verb.ofOrder("" + named);
        if (result instanceof AskNotes.Result.None none) {
            terminal.err().println("error: " + none.why() + ".");
            return ExitCode.BAD_INPUT.number();
        }
        return print(((AskNotes.Result.Found) result).notes());
    }

    private int print(List<PackingNote> notes) {
        if (notes.size() > 1 && files.isAsked()) {
            throw new LedgerException.Contradictory("order " + order + " went out in " + notes.size()
                    + " deliveries; a file takes the note of one: name it with --delivery");
        }
        Optional<Settings> settings = at.access().settings();
        Figures figures =
                new Figures(at.units.of(settings.map(Settings::units).orElse(Units.METRIC)), MoneyText.NO_CURRENCY);
        PackingNotePage page = new PackingNotePage(figures);
        String shop = settings.map(Settings::name).orElse("");
        files.show(terminal, at.common.json, new Answer(() -> PackingNoteForm.text(notes), () -> notes.stream()
                .map(note -> page.of(shop, note))
                .reduce(Document.EMPTY, Document::with)));
        return ExitCode.DONE.number();
    }
}
