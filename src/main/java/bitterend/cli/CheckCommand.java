package bitterend.cli;

import static bitterend.report.FindingsPage.count;

import bitterend.demand.Assembly;
import bitterend.exchange.AnswerJson;
import bitterend.exchange.OrderLine;
import bitterend.exchange.Shop;
import bitterend.exchange.ShopReading;
import bitterend.finding.Finding;
import bitterend.report.FindingsPage;
import bitterend.report.OrderWords;
import bitterend.report.page.Wording;
import bitterend.store.SqliteLedger;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code check SHOP}: every problem of every file, in one run. */
@Command(
        name = "check",
        header = "Reads every file of a shop and lists what is wrong.",
        description = {
            "",
            "Each line names the file, the row, the column, what was found and what was",
            "expected; all problems of all files are told in one run. Exit code 3 when one of",
            "them is an error; 4 when an order line cannot be made, which leaves that line out",
            "and no other; warnings alone leave it at 0.",
            ""
        },
        sortOptions = false)
final class CheckCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Mixin
    private DayOption day = new DayOption();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        ShopReading reading = shop.read();
        if (common.json) {
            terminal.out().print(AnswerJson.findings(withOrders(reading)));
        } else {
            reading.shop().ifPresent(read -> terminal.out()
                    .print(OrdersNow.top(shop, read, day.of(read), units.figures(read))
                            .above(terminal.ink())));
            terminal.out().print(new FindingsPage(terminal.ink()).text(reading.findings()));
            reading.shop().ifPresent(this::whatIsThere);
            terminal.out().println(FindingsPage.summary(reading.findings()) + ".");
        }
        return reading.shop().map(CheckCommand::code).orElse(ExitCode.BAD_INPUT).number();
    }

    private static ExitCode code(Shop read) {
        return read.leftOut().isEmpty() ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }

    /** What changed after cutting stands before what the files say. */
    private List<Finding> withOrders(ShopReading reading) {
        List<Finding> all = new ArrayList<>();
        reading.shop().ifPresent(read -> {
            OrderWords words = new OrderWords(units.figures(read), shop.folder.toString());
            words.first(OrdersNow.of(shop, read, day.of(read)))
                    .forEach(told -> all.add(Finding.warning(SqliteLedger.NAME, "", "", "", told)));
        });
        all.addAll(reading.findings());
        return all;
    }

    private void whatIsThere(Shop read) {
        String things = String.join(
                ", ",
                count(read.catalogue().ropes().size(), "rope"),
                count(read.orders().size(), "order line"),
                count(read.pieces().size(), "piece"),
                count(read.reels().size(), "reel"));
        terminal.out().println(Wording.printable(read.settings().name()) + ": " + things + ".");
        read.orders().forEach(this::inherited);
    }

    /** What an order line takes over from the standard product it names. */
    private void inherited(OrderLine order) {
        Assembly assembly = order.assembly();
        if (!assembly.membership().inherited().isEmpty()) {
            String part = assembly.membership().part();
            terminal.out()
                    .println(assembly.origin().file() + ", " + assembly.origin().place() + ": product "
                            + assembly.ordered().product() + (part.isEmpty() ? "" : ", " + part) + ", gives "
                            + String.join(", ", assembly.membership().inherited()) + ".");
        }
    }
}
