package bitterend.stock.worth;

import bitterend.measure.Length;
import bitterend.stock.Held;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.time.LocalDate;
import java.util.Collection;

/** The metres of coils that wait for the same work: usable rope of the shop's own that any order may have. */
public final class CoilsOnRack {
    private CoilsOnRack() {}

    /** Full reels, customers' rope, what is reserved, held, on hold or past its day are no part of it. */
    public static Length of(String rope, Collection<Reel> reels, LocalDate day) {
        return reels.stream()
                .filter(reel -> reel.rope().equals(rope) && waits(reel, day))
                .flatMap(reel -> reel.holding(held(reel, day)).runs().stream())
                .map(Run::length)
                .reduce(Length.ZERO, Length::plus);
    }

    private static Length held(Reel reel, LocalDate day) {
        return reel.custody().heldOn(day).stream().map(Held::length).reduce(Length.ZERO, Length::plus);
    }

    private static boolean waits(Reel reel, LocalDate day) {
        return !reel.full()
                && !reel.custody().isCustomersOwn()
                && reel.custody().state() == Reel.State.FREE
                && reel.custody().order().isEmpty()
                && !reel.papers().useBy().isBefore(day);
    }
}
