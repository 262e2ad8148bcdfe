package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.day.OrdersTold;
import bitterend.exchange.OrdersJson;
import bitterend.exchange.Shop;
import bitterend.report.OrderWords;
import bitterend.report.OrdersPage;
import bitterend.report.OrdersTables;
import bitterend.work.ShopNow;
import bitterend.work.orders.AskOrders;
import bitterend.work.orders.GiveSpare;
import bitterend.work.orders.KeepAsCut;
import bitterend.work.orders.MakeSpare;
import bitterend.work.orders.ReleaseSet;
import bitterend.work.orders.ReturnSpare;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code orders SHOP}: how far every order has come; and what people decide about ordered pieces, a method each. */
@Command(
        name = "orders",
        addMethodSubcommands = false,
        header = "Tells how far every order has come, and books what is decided about it.",
        description = {
            "",
            "Without a command: every order with its pieces open, planned, cut, spliced,",
            "passed, delivered, short and spare, what is overdue first. At the top is",
            "what changed after cutting, and which spare pieces could be used.",
            ""
        },
        synopsisSubcommandLabel = "[COMMAND]",
        commandListHeading = "%nCommands:%n",
        sortOptions = false)
final class OrdersCommand implements Callable<Integer> {
    private final Terminal terminal;

    private final ShopArgument shop = new ShopArgument();

    @Parameters(index = "0", arity = "0..1", paramLabel = "SHOP", description = "The shop folder.")
    private @Nullable Path folder;

    @Mixin
    private DayOption day = new DayOption();

    @Option(
            names = "--by",
            paramLabel = "WHAT",
            defaultValue = "ORDER",
            description = "Put together by order, customer or due. Default: ${DEFAULT-VALUE}.")
    private OrdersPage.By by = OrdersPage.By.ORDER;

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private TableFiles tables = new TableFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    OrdersCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (folder == null) {
            terminal.err().println("error: name the shop folder: bitterend orders demo-data/eider-shed");
            terminal.err().println("Help: bitterend orders --help");
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        shop.folder = folder;
        Optional<ShopNow> found = shop.readOrComplain(terminal);
        Optional<Shop> read = found.map(ShopNow::shop);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        LocalDate today = day.of(read.get());
        OrdersTold told = new AskOrders(found.orElseThrow(), today).status();
        OrdersPage page = new OrdersPage(new OrderWords(units.figures(read.get()), shop.folder.toString()));
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> OrdersJson.status(today, told.orders(), told.changes(), told.spares(), told.uses()),
                        () -> page.of(read.get().settings().name(), today, told, by)));
        tables.write(terminal, () -> new OrdersTables(units.figures(read.get())).of(today, told.orders()));
        return ExitCode.DONE.number();
    }

    @Command(name = "release", header = "Lets a begun matched set go on off rope that does not match.")
    int release(@Mixin OrdersAccess at, @Parameters(index = "1", paramLabel = "SET") String set) {
        return at.book(terminal, (desk, read) -> new ReleaseSet(desk).release(set, at.note.text));
    }

    @Command(name = "again", header = "Makes all of a begun matched set again: its cut pieces become spare.")
    int again(@Mixin OrdersAccess at, @Parameters(index = "1", paramLabel = "SET") String set) {
        return at.book(terminal, (desk, read) -> new MakeSpare(desk).set(set, at.note.text));
    }

    @Command(name = "spare", header = "Makes cut pieces spare; what was ordered is open again.")
    int spare(
            @Mixin OrdersAccess at,
            @Parameters(index = "1..*", arity = "1..*", paramLabel = "PIECE") List<String> pieces) {
        return at.book(terminal, (desk, read) -> new MakeSpare(desk).pieces(pieces, at.note.text));
    }

    @Command(name = "give", header = "Gives a spare piece to an open one that it fits.")
    int give(
            @Mixin OrdersAccess at,
            @Parameters(index = "1", paramLabel = "SPARE") String spare,
            @Parameters(index = "2", paramLabel = "PIECE") String piece,
            @Mixin DayOption onDay) {
        return at.book(terminal, (desk, read) -> new GiveSpare(desk, read, onDay.of(read.shop()))
                .give(spare, piece, at.note.text));
    }

    @Command(name = "back", header = "Returns a spare piece to the rack as a coil.")
    int back(@Mixin OrdersAccess at, @Parameters(index = "1", paramLabel = "SPARE") String spare) {
        return at.book(terminal, (desk, read) -> new ReturnSpare(desk).back(spare, at.note.text));
    }

    @Command(name = "keep", header = "Accepts a cut piece as it is, although its order changed.")
    int keep(@Mixin OrdersAccess at, @Parameters(index = "1", paramLabel = "PIECE") String piece) {
        return at.book(terminal, (desk, read) -> new KeepAsCut(desk).keep(piece, at.note.text));
    }
}
