package bitterend.quoting;

import bitterend.finding.NaturalOrder;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.quoting.QuotedWork.Drawn;
import bitterend.quoting.sharing.Coins;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Kind;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * Holds what was quoted against what was posted, rope by rope. What is scrapped off a reel falls to the orders that the same
 * plan cut from it, in proportion to what their pieces took.
 */
public final class QuoteComparison {
    private final String order;
    private final List<Movement> movements;
    private final Map<String, UnitPrice> prices;

    /**
     * @param order number of the order that came of the quote
     * @param movements all that stand, oldest first
     * @param prices of the ropes
     */
    public QuoteComparison(String order, List<Movement> movements, Map<String, UnitPrice> prices) {
        this.order = order;
        this.movements = List.copyOf(movements);
        this.prices = new TreeMap<>(prices);
    }

    /**
     * One rope of the comparison.
     *
     * @param quoted what the quote said; nothing when the rope was not in it
     * @param posted what was cut; nothing when none was
     */
    public record Row(Drawn quoted, Drawn posted) {
        public String rope() {
            return quoted.rope();
        }
    }

    /**
     * Labour of the comparison, setting up apart.
     *
     * @param quoted minutes that the quote counted on; 0 where none were stated
     * @param booked minutes that splicers booked for pieces of the order
     * @param pieces how many pieces they booked minutes for
     */
    public record Labour(long quoted, long booked, int pieces) {
        /** Whether there is anything to compare. */
        public boolean isKnown() {
            return quoted > 0 || booked > 0;
        }
    }

    /** All of it. */
    public record Compared(List<Row> rows, Labour labour) {
        public Compared {
            rows = List.copyOf(rows);
        }
    }

    /** Every rope that was quoted or posted, by id. */
    public List<Row> rows(QuotedWork work) {
        Map<String, Drawn> quoted = new TreeMap<>();
        work.ropes().forEach(rope -> quoted.put(rope.rope(), rope));
        Map<String, Drawn> posted = posted();
        Set<String> ropes = new TreeSet<>(NaturalOrder.IDS);
        ropes.addAll(quoted.keySet());
        ropes.addAll(posted.keySet());
        return ropes.stream()
                .map(rope -> new Row(
                        quoted.getOrDefault(rope, Drawn.nothing(rope)), posted.getOrDefault(rope, Drawn.nothing(rope))))
                .toList();
    }

    private Map<String, Drawn> posted() {
        Map<String, Set<String>> pieces = new TreeMap<>();
        Map<String, Length> taken = new TreeMap<>();
        Map<String, Length> scrap = new TreeMap<>();
        for (Movement movement : movements) {
            if (isOurs(movement)) {
                String rope = movement.entry().after().rope();
                pieces.computeIfAbsent(rope, id -> new HashSet<>())
                        .add(movement.entry().origin().piece());
                taken.merge(rope, length(movement), Length::plus);
            }
        }
        scrapByReel().forEach((reel, share) -> scrap.merge(ropeOf(reel), share, Length::plus));
        Map<String, Drawn> posted = new TreeMap<>();
        taken.forEach((rope, length) -> {
            Length drawn = length.plus(scrap.getOrDefault(rope, Length.ZERO));
            Cost worth = prices.getOrDefault(rope, new UnitPrice(0)).of(drawn);
            posted.put(rope, new Drawn(rope, pieces.getOrDefault(rope, Set.of()).size(), length, drawn, worth));
        });
        return posted;
    }

    /** The scrap of every reel and plan that falls to this order, by reel. */
    private Map<String, Length> scrapByReel() {
        Map<List<String>, List<Movement>> byDraw = new HashMap<>();
        for (Movement movement : movements) {
            if (!movement.entry().origin().plan().isEmpty()) {
                byDraw.computeIfAbsent(
                                List.of(
                                        movement.entry().reel(),
                                        movement.entry().origin().plan()),
                                key -> new ArrayList<>())
                        .add(movement);
            }
        }
        Map<String, Length> shares = new TreeMap<>();
        byDraw.forEach((draw, steps) -> shares.merge(draw.get(0), share(steps), Length::plus));
        return shares;
    }

    private Length share(List<Movement> steps) {
        long scrap = sum(steps, step -> step.entry().kind() == Kind.SCRAPPED);
        long cut = sum(steps, step -> step.entry().kind() == Kind.CUT);
        long ours = sum(steps, this::isOurs);
        if (ours == 0) {
            return Length.ZERO;
        }
        BigFraction exact =
                new BigFraction(BigInteger.valueOf(scrap).multiply(BigInteger.valueOf(ours)), BigInteger.valueOf(cut));
        BigFraction others = new BigFraction(BigInteger.valueOf(scrap)).subtract(exact);
        return new Length(Coins.whole(scrap, List.of(exact, others)).get(0));
    }

    private static long sum(List<Movement> steps, Predicate<Movement> which) {
        return steps.stream().filter(which).mapToLong(step -> length(step).mm()).sum();
    }

    private boolean isOurs(Movement movement) {
        String piece = movement.entry().origin().piece();
        return movement.entry().kind() == Kind.CUT && piece.startsWith(order + "/");
    }

    private String ropeOf(String reel) {
        return movements.stream()
                .filter(movement -> movement.entry().reel().equals(reel))
                .map(movement -> movement.entry().after().rope())
                .findFirst()
                .orElse("");
    }

    private static Length length(Movement movement) {
        return Length.ZERO.minus(movement.by());
    }
}
