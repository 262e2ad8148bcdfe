package bitterend.cli;

import bitterend.work.rack.RackWork;
import bitterend.work.rack.WorkReel;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code stock flaw}: a flaw was found on a reel. */
@Command(
        name = "flaw",
        header = "Books a flaw that was found on a reel.",
        description = {"", "Such as: stock flaw SHOP R-104 \"20 m to 21 m +/- 0.1 m: chafed\"", ""},
        sortOptions = false)
final class StockFlawCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "REEL")
    private String reel = "";

    @Parameters(
            index = "2",
            paramLabel = "FLAW",
            converter = FlawsText.class,
            description = "From the working end, as in reels.csv.")
    private FlawsText.Flaws flaw = FlawsText.Flaws.NONE;

    @Mixin
    private StockNote note = new StockNote();

    StockFlawCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        return at.booked(terminal, new WorkReel(at.desk(note)).book(new RackWork.AddFlaws(reel, flaw.list())));
    }
}
