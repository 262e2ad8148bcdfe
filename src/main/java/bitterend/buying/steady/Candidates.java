package bitterend.buying.steady;

import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Points and numbers of reels that are tried for the sizes of a study. */
final class Candidates {
    /** Parts in a thousand of all futures whose use the points cover; common practice, no source. */
    private static final int[] COVERED = {500, 700, 800, 900, 950, 980, 995, 1000};

    private static final int[] COVERED_BY_STOPGAP = {800, 950, 995};
    private static final int[] COVERED_BEFORE_STOPGAP = {500, 800, 950};

    private static final long MM_OF_A_METRE = 1_000;

    private final SteadyStudy study;

    Candidates(SteadyStudy study) {
        this.study = study;
    }

    /** Ways with this size alone; from the lowest point. */
    List<Way> of(SizeOnOffer size) {
        List<Way> ways = new ArrayList<>();
        for (int reels : numbers(size)) {
            for (long point : points(size, COVERED, true)) {
                ways.add(new Way(List.of(new Way.Rule(size, new Length(point), reels))));
            }
        }
        return ways;
    }

    /** Ways with this size and another as a stopgap. */
    List<Way> of(SizeOnOffer usual, int reels, SizeOnOffer stopgap) {
        List<Way> ways = new ArrayList<>();
        for (long point : points(usual, COVERED_BEFORE_STOPGAP, false)) {
            for (long low : points(stopgap, COVERED_BY_STOPGAP, false)) {
                ways.add(new Way(List.of(
                        new Way.Rule(usual, new Length(point), reels),
                        new Way.Rule(stopgap, new Length(low), stopgap.minimum()))));
            }
        }
        return ways;
    }

    /** Sizes that come sooner than a size: with them a shop can bridge the wait. */
    List<SizeOnOffer> stopgaps(SizeOnOffer usual) {
        return study.sizes().stream()
                .filter(size -> size.lead().mostWeeks() < usual.lead().mostWeeks())
                .toList();
    }

    /** The least that may be ordered, twice that, and where the price breaks; none that is too much, but the least. */
    private List<Integer> numbers(SizeOnOffer size) {
        TreeSet<Integer> numbers = new TreeSet<>(size.breaks());
        numbers.add(2 * size.minimum());
        numbers.removeIf(reels -> reels < size.minimum() || isTooMuch(size, reels));
        numbers.add(size.minimum());
        return List.copyOf(numbers);
    }

    private boolean isTooMuch(SizeOnOffer size, int reels) {
        return (long) reels * size.usable() > study.weekly().mm() * study.goal().mostWeeks();
    }

    /** What so many futures use until an order comes; and, last, a longest piece more, since remnants may be too short for it. */
    private List<Long> points(SizeOnOffer size, int[] covered, boolean more) {
        TreeSet<Long> points = new TreeSet<>();
        long[] uses = ReorderPoint.uses(
                study.demand(),
                study.rope().cutting().loss(),
                size.lead(),
                ReorderPoint.ANY_PLACE,
                study.size().seed());
        for (int share : covered) {
            points.add(rounded(uses[Math.min(uses.length - 1, uses.length * share / 1000)]));
        }
        if (more) {
            points.add(rounded(points.last() + longest()));
            points.add(rounded(points.last() * 3 / 2));
        }
        return List.copyOf(points);
    }

    /** Up to a whole metre: nobody counts a rack more finely. */
    private static long rounded(long mm) {
        return (Math.max(1, mm) + MM_OF_A_METRE - 1) / MM_OF_A_METRE * MM_OF_A_METRE;
    }

    private long longest() {
        return study.demand().past().cuts().stream()
                .flatMap(List::stream)
                .mapToLong(Length::mm)
                .max()
                .orElse(0);
    }
}
