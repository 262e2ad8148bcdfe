package bitterend.report;

import bitterend.buying.Advice;
import bitterend.buying.Cover;
import bitterend.buying.ReelLine;
import bitterend.buying.Way;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Money;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What ways to buy do of one rope; or what they pay beyond all ropes, so that the rows of a way add up to what it pays.
 *
 * @param rope its id
 * @param ways what the ways that do so are called
 * @param recommended whether the way to go is one of them
 * @param lines the reels of it; none where it is not bought
 * @param paid the reels with the freight by reel and weight that is charged for them, rounded down to the smallest coin; of what
 *     is paid beyond all ropes that
 * @param cover how long it lasts then; the same of any way where it is not bought, of which the weekly use alone holds
 */
record BuyRow(String rope, List<String> ways, boolean recommended, List<ReelLine> lines, Money paid, Cover cover) {
    /** Stands where others have a rope. */
    private static final String OTHER = "other freight";

    BuyRow {
        ways = List.copyOf(ways);
        lines = List.copyOf(lines);
    }

    /** Each rope that any way buys, a row for each choice of its reels and what is paid for them; other freight behind them. */
    static List<BuyRow> of(Advice advice) {
        TreeSet<String> ropes = new TreeSet<>(NaturalOrder.IDS);
        advice.shown().forEach(way -> way.covers().forEach(cover -> ropes.add(cover.rope())));
        List<BuyRow> rows = new ArrayList<>();
        for (String rope : ropes) {
            Map<String, List<Way>> bySet = new LinkedHashMap<>();
            for (Way way : advice.shown()) {
                String choice = reels(linesOf(way, rope)) + " "
                        + findCover(way, rope).map(cover -> cover.left().mm()).orElse(0L) + " " + paid(way, rope);
                bySet.computeIfAbsent(choice, set -> new ArrayList<>()).add(way);
            }
            bySet.values().forEach(ways -> rows.add(row(advice, rope, ways)));
        }
        rows.addAll(other(advice));
        return rows;
    }

    /** Freight by order, and the coin to which freight by weight is rounded up. */
    private static List<BuyRow> other(Advice advice) {
        Map<Money, List<Way>> byAmount = new LinkedHashMap<>();
        for (Way way : advice.shown()) {
            Money ropes =
                    way.covers().stream().map(cover -> paid(way, cover.rope())).reduce(Money.ZERO, Money::plus);
            Money other = way.bill().sum().minus(ropes);
            if (other.minor() != 0) {
                byAmount.computeIfAbsent(other, any -> new ArrayList<>()).add(way);
            }
        }
        Cover none = new Cover(OTHER, Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO);
        return byAmount.entrySet().stream()
                .map(entry -> new BuyRow(
                        OTHER,
                        names(advice, entry.getValue()),
                        entry.getValue().contains(advice.acted()),
                        List.of(),
                        entry.getKey(),
                        none))
                .toList();
    }

    private static List<String> names(Advice advice, List<Way> ways) {
        return ways.stream().map(way -> BuyWayWords.name(advice, way)).toList();
    }

    private static BuyRow row(Advice advice, String rope, List<Way> ways) {
        Cover cover = findCover(ways.get(0), rope)
                .or(() -> advice.shown().stream()
                        .flatMap(way -> findCover(way, rope).stream())
                        .findFirst())
                .orElseThrow();
        return new BuyRow(
                rope,
                names(advice, ways),
                ways.contains(advice.acted()),
                linesOf(ways.get(0), rope),
                paid(ways.get(0), rope),
                cover);
    }

    private static Optional<Cover> findCover(Way way, String rope) {
        return way.covers().stream().filter(cover -> cover.rope().equals(rope)).findFirst();
    }

    private static List<ReelLine> linesOf(Way way, String rope) {
        return way.purchase().lines().stream()
                .filter(line -> line.offer().rope().equals(rope))
                .toList();
    }

    /** {@code 2 x DB12-100, 1 x DB12-50}; {@code nothing} where none is bought. */
    String reels() {
        return isRope() ? reels(lines) : "";
    }

    private static String reels(List<ReelLine> lines) {
        return lines.isEmpty()
                ? "nothing"
                : lines.stream()
                        .map(line -> line.reels() + " x " + line.offer().id())
                        .collect(Collectors.joining(", "));
    }

    boolean isBought() {
        return !lines.isEmpty();
    }

    /** Whether it is a rope; otherwise it is what is paid beyond all ropes. */
    boolean isRope() {
        return !rope.equals(OTHER);
    }

    /** Price and freight of a rope's reels in a way; no freight of a supplier whose order comes freight paid. */
    private static Money paid(Way way, String rope) {
        Set<String> free = way.bill().orders().stream()
                .filter(order -> order.freight().free())
                .map(order -> order.supplier().name())
                .collect(Collectors.toSet());
        return linesOf(way, rope).stream()
                .map(line -> (free.contains(line.offer().supplier())
                                ? line.each()
                                : line.each().plus(line.freight()))
                        .times(line.reels()))
                .reduce(Cost.ZERO, Cost::plus)
                .roundedDown();
    }
}
