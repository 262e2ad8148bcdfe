package bitterend.cli;

import bitterend.exchange.Shop;
import bitterend.exchange.StockJson;
import bitterend.report.OnTheWayPage;
import bitterend.stock.Transfers.OnTheWay;
import bitterend.work.ShopNow;
import bitterend.work.rack.ArriveReel;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock arrive SHOP REEL}: a reel that another loft of the server sent. */
@Command(
        name = "arrive",
        header = "Books a reel that another loft of the server sent, or lists them.",
        description = {
            "",
            "Without REEL it lists what is on the way to this loft and from it. A reel comes",
            "as it was sent: lot, papers, flaws, owner; what was kept for orders is free.",
            "Sending is taken back by the loft that sent it, once this was taken back.",
            ""
        },
        sortOptions = false)
final class StockArriveCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", arity = "0..1", paramLabel = "REEL", description = "Its id in the loft that sent it.")
    private @Nullable String reel;

    @Option(
            names = "--as",
            paramLabel = "ID",
            converter = Typed.ReelId.class,
            description = "Its id here, where another has that one. Default: the same.")
    private @Nullable String newId;

    @Mixin
    private StockNote note = new StockNote();

    StockArriveCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        String sent = reel;
        if (sent == null) {
            List<OnTheWay> all = ArriveReel.onTheWay(at.access());
            terminal.out()
                    .print(
                            at.common.json
                                    ? StockJson.onTheWay(all)
                                    : StockAccess.text(terminal, OnTheWayPage.of(all, at.figures())));
            return ExitCode.DONE.number();
        }
        Optional<Shop> shop = at.shop().readOrComplain(terminal).map(ShopNow::shop);
        if (shop.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        String id = newId;
        return at.booked(terminal, new ArriveReel(at.desk(note), shop.get()).book(sent, id == null ? sent : id));
    }
}
