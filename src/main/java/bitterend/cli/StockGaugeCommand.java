package bitterend.cli;

import bitterend.catalogue.Rope;
import bitterend.exchange.Shop;
import bitterend.exchange.StockJson;
import bitterend.exchange.StockText;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Mass;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.report.Figures;
import bitterend.stock.Event;
import bitterend.stock.Fills;
import bitterend.stock.Gauge;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException.Refused;
import bitterend.stock.Rack;
import bitterend.stock.Reel;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

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
    /** So many times what the ledger has needs a word. */
    private static final int FAR_MORE = 3;

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
            description = "How far the mass of the rope may be off. Default: ${DEFAULT-VALUE}.")
    private int tolerance;

    @Option(names = "--book", description = "Book the figure with its uncertainty.")
    private boolean book;

    @Option(names = "--sure", description = "There is far more on it than the ledger has.")
    private boolean sure;

    @Mixin
    private StockNote note = new StockNote();

    StockGaugeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /**
     * A figure that may be booked.
     *
     * @param text how it is told to a person
     * @param exact the same for a program
     */
    private record Estimate(Length length, Length certain, Reel.Known how, String text, Map<String, String> exact) {}

    @Override
    public Integer call() {
        ShopArgument shop = new ShopArgument();
        shop.folder = at.folder;
        Optional<Shop> read = shop.readOrComplain(terminal);
        if (read.isEmpty()) {
            return ExitCode.BAD_INPUT.number();
        }
        Reel gauged = gauged(read.get());
        Rope rope = read.get().catalogue().rope(gauged.rope());
        Figures figures = at.units.figures(read.get());
        Estimate estimate = gross != null && tare != null ? byWeight(rope, figures) : bySize(rope, figures);
        checkBelievable(estimate, gauged, figures);
        if (!at.common.json) {
            terminal.out().print(estimate.text());
        } else if (!book) {
            terminal.out().print(StockJson.gauged(reel, estimate.exact()));
        }
        if (book) {
            Length uncertainty = estimate.length().minus(estimate.certain());
            Event event = at.writing(ledger -> new Rack(ledger, note.caller(at))
                    .count(
                            reel,
                            bitterend.measure.Written.worked(estimate.length()),
                            uncertainty,
                            estimate.how(),
                            note.text));
            return at.booked(terminal, event.movements());
        }
        return ExitCode.DONE.number();
    }

    private Reel gauged(Shop shop) {
        return shop.reels().stream()
                .filter(each -> each.id().equals(reel))
                .findFirst()
                .orElseThrow(() -> new Refused("there is no reel " + reel + "; see bitterend stock list SHOP"));
    }

    /** Rope does not grow: a figure that the ledger cannot have is a slip in a size or a mass. */
    private void checkBelievable(Estimate estimate, Reel gauged, Figures figures) {
        boolean tooLong =
                StockText.length(LengthText.exact(estimate.length())).value().isEmpty();
        if (tooLong
                || (book
                        && !sure
                        && estimate.certain().isLongerThan(gauged.length().times(FAR_MORE)))) {
            throw new Refused("that would be " + figures.length(estimate.length()) + " on reel " + reel
                    + ", of which the ledger has " + figures.length(gauged.length())
                    + "; look at the sizes and masses again"
                    + (tooLong ? "" : ". If there is so much on it, say it with --sure"));
        }
    }

    private Estimate byWeight(Rope rope, Figures figures) {
        if (rope.mass().milligramsPerMetre() == 0) {
            throw new Refused("ropes.json states no mass of " + rope.id());
        }
        if (gross == null || tare == null || gross.compareTo(tare) <= 0 || tolerance < 0 || tolerance > 90) {
            throw new Refused("the reel must weigh more than empty, the tolerance lie between 0 and 90 %");
        }
        Gauge.ByWeight weighed = Gauge.byWeight(gross, tare, rope.mass(), Ratio.percent(tolerance));
        String text = "by weight  " + figures.length(weighed.expected()) + "\nat least   "
                + figures.length(weighed.least()) + "\nat most    " + figures.length(weighed.most()) + "\n";
        Map<String, String> exact = new LinkedHashMap<>();
        exact.put("byWeight", LengthText.exact(weighed.expected()));
        exact.put("least", LengthText.exact(weighed.least()));
        exact.put("most", LengthText.exact(weighed.most()));
        return new Estimate(weighed.expected(), weighed.least(), Reel.Known.WEIGHED, text, exact);
    }

    private Estimate bySize(Rope rope, Figures figures) {
        if (barrel == null || traverse == null || (depth == null && flange == null)) {
            throw new Refused("give --barrel, --traverse and --depth or --flange, or else --gross and --tare");
        }
        Length deep = depth != null ? depth : flange == null ? Length.ZERO : Gauge.Wound.depthOf(flange, barrel);
        if (!barrel.isPositive() || !traverse.isPositive() || !deep.isPositive()) {
            throw new Refused("a reel has a barrel, a traverse and a depth above nothing");
        }
        Gauge.Wound wound = new Gauge.Wound(barrel, deep, traverse, rope.diameter());
        Ratio fill = fill(wound);
        Gauge.BySize sized = Gauge.bySize(wound, fill);
        Length made = factor == null ? null : byFactor(wound, factor);
        if (!sized.safe().isPositive() || (made != null && !made.isPositive())) {
            throw new Refused("not one turn of " + rope.id() + " fits between these sizes");
        }
        return told(sized, made, fill, figures);
    }

    /** With the maker's factor the smaller figure counts: it has the rope's oversize in it, which is not taken off twice. */
    private Estimate told(Gauge.BySize sized, @Nullable Length made, Ratio fill, Figures figures) {
        Length most = made == null ? sized.turns() : Length.min(sized.turns(), made);
        Length safe = Length.min(most, sized.safe());
        String caution = type.isEmpty() || fill.equals(Gauge.USUAL_FILL) ? Gauge.SLACK : Gauge.TAUGHT;
        String percent = fill.timesRoundedDown(100) + " %";
        String text = "formula      " + figures.length(sized.formula())
                + (made == null ? "" : "\nby factor    " + figures.length(made))
                + "\nwhole turns  " + figures.length(sized.turns())
                + "\nsafe         " + figures.length(safe) + "  (fill " + percent + ")\n"
                + caution + "\n";
        Map<String, String> exact = new LinkedHashMap<>();
        exact.put("formula", LengthText.exact(sized.formula()));
        if (made != null) {
            exact.put("byFactor", LengthText.exact(made));
        }
        exact.put("wholeTurns", LengthText.exact(sized.turns()));
        exact.put("safe", LengthText.exact(safe));
        exact.put("fill", percent);
        exact.put("caution", caution);
        return new Estimate(most, safe, Reel.Known.GAUGED, text, exact);
    }

    private static Length byFactor(Gauge.Wound wound, String factor) {
        return RatioText.parse(factor)
                .value()
                .filter(stated -> stated.compareTo(Ratio.ZERO) > 0 && stated.compareTo(Ratio.of(10_000)) <= 0)
                .map(stated -> Gauge.byFactor(wound, stated))
                .orElseThrow(() -> new Refused("--factor \"" + factor + "\": give a factor such as 0.925"));
    }

    /** The fill of the type, learned from this reel first when its length is known. */
    private Ratio fill(Gauge.Wound wound) {
        Length turns = Gauge.bySize(wound, Ratio.ONE).turns();
        if (known != null) {
            Length really = known;
            if (type.isEmpty() || !really.isPositive() || !turns.isPositive()) {
                throw new Refused("to learn a fill give a --type and a --known length above nothing");
            }
            Event.Act learned =
                    Event.Act.of(Event.Kind.GAUGED, at.who(), note.text).withAll(Fills.facts(type, really, turns));
            at.writing(ledger -> ledger.change(learned, books -> {}));
        }
        return type.isEmpty()
                ? Gauge.USUAL_FILL
                : Gauge.fill(at.reading((Ledger ledger) -> ledger.read(stock -> Fills.of(stock, type))));
    }
}
