package bitterend.quoting;

import bitterend.finding.Finding;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Money;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.quoting.sharing.NewRope;
import bitterend.quoting.sharing.Sharing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Makes the price of a request. */
public final class Quoter {
    private final QuotePolicy policy;
    private final QuoteBasis basis;
    private final Sharing sharing;
    private final AddedWaste marginal;

    /**
     * @param packer the packer
     * @param effort for the booked work, and for all lines of a rope together
     * @param small for one of the many small packings: a group of lines, a past week, a change
     */
    public Quoter(QuotePolicy policy, QuoteBasis basis, Packer packer, Effort effort, Effort small) {
        this.policy = policy;
        this.basis = basis;
        sharing = new Sharing(packer, effort, small, basis.book().day());
        marginal = new AddedWaste(basis, packer, effort);
    }

    /** Why a request cannot be priced: pieces that no reel is long enough for, or more rope than can be worked out. */
    public List<Finding> problems(QuoteRequest request) {
        List<Finding> problems = new ArrayList<>();
        for (QuoteLine line : request.lines()) {
            NewRope rope = basis.newRope(line.rope());
            if (!line.ownRope() && !line.pieces().stream().allMatch(rope::holds)) {
                problems.add(Finding.error(
                        line.assembly().origin().file(),
                        line.assembly().origin().place(),
                        "length",
                        line.assembly().make().finished().kept(),
                        "pieces no longer than the longest reel of " + line.rope() + " that is bought, "
                                + LengthText.exact(rope.longest())));
            }
        }
        request.lines().stream()
                .filter(line -> !line.ownRope())
                .collect(Collectors.groupingBy(QuoteLine::rope, TreeMap::new, Collectors.toList()))
                .forEach((rope, lines) -> tooMuch(basis.newRope(rope), lines).ifPresent(problems::add));
        return problems;
    }

    private static Optional<Finding> tooMuch(NewRope rope, List<QuoteLine> lines) {
        Length all = lines.stream().map(QuoteLine::cut).reduce(Length.ZERO, Length::plus);
        QuoteLine most =
                lines.stream().max(Comparator.comparing(QuoteLine::cut)).orElseThrow();
        return all.isLongerThan(rope.most())
                ? Optional.of(Finding.error(
                        most.assembly().origin().file(),
                        most.assembly().origin().place(),
                        "quantity",
                        String.valueOf(most.pieces().size()),
                        "at most " + LengthText.exact(rope.most()) + " of " + most.rope()
                                + " in one quote; ask for the rest in another"))
                : Optional.empty();
    }

    /** The price of a request without problems. */
    public Quote quote(QuoteRequest request) {
        Map<String, List<QuoteLine>> byRope = request.lines().stream()
                .filter(line -> !line.ownRope())
                .collect(Collectors.groupingBy(QuoteLine::rope, TreeMap::new, Collectors.toList()));
        RopeQuoter quoter = new RopeQuoter(policy, basis, sharing, marginal);
        Map<String, RopeQuote> ropes = new TreeMap<>();
        byRope.forEach((rope, lines) -> ropes.put(rope, quoter.quote(rope, lines)));
        Neighbours neighbours = new Neighbours(basis, sharing);
        return new Quote(
                request,
                policy,
                request.lines().stream().map(line -> line(line, ropes)).toList(),
                List.copyOf(ropes.values()),
                request.lines().stream()
                        .filter(line -> !line.ownRope())
                        .flatMap(line -> neighbours.of(line, byRope.getOrDefault(line.rope(), List.of())).stream())
                        .toList());
    }

    private LineQuote line(QuoteLine line, Map<String, RopeQuote> ropes) {
        RopeQuote rope = ropes.get(line.rope());
        if (line.ownRope() || rope == null) {
            return new LineQuote(
                    line, Length.ZERO, Money.ZERO, LinePrice.of(policy, line, Money.ZERO, Money.ZERO, Money.ZERO));
        }
        NewRope bought = basis.newRope(line.rope());
        Length sample = line.assembly().make().extras().sample().roundedUp();
        return new LineQuote(
                line,
                rope.drawnFor(line.name()),
                rope.shares().coins().get(rope.lines().indexOf(line.name())),
                LinePrice.of(
                        policy,
                        line,
                        bought.rope().price().of(line.cut()).rounded(),
                        bought.rope().price().of(sample).rounded(),
                        rope.paidBy(line.name())));
    }
}
