package bitterend.cli;

import bitterend.buying.reorder.Proposal;
import bitterend.buying.reorder.Terms;
import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.ReorderJson;
import bitterend.exchange.Shop;
import bitterend.front.TradePages;
import bitterend.measure.Money;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.report.Figures;
import bitterend.report.ProposalTable;
import bitterend.report.ReorderTable;
import bitterend.work.ShopNow;
import bitterend.work.trade.AdviseReels;
import bitterend.work.trade.ProposeOrder;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code reorder SHOP}: what to order again now. */
@Command(
        name = "reorder",
        header = "Tells what to order again now: rope, supplier, size, how many, by when.",
        description = {
            "",
            "For each rope with an offer and a past: what is free on the rack, what comes and",
            "when it is counted on, less what is booked, against what is used until an order",
            "is there, by season and the lead time of the offer. Bundled by supplier: what",
            "would be ordered soon goes along where its way then costs less, or where the",
            "order is else below what the supplier sends. Of rope without a past it is as",
            "much as is booked beyond what there is. It writes nothing to the shop.",
            "",
            "A proposal to edit:  bitterend reorder SHOP --out proposal.csv",
            "To order by it:      bitterend stock order SHOP proposal.csv",
            ""
        },
        sortOptions = false)
final class ReorderCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Mixin
    private DayOption day = new DayOption();

    @Option(
            names = "--service",
            paramLabel = "PERCENT",
            converter = Typed.Service.class,
            description = "So much of the rope is to be there in time. Default: service of shop.json, else 97.")
    private @Nullable Ratio service;

    @Option(
            names = "--budget",
            paramLabel = "MONEY",
            description = "Pay no more than this now, such as 2500: what is left longest waits.")
    private @Nullable String budget;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            converter = Sheet.class,
            description = "Write it as a proposal to edit, CSV or .xlsx; a new file.")
    private @Nullable Path out;

    @Mixin
    private SeedOption seed = new SeedOption();

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private TableFiles tables = new TableFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    ReorderCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Shop now = read.get().shop();
        if (!AdviseReels.isOffered(now)) {
            terminal.err().println("error: " + TradePages.NO_OFFER);
            return ExitCode.BAD_INPUT.number();
        }
        Parsed<Money> most = most(now);
        if (most.value().isEmpty()) {
            terminal.err()
                    .println("error: --budget: found \"" + budget + "\", expected "
                            + most.refusal().orElse("an amount of money"));
            return ExitCode.BAD_COMMAND_LINE.number();
        }
        Proposal proposal = new ProposeOrder(read.get())
                .propose(new ProposeOrder.Request(
                        day.of(now), service, most.value().get(), seed.seed));
        show(read.get(), proposal);
        return ExitCode.DONE.number();
    }

    private void show(ShopNow read, Proposal proposal) {
        Shop now = read.shop();
        Figures figures = units.figures(now);
        files.show(
                terminal,
                common.json,
                new Answer(
                        () -> new ReorderJson(now.settings().money()).text(proposal),
                        () -> TradePages.of(now, proposal, figures)));
        tables.write(terminal, () -> new ReorderTable(figures).of(proposal));
        if (out != null) {
            TableFiles.create(
                    terminal, out, ProposalTable.of(proposal, now.settings().money()));
        }
    }

    private Parsed<Money> most(Shop now) {
        return budget == null
                ? Parsed.of(Terms.NO_BUDGET)
                : now.settings()
                        .money()
                        .parse(budget)
                        .then(money -> money.minor() < 0
                                ? Parsed.refused("an amount of money that is not negative")
                                : Parsed.of(money));
    }

    /** A new table, by the ending of its name. */
    static final class Sheet implements ITypeConverter<Path> {
        @Override
        public Path convert(String text) {
            String name = text.toLowerCase(Locale.ROOT);
            if (!name.endsWith(".csv") && !name.endsWith(".xlsx")) {
                throw new TypeConversionException("found \"" + text + "\", expected a file that ends in .csv or .xlsx");
            }
            return TableFiles.fresh(text, name.endsWith(".csv") ? ".csv" : ".xlsx");
        }
    }
}
