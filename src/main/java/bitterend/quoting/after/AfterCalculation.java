package bitterend.quoting.after;

import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.quoting.Amounts;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.QuotedLine;
import bitterend.quoting.QuotedWork;
import bitterend.quoting.after.RopePrice.Source;
import bitterend.quoting.after.RopeTaken.Took;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A quote held against what was cut and worked for it, on equal footing: rope at what was paid for it, waste by the rule of the
 * quote, minutes booked at the rate of the shop, fittings of the order, spoiled pieces.
 *
 * @param quote what the quote is called
 * @param orders the orders that came of it
 * @param lines its lines in order
 * @param ropes its ropes and those that were cut in their place, by id
 * @param tellsFreight whether the quote says how much freight is in its rope, so that freight is compared with freight
 * @param sources where the price of its rope is known from
 * @param asPlanned the reels of which a draw for it counts as it is planned, since its last piece is not cut yet
 */
public record AfterCalculation(
        String quote,
        List<String> orders,
        List<AfterLine> lines,
        List<OfRope> ropes,
        boolean tellsFreight,
        Set<Source> sources,
        List<String> asPlanned) {
    public AfterCalculation {
        asPlanned = List.copyOf(asPlanned);
        ropes = List.copyOf(ropes);
        orders = List.copyOf(orders);
        lines = List.copyOf(lines);
        sources = Set.copyOf(sources);
    }

    /** The lines that are cut whole: the others are not compared. */
    public List<AfterLine> whole() {
        return lines.stream().filter(line -> line.pieces().isWhole()).toList();
    }

    /**
     * A rope of the job: what was quoted and what was drawn.
     *
     * @param rope id of the rope
     * @param pieces quoted, then cut, spoiled ones among these
     * @param taken pieces and cut losses, quoted, then taken
     * @param drawn all rope drawn with the scrap that falls to it, quoted, then drawn
     */
    public record OfRope(String rope, Pair<Integer> pieces, Pair<Length> taken, Pair<Length> drawn) {}

    /** The same as quoted and as posted. */
    public record Pair<T>(T quoted, T posted) {}

    /**
     * Settles a quote.
     *
     * @param lineOf of which line of the quote each line of an order is, by {@code ORDER/LINE}
     * @param fittings what the fittings of a line of the quote cost as it is ordered now; as quoted where it is not there
     */
    public static AfterCalculation of(
            String name, QuotedWork work, Map<String, String> lineOf, Map<String, Money> fittings, JobBooks books) {
        List<Took> all = new RopeTaken(books, lineOf).all();
        List<AfterLine> lines = new ArrayList<>();
        Set<Source> sources = EnumSet.noneOf(Source.class);
        Set<String> orders = new HashSet<>();
        lineOf.keySet().forEach(line -> orders.add(line.substring(0, line.indexOf('/'))));
        for (QuotedLine quoted : work.lines()) {
            List<Took> ours = all.stream()
                    .filter(took -> quoted.name().equals(PieceLine.of(took.piece(), lineOf)))
                    .toList();
            ours.forEach(took -> sources.add(took.price().source()));
            lines.add(line(quoted, ours, lineOf, fittings, books));
        }
        List<Took> taken = all.stream()
                .filter(took -> !PieceLine.of(took.piece(), lineOf).isEmpty())
                .toList();
        return new AfterCalculation(
                name,
                orders.stream().sorted().toList(),
                lines,
                ropes(work, taken),
                work.tellsFreight(),
                sources,
                asPlanned(taken));
    }

    private static List<String> asPlanned(List<Took> taken) {
        return taken.stream()
                .filter(Took::asPlanned)
                .map(took -> took.cut().entry().reel())
                .distinct()
                .sorted(NaturalOrder.IDS)
                .toList();
    }

    private static List<OfRope> ropes(QuotedWork work, List<Took> taken) {
        Map<String, QuotedWork.Drawn> quoted = new TreeMap<>(NaturalOrder.IDS);
        work.ropes().forEach(rope -> quoted.put(rope.rope(), rope));
        taken.forEach(took -> quoted.putIfAbsent(
                took.rope(), new QuotedWork.Drawn(took.rope(), 0, Length.ZERO, Length.ZERO, Cost.ZERO)));
        return quoted.values().stream()
                .map(rope -> {
                    List<Took> ours = taken.stream()
                            .filter(took -> took.rope().equals(rope.rope()))
                            .toList();
                    Length length = ours.stream().map(Took::length).reduce(Length.ZERO, Length::plus);
                    Length scrap = ours.stream().map(Took::scrap).reduce(Length.ZERO, Length::plus);
                    return new OfRope(
                            rope.rope(),
                            new Pair<>(rope.pieces(), ours.size()),
                            new Pair<>(rope.taken(), length),
                            new Pair<>(rope.drawn(), length.plus(scrap)));
                })
                .toList();
    }

    private static AfterLine line(
            QuotedLine quoted,
            List<Took> ours,
            Map<String, String> lineOf,
            Map<String, Money> fittings,
            JobBooks books) {
        Set<String> good = new HashSet<>(books.good());
        good.removeIf(piece -> !quoted.name().equals(PieceLine.of(piece, lineOf)));
        Set<Long> last = new HashSet<>();
        good.forEach(piece -> ours.stream()
                .filter(took -> took.piece().equals(piece))
                .reduce((earlier, later) -> later)
                .ifPresent(took -> last.add(took.cut().number())));
        List<Took> kept =
                ours.stream().filter(took -> last.contains(took.cut().number())).toList();
        List<Took> spoiled = ours.stream()
                .filter(took -> !last.contains(took.cut().number()))
                .toList();
        int ordered = quoted.what().pieces();
        List<String> timed = books.minutes().keySet().stream()
                .filter(piece -> quoted.name().equals(PieceLine.of(piece, lineOf)))
                .toList();
        AfterLine.Pieces pieces =
                new AfterLine.Pieces(ordered, good.size(), Math.min(timed.size(), ordered), spoiled.size());
        long booked = timed.stream().mapToLong(books.minutes()::get).sum();
        long minutes = booked + quoted.allMinutes() * (ordered - pieces.timed()) / Math.max(1, ordered);
        boolean own = quoted.what().ownRope();
        Optional<RopePrice> sampled = kept.stream()
                .max(Comparator.comparing(took -> took.cut().entry().piece().length()))
                .map(Took::price);
        Length sample = quoted.what().sample();
        Cost ofSample = sampled.map(price -> price.price().of(sample)).orElse(Cost.ZERO);
        Cost freightOfSample =
                sampled.map(RopePrice::freight).map(price -> price.of(sample)).orElse(Cost.ZERO);
        AfterLine.Rope rope = new AfterLine.Rope(
                kept.stream().map(Took::length).reduce(Length.ZERO, Length::plus),
                kept.stream().map(Took::scrap).reduce(Length.ZERO, Length::plus),
                own ? Cost.ZERO : inPieces(kept).minus(ofSample),
                own ? Cost.ZERO : cost(kept).minus(ofSample),
                own ? Cost.ZERO : cost(spoiled),
                freight(ours).less(freightOfSample));
        return new AfterLine(
                quoted,
                pieces,
                rope,
                new AfterLine.Work(
                        minutes,
                        Amounts.labour(books.rates().labour(), minutes),
                        fittings.getOrDefault(quoted.name(), quoted.of(Kind.HARDWARE))));
    }

    private static AfterLine.Freight freight(List<Took> ours) {
        List<Took> known =
                ours.stream().filter(took -> took.price().freight() != null).toList();
        return new AfterLine.Freight(
                known.stream().map(Took::freight).reduce(Cost.ZERO, Cost::plus), drawn(known), drawn(ours));
    }

    private static Length drawn(List<Took> some) {
        return some.stream().map(Took::drawn).reduce(Length.ZERO, Length::plus);
    }

    private static Cost inPieces(List<Took> kept) {
        return kept.stream()
                .map(took -> took.price().price().of(took.cut().entry().piece().length()))
                .reduce(Cost.ZERO, Cost::plus);
    }

    private static Cost cost(List<Took> some) {
        return some.stream().map(Took::cost).reduce(Cost.ZERO, Cost::plus);
    }
}
