package bitterend.buying.steady;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import java.util.List;

/**
 * What a way to buy came to in the futures that report. Every figure has its interval.
 *
 * @param way the way: of those with its sizes the cheapest by the futures that choose, of those in time
 * @param points the lengths below which its sizes are ordered, in millimetres
 * @param standing how it compares with the one that is chosen
 * @param byMetre cost of a metre used, in 1/1000 minor unit
 * @param more the same beyond that of the chosen one; may be negative
 * @param late pieces in ten thousand for which there was no rope in the week of their order
 * @param stock millimetres on the rack, on the average
 * @param tied what was paid for that, in 1/1000 minor unit
 * @param year means of a year
 */
public record WayFound(
        Way way,
        List<Figure> points,
        Standing standing,
        Figure byMetre,
        Figure more,
        Figure late,
        Figure stock,
        Figure tied,
        Year year) {
    public WayFound {
        points = List.copyOf(points);
    }

    /**
     * Means of a year.
     *
     * @param used metres in pieces that were cut
     * @param scrap rope that was neither used nor kept
     * @param reelTenths reels that came, in tenths
     * @param coilTenths coils on the rack, in tenths
     */
    public record Year(Length used, Length scrap, long reelTenths, long coilTenths) {
        /** Scrap as a share of what was used. */
        public Ratio scrapShare() {
            return used.isPositive() ? new Ratio(scrap.mm(), used.mm()) : Ratio.ZERO;
        }
    }

    /** How a way compares with the chosen one. */
    public enum Standing {
        /** The cheapest of those that may be recommended, in the futures that choose. */
        CHOSEN,
        /** No difference can be seen. */
        TIE,
        /** Dearer, beyond its interval. */
        DEARER,
        /** More pieces are late than the shop allows. */
        LATE,
        /** One order brings more weeks of use than the shop allows. */
        TOO_MUCH
    }

    /** Whether it may be recommended. */
    public boolean isSuitable() {
        return standing != Standing.LATE && standing != Standing.TOO_MUCH;
    }

    /** Cost of a metre used, never below nothing. */
    public UnitPrice price() {
        return new UnitPrice(Math.max(0, byMetre.value()));
    }

    /** What choosing it costs more in a year, against the chosen one. */
    public Cost moreAYear() {
        return new Cost(Math.multiplyExact(more.value(), year.used().mm() / 1_000));
    }
}
