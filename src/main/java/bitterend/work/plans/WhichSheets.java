package bitterend.work.plans;

import bitterend.work.ReelDays;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which sheets of a plan are meant. */
public sealed interface WhichSheets {
    /** What must be cut on the day of the plan, or is out; where there is nothing, what the next day cuts. */
    record Today() implements WhichSheets {}

    /** What one of its days cuts. */
    record OfDay(LocalDate day) implements WhichSheets {}

    /** Every reel. */
    record All() implements WhichSheets {}

    /** These reels. */
    record Reels(List<String> reels) implements WhichSheets {
        public Reels {
            reels = List.copyOf(reels);
        }
    }

    /**
     * What is meant.
     *
     * @param reels the reels
     * @param day the day at the head of the sheets
     * @param unasked whether they are a promise that nobody asked for by name, and so none that may be issued
     */
    record Chosen(Set<String> reels, LocalDate day, boolean unasked) {
        public Chosen {
            reels = Set.copyOf(reels);
        }
    }

    /** Of a plan of this day; nothing where it has no such day or reel. */
    default Optional<Chosen> of(ReelDays days, LocalDate today) {
        if (this instanceof Today) {
            return Optional.of(today(days, today));
        }
        if (this instanceof OfDay of) {
            Set<String> reels = of.day().equals(today) ? days.today() : days.on(of.day());
            return reels.isEmpty() ? Optional.empty() : Optional.of(new Chosen(reels, of.day(), false));
        }
        if (this instanceof Reels named) {
            return days.all().containsAll(named.reels())
                    ? Optional.of(new Chosen(Set.copyOf(named.reels()), today, false))
                    : Optional.empty();
        }
        return Optional.of(new Chosen(days.all(), today, false));
    }

    private static Chosen today(ReelDays days, LocalDate today) {
        boolean later = days.today().isEmpty() && !days.all().isEmpty();
        return new Chosen(days.atHand(), later ? days.days().first() : today, later);
    }
}
