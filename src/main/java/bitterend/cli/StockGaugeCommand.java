package bitterend.cli;

import bitterend.cli.PageFiles.Answer;
import bitterend.exchange.Shop;
import bitterend.exchange.StockJson;
import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.report.Figures;
import bitterend.report.page.Document;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.work.ShopNow;
import bitterend.work.rack.GaugeReel;
import bitterend.work.rack.GaugeReel.By;
import bitterend.work.rack.GaugeReel.BySize;
import bitterend.work.rack.GaugeReel.ByWeight;
import bitterend.work.rack.GaugeReel.Estimate;
import bitterend.work.rack.GaugeReel.Result;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** {@code stock gauge}: how much rope is on a reel, by its size or its weight. */
@Command(
        name = "gauge",
        header = "Estimates the rope on a reel by its size or its weight.",
        description = {
            "",
            "By size: --barrel, --traverse and --depth (or --flange when it is full). Three",
            "figures: the formula, whole turns, and the safe one, which is the turns times a",
            "fill of 0.85, or the least fill found on reels of that --type with --known.",
            "With the rope maker's --factor a fourth, and the safe one is never above it.",
            "By weight: --gross and --tare. --book books the figure; plans count on no more",
            "than the safe part of it.",
            ""
        },
        sortOptions = false)
final class StockGaugeCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private StockAccess at = new StockAccess();

    @Parameters(index = "1", paramLabel = "REEL")
    private String reel = "";

    @Option(names = "--barrel", paramLabel = "LENGTH", converter = ReelSize.class, description = "Diameter.")
    private @Nullable Length barrel;

    @Option(names = "--traverse", paramLabel = "LENGTH", converter = ReelSize.class, description = "Width inside.")
    private @Nullable Length traverse;

    @Option(names = "--depth", paramLabel = "LENGTH", converter = ReelSize.class, description = "Barrel to outside.")
    private @Nullable Length depth;

    @Option(names = "--flange", paramLabel = "LENGTH", converter = ReelSize.class, description = "Of a full reel.")
    private @Nullable Length flange;

    @Option(names = "--type", paramLabel = "TYPE", defaultValue = "", description = "Reel type, in your words.")
    private String type = "";

    @Option(
            names = "--known",
            paramLabel = "LENGTH",
            converter = LengthOption.class,
            description = "Length that is really on it: teaches the fill of its type.")
    private @Nullable Length known;

    @Option(
            names = "--factor",
            paramLabel = "FACTOR",
            description = "The rope maker's factor for a full reel: feet from inches.")
    private @Nullable String factor;

    @Option(names = "--gross", paramLabel = "MASS", converter = MassOption.class, description = "Rope and reel.")
    private @Nullable Mass gross;

    @Option(names = "--tare", paramLabel = "MASS", converter = MassOption.class, description = "The reel empty.")
    private @Nullable Mass tare;

    @Option(
            names = "--tolerance",
            paramLabel = "PERCENT",
            defaultValue = "5",
            converter = Percent.class,
            description = "How far the mass of the rope may be off. Default: ${DEFAULT-VALUE}.")
    private int tolerance;

    @Option(names = "--book", description = "Book the figure with its uncertainty.")
    private boolean book;

    @Option(names = "--sure", description = "There is far more on it than the ledger has.")
    private boolean sure;

    @Mixin
    private PageFiles files = new PageFiles();

    @Mixin
    private StockNote note = new StockNote();

    StockGaugeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Optional<Shop> read = at.shop().readOrComplain(terminal).map(ShopNow::shop);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Figures figures = at.units.figures(read.get());
        Result result = new GaugeReel(at.desk(note), read.get()).gauge(new GaugeReel.Request(reel, by(), book, sure));
        if (result instanceof Result.Unbelieved much) {
            throw new LedgerException.Refused(unbelieved(much, figures));
        }
        if (result instanceof Result.NotGauged not) {
            not.found()
                    .filter(estimate -> !(book && at.common.json))
                    .ifPresent(estimate -> show(estimate, figures, List.of()));
            throw Faults.of(not.why());
        }
        Result.Gauged gauged = (Result.Gauged) result;
        show(
                gauged.estimate(),
                figures,
                gauged.booked().map(booked -> booked.event().movements()).orElse(List.of()));
        return ExitCode.DONE.number();
    }

    private By by() {
        return gross != null && tare != null
                ? new ByWeight(gross, tare, tolerance)
                : new BySize(barrel, traverse, depth, flange, factor, type, known);
    }

    /** Whole per cent: {@code 5} or {@code 5 %}. */
    static final class Percent implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            String figure = text.strip().replaceFirst(" *%$", "");
            if (!figure.matches("[0-9]{1,2}")) {
                throw new TypeConversionException("expected whole per cent; write the tolerance as 2 or 2 %");
            }
            return Integer.valueOf(figure);
        }
    }

    private String unbelieved(Result.Unbelieved much, Figures figures) {
        return "that would be " + figures.length(much.length()) + " on reel " + reel + ", of which the ledger has "
                + figures.length(much.has()) + "; look at the sizes and masses again"
                + (much.impossible() ? "" : ". If there is so much on it, say it with --sure");
    }

    private void show(Estimate estimate, Figures figures, List<Movement> booked) {
        at.show(
                terminal,
                files,
                "Reel " + reel + " gauged",
                new Answer(
                        () -> book ? StockJson.movements(booked) : StockJson.gauged(reel, GaugeTold.exact(estimate)),
                        () -> new GaugeTold(figures)
                                .page(estimate)
                                .with(
                                        booked.isEmpty()
                                                ? Document.EMPTY
                                                : at.page().movements(booked))));
    }
}
