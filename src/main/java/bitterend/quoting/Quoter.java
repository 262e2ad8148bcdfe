package bitterend.quoting;

import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.quoting.Variation.Kind;
import bitterend.quoting.sharing.Sharing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/** Makes the price of a request. */
public final class Quoter {
    /** One of the many past weeks has the work of a small packing, divided by this, where usual waste is not charged. */
    private static final long GLANCE = 5;

    private final QuotePolicy policy;
    private final QuoteBasis basis;
    private final Sharing sharing;
    private final Sharing lightly;
    private final RopeQuoter.Views views;

    /**
     * @param packer the packer
     * @param effort for the booked work, and for all lines of a rope together
     * @param small for one of the many small packings: a group of lines, a past week, a change
     */
    public Quoter(QuotePolicy policy, QuoteBasis basis, Packer packer, Effort effort, Effort small) {
        this.policy = policy;
        this.basis = basis;
        sharing = new Sharing(packer, effort, small, basis.book().day());
        lightly = new Sharing(packer, small, small, basis.book().day());
        Effort glance = alone(glance(small));
        LocalDate day = basis.book().day();
        views = new RopeQuoter.Views(
                new AddedWaste(basis, packer, policy.waste() == WasteBasis.MARGINAL ? effort : small),
                new UsualWaste(
                        basis,
                        policy.waste() == WasteBasis.USUAL
                                ? new Sharing(packer, alone(effort), alone(small), day)
                                : new Sharing(packer, glance, glance, day),
                        small.threads()));
    }

    /** The same for one of several that are packed at once. */
    private static Effort alone(Effort effort) {
        return new Effort(effort.time(), effort.work(), effort.seed(), 1, effort.cancelled(), effort.progress());
    }

    private static Effort glance(Effort small) {
        long work = small.work() == Long.MAX_VALUE ? small.work() : Math.max(1, small.work() / GLANCE);
        return new Effort(small.time(), work, small.seed(), small.threads(), small.cancelled(), small.progress());
    }

    /** What lines of a request lack to be priced; the others are priced without them. */
    public List<Lacking> lacking(QuoteRequest request) {
        return Priceable.of(basis, request).lacking();
    }

    /** The price of a request of which at least one line can be priced. */
    public Quote quote(QuoteRequest request) {
        return quote(request, List.of());
    }

    /**
     * The price of a request of which at least one line can be priced; what the others lack is told with it.
     *
     * @param quantities how often each line is priced besides, as often as that; one that is asked for is not priced again
     */
    public Quote quote(QuoteRequest whole, List<Integer> quantities) {
        Priceable.Parted parted = Priceable.of(basis, whole);
        QuoteRequest request = whole.of(parted.lines());
        List<QuoteLine> wanted =
                request.lines().stream().filter(line -> !line.isAlternative()).toList();
        SortedMap<String, List<QuoteLine>> byRope = RopePrices.byRope(wanted);
        RopePrices ropes = new RopePrices(policy, basis, sharing, lightly, views);
        RopePrices.Priced priced = ropes.whole(byRope);
        LinePrices prices = new LinePrices(policy);
        List<LineQuote> quoted =
                wanted.stream().map(line -> prices.of(line, priced)).toList();
        Neighbours neighbours = new Neighbours(basis, sharing, RopePrices.freightPaid(priced.bill()));
        List<Neighbour> near = wanted.stream()
                .filter(line -> !line.ownRope())
                .flatMap(line -> neighbours.of(line, byRope.getOrDefault(line.rope(), List.of())).stream())
                .toList();
        Variations variations = new Variations(basis, prices, ropes, quoted);
        Nearby nearby = new Nearby(basis, variations, quoted);
        List<Nearby.Offer> offers = nearby.offers(near);
        return new Quote(
                request,
                policy,
                quoted,
                List.copyOf(priced.ropes().values()),
                priced.bill(),
                offers.stream().map(Nearby.Offer::neighbour).toList(),
                varied(request, quoted, offers, quantities, variations),
                parted.lacking(),
                1,
                false);
    }

    private List<Variation> varied(
            QuoteRequest request,
            List<LineQuote> quoted,
            List<Nearby.Offer> near,
            List<Integer> quantities,
            Variations variations) {
        List<Variation> all = new ArrayList<>();
        quoted.forEach(line -> all.add(variations.apart(line)));
        request.lines().stream().filter(QuoteLine::isAlternative).forEach(line -> variations
                .inPlace(Kind.INSTEAD, line.asked().terms().insteadOf(), line)
                .ifPresent(all::add));
        for (LineQuote line : quoted) {
            near.stream()
                    .map(Nearby.Offer::variation)
                    .filter(each -> each.line().equals(line.line().name()))
                    .forEach(all::add);
            quantities.stream()
                    .filter(quantity -> quantity != line.line().quantity())
                    .forEach(quantity -> variations
                            .inPlace(
                                    Kind.QUANTITY,
                                    line.line().name(),
                                    line.line()
                                            .changed(
                                                    line.line()
                                                            .assembly()
                                                            .make()
                                                            .finished(),
                                                    quantity,
                                                    basis.model()))
                            .ifPresent(all::add));
        }
        return all;
    }
}
