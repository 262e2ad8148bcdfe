package bitterend.quoting;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.quoting.Variation.Kind;
import bitterend.quoting.sharing.NewRope;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Prices a request once more with one line changed, every rope that it concerns packed anew. */
final class Variations {
    private final QuoteBasis basis;
    private final LinePrices prices;
    private final RopeQuoter quoter;
    private final List<LineQuote> quoted;
    private final Map<String, RopeQuote> ropes;

    /**
     * @param quoted the lines of the request with their prices
     * @param ropes its ropes by id
     */
    Variations(
            QuoteBasis basis,
            LinePrices prices,
            RopeQuoter quoter,
            List<LineQuote> quoted,
            Map<String, RopeQuote> ropes) {
        this.basis = basis;
        this.prices = prices;
        this.quoter = quoter;
        this.quoted = quoted;
        this.ropes = ropes;
    }

    /** The line ordered by itself. */
    Variation apart(LineQuote line) {
        boolean alone = quoted.stream()
                        .filter(other -> other.line().isOfRope(line.line()))
                        .count()
                == 1;
        BuildUp price = line.line().ownRope() || alone
                ? line.buildUp()
                : prices.of(
                                line.line(),
                                Map.of(
                                        line.line().rope(),
                                        quoter.lightly(line.line().rope(), List.of(line.line()))))
                        .buildUp();
        return new Variation(Kind.APART, line.line().name(), line.line(), price, price.price());
    }

    /** The request with another line in the place of one; nothing when that could not be made or bought. */
    Optional<Variation> inPlace(Kind kind, String replaced, QuoteLine changed) {
        if (!canBeMade(changed)) {
            return Optional.empty();
        }
        List<QuoteLine> lines = new ArrayList<>();
        TreeSet<String> concerned = new TreeSet<>();
        for (LineQuote line : quoted) {
            boolean here = line.line().name().equals(replaced);
            lines.add(here ? changed : line.line());
            if (here) {
                concerned.add(line.line().rope());
            }
        }
        concerned.add(changed.rope());
        Map<String, RopeQuote> anew = new HashMap<>(ropes);
        for (String rope : concerned) {
            List<QuoteLine> of = lines.stream()
                    .filter(line -> !line.ownRope() && line.rope().equals(rope))
                    .toList();
            if (isTooMuch(rope, of)) {
                return Optional.empty();
            }
            if (!of.isEmpty()) {
                anew.put(rope, quoter.lightly(rope, of));
            }
        }
        Money total = Money.ZERO;
        BuildUp own = prices.of(changed, anew).buildUp();
        for (int i = 0; i < lines.size(); i++) {
            boolean same = !concerned.contains(lines.get(i).rope());
            total = total.plus((same ? quoted.get(i) : prices.of(lines.get(i), anew))
                    .buildUp()
                    .price());
        }
        return Optional.of(new Variation(kind, replaced, changed, own, total));
    }

    private boolean canBeMade(QuoteLine line) {
        NewRope rope = basis.newRope(line.rope());
        return !line.pieces().isEmpty()
                && (line.ownRope() || line.pieces().stream().allMatch(rope::holds));
    }

    private boolean isTooMuch(String rope, List<QuoteLine> lines) {
        Length all = lines.stream()
                .flatMap(line -> line.pieces().stream())
                .map(Piece::cut)
                .reduce(Length.ZERO, Length::plus);
        return all.isLongerThan(basis.newRope(rope).most());
    }
}
