package bitterend.report;

import bitterend.buying.steady.SteadyVerdict;
import bitterend.buying.steady.WayFound;
import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.measure.Length;
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

    private final Figures figures;
    private final SteadyVerdict verdict;
    private final BuyWords words;

    public BuyPictures(Figures figures, SteadyVerdict verdict) {
        this.figures = figures;
        this.verdict = verdict;
        words = new BuyWords(figures, offers());
    }

    /** Every picture by its file name. */
    public Map<String, String> all() {
        Map<String, String> pictures = new TreeMap<>();
        String rope = verdict.study().rope().id().replaceAll("[^\\p{L}\\p{N}-]", "_");
        pictures.put(rope + "-cost.svg", cost());
        pictures.put(rope + "-lengths.svg", lengths());
        return pictures;
    }

    /** Cost of a metre used of every way to buy; hollow dots are dearer or not recommended. */
    String cost() {
        List<WayFound> found = verdict.found();
        int row = 24;
        int left = 260;
        int bottom = TOP + row * found.size();
        BuySvg svg = picture(
                "cost of a length used, " + words.perLengthUnit()
                        + "; line: 19 times in 20; hollow: dearer, late or too much",
                bottom + 40);
        long least =
                found.stream().mapToLong(each -> each.byMetre().low()).min().orElse(0);
        long most =
                found.stream().mapToLong(each -> each.byMetre().high()).max().orElse(1);
        BuyAxis along = BuyAxis.holding(least - (most - least) / 20, most, left, RIGHT);
        for (long tick : along.ticks()) {
            svg.line(along.place(tick), TOP, along.place(tick), bottom, BuySvg.SOFT);
            svg.text(along.place(tick), bottom + 18, "middle", words.perLength(new Cost(tick)));
        }
        for (int i = 0; i < found.size(); i++) {
            WayFound each = found.get(i);
            int y = TOP + row * i + row / 2;
            svg.text(left - 10, y + 4, "end", new StudyFigures(figures, verdict).sizes(each));
            svg.line(
                    along.place(each.byMetre().low()),
                    y,
                    along.place(each.byMetre().high()),
                    y,
                    BuySvg.LINE);
            boolean solid = each.standing() == WayFound.Standing.CHOSEN || each.standing() == WayFound.Standing.TIE;
            svg.dot(along.place(each.byMetre().value()), y, !solid);
        }
        return svg.toString();
    }

    /** How many past pieces of which length, the reel sizes marked. */
    String lengths() {
        List<Length> cuts = verdict.study().demand().past().cuts().stream()
                .flatMap(List::stream)
                .toList();
        Length longest = Stream.concat(cuts.stream(), offers().stream().map(Offer::usable))
                .reduce(Length.ZERO, Length::max);
        long width = longest.mm() / BARS + 1;
        Map<Long, Long> counts = cuts.stream()
                .collect(Collectors.groupingBy(cut -> cut.mm() / width, TreeMap::new, Collectors.counting()));
        BuyAxis along = BuyAxis.holding(0, longest.mm(), LEFT, RIGHT);
        BuyLabels labels = new BuyLabels();
        for (Offer offer : offers()) {
            labels.add(
                    along.place(offer.usable().mm()), words.shortly(offer.made().written()));
        }
        BuySvg svg = picture("past pieces by cut length, and the reels on offer (dashed)", BOTTOM + 50);
        int top = TOP + BuyLabels.ROW * labels.more();
        BuyAxis up =
                BuyAxis.holding(0, counts.values().stream().max(Long::compare).orElse(1L), BOTTOM, top + 9);
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
        for (Offer offer : offers()) {
            long x = along.place(offer.usable().mm());
            svg.dashed(x, top + 3, x, BOTTOM);
        }
        labels.all()
                .forEach(label ->
                        svg.text(label.x(), TOP + (long) BuyLabels.ROW * label.row(), "middle", label.words()));
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

    private List<Offer> offers() {
        return verdict.study().offers().stream()
                .sorted(Comparator.comparing(Offer::usable))
                .toList();
    }
}
