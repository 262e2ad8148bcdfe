package bitterend.cli;

import static bitterend.report.FindingsPage.count;

import bitterend.cli.PageFiles.Answer;
import bitterend.demand.Assembly;
import bitterend.exchange.AnswerJson;
import bitterend.exchange.OrderLine;
import bitterend.exchange.Shop;
import bitterend.finding.Finding;
import bitterend.front.OrdersNow;
import bitterend.report.FindingsPage;
import bitterend.report.OrderWords;
import bitterend.report.page.Block.Line.Weight;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import bitterend.work.ShopFound;
import bitterend.work.ShopNow;
import bitterend.work.orders.AskOrders;
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
            "expected; all problems of all files are shown in one run. Exit code 3 when one",
            "of them is an error; 4 when an order line cannot be made, which leaves that",
            "line out and no other; warnings alone leave it at 0.",
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
    private PageFiles files = new PageFiles();

    @Mixin
    private CommonOptions common = new CommonOptions();

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        ShopFound reading = shop.access().read();
        Answer answer = new Answer(() -> AnswerJson.findings(withOrders(reading)), () -> page(reading));
        Document page = files.page(common.json, answer);
        terminal.out().print(common.json ? answer.json().get() : page.text(terminal.ink()));
        files.write(terminal, page.titled("Check", "What is wrong and what is there", named(reading)));
        return reading.found()
                .map(ShopNow::shop)
                .map(CheckCommand::code)
                .orElse(ExitCode.BAD_INPUT)
                .number();
    }

    private static String named(ShopFound reading) {
        return reading.found().map(now -> now.shop().settings().name()).orElse("");
    }

    private static ExitCode code(Shop read) {
        return read.leftOut().isEmpty() ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }

    /** What changed after cutting stands before what the files say. */
    private List<Finding> withOrders(ShopFound reading) {
        List<Finding> all = new ArrayList<>();
        reading.found().ifPresent(now -> {
            OrderWords words = OrdersNow.words(now, units.figures(now.shop()));
            words.first(new AskOrders(now, day.of(now.shop())).ofCuts())
                    .forEach(told -> all.add(Finding.warning(now.at().ledgerName(), "", "", "", told)));
        });
        all.addAll(reading.findings());
        return all;
    }

    /** What changed after cutting, what is wrong, what is there. */
    private Document page(ShopFound reading) {
        Document top = reading.found()
                .map(now -> OrdersNow.top(now, day.of(now.shop()), units.figures(now.shop())))
                .orElse(Document.EMPTY);
        Writing below = new Writing();
        reading.found().ifPresent(now -> whatIsThere(below, now.shop()));
        below.line(Weight.PLAIN, FindingsPage.summary(reading.findings()) + ".");
        Document findings = FindingsPage.of(reading.findings()).with(below.document());
        return top.blocks().isEmpty() ? findings : top.then(findings);
    }

    private static void whatIsThere(Writing page, Shop read) {
        String things = String.join(
                ", ",
                count(read.catalogue().ropes().size(), "rope"),
                count(read.orders().size(), "order line"),
                count(read.pieces().size(), "piece"),
                count(read.reels().size(), "reel"));
        page.line(Weight.PLAIN, read.settings().name() + ": " + things + ".");
        read.orders().forEach(order -> inherited(page, order));
    }

    /** What an order line takes over from the standard product it names. */
    private static void inherited(Writing page, OrderLine order) {
        Assembly assembly = order.assembly();
        if (!assembly.membership().inherited().isEmpty()) {
            String part = assembly.membership().part();
            page.paragraph(assembly.origin().file() + ", " + assembly.origin().place() + ": product "
                    + assembly.ordered().product() + (part.isEmpty() ? "" : ", " + part) + ", gives "
                    + String.join(", ", assembly.membership().inherited()) + ".");
        }
    }
}
