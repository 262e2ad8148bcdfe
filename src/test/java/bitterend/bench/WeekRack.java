package bitterend.bench;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.ReelDraw;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/** The reels and coils of one rope from day to day, and what living from them has cost. */
final class WeekRack {
    static final int DAYS_OF_A_YEAR = 260;
    private static final int USUALLY_LATE = 2;
    private static final Cost ROOM_OF_A_PIECE = new Cost(1_000);
    private static final Cost ROOM_OF_A_COIL = new Cost(SteadyRack.ROOM.millis() / 5);

    /**
     * Full reels are bought up to a number; they take so many days to come, give or take some.
     *
     * @param reels in the house and on order together
     */
    record Supply(int reels, int lead, int late) {}

    /** A reel on its way: the day it was said to come, and the day it comes. */
    private record Arriving(int expected, int day) {}

    /** What days came to: money in 1/1000 minor unit, scrap in mm. */
    static final class Count {
        long money;
        long cash;
        long scrap;
        long fetches;
        long coilDays;
        long late;
        long lateFirst;
        long lateDays;
        long spliceLate;
        int days;
    }

    private final WeekRope rope;
    private final Supply supply;
    private final SplittableRandom leads;
    private final Map<String, Length> coils = new TreeMap<>();
    private final Map<String, Length> full = new TreeMap<>();
    private final List<Arriving> arriving = new ArrayList<>();
    private int bought;
    private Count count = new Count();

    WeekRack(WeekRope rope, Supply supply, long seed) {
        this.rope = rope;
        this.supply = supply;
        leads = new SplittableRandom(seed);
        for (int i = 0; i < supply.reels(); i++) {
            receive();
        }
    }

    private void receive() {
        bought++;
        full.put("R" + (10_000 + bought), rope.usual());
    }

    /** Begins to count anew; what was counted so far. */
    Count counted() {
        Count before = count;
        count = new Count();
        return before;
    }

    Count count() {
        return count;
    }

    /** The morning of a day: what was ordered comes. */
    void morning(int day) {
        long come = arriving.stream().filter(reel -> reel.day() <= day).count();
        arriving.removeIf(reel -> reel.day() <= day);
        for (long i = 0; i < come; i++) {
            receive();
        }
    }

    /** The day on which more rope is counted on: as was said and two days more, or when one is here that is ordered now. */
    int more(int day) {
        return arriving.stream()
                .mapToInt(reel -> Math.max(day + 1, reel.expected() + USUALLY_LATE))
                .min()
                .orElse(day + supply.lead());
    }

    Length coilMetres() {
        return coils.values().stream().reduce(Length.ZERO, Length::plus);
    }

    Length allMetres() {
        return full.values().stream().reduce(coilMetres(), Length::plus);
    }

    List<Length> coils() {
        return List.copyOf(coils.values());
    }

    /** Coils, and as many full reels as a day may open. */
    List<Reel> reels(int mostFull) {
        List<Reel> reels = new ArrayList<>();
        coils.forEach((id, length) -> reels.add(reel(id, length, false)));
        full.entrySet().stream().limit(mostFull).forEach(each -> reels.add(reel(each.getKey(), each.getValue(), true)));
        return reels;
    }

    /** A reel is fetched and cut. */
    void cut(ReelDraw draw, int day) {
        count.fetches++;
        count.money += SteadyRack.CHANGING.millis();
        count.scrap += draw.book().scrap().mm();
        coils.remove(draw.reel());
        if (full.remove(draw.reel()) != null) {
            long paid = rope.price().of(rope.usual()).millis();
            count.cash += paid;
            count.money += paid + SteadyRack.OPENING.millis();
            int late = supply.late() == 0 ? 0 : leads.nextInt(2 * supply.late() + 1) - supply.late();
            arriving.add(new Arriving(day + supply.lead(), day + Math.max(1, supply.lead() + late)));
        }
        if (draw.leftOnReel().isPositive()) {
            coils.put(draw.reel(), draw.leftOnReel());
        }
    }

    /** A finished piece lies there for so many days, and its rope is paid for. */
    void lies(Length cut, int days) {
        long rent = rope.price().of(cut).millis() * SteadyRack.INTEREST_PERCENT / 100;
        count.money += days * (rent / DAYS_OF_A_YEAR + ROOM_OF_A_PIECE.millis());
    }

    /** The evening: what is on the rack overnight costs interest and room. */
    void evening() {
        long rent = rope.price().of(allMetres()).millis() * SteadyRack.INTEREST_PERCENT / 100;
        count.money += rent / DAYS_OF_A_YEAR + coils.size() * ROOM_OF_A_COIL.millis();
        count.coilDays += coils.size();
        count.days++;
    }

    private static Reel reel(String id, Length length, boolean full) {
        return new Reel(
                id,
                WeekRope.ID,
                "",
                new Reel.Contents(length, Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED),
                List.of(),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                full,
                Reel.Where.UNKNOWN);
    }
}
