package bitterend.quoting;

import bitterend.measure.Money;
import bitterend.quoting.Variation.Kind;
import bitterend.quoting.sharing.NewRope;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** Prices a request once more with one line changed, every rope that it concerns packed anew. */
final class Variations {
    private final QuoteBasis basis;
    private final LinePrices prices;
    private final RopePrices ropes;
    private final List<LineQuote> quoted;

    /**
     * @param ropes what prices its ropes
     * @param quoted the lines of the request with their prices
     */
    Variations(QuoteBasis basis, LinePrices prices, RopePrices ropes, List<LineQuote> quoted) {
        this.basis = basis;
        this.prices = prices;
        this.ropes = ropes;
        this.quoted = quoted;
    }

    /** The line ordered by itself. */
    Variation apart(LineQuote line) {
        List<QuoteLine> alone = List.of(line.line());
        BuildUp price = line.line().ownRope() || quoted.size() == 1
                ? line.buildUp()
                : prices.of(line.line(), ropes.lightly(RopePrices.byRope(alone)))
                        .buildUp();
        return new Variation(Kind.APART, line.line().name(), line.line(), price, price.price());
    }

    /** The request with another line in the place of one; nothing when that could not be made or bought. */
    Optional<Variation> inPlace(Kind kind, String replaced, QuoteLine changed) {
        if (!canBeMade(changed)) {
            return Optional.empty();
        }
        List<QuoteLine> lines = quoted.stream()
                .map(LineQuote::line)
                .map(line -> line.name().equals(replaced) ? changed : line)
                .toList();
        SortedMap<String, List<QuoteLine>> byRope = RopePrices.byRope(lines);
        if (byRope.values().stream().anyMatch(RopePrices::isTooMany)) {
            return Optional.empty();
        }
        RopePrices.Priced anew = ropes.lightly(byRope);
        Money total = lines.stream()
                .map(line -> prices.of(line, anew).buildUp().price())
                .reduce(Money.ZERO, Money::plus);
        return Optional.of(
                new Variation(kind, replaced, changed, prices.of(changed, anew).buildUp(), total));
    }

    private boolean canBeMade(QuoteLine line) {
        NewRope rope = basis.anySize(line.rope());
        return !line.pieces().isEmpty()
                && (line.ownRope() || line.pieces().stream().allMatch(rope::holds));
    }
}
