package bitterend.report;

import bitterend.buying.Advice;
import bitterend.buying.Cover;
import bitterend.buying.ReelLine;
import bitterend.buying.Way;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What ways to buy do of one rope.
 *
 * @param rope its id
 * @param ways what the ways that do so are called
 * @param recommended whether the way to go is one of them
 * @param lines the reels of it; none where it is not bought
 * @param cover how long it lasts then; the same of any way where it is not bought, of which the weekly use alone holds
 */
record BuyRow(String rope, List<String> ways, boolean recommended, List<ReelLine> lines, Cover cover) {
    BuyRow {
        ways = List.copyOf(ways);
        lines = List.copyOf(lines);
    }

    /** Each rope that any way buys, a row for each choice of its reels. */
    static List<BuyRow> of(Advice advice) {
        TreeSet<String> ropes = new TreeSet<>(NaturalOrder.IDS);
        advice.shown().forEach(way -> way.covers().forEach(cover -> ropes.add(cover.rope())));
        List<BuyRow> rows = new ArrayList<>();
        for (String rope : ropes) {
            Map<String, List<Way>> bySet = new LinkedHashMap<>();
            for (Way way : advice.shown()) {
                String choice = reels(linesOf(way, rope))
                        + findCover(way, rope).map(cover -> cover.left().mm()).orElse(0L);
                bySet.computeIfAbsent(choice, set -> new ArrayList<>()).add(way);
            }
            bySet.values().forEach(ways -> rows.add(row(advice, rope, ways)));
        }
        return rows;
    }

    private static BuyRow row(Advice advice, String rope, List<Way> ways) {
        Cover cover = findCover(ways.get(0), rope)
                .or(() -> advice.shown().stream()
                        .flatMap(way -> findCover(way, rope).stream())
                        .findFirst())
                .orElseThrow();
        return new BuyRow(
                rope,
                ways.stream().map(way -> BuyWayWords.name(advice, way)).toList(),
                ways.contains(advice.acted()),
                linesOf(ways.get(0), rope),
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
        return reels(lines);
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

    /** Price and freight of them, without what is charged by order. */
    Cost paid() {
        return lines.stream()
                .map(line -> line.each().plus(line.freight()).times(line.reels()))
                .reduce(Cost.ZERO, Cost::plus);
    }
}
