package bitterend.quoting;

import bitterend.demand.Piece;
import bitterend.measure.Coins;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import bitterend.packing.LengthBook;
import bitterend.packing.order.CuttingOrder;
import bitterend.quoting.RopeQuote.Charged;
import bitterend.quoting.sharing.NewRope;
import bitterend.quoting.sharing.Party;
import bitterend.quoting.sharing.RopeShares;
import bitterend.quoting.sharing.Sharing;
import java.math.BigInteger;
import java.util.List;
import org.apache.commons.math3.fraction.BigFraction;

/** Works out what the lines of one rope draw, waste and pay. */
final class RopeQuoter {
    private static final WasteView NOT_LOOKED_AT = new WasteView.NotKnown("it was not looked at");

    private final QuotePolicy policy;
    private final QuoteBasis basis;
    private final Sharing sharing;
    private final Views views;

    /** What else the waste comes to; each takes many packings. */
    record Views(AddedWaste marginal, UsualWaste usual) {}

    RopeQuoter(QuotePolicy policy, QuoteBasis basis, Sharing sharing, Views views) {
        this.policy = policy;
        this.basis = basis;
        this.sharing = sharing;
        this.views = views;
    }

    /** With all views of the waste. */
    RopeQuote quote(BoughtRope bought, List<QuoteLine> lines) {
        return quote(bought, lines, true);
    }

    /** With no view of the waste that is not charged: each takes many packings. */
    RopeQuote lightly(BoughtRope bought, List<QuoteLine> lines) {
        return quote(bought, lines, false);
    }

    private RopeQuote quote(BoughtRope bought, List<QuoteLine> lines, boolean whole) {
        NewRope rope = bought.rope();
        List<Party> parties = lines.stream()
                .map(line -> new Party(line.name(), line.pieces()))
                .toList();
        List<Piece> pieces =
                lines.stream().flatMap(line -> line.pieces().stream()).toList();
        RopeShares shares = sharing.share(bought.cutting(), parties);
        UnitPrice price = bought.byMetre();
        Cost worth = price.of(new Party("", pieces).cut());
        LengthBook book =
                new CuttingOrder(shares.problem()).plan(shares.packing()).book();
        RopeQuote.Waste waste = new RopeQuote.Waste(
                alone(shares, worth),
                whole || policy.waste() == WasteBasis.MARGINAL
                        ? views.marginal().of(rope, pieces, worth)
                        : NOT_LOOKED_AT,
                whole || policy.waste() == WasteBasis.USUAL ? views.usual().of(rope, pieces, worth) : NOT_LOOKED_AT);
        return new RopeQuote(
                rope.rope().id(),
                lines.stream().map(QuoteLine::name).toList(),
                lines.stream().map(QuoteLine::finished).reduce(Length.ZERO, Length::plus),
                drawn(rope, book, parties),
                book,
                price,
                worth,
                inPieces(price, worth, parties),
                shares,
                waste,
                bought.told(basis),
                charged(price, shares, waste, worth, parties));
    }

    private static List<Length> drawn(NewRope rope, LengthBook book, List<Party> parties) {
        Length loss = rope.rope().cutting().loss();
        List<Long> taken = parties.stream()
                .map(party ->
                        party.cut().plus(loss.times(party.pieces().size())).mm())
                .toList();
        long all = taken.stream().mapToLong(Long::longValue).sum();
        List<BigFraction> exact = taken.stream()
                .map(mm -> new BigFraction(
                        BigInteger.valueOf(book.drawn().mm()).multiply(BigInteger.valueOf(mm)),
                        BigInteger.valueOf(all)))
                .toList();
        return Coins.whole(book.drawn().mm(), exact).stream().map(Length::new).toList();
    }

    private static List<Money> inPieces(UnitPrice price, Cost worth, List<Party> parties) {
        return Coins.of(
                worth,
                parties.stream()
                        .map(party -> new BigFraction(
                                BigInteger.valueOf(price.of(party.cut()).millis())))
                        .toList());
    }

    private static WasteView alone(RopeShares shares, Cost worth) {
        Cost found = shares.cost().minus(worth);
        return new WasteView.Span(shares.proven().minus(worth), found, found, 1);
    }

    private Charged charged(
            UnitPrice price, RopeShares shares, RopeQuote.Waste waste, Cost worth, List<Party> parties) {
        WasteBasis taken = WasteBasis.ALONE;
        Cost total = shares.cost();
        if (policy.waste() != WasteBasis.ALONE && waste.of(policy.waste()) instanceof WasteView.Span span) {
            taken = policy.waste();
            total = worth.plus(taken == WasteBasis.MARGINAL ? span.high() : span.middle());
        }
        ChargedShares charged = new ChargedShares(parties, price, total);
        return new Charged(taken, total, charged.coins(shares, policy.floorAtRope()));
    }
}
