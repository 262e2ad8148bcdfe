package bitterend.quoting.after;

import bitterend.finding.NaturalOrder;
import bitterend.measure.Money;
import bitterend.quoting.BuildUp.Kind;
import bitterend.quoting.QuotedLine;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;

/**
 * Where the quotes of many jobs were off: rope and waste by rope, minutes by end. What fewer than three jobs say proposes
 * nothing.
 *
 * @param jobs how many jobs there are with a line that is cut whole
 * @param ropes by id
 * @param ends by name
 */
public record Learned(int jobs, List<OfRope> ropes, List<OfEnd> ends) {
    /** So few jobs propose nothing. */
    public static final int FEWEST_JOBS = 3;

    private static final long PER_MILLE = 1000;

    public Learned {
        ropes = List.copyOf(ropes);
        ends = List.copyOf(ends);
    }

    /**
     * A rope.
     *
     * @param rope its id
     * @param jobs how many jobs were cut of it
     * @param quoted what was quoted for it
     * @param posted what it took
     */
    public record OfRope(String rope, int jobs, Bill quoted, Bill posted) {
        /** The waste to count on, in thousandths of the rope in the pieces; nothing where too few jobs say so. */
        public OptionalLong proposed() {
            return jobs < FEWEST_JOBS ? OptionalLong.empty() : OptionalLong.of(posted.wastePerMille());
        }
    }

    /**
     * Rope of some lines.
     *
     * @param rope rope in the pieces
     * @param waste waste and reel handling
     * @param spoilage what was counted on for spoilage, or the rope that was spoiled; apart from the waste
     */
    public record Bill(Money rope, Money waste, Money spoilage) {
        Bill plus(Bill other) {
            return new Bill(rope.plus(other.rope), waste.plus(other.waste), spoilage.plus(other.spoilage));
        }

        /** Rope and waste. */
        public Money all() {
            return rope.plus(waste);
        }

        /** Waste in thousandths of the rope in the pieces, to the nearest, halves up; 0 without rope. */
        public long wastePerMille() {
            return rope.minor() == 0
                    ? 0
                    : Math.floorDiv(2 * PER_MILLE * waste.minor() + rope.minor(), 2 * rope.minor());
        }
    }

    /**
     * An end, of the lines alone for all pieces of which minutes were booked. Minutes of a piece fall to its two ends by what was
     * stated for each, evenly where nothing was.
     *
     * @param end its name
     * @param termination id of the row of {@code splices.json} that its minutes are written in; empty where the shop knows no
     *     end of that name
     * @param jobs how many jobs have it
     * @param made how many were made
     * @param quoted minutes that were quoted for all of them
     * @param posted minutes that were booked for all of them
     */
    public record OfEnd(String end, String termination, int jobs, long made, long quoted, long posted) {
        /** Minutes for one, to the nearest; nothing where too few jobs say so. */
        public OptionalLong proposed() {
            return jobs < FEWEST_JOBS ? OptionalLong.empty() : OptionalLong.of(each(posted));
        }

        private OfEnd in(String row) {
            return new OfEnd(end, row, jobs, made, quoted, posted);
        }

        /** Minutes of one, to the nearest. */
        public long each(long minutes) {
            return made == 0 ? 0 : Math.floorDiv(2 * minutes + made, 2 * made);
        }
    }

    /**
     * What jobs teach.
     *
     * @param terminations ids by name
     */
    public static Learned of(Collection<AfterCalculation> jobs, Map<String, String> terminations) {
        Map<String, List<OfRope>> ropes = new TreeMap<>(NaturalOrder.IDS);
        Map<String, List<OfEnd>> ends = new TreeMap<>();
        for (AfterCalculation job : jobs) {
            Map<String, List<AfterLine>> byRope = new TreeMap<>();
            job.whole().stream().filter(line -> !line.quoted().what().ownRope()).forEach(line -> byRope.computeIfAbsent(
                            line.quoted().what().rope(), key -> new ArrayList<>())
                    .add(line));
            byRope.forEach((rope, lines) ->
                    ropes.computeIfAbsent(rope, key -> new ArrayList<>()).add(ofRope(rope, lines)));
            Set<String> seen = new HashSet<>();
            job.whole().forEach(line -> ofEnds(line)
                    .forEach(end -> ends.computeIfAbsent(end.end(), key -> new ArrayList<>())
                            .add(seen.add(end.end()) ? end : again(end))));
        }
        return new Learned(
                jobs.size(),
                ropes.values().stream().map(Learned::together).toList(),
                ends.values().stream()
                        .map(Learned::allEnds)
                        .map(end -> end.in(terminations.getOrDefault(end.end(), "")))
                        .toList());
    }

    private static OfRope ofRope(String rope, List<AfterLine> lines) {
        Bill quoted = new Bill(Money.ZERO, Money.ZERO, Money.ZERO);
        Bill posted = quoted;
        for (AfterLine line : lines) {
            Map<Kind, Money> took = line.posted();
            quoted = quoted.plus(new Bill(line.quoted(Kind.ROPE), line.quoted(Kind.WASTE), line.quoted(Kind.SPOILAGE)));
            posted = posted.plus(new Bill(
                    took.getOrDefault(Kind.ROPE, Money.ZERO),
                    took.getOrDefault(Kind.WASTE, Money.ZERO),
                    took.getOrDefault(Kind.SPOILAGE, Money.ZERO)));
        }
        return new OfRope(rope, 1, quoted, posted);
    }

    private static OfRope together(List<OfRope> jobs) {
        return jobs.stream()
                .reduce((a, b) -> new OfRope(
                        a.rope(),
                        a.jobs() + b.jobs(),
                        a.quoted().plus(b.quoted()),
                        a.posted().plus(b.posted())))
                .orElseThrow();
    }

    private static OfEnd again(OfEnd end) {
        return new OfEnd(end.end(), "", 0, end.made(), end.quoted(), end.posted());
    }

    private static OfEnd allEnds(List<OfEnd> ends) {
        return ends.stream()
                .reduce((a, b) -> new OfEnd(
                        a.end(),
                        "",
                        a.jobs() + b.jobs(),
                        a.made() + b.made(),
                        a.quoted() + b.quoted(),
                        a.posted() + b.posted()))
                .orElseThrow();
    }

    private static List<OfEnd> ofEnds(AfterLine line) {
        List<QuotedLine.End> ends = line.quoted().ends();
        if (ends.isEmpty() || line.pieces().timed() < line.pieces().ordered()) {
            return List.of();
        }
        boolean stated = ends.stream().anyMatch(end -> end.minutes() > 0);
        long sum = stated ? ends.stream().mapToLong(QuotedLine.End::minutes).sum() : ends.size();
        List<OfEnd> found = new ArrayList<>();
        long quoted = line.quoted().allMinutes();
        long posted = line.work().minutes();
        for (QuotedLine.End end : ends) {
            long part = stated ? end.minutes() : 1;
            if (part > 0) {
                long ownQuoted = nearest(quoted, part, sum);
                long ownPosted = nearest(posted, part, sum);
                found.add(new OfEnd(end.name(), "", 1, line.pieces().ordered(), ownQuoted, ownPosted));
                quoted -= ownQuoted;
                posted -= ownPosted;
                sum -= part;
            }
        }
        return found;
    }

    /** A part of minutes to the nearest, halves up; of two ends the other has the rest, so that no minute is lost. */
    private static long nearest(long minutes, long part, long sum) {
        return Math.floorDiv(2 * minutes * part + sum, 2 * sum);
    }
}
