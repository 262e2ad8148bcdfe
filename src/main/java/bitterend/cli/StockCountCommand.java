package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.day.CountedRack;
import bitterend.exchange.CountCsv;
import bitterend.exchange.CountJson;
import bitterend.exchange.StockJson;
import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.measure.Written;
import bitterend.report.CountPage;
import bitterend.report.FindingsPage;
import bitterend.stock.Counted;
import bitterend.stock.Holding;
import bitterend.stock.LedgerException.Contradictory;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import bitterend.work.rack.CountRack;
import bitterend.work.rack.RackWork;
import bitterend.work.rack.WorkReel;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code stock count}: a new figure for a reel, or for all that a list says. */
@Command(
        name = "count",
        header = "Books what was counted: of one reel, or all that a list says.",
        description = {
            "",
            "One reel:             stock count SHOP R-104 \"60 m\"",
            "A list to fill in:    stock count SHOP --sheet > count.csv",
            "What differs:         stock count SHOP --file count.csv",
            "Booked as one event:  stock count SHOP --file count.csv --accept",
            "",
            "The list has no length of the books in it, and goes by place. A row that is left",
            "empty is not counted; empty and not found are words for it. What is far off the",
            "books, and a reel that was not found, are set apart, and booked with --sure",
            "alone: a reel that was not found is on hold until it is.",
            ""
        },
        sortOptions = false)
final class StockCountCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", arity = "0..1", paramLabel = "REEL", description = "The reel that was counted.")
    private String reel = "";

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "LENGTH",
            converter = Typed.CountedRope.class,
            description = "How long it is.")
    private @Nullable Written length;

    @Option(
            names = "--uncertainty",
            paramLabel = "LENGTH",
            converter = Typed.Allowance.class,
            defaultValue = "0 mm",
            description = "How much shorter it may really be. Default: ${DEFAULT-VALUE}.")
    private Length uncertainty = Length.ZERO;

    @Option(
            names = "--known",
            paramLabel = "HOW",
            defaultValue = "COUNTED",
            description = "How it is known: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
    private Reel.Known known = Reel.Known.COUNTED;

    @Option(names = "--sheet", description = "Print the list to fill in, as CSV.")
    private boolean sheet;

    @Option(names = "--file", paramLabel = "FILE", description = "Hold a filled list against the ledger.")
    private @Nullable Path file;

    @Option(names = "--accept", description = "Book what differs, all of it as one event.")
    private boolean accept;

    @Option(names = "--sure", description = "Book what is set apart, too.")
    private boolean sure;

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private StockNote note = new StockNote();

    StockCountCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        boolean one = !reel.isEmpty() && length != null;
        boolean none = reel.isEmpty() && length == null;
        if ((one ? 1 : 0) + (sheet ? 1 : 0) + (file == null ? 0 : 1) != 1 || !(one || none)) {
            throw new Contradictory(
                    "say what was counted: a REEL and its LENGTH, or --file FILE; --sheet prints a list");
        }
        Written counted = length;
        if (counted != null) {
            return at.booked(
                    terminal,
                    new WorkReel(at.desk(note))
                            .book(new RackWork.Count(List.of(Counted.of(reel, counted, uncertainty, known)))));
        }
        return at.shop()
                .readOrComplain(terminal)
                .map(now -> file == null ? sheet(now) : list(now, file))
                .orElse(ExitCode.BAD_INPUT.number());
    }

    private int sheet(ShopNow now) {
        List<Holding> walk = new CountRack(at.desk(note), now).walk();
        terminal.out()
                .print(
                        at.common.json
                                ? StockJson.rack(walk)
                                : CountCsv.sheet(
                                        walk,
                                        now.shop().catalogue(),
                                        at.units.of(now.shop().settings().units())));
        return ExitCode.DONE.number();
    }

    private int list(ShopNow now, Path filled) {
        CountCsv.Read read = CountCsv.read(filled, now.shop().settings());
        terminal.err().print(FindingsPage.text(read.findings(), terminal.ink()));
        if (read.findings().stream().anyMatch(finding -> finding.isError())) {
            return ExitCode.BAD_INPUT.number();
        }
        CountRack verb = new CountRack(at.desk(note), now);
        CountedRack rack = verb.compare(read.counted());
        Set<String> said = sure ? apart(rack) : Set.of();
        Optional<Booking.Booked> booked =
                accept ? Optional.of(StockAccess.done(verb.accept(read.counted(), said))) : Optional.empty();
        long event = booked.map(each -> each.event().number()).orElse(0L);
        MoneyText money = now.shop().settings().money();
        at.show(
                terminal,
                files,
                "Count",
                new Answer(
                        () -> new CountJson(money).text(rack, said, event),
                        () -> new CountPage(at.units.figures(now.shop())).of(rack)));
        booked.ifPresent(each -> at.toldAsOne(terminal, each));
        return ExitCode.DONE.number();
    }

    private static Set<String> apart(CountedRack rack) {
        return rack.apart().stream().map(line -> line.book().id()).collect(Collectors.toSet());
    }
}
