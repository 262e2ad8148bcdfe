package bitterend.quoting;

import bitterend.catalogue.Rope;
import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import bitterend.demand.Piece;
import bitterend.market.Market;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.packing.PackingProblem;
import bitterend.packing.WorkingDays;
import bitterend.quoting.sharing.NewRope;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What a shop knows when it makes a price.
 *
 * @param book the booked work and today's rack
 * @param market what can be had on the day of the quote
 * @param usual every rope of the catalogue on its usual reel at its own price, by id: how it is bought where nobody offers it
 * @param pastWeeks the past weeks, the oldest first; empty where no history is kept
 * @param model what an assembly asks of the bench
 */
public record QuoteBasis(
        PackingProblem book,
        Market market,
        Map<String, NewRope> usual,
        List<PastWeek> pastWeeks,
        Function<Assembly, Demanded> model) {
    public QuoteBasis {
        usual = Collections.unmodifiableMap(new TreeMap<>(usual));
        pastWeeks = List.copyOf(pastWeeks);
    }

    /**
     * A week of the past.
     *
     * @param monday its first day
     * @param pieces what was cut for the orders placed in it
     */
    public record PastWeek(LocalDate monday, List<Piece> pieces) {
        public PastWeek {
            pieces = List.copyOf(pieces);
        }
    }

    /** A rope on its usual reel; an unknown id is a caller's bug. */
    public NewRope usualRope(String id) {
        NewRope rope = usual.get(id);
        if (rope == null) {
            throw new IllegalArgumentException("no new reels of rope " + id);
        }
        return rope;
    }

    /** The rope of an id; an unknown one is a caller's bug. */
    public Rope rope(String id) {
        return usualRope(id).rope();
    }

    /** A rope on every size that can be had this day, in whatever number and whenever it comes; without offers its usual reel. */
    NewRope anySize(String id) {
        return sizes(id, Set.of(), Length.ZERO).rope();
    }

    /**
     * The choice among the sizes of a rope.
     *
     * @param freightPaid suppliers whose order is so large that nothing is charged for its way
     * @param longest the longest piece that has to fit a reel
     */
    SizeChoice sizes(String id, Set<String> freightPaid, Length longest) {
        List<Tier> tiers = market.offered(id).stream()
                .flatMap(offer -> Tier.of(market, offer, freightPaid).stream())
                .toList();
        return new SizeChoice(usualRope(id), tiers, longest);
    }

    /**
     * The same for pieces that a rope has to hold.
     *
     * @param inTime those of them for which it has to come in time
     */
    SizeChoice sizes(String id, Set<String> freightPaid, List<Piece> pieces, List<Piece> inTime) {
        WorkingDays working = new WorkingDays(book.calendar());
        List<Length> cuts =
                pieces.stream().flatMap(piece -> piece.lengthOn(id).stream()).toList();
        Length longest = cuts.stream().reduce(Length.ZERO, Length::max);
        LocalDate first =
                inTime.stream().map(working::cutBy).min(LocalDate::compareTo).orElse(LocalDate.MAX);
        return sizes(id, freightPaid, longest).inTime(market.day(), first).needed(new ReelsNeeded(cuts));
    }

    /** What the cheapest reel of a rope costs by the metre, in whatever number; nothing paid where none can be had. */
    UnitPrice lowest(String id) {
        return market.offered(id).stream()
                .flatMap(offer -> Tier.of(market, offer, Set.of()).stream())
                .map(tier -> tier.reel().byMetre())
                .min(Comparator.comparingLong(UnitPrice::millisPerMetre))
                .orElse(new UnitPrice(0));
    }
}
