package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.NewOrderJson;
import bitterend.exchange.ProposalCsv;
import bitterend.exchange.Shop;
import bitterend.finding.CommandWord;
import bitterend.report.FindingsPage;
import bitterend.report.NewOrderPage;
import bitterend.report.page.Wording;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.work.ShopNow;
import bitterend.work.trade.PlaceOrder;
import bitterend.work.trade.PlaceOrder.Result;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock order SHOP FILE}: orders reels by an edited proposal. */
@Command(
        name = "order",
        header = "Orders reels by a proposal: into on-order.csv, and as a text for each supplier.",
        description = {
            "",
            "A proposal, looked at:  stock order SHOP proposal.csv",
            "Written down:           stock order SHOP proposal.csv --accept",
            "The last taken back:    stock order SHOP --back",
            "",
            "A row orders its quantity of an offer of offers.csv; one of quantity 0 nothing.",
            "A row without an offer states rope, length, price and the day itself. What is",
            "accepted goes below the rows of on-order.csv, each line under a new number; the",
            "file as it was is kept. The text for each supplier is printed; nothing is sent.",
            ""
        },
        sortOptions = false)
final class StockOrderCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Parameters(index = "1", arity = "0..1", paramLabel = "FILE", description = "The proposal: CSV or a workbook.")
    private @Nullable Path file;

    @Option(names = "--accept", description = "Write it to on-order.csv. The file as it was is kept.")
    private boolean accept;

    @Option(names = "--back", description = "Take the last order back whole, instead of a FILE.")
    private boolean back;

    @Option(names = "--who", paramLabel = "NAME", description = "Who does it. Default: the login.")
    private @Nullable String who;

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    StockOrderCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Path named = file;
        if (back == (named != null)) {
            throw new Contradictory("name a FILE to order by, or --back to take the last order back");
        }
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        return (named == null ? back(read.get()) : order(read.get(), named)).number();
    }

    private ExitCode back(ShopNow now) {
        Result result = new PlaceOrder(shop.access()).back(now);
        if (result instanceof Result.TakenBack taken) {
            if (common.json) {
                terminal.out().print(NewOrderJson.takenBack(taken.numbers()));
            } else {
                terminal.out()
                        .println(Wording.sentence("Taken back: " + String.join(", ", taken.numbers())
                                + ". If its text went out, tell the supplier. These numbers are not given again."));
            }
            return ExitCode.DONE;
        }
        return refused(result instanceof Result.Refused refused ? refused.why() : "there is no order to take back");
    }

    private ExitCode order(ShopNow now, Path named) {
        ProposalCsv.Read read = PlaceOrder.read(named, now, day.of(now.shop()));
        terminal.err().print(FindingsPage.text(read.findings(), terminal.ink()));
        if (read.findings().stream().anyMatch(finding -> finding.isError())) {
            return ExitCode.BAD_INPUT;
        }
        PlaceOrder verb = new PlaceOrder(shop.access());
        Result result = accept
                ? verb.accept(now, read.rows(), day.of(now.shop()), Who.of(who))
                : verb.look(now, read.rows(), day.of(now.shop()));
        if (result instanceof Result.Ordered ordered) {
            return show(now.shop(), ordered, named);
        }
        if (result instanceof Result.Wrong wrong) {
            terminal.err().print(FindingsPage.text(wrong.findings(), terminal.ink()));
            return ExitCode.BAD_INPUT;
        }
        return refused(
                result instanceof Result.Refused refused
                        ? refused.why()
                        : "no row orders anything: write how many reels into the column quantity");
    }

    private ExitCode show(Shop now, Result.Ordered ordered, Path named) {
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> new NewOrderJson(now.settings().money()).text(ordered.order(), accept, ordered.already()),
                        () -> new NewOrderPage(units.figures(now), now.catalogue())
                                .of(
                                        now.settings().name(),
                                        now.settings().quote().letter(),
                                        ordered.order())));
        if (!ordered.already().isEmpty()) {
            terminal.err()
                    .println(Wording.sentence("warning: the same was ordered today already: "
                            + String.join(", ", ordered.already()) + "."));
        }
        String at = CommandWord.of(shop.folder.toString());
        terminal.err()
                .println(Wording.sentence(
                        accept
                                ? "Written to on-order.csv; nothing is sent. To take it back: bitterend stock order "
                                        + at + " --back"
                                : "Nothing is ordered yet. To write it down: bitterend stock order " + at + " "
                                        + CommandWord.of(named.toString()) + " --accept"));
        return ordered.isAllowed() ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }

    private ExitCode refused(String why) {
        terminal.err().println(Wording.sentence("error: " + why));
        return ExitCode.BAD_INPUT;
    }
}
