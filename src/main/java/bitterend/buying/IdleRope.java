package bitterend.buying;

import bitterend.buying.IdleReel.Why;
import bitterend.measure.Length;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Which reels of one rope nobody is likely to want: by what was cut of it and what is ordered. */
public final class IdleRope {
    private final Use use;
    private final LocalDate day;
    private final Limits limits;

    /**
     * How a rope is used.
     *
     * @param past cut lengths of each week of the past
     * @param ordered cut lengths of what is ordered and not cut
     * @param loss rope lost at each cut
     */
    public record Use(List<List<Length>> past, List<Length> ordered, Length loss) {
        public Use {
            past = List.copyOf(past);
            ordered = List.copyOf(ordered);
        }

        private Length all() {
            Length all = past.stream().flatMap(List::stream).reduce(Length.ZERO, Length::plus);
            return all.plus(loss.times(past.stream().mapToInt(List::size).sum()));
        }

        /** The shortest piece that was cut or is ordered; longer than any reel where there is none. */
        private Length shortest() {
            return Stream.concat(past.stream().flatMap(List::stream), ordered.stream())
                    .min(Comparator.naturalOrder())
                    .orElse(new Length(Long.MAX_VALUE));
        }
    }

    /**
     * From when on rope is idle.
     *
     * @param weeks it lasts longer than so many weeks of use
     * @param near its last day is within so many weeks
     */
    public record Limits(int weeks, int near) {
        /** A year, and a quarter of one. Our own choice, no source. */
        public static final Limits USUAL = new Limits(52, 13);
    }

    /**
     * Why a reel is idle, and for how many weeks what booked work leaves of it lasts.
     *
     * @param booked whether orders in hand want this rope, though not this reel
     */
    public record Found(List<Why> why, long weeks, boolean booked) {
        public Found {
            why = List.copyOf(why);
        }
    }

    public IdleRope(Use use, LocalDate day, Limits limits) {
        this.use = use;
        this.day = day;
        this.limits = limits;
    }

    /**
     * The idle ones of these reels, by id. A customer's own rope, what is kept for an order and what booked work is cut from
     * are wanted. What is used first is what must be, then coils before full reels, and short ones before long ones.
     */
    public Map<String, Found> of(List<Reel> reels) {
        List<Reel> ours = reels.stream()
                .filter(reel ->
                        !reel.custody().isCustomersOwn() && !reel.custody().isReserved())
                .sorted(Comparator.comparing((Reel reel) -> reel.papers().useBy())
                        .thenComparing(Reel::full)
                        .thenComparing(Reel::length)
                        .thenComparing(Reel::id))
                .toList();
        Map<String, Found> idle = new TreeMap<>();
        Length before = Length.ZERO;
        BookedCuts booked = new BookedCuts(use.ordered(), use.loss());
        for (Reel reel : ours) {
            List<Run> runs = reel.holding(held(reel)).runs();
            Length usable = runs.stream().map(Run::length).reduce(Length.ZERO, Length::plus);
            Length taken = mayBeCut(reel) ? booked.takenFrom(runs) : Length.ZERO;
            Length until = before.plus(usable).minus(taken);
            List<Why> why = taken.isPositive() ? List.of() : why(reel, runs, weeks(until));
            if (!why.isEmpty()) {
                idle.put(reel.id(), new Found(why, weeks(until), !use.ordered().isEmpty()));
            }
            if (!why.contains(Why.PAST) && !why.contains(Why.NOTHING_FITS)) {
                before = until;
            }
        }
        return idle;
    }

    private boolean mayBeCut(Reel reel) {
        return !reel.custody().isOnHold() && !reel.papers().useBy().isBefore(day);
    }

    private Length held(Reel reel) {
        return reel.custody().heldOn(day).stream().map(Held::length).reduce(Length.ZERO, Length::plus);
    }

    private List<Why> why(Reel reel, List<Run> runs, long weeks) {
        List<Why> why = new ArrayList<>();
        LocalDate last = reel.papers().useBy();
        if (last.isBefore(day)) {
            why.add(Why.PAST);
        } else if (!last.equals(LocalDate.MAX) && !last.isAfter(day.plusWeeks(limits.near()))) {
            why.add(Why.NEAR);
        }
        boolean wholeIsHeld = held(reel).isPositive() && runs.isEmpty();
        boolean fits = runs.stream().anyMatch(run -> !run.length().isShorterThan(use.shortest()));
        if (!fits && !wholeIsHeld) {
            why.add(Why.NOTHING_FITS);
        } else if (weeks > limits.weeks()) {
            why.add(Why.LASTS);
        }
        return why;
    }

    /** How many weeks of use so much rope is, rounded up. */
    private long weeks(Length length) {
        long all = use.all().mm();
        return all == 0
                ? IdleReel.NEVER
                : -Math.floorDiv(
                        -Math.multiplyExact(length.mm(), (long) use.past().size()), all);
    }
}
