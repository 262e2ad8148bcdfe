package bitterend.report;

import bitterend.buying.Orders;
import bitterend.buying.ReelSet;
import bitterend.finding.NaturalOrder;
import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.measure.Written;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The words of pages about buying. */
final class BuyWords {
    /** More sizes than this are counted in a sentence, and listed below. */
    private static final int MOST_SIZES = 3;

    private final Figures figures;
    private final Set<Length> ambiguous = new HashSet<>();

    BuyWords(Figures figures, List<Offer> offers) {
        this.figures = figures;
        Set<Length> seen = new HashSet<>();
        for (Offer offer : offers) {
            if (!seen.add(offer.made().length())) {
                ambiguous.add(offer.made().length());
            }
        }
    }

    /** {@code 2 reels of 100.000 m (GL-100)}, joined by commas and "and". */
    String set(ReelSet set, List<Offer> offers) {
        if (set.reels() == 0) {
            return "nothing";
        }
        List<String> each = set.counts().entrySet().stream()
                .map(entry -> reels(entry.getValue(), offer(offers, entry.getKey())))
                .toList();
        String last = each.get(each.size() - 1);
        return each.size() == 1 ? last : String.join(", ", each.subList(0, each.size() - 1)) + " and " + last;
    }

    /** The same of a few sizes; of many how many reels of how many ropes. */
    String briefly(ReelSet set, Orders orders) {
        long ropes = set.counts().keySet().stream()
                .map(offer -> offer(orders.offers(), offer).rope())
                .distinct()
                .count();
        return set.counts().size() <= MOST_SIZES ? set(set, orders) : set.reels() + " reels of " + ropes + " ropes";
    }

    /** What another set has in place of reels of this one: {@code 1 reel of ... more}. */
    String change(ReelSet from, ReelSet to, Orders orders) {
        ReelSet more = to.beyond(from);
        ReelSet fewer = from.beyond(to);
        if (fewer.reels() == 0) {
            return set(more, orders) + " more";
        }
        return more.reels() == 0
                ? set(fewer, orders) + " fewer"
                : set(more, orders) + " in place of " + set(fewer, orders);
    }

    /** The ropes in which the two differ. */
    String ropes(ReelSet from, ReelSet to, Orders orders) {
        return Stream.of(to.beyond(from), from.beyond(to))
                .flatMap(set -> set.counts().entrySet().stream())
                .filter(entry -> entry.getValue() > 0)
                .map(entry -> offer(orders.offers(), entry.getKey()).rope())
                .distinct()
                .sorted(NaturalOrder.IDS)
                .collect(Collectors.joining(", "));
    }

    String set(ReelSet set, Orders orders) {
        return set(set, orders.offers());
    }

    private String reels(int count, Offer offer) {
        return count + (count == 1 ? " reel of " : " reels of ")
                + figures.written(offer.made().written()) + " " + offer.rope() + " (" + offer.id() + ")";
    }

    private static Offer offer(List<Offer> offers, String id) {
        return offers.stream()
                .filter(offer -> offer.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no offer " + id));
    }

    /** The size of a reel without needless digits, with the offer's name where sizes alone do not tell. */
    String size(Offer offer) {
        String size = shortly(offer.made().written());
        return ambiguous.contains(offer.made().length()) ? size + " (" + offer.id() + ")" : size;
    }

    /** The same of a length as it was typed: feet are not those of its whole millimetres. */
    String shortly(Written length) {
        return figures.units() == bitterend.measure.Units.METRIC
                ? shortly(length.roundedDown())
                : figures.length(length.exact());
    }

    /** {@code 100 m}; imperial as everywhere. */
    String shortly(Length length) {
        if (figures.units() == bitterend.measure.Units.METRIC) {
            return BigDecimal.valueOf(length.mm(), 3).stripTrailingZeros().toPlainString() + " m";
        }
        return figures.length(length);
    }

    /** A price by the metre or the foot, with one digit more than the smallest coin. */
    String perLength(UnitPrice price) {
        return perLength(new Cost(price.millisPerMetre()));
    }

    String perLength(Cost perMetre) {
        BigDecimal amount =
                BigDecimal.valueOf(perMetre.millis(), figures.currency().minorDigits() + 3);
        if (figures.units() != bitterend.measure.Units.METRIC) {
            amount = amount.multiply(new BigDecimal("0.3048"));
        }
        return amount.setScale(figures.currency().minorDigits() + 1, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** The same with its unit. */
    String price(UnitPrice price) {
        return perLength(price) + " " + perLengthUnit();
    }

    String perLengthUnit() {
        return figures.currency().currency() + (figures.units() == bitterend.measure.Units.METRIC ? "/m" : "/ft");
    }

    String percentAtMost(Ratio share) {
        return figures.percentAtMost(share.numerator(), share.denominator(), 1);
    }

    String percent(Ratio share) {
        return figures.percent(share.numerator(), share.denominator(), 1);
    }

    String tenths(long tenths) {
        return BigDecimal.valueOf(tenths, 1).toPlainString();
    }

    /** An amount for a column that names the currency. */
    String bare(Cost cost) {
        return figures.bare(cost.rounded());
    }
}
