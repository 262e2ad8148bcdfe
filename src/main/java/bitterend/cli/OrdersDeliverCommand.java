package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.PackingNoteForm;
import bitterend.exchange.Shop;
import bitterend.report.PackingNotePage;
import bitterend.work.ShopNow;
import bitterend.work.orders.Deliver;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code orders deliver SHOP ORDER}: an order goes out with a packing note. */
@Command(
        name = "deliver",
        header = "Books that an order goes out, and prints its packing note.",
        description = {
            "",
            "All of the order that is cut, or the pieces named. A piece that nobody recorded",
            "as passed stays here unless --unpassed is given; the note says so then.",
            ""
        },
        sortOptions = false)
final class OrdersDeliverCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private OrdersAccess at = new OrdersAccess();

    @Parameters(index = "1", paramLabel = "ORDER", description = "Number of the order.")
    private String order = "";

    @Option(names = "--piece", paramLabel = "PIECE", description = "This piece; may be given again.")
    private List<String> pieces = List.of();

    @Option(names = "--unpassed", description = "Send pieces too that nobody recorded as passed.")
    private boolean unpassed;

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private PageFiles files = new PageFiles();

    OrdersDeliverCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<ShopNow> read = at.read(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Deliver.Request request =
                new Deliver.Request(order, pieces, unpassed, day.of(read.get().shop()), at.note.text);
        Deliver.Result result =
                new Deliver(at.desk(read.get()), read.get().shop().catalogue()).deliver(request);
        if (result instanceof Deliver.Result.Refused refused) {
            terminal.err().println("error: " + refused.why() + ". Nothing was booked.");
            return ExitCode.BAD_INPUT.number();
        }
        print(read.get().shop(), (Deliver.Result.Delivered) result);
        return ExitCode.DONE.number();
    }

    private void print(Shop read, Deliver.Result.Delivered delivered) {
        files.show(
                terminal,
                at.at.common.json,
                new Answer(() -> PackingNoteForm.text(delivered.note()), () -> new PackingNotePage(
                                at.at.units.figures(read))
                        .of(read.settings().name(), delivered.note())));
    }
}
