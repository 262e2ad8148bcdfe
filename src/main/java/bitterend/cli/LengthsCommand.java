package bitterend.cli;

import bitterend.exchange.AnswerJson;
import bitterend.exchange.OrderLine;
import bitterend.exchange.Shop;
import bitterend.measure.Units;
import bitterend.report.LengthsPage;
import bitterend.report.page.Document;
import bitterend.report.sheet.PieceDrawing;
import bitterend.work.AskLengths;
import bitterend.work.AskLengths.Line;
import bitterend.work.ShopNow;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code lengths SHOP [ORDER/LINE]}: cut lengths, and how they came about. */
@Command(
        name = "lengths",
        header = "Lists the cut length of every ordered piece, or derives one.",
        description = {
            "",
            "With ORDER/LINE, such as 1041/3, shows how that length came about: every",
            "allowance on a line of its own, with its source and whether the shop has",
            "verified it. The lines add up exactly. On paper with a drawing of it.",
            ""
        },
        sortOptions = false)
final class LengthsCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private ShopArgument shop = new ShopArgument();

    @Parameters(index = "1", arity = "0..1", paramLabel = "ORDER/LINE", description = "One order line, such as 1041/3.")
    private @Nullable String line;

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private UnitsOption units = new UnitsOption();

    @Mixin
    private CommonOptions common = new CommonOptions();

    LengthsCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<ShopNow> read = shop.readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        AskLengths ask = new AskLengths(read.get());
        return (line == null ? list(ask.all()) : derivation(ask, line)).number();
    }

    private ExitCode list(Shop read) {
        files.show(
                terminal,
                common.json,
                new PageFiles.Answer(() -> AnswerJson.lengths(read.orders(), said(read)), () -> page(read)
                        .list(read.settings().name(), read.pieces(), read.catalogue())));
        return read.leftOut().isEmpty() ? ExitCode.DONE : ExitCode.NOT_ALL_PLANNED;
    }

    private ExitCode derivation(AskLengths ask, String wanted) {
        Line asked = ask.line(wanted);
        if (asked instanceof Line.LeftOut leftOut) {
            terminal.err().println("error: order line " + wanted + " is left out, so it has no cut length:");
            leftOut.why().forEach(finding -> terminal.err().println(finding));
            return ExitCode.BAD_INPUT;
        }
        if (asked instanceof Line.Unknown unknown) {
            terminal.err()
                    .println("error: there is no order line " + wanted + "; write it as ORDER/LINE, such as "
                            + unknown.example());
            return ExitCode.BAD_COMMAND_LINE;
        }
        return derivation(ask.all(), ((Line.Found) asked).parts());
    }

    private ExitCode derivation(Shop read, List<OrderLine> found) {
        files.show(
                terminal,
                common.json,
                new PageFiles.Answer(() -> AnswerJson.lengths(found, said(read)), () -> derived(read, found)));
        return ExitCode.DONE;
    }

    /** The derivations of the parts of an order line, one below the other. */
    private Document derived(Shop read, List<OrderLine> found) {
        PieceDrawing drawing = new PieceDrawing(units.figures(read));
        return found.stream()
                .map(order -> page(read)
                        .derivation(
                                order.assembly(),
                                order.demanded(),
                                read.catalogue(),
                                drawing.of(order.assembly(), order.demanded())))
                .reduce(Document::then)
                .orElse(Document.EMPTY);
    }

    private Units said(Shop read) {
        return units.figures(read).units();
    }

    private LengthsPage page(Shop read) {
        return new LengthsPage(units.figures(read));
    }
}
