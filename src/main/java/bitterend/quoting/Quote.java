package bitterend.quoting;

import bitterend.finding.Finding;
import bitterend.finding.NaturalOrder;
import bitterend.market.Bill;
import bitterend.measure.Money;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A price for a request, with all that stands behind it.
 *
 * @param request what was asked for
 * @param policy how the price was made
 * @param lines the price of each line that is wanted itself, in the order of the request
 * @param ropes what each rope draws and costs, by id; a customer's own rope is left out
 * @param bill what the new reels come to that all lines take, cut by themselves, one order to each supplier
 * @param neighbours cheaper changes within the customer's leeway
 * @param variations what the customer could have instead, each with its price
 * @param lacking lines of the request that have no price
 * @param revision which version of it this is, from 1
 * @param isCutShort whether the time ended a packing before its work was done: another run may share and price otherwise
 */
public record Quote(
        QuoteRequest request,
        QuotePolicy policy,
        List<LineQuote> lines,
        List<RopeQuote> ropes,
        Bill bill,
        List<Neighbour> neighbours,
        List<Variation> variations,
        List<Lacking> lacking,
        int revision,
        boolean isCutShort) {
    public Quote {
        lines = List.copyOf(lines);
        ropes = List.copyOf(ropes);
        neighbours = List.copyOf(neighbours);
        variations = List.copyOf(variations);
        lacking = List.copyOf(lacking);
    }

    /** Whether prices leave something out and nobody accepts that: then there is no page for the customer. */
    public boolean isUnfinished() {
        return request.given().accepted().isEmpty() && !gaps().isEmpty();
    }

    /**
     * What its prices leave out since nobody has stated it, minutes of ends and prices of fittings: a finding each, at the
     * line.
     */
    public List<Finding> gaps() {
        return QuoteGaps.of(this);
    }

    /** The variations of one kind, in the order of the lines. */
    public List<Variation> variations(Variation.Kind kind) {
        return variations.stream().filter(each -> each.kind() == kind).toList();
    }

    /** Whether some line would cost more by itself, so that the prices hold for all lines together alone. */
    public boolean holdsTogetherAlone() {
        return lines.stream().anyMatch(line -> variations(Variation.Kind.APART).stream()
                .anyMatch(apart -> apart.line().equals(line.line().name())
                        && apart.price().price().compareTo(line.buildUp().price()) > 0));
    }

    /** The lines by the day by which the request asks for them; lines that it names no day for are left out. */
    public SortedMap<LocalDate, List<String>> askedBy() {
        return lines.stream()
                .map(LineQuote::line)
                .filter(line -> !line.due().equals(LocalDate.MAX))
                .collect(Collectors.groupingBy(
                        QuoteLine::due, TreeMap::new, Collectors.mapping(QuoteLine::name, Collectors.toList())));
    }

    /** When it could be made, in words for the customer. */
    public String made() {
        return request.given().delivery().words(askedBy());
    }

    /** Every line that has no price, those among them that could not be read or made, in the order of the request. */
    public List<Lacking> notPriced() {
        return Stream.concat(lacking.stream(), request.given().leftOut().stream())
                .sorted(Comparator.comparing(
                        (Lacking each) -> each.findings().get(0).place(), NaturalOrder.IDS))
                .toList();
    }

    /** All lines together, before tax. */
    public Money total() {
        return lines.stream().map(line -> line.buildUp().price()).reduce(Money.ZERO, Money::plus);
    }

    /** The number that the customer knows it by; empty for a draft. */
    public String number() {
        return request.given().draft() ? "" : request.id();
    }

    /** What it is called: its number, or that it has none. */
    public String name() {
        return request.given().draft() ? "draft" : request.id();
    }

    /** Tax by rate; empty where the shop states no rates, and prices are before tax alone. */
    public List<TaxSum> taxes() {
        return TaxSum.of(this);
    }

    /** All lines together with their tax. */
    public Money totalWithTax() {
        return taxes().stream().map(TaxSum::tax).reduce(total(), Money::plus);
    }

    /** The last day it stands. */
    public LocalDate validUntil() {
        return request.day().plusDays(policy.validDays());
    }

    /** The same, with when it could be made. */
    public Quote delivered(Delivery delivery) {
        return with(request.delivered(delivery), revision, isCutShort);
    }

    /** The same under another number, as a revision of that. */
    public Quote numbered(String other, int version) {
        return with(request.numbered(other), version, isCutShort);
    }

    /** The same, with whether the time ended a packing before its work was done. */
    public Quote cutShort(boolean ended) {
        return with(request, revision, ended);
    }

    private Quote with(QuoteRequest asked, int version, boolean ended) {
        return new Quote(asked, policy, lines, ropes, bill, neighbours, variations, lacking, version, ended);
    }
}
