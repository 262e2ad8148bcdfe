package bitterend.work.rack;

import bitterend.catalogue.Rope;
import bitterend.exchange.Shop;
import bitterend.exchange.StockText;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Mass;
import bitterend.measure.Ratio;
import bitterend.measure.RatioText;
import bitterend.measure.Written;
import bitterend.stock.Counted;
import bitterend.stock.Event;
import bitterend.stock.Fills;
import bitterend.stock.Gauge;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LedgerException.Refused;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Estimates the rope on a reel by its size or its weight, and books the figure where that is asked. */
public final class GaugeReel {
    /** So many times what the ledger has needs a word. */
    private static final int FAR_MORE = 3;

    private final RackDesk desk;
    private final Shop shop;

    public GaugeReel(RackDesk desk, Shop shop) {
        this.desk = desk;
        this.shop = shop;
    }

    /**
     * What is gauged.
     *
     * @param reel the reel
     * @param by what was measured of it
     * @param book whether the figure is booked
     * @param sure whether there may be far more on it than the ledger has
     */
    public record Request(String reel, By by, boolean book, boolean sure) {}

    /** What was measured. */
    public sealed interface By {}

    /**
     * The size of the reel and of what is wound on it; what is null was not measured.
     *
     * @param depth from the barrel to the outside
     * @param flange diameter of the flange, of a full reel
     * @param factor the rope maker's, as it was typed
     * @param type type of the reel, to learn or to use its fill; may be empty
     * @param known how much rope there really is, to learn the fill
     */
    public record BySize(
            @Nullable Length barrel,
            @Nullable Length traverse,
            @Nullable Length depth,
            @Nullable Length flange,
            @Nullable String factor,
            String type,
            @Nullable Length known)
            implements By {}

    /**
     * The mass of the reel.
     *
     * @param gross rope and reel
     * @param tare the reel empty
     * @param tolerance how far the mass of the rope may be off, in per cent
     */
    public record ByWeight(Mass gross, Mass tare, int tolerance) implements By {}

    /** What it says. */
    public sealed interface Estimate {
        /** The figure that may be booked. */
        Length length();

        /** So much of it is certain. */
        Length certain();
    }

    /**
     * By size.
     *
     * @param formula by the volume
     * @param byFactor by the rope maker's factor; null where none was given
     * @param turns whole turns
     * @param safe the turns with a fill, never above the factor's
     * @param fill the fill
     * @param taught whether the fill was learned from reels of its type
     */
    public record OfSize(
            Length formula, @Nullable Length byFactor, Length turns, Length safe, Ratio fill, boolean taught)
            implements Estimate {
        /** With the maker's factor the smaller figure counts: it has the rope's oversize in it, which is not taken off twice. */
        @Override
        public Length length() {
            return byFactor == null ? turns : Length.min(turns, byFactor);
        }

        @Override
        public Length certain() {
            return safe;
        }
    }

    /** By weight. */
    public record OfWeight(Length expected, Length least, Length most) implements Estimate {
        @Override
        public Length length() {
            return expected;
        }

        @Override
        public Length certain() {
            return least;
        }
    }

    /** What came of it. */
    public sealed interface Result {
        /**
         * It is gauged.
         *
         * @param booked what was booked; nothing where that was not asked
         */
        record Gauged(Estimate estimate, Optional<Booking.Booked> booked) implements Result {}

        /**
         * Rope does not grow: nobody believes the figure.
         *
         * @param length the figure
         * @param has what the ledger has
         * @param impossible whether no word makes it good
         */
        record Unbelieved(Length length, Length has, boolean impossible) implements Result {}

        /**
         * It does not go.
         *
         * @param estimate what it says; null where there is no figure either
         */
        record NotGauged(Booking.Refused why, @Nullable Estimate estimate) implements Result {
            public Optional<Estimate> found() {
                return Optional.ofNullable(estimate);
            }
        }
    }

    /** Gauges it, and books the figure where that is asked. */
    public Result gauge(Request request) {
        try {
            Reel gauged = shop.reels().stream()
                    .filter(each -> each.id().equals(request.reel()))
                    .findFirst()
                    .orElseThrow(() ->
                            new Refused("there is no reel " + request.reel() + "; see bitterend stock list SHOP"));
            Rope rope = shop.catalogue().rope(gauged.rope());
            Estimate estimate = request.by() instanceof ByWeight weight
                    ? byWeight(rope, weight)
                    : bySize(rope, (BySize) request.by());
            return unbelieved(estimate, gauged, request).orElseGet(() -> told(estimate, request));
        } catch (LedgerException fault) {
            return new Result.NotGauged(Booking.Refused.of(fault), null);
        }
    }

    private Result told(Estimate estimate, Request request) {
        if (!request.book()) {
            return new Result.Gauged(estimate, Optional.empty());
        }
        Reel.Known how = estimate instanceof OfWeight ? Reel.Known.WEIGHED : Reel.Known.GAUGED;
        Written length = Written.worked(estimate.length());
        Length uncertainty = estimate.length().minus(estimate.certain());
        Booking booking = new WorkReel(desk)
                .book(new RackWork.Count(List.of(Counted.of(request.reel(), length, uncertainty, how))));
        return booking instanceof Booking.Booked booked
                ? new Result.Gauged(estimate, Optional.of(booked))
                : new Result.NotGauged((Booking.Refused) booking, estimate);
    }

    /** A figure that the ledger cannot have is a slip in a size or a mass. */
    private static Optional<Result> unbelieved(Estimate estimate, Reel gauged, Request request) {
        boolean impossible =
                StockText.length(LengthText.exact(estimate.length())).value().isEmpty();
        boolean farMore = estimate.certain().isLongerThan(gauged.length().times(FAR_MORE));
        return impossible || (request.book() && !request.sure() && farMore)
                ? Optional.of(new Result.Unbelieved(estimate.length(), gauged.length(), impossible))
                : Optional.empty();
    }

    private static Estimate byWeight(Rope rope, ByWeight measured) {
        if (rope.mass().milligramsPerMetre() == 0) {
            throw new Refused("ropes.json states no mass of " + rope.id());
        }
        if (measured.gross().compareTo(measured.tare()) <= 0 || measured.tolerance() < 0 || measured.tolerance() > 90) {
            throw new Refused("the reel must weigh more than empty, the tolerance lie between 0 and 90 %");
        }
        Gauge.ByWeight weighed =
                Gauge.byWeight(measured.gross(), measured.tare(), rope.mass(), Ratio.percent(measured.tolerance()));
        return new OfWeight(weighed.expected(), weighed.least(), weighed.most());
    }

    private Estimate bySize(Rope rope, BySize size) {
        Gauge.Wound wound = wound(rope, size);
        Ratio fill = fill(wound, size);
        Gauge.BySize sized = Gauge.bySize(wound, fill);
        Length made = size.factor() == null ? null : byFactor(wound, size.factor());
        if (!sized.safe().isPositive() || (made != null && !made.isPositive())) {
            throw new Refused("not one turn of " + rope.id() + " fits between these sizes");
        }
        Length most = made == null ? sized.turns() : Length.min(sized.turns(), made);
        boolean taught = !size.type().isEmpty() && !fill.equals(Gauge.USUAL_FILL);
        return new OfSize(sized.formula(), made, sized.turns(), Length.min(most, sized.safe()), fill, taught);
    }

    private static Gauge.Wound wound(Rope rope, BySize size) {
        Length barrel = size.barrel();
        Length traverse = size.traverse();
        Length depth = size.depth();
        Length flange = size.flange();
        if (barrel == null || traverse == null || (depth == null && flange == null)) {
            throw new Refused("give --barrel, --traverse and --depth or --flange, or else --gross and --tare");
        }
        Length deep = depth != null ? depth : flange == null ? Length.ZERO : Gauge.Wound.depthOf(flange, barrel);
        if (!barrel.isPositive() || !traverse.isPositive() || !deep.isPositive()) {
            throw new Refused("a reel has a barrel, a traverse and a depth above nothing");
        }
        return new Gauge.Wound(barrel, deep, traverse, rope.diameter());
    }

    private static Length byFactor(Gauge.Wound wound, String factor) {
        return RatioText.parse(factor)
                .value()
                .filter(stated -> stated.compareTo(Ratio.ZERO) > 0 && stated.compareTo(Ratio.of(10_000)) <= 0)
                .map(stated -> Gauge.byFactor(wound, stated))
                .orElseThrow(() -> new Refused("--factor \"" + factor + "\": give a factor such as 0.925"));
    }

    /** The fill of the type, learned from this reel first when its length is known. */
    private Ratio fill(Gauge.Wound wound, BySize size) {
        Length really = size.known();
        if (really != null) {
            learn(wound, size.type(), really);
        }
        return size.type().isEmpty()
                ? Gauge.USUAL_FILL
                : Gauge.fill(desk.at().reading((Ledger ledger) -> ledger.read(stock -> Fills.of(stock, size.type()))));
    }

    private void learn(Gauge.Wound wound, String type, Length really) {
        Length turns = Gauge.bySize(wound, Ratio.ONE).turns();
        if (type.isEmpty() || !really.isPositive() || !turns.isPositive()) {
            throw new Refused("to learn a fill give a --type and a --known length above nothing");
        }
        Event.Act learned = Event.Act.of(Event.Kind.GAUGED, "", desk.note()).withAll(Fills.facts(type, really, turns));
        String who = desk.caller().apply(learned).who();
        desk.at().writing(ledger -> ledger.change(learned.by(who), books -> {}));
    }
}
