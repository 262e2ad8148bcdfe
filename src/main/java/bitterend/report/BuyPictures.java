package bitterend.report;

import bitterend.buying.Result;
import bitterend.buying.Standing;
import bitterend.buying.Verdict;
import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The pictures of a buying study. */
public final class BuyPictures {
    private static final int WIDTH = 720;
    private static final int LEFT = 70;
    private static final int RIGHT = 700;
    private static final int TOP = 40;
    private static final int BOTTOM = 300;
    private static final int BARS = 40;

    private final Verdict verdict;
    private final BuyWords words;

    public BuyPictures(Figures figures, Verdict verdict) {
        this.verdict = verdict;
        words = new BuyWords(figures, offers());
    }

    /** Every picture by its file name. */
    public Map<String, String> all() {
        Map<String, String> pictures = new TreeMap<>();
        String rope = verdict.study().rope().id().replaceAll("[^\\p{L}\\p{N}-]", "_");
        pictures.put(rope + "-waste.svg", waste());
        pictures.put(rope + "-cost.svg", cost());
        pictures.put(rope + "-lengths.svg", lengths());
        return pictures;
    }

    /** Waste against reel length, with the band of eight scenarios in ten. */
    String waste() {
        List<Result> singles = verdict.results().stream()
                .filter(result -> result.option().offers().size() == 1)
                .sorted(Comparator.comparing(result -> size(result).mm()))
                .toList();
        BuySvg svg =
                picture("waste in % of the rope in pieces, against reel length; band: 8 scenarios in 10", BOTTOM + 50);
        long most = singles.stream()
                .mapToLong(result -> tenths(result.usual().wasteHigh()))
                .max()
                .orElse(1);
        BuyAxis up = BuyAxis.holding(0, most, BOTTOM, TOP);
        BuyAxis along = BuyAxis.holding(
                0, singles.stream().mapToLong(each -> size(each).mm()).max().orElse(1), LEFT, RIGHT);
        frame(svg, along, up);
        up.ticks().forEach(tick -> svg.text(LEFT - 8, up.place(tick) + 4, "end", words.tenths(tick)));
        String low =
                points(singles, along, result -> up.place(tenths(result.usual().wasteLow())));
        String high = points(
                singles.stream()
                        .sorted(Comparator.comparing(result -> -size(result).mm()))
                        .toList(),
                along,
                result -> up.place(tenths(result.usual().wasteHigh())));
        svg.area(low + " " + high);
        svg.polyline(points(
                singles, along, result -> up.place(tenths(result.perScenario().wasteShare()))));
        for (Result single : singles) {
            long x = along.place(size(single).mm());
            svg.dot(x, up.place(tenths(single.perScenario().wasteShare())), single.standing() == Standing.DEARER);
            svg.text(x, BOTTOM + 20, "middle", words.shortly(size(single)));
        }
        return svg.toString();
    }

    /** Cost per useful metre of every way to buy; filled dots cannot be told from the best. */
    String cost() {
        List<Result> results = verdict.results();
        int row = 24;
        int left = 260;
        int bottom = TOP + row * results.size();
        BuySvg svg = picture(
                "cost of a metre in a piece, " + words.perLengthUnit() + "; line: 8 scenarios in 10; hollow: dearer",
                bottom + 40);
        long least = results.stream()
                .mapToLong(each -> each.usual().low().millis())
                .min()
                .orElse(0);
        long most = results.stream()
                .mapToLong(each -> each.usual().high().millis())
                .max()
                .orElse(1);
        BuyAxis along = BuyAxis.holding(least - (most - least) / 20, most, left, RIGHT);
        for (long tick : along.ticks()) {
            svg.line(along.place(tick), TOP, along.place(tick), bottom, BuySvg.SOFT);
            svg.text(along.place(tick), bottom + 18, "middle", words.perLength(new Cost(tick)));
        }
        for (int i = 0; i < results.size(); i++) {
            Result result = results.get(i);
            int y = TOP + row * i + row / 2;
            svg.text(left - 10, y + 4, "end", words.option(result.option()));
            svg.line(
                    along.place(result.usual().low().millis()),
                    y,
                    along.place(result.usual().high().millis()),
                    y,
                    BuySvg.LINE);
            svg.dot(along.place(result.byMetre().millisPerMetre()), y, result.standing() == Standing.DEARER);
        }
        return svg.toString();
    }

    /** How many past pieces of which length, the reel sizes marked. */
    String lengths() {
        List<Length> cuts =
                verdict.study().weeks().stream().flatMap(List::stream).toList();
        Length longest = Stream.concat(cuts.stream(), offers().stream().map(Offer::usable))
                .reduce(Length.ZERO, Length::max);
        long width = longest.mm() / BARS + 1;
        Map<Long, Long> counts = cuts.stream()
                .collect(Collectors.groupingBy(cut -> cut.mm() / width, TreeMap::new, Collectors.counting()));
        BuySvg svg = picture("past pieces by cut length, and the reels on offer (dashed)", BOTTOM + 50);
        BuyAxis along = BuyAxis.holding(0, longest.mm(), LEFT, RIGHT);
        BuyAxis up =
                BuyAxis.holding(0, counts.values().stream().max(Long::compare).orElse(1L), BOTTOM, TOP + 20);
        frame(svg, along, up);
        up.ticks().forEach(tick -> svg.text(LEFT - 8, up.place(tick) + 4, "end", tick.toString()));
        counts.forEach((bar, count) -> {
            long x = along.place(bar * width);
            svg.rect(
                    x,
                    up.place(count),
                    Math.max(1, along.place((bar + 1) * width) - x - 1),
                    BOTTOM - up.place(count),
                    BuySvg.LINE);
        });
        along.ticks()
                .forEach(tick -> svg.text(along.place(tick), BOTTOM + 20, "middle", words.shortly(new Length(tick))));
        int high = 0;
        for (Offer offer : offers()) {
            long x = along.place(offer.usable().mm());
            svg.dashed(x, TOP + 14, x, BOTTOM);
            svg.text(
                    x,
                    TOP + (high++ % 2 == 0 ? 0 : 11),
                    "middle",
                    words.shortly(offer.made().written()));
        }
        return svg.toString();
    }

    private BuySvg picture(String caption, int height) {
        String title = verdict.study().rope().id() + ": " + caption;
        return new BuySvg(WIDTH, height, title).text(LEFT, 18, "start", title);
    }

    private static void frame(BuySvg svg, BuyAxis along, BuyAxis up) {
        up.ticks().forEach(tick -> svg.line(LEFT, up.place(tick), RIGHT, up.place(tick), BuySvg.SOFT));
        svg.line(along.start(), BOTTOM, along.end(), BOTTOM, BuySvg.INK);
    }

    private static String points(
            List<Result> results, BuyAxis along, java.util.function.ToLongFunction<Result> height) {
        return results.stream()
                .map(result -> along.place(size(result).mm()) + "," + height.applyAsLong(result))
                .collect(Collectors.joining(" "));
    }

    private List<Offer> offers() {
        return Stream.concat(verdict.study().options().stream(), verdict.study().tooShort().stream())
                .flatMap(option -> option.offers().stream())
                .distinct()
                .sorted(Comparator.comparing(Offer::usable))
                .toList();
    }

    private static Length size(Result result) {
        return result.option().offers().get(0).made().length();
    }

    /** A share in tenths of a per cent, rounded down. */
    private static long tenths(Ratio share) {
        return BigDecimal.valueOf(share.numerator())
                .multiply(BigDecimal.valueOf(1000))
                .divideToIntegralValue(BigDecimal.valueOf(share.denominator()))
                .longValueExact();
    }
}
