package bitterend.quoting;

import bitterend.demand.Piece;
import bitterend.market.Bill;
import bitterend.quoting.sharing.NewRope;
import bitterend.quoting.sharing.Sharing;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Prices the ropes of a request on new reels that can be had, all ropes together: what is taken of one supplier is one order.
 * A request that differs in one rope is priced again without packing the others.
 */
final class RopePrices {
    private final QuoteBasis basis;
    private final RopeQuoter whole;
    private final RopeQuoter light;
    private final SizeSearch wholeSizes;
    private final SizeSearch lightSizes;
    private final Map<Asked, BoughtRope> bought = new HashMap<>();
    private final Map<Asked, RopeQuote> quoted = new HashMap<>();

    /** The lines of one rope, and the suppliers whose freight is not charged. */
    private record Asked(String rope, List<QuoteLine> lines, Set<String> freightPaid) {}

    /**
     * The ropes of a request with their prices.
     *
     * @param ropes by id
     * @param bill of all reels that are taken
     */
    record Priced(SortedMap<String, RopeQuote> ropes, Bill bill) {
        Priced {
            ropes = Collections.unmodifiableSortedMap(new TreeMap<>(ropes));
        }
    }

    RopePrices(QuotePolicy policy, QuoteBasis basis, Sharing sharing, Sharing lightly, RopeQuoter.Views views) {
        this.basis = basis;
        whole = new RopeQuoter(policy, basis, sharing, views);
        light = new RopeQuoter(policy, basis, lightly, views);
        wholeSizes = new SizeSearch(basis, sharing::cut);
        lightSizes = new SizeSearch(basis, lightly::cut);
    }

    /** The lines of each rope that is the shop's. */
    static SortedMap<String, List<QuoteLine>> byRope(List<QuoteLine> lines) {
        return lines.stream()
                .filter(line -> !line.ownRope())
                .collect(Collectors.groupingBy(QuoteLine::rope, TreeMap::new, Collectors.toList()));
    }

    /** Whether lines of one rope have more pieces than can be worked out at a time. */
    static boolean isTooMany(List<QuoteLine> lines) {
        return lines.stream().mapToInt(line -> line.pieces().size()).sum() > NewRope.MOST_PIECES;
    }

    /** With all views of the waste. */
    Priced whole(Map<String, List<QuoteLine>> byRope) {
        return priced(byRope, wholeSizes, whole::quote);
    }

    /** With no view of the waste that is not charged. */
    Priced lightly(Map<String, List<QuoteLine>> byRope) {
        return priced(byRope, lightSizes, light::lightly);
    }

    private interface Quoting {
        RopeQuote quote(BoughtRope bought, List<QuoteLine> lines);
    }

    private Priced priced(Map<String, List<QuoteLine>> byRope, SizeSearch sizes, Quoting quoting) {
        Set<String> freightPaid = freightPaid(byRope, sizes);
        SortedMap<String, RopeQuote> ropes = new TreeMap<>();
        byRope.forEach((rope, lines) -> {
            Asked asked = new Asked(rope, lines, freightPaid);
            BoughtRope on = bought(asked, sizes);
            ropes.put(rope, quoted.computeIfAbsent(asked, any -> quoting.quote(on, lines)));
        });
        return new Priced(ropes, bill(byRope, freightPaid, sizes));
    }

    /**
     * The suppliers of whom so much is taken that the order comes freight paid; none where, without their freight, too little
     * would be taken of one of them.
     */
    private Set<String> freightPaid(Map<String, List<QuoteLine>> byRope, SizeSearch sizes) {
        Set<String> free = freightPaid(bill(byRope, Set.of(), sizes));
        return freightPaid(bill(byRope, free, sizes)).containsAll(free) ? free : Set.of();
    }

    /** The suppliers of whom so much is taken that nothing is charged for the way. */
    static Set<String> freightPaid(Bill bill) {
        return bill.orders().stream()
                .filter(order -> order.freight().free())
                .map(order -> order.supplier().name())
                .collect(Collectors.toSet());
    }

    /** One order to each supplier of all the reels that are cut. */
    private Bill bill(Map<String, List<QuoteLine>> byRope, Set<String> freightPaid, SizeSearch sizes) {
        Map<String, Integer> reels = new TreeMap<>();
        byRope.forEach((rope, lines) -> bought(new Asked(rope, lines, freightPaid), sizes)
                .sizes()
                .forEach(size -> reels.merge(size.offer().id(), size.reels(), Integer::sum)));
        return basis.market().bill(reels);
    }

    private BoughtRope bought(Asked asked, SizeSearch sizes) {
        List<Piece> pieces =
                asked.lines().stream().flatMap(line -> line.pieces().stream()).toList();
        return bought.computeIfAbsent(asked, any -> sizes.bought(asked.rope(), pieces, asked.freightPaid()));
    }
}
