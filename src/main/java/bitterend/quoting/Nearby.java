package bitterend.quoting;

import bitterend.measure.Money;
import bitterend.quoting.Variation.Kind;
import java.util.List;
import java.util.Optional;

/**
 * Of the changes that waste less rope, those by which the customer pays less: each assembly of the line, and all lines
 * together against as many at the prices of the quote.
 */
final class Nearby {
    private final QuoteBasis basis;
    private final Variations variations;
    private final List<LineQuote> quoted;

    Nearby(QuoteBasis basis, Variations variations, List<LineQuote> quoted) {
        this.basis = basis;
        this.variations = variations;
        this.quoted = quoted;
    }

    /** A change that wastes less, and what it would cost. */
    record Offer(Neighbour neighbour, Variation variation) {}

    List<Offer> offers(List<Neighbour> near) {
        return near.stream().flatMap(each -> offer(each).stream()).toList();
    }

    private Optional<Offer> offer(Neighbour near) {
        return quoted.stream()
                .filter(line -> line.line().name().equals(near.line()))
                .findFirst()
                .flatMap(line -> varied(near, line)
                        .filter(changed -> isCheaper(changed, line))
                        .map(changed -> new Offer(near, changed)));
    }

    private Optional<Variation> varied(Neighbour near, LineQuote line) {
        return variations.inPlace(
                Kind.CHEAPER,
                near.line(),
                line.line().changed(near.better().finished(), near.better().quantity(), basis.model()));
    }

    private boolean isCheaper(Variation changed, LineQuote line) {
        Money each = line.buildUp().each();
        Money now = quoted.stream()
                .map(other -> other.buildUp().price())
                .reduce(Money.ZERO, Money::plus)
                .plus(each.times(changed.changed().quantity()))
                .minus(line.buildUp().price());
        return changed.price().each().compareTo(each) < 0 && changed.total().compareTo(now) < 0;
    }
}
