package bitterend.buying;

import bitterend.market.Offer;
import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One way to buy: only reels of these offers.
 *
 * @param offers one size, a pair, or all of them for the optimiser to mix; by length
 */
public record Option(List<Offer> offers) {
    public Option {
        offers = offers.stream()
                .sorted(Comparator.comparing(Offer::usable).thenComparing(Offer::id))
                .toList();
        if (offers.isEmpty()) {
            throw new IllegalArgumentException("an option needs an offer");
        }
    }

    /** Every single size, every pair, and all together where that is more than a pair. */
    static List<Option> allOf(List<Offer> offers) {
        List<Offer> bySize = new Option(offers).offers();
        List<Option> options = new ArrayList<>();
        bySize.forEach(offer -> options.add(new Option(List.of(offer))));
        for (int i = 0; i < bySize.size(); i++) {
            for (int j = i + 1; j < bySize.size(); j++) {
                options.add(new Option(List.of(bySize.get(i), bySize.get(j))));
            }
        }
        if (bySize.size() > 2) {
            options.add(new Option(bySize));
        }
        return options;
    }

    /** The longest piece that a reel of these can hold. */
    Length longest() {
        return offers.get(offers.size() - 1).usable();
    }

    /** Whether the optimiser mixes more than a pair. */
    public boolean isMix() {
        return offers.size() > 2;
    }
}
