package bitterend.quoting.after;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.QuotedLine;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * A line of a quote and what it really took.
 *
 * @param quoted the line as it was quoted
 * @param pieces how far it is
 * @param rope the rope it took
 * @param work the work it took
 */
public record AfterLine(QuotedLine quoted, Pieces pieces, Rope rope, Work work) {
    /** Items that nobody books: they count as they were quoted. */
    private static final Set<Kind> AS_QUOTED = EnumSet.of(Kind.SETTING_UP, Kind.SAMPLES, Kind.PACKING, Kind.OVERHEAD);

    /**
     * How far a line is.
     *
     * @param ordered how many pieces it is of
     * @param good how many of them are cut and good
     * @param timed for how many minutes were booked
     * @param spoiled how many were spoiled and cut again
     */
    public record Pieces(int ordered, int good, int timed, int spoiled) {
        /** Whether all of it is cut: until then nothing is compared. */
        public boolean isWhole() {
            return ordered > 0 && good >= ordered;
        }
    }

    /**
     * The rope it took.
     *
     * @param taken good pieces and their cut losses
     * @param scrap what of the scrap falls to them
     * @param inPieces good pieces without cut losses and samples, at what their rope is counted at
     * @param all what cutting them cost: value that left the rack, opening, fetching; samples are counted as they were quoted
     * @param spoiled the same for pieces that were spoiled, less the rope of them that came back
     * @param freight what bringing it cost
     */
    public record Rope(Length taken, Length scrap, Cost inPieces, Cost all, Cost spoiled, Freight freight) {}

    /**
     * What bringing the rope of a line cost, by the length that was drawn, scrap and spoiled pieces included.
     *
     * @param booked of reels of which it is booked
     * @param known rope that was drawn off these
     * @param drawn all rope that was drawn
     */
    public record Freight(Cost booked, Length known, Length drawn) {
        Freight less(Cost ofSample) {
            return new Freight(booked.minus(ofSample), known, drawn);
        }

        /** What is booked, and for the rest a share of what was quoted. */
        Money of(Money quoted) {
            long rest = drawn.mm() - known.mm();
            return drawn.isPositive() ? booked.rounded().plus(new Money(quoted.minor() * rest / drawn.mm())) : quoted;
        }
    }

    /**
     * The work it took.
     *
     * @param minutes booked; for pieces without any, as quoted
     * @param labour what they cost
     * @param fittings fittings of the order as it is now, at the prices of today
     */
    public record Work(long minutes, Money labour, Money fittings) {}

    /** What it really cost by item; margin and what rounds a price are not among them. */
    public Map<Kind, Money> posted() {
        Map<Kind, Money> posted = new EnumMap<>(Kind.class);
        posted.put(Kind.ROPE, rope.inPieces().rounded());
        posted.put(Kind.WASTE, rope.all().rounded().minus(rope.inPieces().rounded()));
        posted.put(Kind.HARDWARE, work.fittings());
        posted.put(Kind.LABOUR, work.labour());
        posted.put(Kind.SPOILAGE, rope.spoiled().rounded());
        posted.put(Kind.FREIGHT, rope.freight().of(freight()));
        AS_QUOTED.forEach(kind -> posted.put(kind, quoted(kind)));
        return posted;
    }

    /** What was quoted for these items together. */
    public Money quotedCost() {
        return posted().keySet().stream().map(this::quoted).reduce(Money.ZERO, Money::plus);
    }

    /** What they really cost together. */
    public Money postedCost() {
        return posted().values().stream().reduce(Money.ZERO, Money::plus);
    }

    /** What was quoted for an item, on equal footing with what is posted: all freight is freight. */
    public Money quoted(Kind kind) {
        return quoted.withoutFreightInRope(kind);
    }

    /** What an item is called here. */
    public static String words(Kind kind) {
        return kind == Kind.FREIGHT ? "freight" : kind.words();
    }

    /** Freight that was quoted. */
    public Money freight() {
        return quoted(Kind.FREIGHT);
    }

    /** What is left of the price as quoted. */
    public Money quotedMargin() {
        return quoted.price().minus(quotedCost());
    }

    /** What is left of the price. */
    public Money earned() {
        return quoted.price().minus(postedCost());
    }
}
