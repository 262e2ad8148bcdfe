package bitterend.buying.steady;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import java.util.Arrays;
import java.util.SplittableRandom;

/** One rope's rack under one way to buy, week after week. All lengths are millimetres, all costs 1/1000 minor unit. */
final class LivedRack {
    private static final int MOST_REELS_AT_ONCE = 10_000;

    private final Keeping keeping;
    private final Way way;
    private final CoilTable.OfRacks curves;
    private StartingRack start = StartingRack.WARMS_UP;
    private final SplittableRandom dice;
    private final WeekBins bins;
    private final WeekPacker packer;

    private int[] coils = new int[64];
    private int coilCount;
    private final int[] full;
    private final int[] usable;
    private final long[] paid;
    /** Reels on their way, by size and by the week of their arrival, counted round. */
    private final int[][] coming;

    private final int[] onTheWay;
    private int[] waiting = new int[32];
    private int waitingCount;
    private long waitingSum;
    private int week;

    private long spent;
    private long worthWeeks;
    private long stockWeeks;
    private long placeWeeks;
    private long worthAtFirst;
    private long stockAtFirst;
    private long used;
    private long bought;
    private int pieces;
    private int late;
    private int reels;
    private int measured;

    LivedRack(Keeping keeping, Way way, CoilTable.OfRacks curves, SplittableRandom dice) {
        this.keeping = keeping;
        this.way = way;
        this.curves = curves;
        this.dice = dice;
        bins = new WeekBins(
                keeping.loss(), keeping.opening().millis(), keeping.changing().millis(), curves.on(0));
        packer = new WeekPacker(bins);
        int sizes = way.rules().size();
        full = new int[sizes];
        onTheWay = new int[sizes];
        coming = new int[sizes][];
        usable = new int[sizes];
        paid = new long[sizes];
        for (int size = 0; size < sizes; size++) {
            coming[size] = new int[rule(size).size().lead().mostWeeks() + 1];
            usable[size] = rule(size).size().usable();
            paid[size] = rule(size).size().paid(rule(size).reels()).millis();
        }
    }

    /** A rack as it may be found on any day: a coil of any length of a reel, reels up to the reorder point, and some of an order. */
    void stock() {
        addCoil(1 + dice.nextInt(usable[0]));
        long upToThePoint = rule(0).point().mm() / usable[0];
        full[0] = (int) Math.min(MOST_REELS_AT_ONCE, upToThePoint + dice.nextInt(rule(0).reels()));
    }

    /** The rack there is: its reels as coils, and what waits to be cut. */
    void begin(StartingRack rack) {
        start = rack;
        rack.coils().forEach(coil -> addCoil(StartingRack.millimetres(coil)));
        waiting = rack.waiting().stream().mapToInt(StartingRack::millimetres).toArray();
        waitingCount = waiting.length;
        waitingSum = Arrays.stream(waiting).asLongStream().sum() + (long) waitingCount * keeping.loss();
    }

    /** From now on what happens counts. */
    void measure() {
        spent = 0;
        worthWeeks = 0;
        stockWeeks = 0;
        placeWeeks = 0;
        used = 0;
        bought = 0;
        pieces = 0;
        late = 0;
        reels = 0;
        measured = 0;
        worthAtFirst = worth();
        stockAtFirst = stock(0);
    }

    /** A week: what comes is put up, what waits and what was ordered is cut, and what runs short is ordered. */
    void live(int[] ordered) {
        arrive();
        int[] cuts = LongestFirst.of(waiting, waitingCount, ordered);
        int count = waitingCount + ordered.length;
        int waited = waitingCount;
        pieces += ordered.length;
        if (count > 0) {
            cut(cuts, count, waited);
        }
        lie();
        for (int size = 0; size < full.length; size++) {
            order(size);
        }
        week++;
    }

    private void arrive() {
        putUp(start.arriving(week));
        for (int size = 0; size < full.length; size++) {
            int slot = week % coming[size].length;
            int come = coming[size][slot];
            coming[size][slot] = 0;
            onTheWay[size] -= come;
            full[size] += come;
            reels += come;
            bought += (long) come * usable[size];
            spent += come * paid[size];
        }
    }

    /** Reels that were on order at the beginning cost what they are worth, whatever is bought beside them. */
    private void putUp(int[] reelsOnOrder) {
        if (reelsOnOrder.length == 0) {
            return;
        }
        long before = worth();
        for (int mm : reelsOnOrder) {
            addCoil(mm);
            bought += mm;
        }
        spent += worth() - before;
    }

    private void cut(int[] cuts, int count, int waited) {
        CoilTable today = curves.on(lying());
        bins.rack(today);
        for (int i = 0; i < coilCount; i++) {
            bins.coil(coils[i]);
        }
        for (int size = 0; size < full.length; size++) {
            for (int reel = Math.min(full[size], count); reel > 0; reel--) {
                bins.reel(usable[size], size, paid[size]);
            }
        }
        bins.pieces(cuts, count);
        packer.pack();
        keepLate(cuts, count, waited);
        keepCoils(today);
    }

    private void keepLate(int[] cuts, int count, int waited) {
        if (waiting.length < count) {
            waiting = new int[2 * count];
        }
        waitingCount = 0;
        waitingSum = 0;
        for (int i = 0; i < count; i++) {
            if (bins.isLate(i)) {
                waiting[waitingCount++] = cuts[i];
                waitingSum += cuts[i] + keeping.loss();
                late += i >= waited ? 1 : 0;
            } else {
                used += cuts[i];
            }
        }
    }

    private void keepCoils(CoilTable today) {
        coilCount = 0;
        for (int bin = 0; bin < bins.bins(); bin++) {
            int left = bins.leftOf(bin);
            if (bins.isUsed(bin)) {
                spent += bins.fixedOf(bin);
                full[Math.max(0, bins.sizeOf(bin))] -= bins.isReel(bin) ? 1 : 0;
                if (today.of(left) > 0) {
                    addCoil(left);
                }
            } else if (!bins.isReel(bin)) {
                addCoil(left);
            }
        }
    }

    private void addCoil(int mm) {
        if (coilCount == coils.length) {
            coils = Arrays.copyOf(coils, 2 * coilCount);
        }
        coils[coilCount++] = mm;
    }

    /** What is there at the end of the week takes place and ties money. */
    private void lie() {
        long tied = 0;
        long places = coilCount;
        for (int size = 0; size < full.length; size++) {
            tied += full[size] * paid[size];
            places += full[size];
        }
        worthWeeks += tied + lying() * paid[0] / usable[0];
        stockWeeks += stock(0);
        placeWeeks += places;
        measured++;
    }

    /** Metres of coils. */
    private long lying() {
        return Arrays.stream(coils, 0, coilCount).asLongStream().sum();
    }

    /** Metres of coils and reels, and of reels that are there within so many weeks. */
    private long stock(int weeks) {
        long stock = lying() + start.later(week, weeks);
        for (int size = 0; size < full.length; size++) {
            long there = full[size];
            int slots = coming[size].length;
            for (int ahead = 1; ahead <= Math.min(weeks, slots - 1); ahead++) {
                there += coming[size][(week + ahead) % slots];
            }
            stock += there * usable[size];
        }
        return stock;
    }

    private void order(int size) {
        Way.Rule rule = rule(size);
        int counted = size == 0 ? Integer.MAX_VALUE : rule.size().lead().mostWeeks();
        long position = stock(counted) - waitingSum;
        int reelsWanted = 0;
        while (position + (long) reelsWanted * usable[size] < rule.point().mm() && reelsWanted < MOST_REELS_AT_ONCE) {
            reelsWanted += rule.reels();
        }
        if (reelsWanted == 0 && isStuck(size)) {
            reelsWanted = rule.reels();
        }
        if (reelsWanted > 0) {
            int comes = (week + rule.size().lead().weeks(dice)) % coming[size].length;
            coming[size][comes] += reelsWanted;
            onTheWay[size] += reelsWanted;
        }
    }

    /** A piece waits, and nothing that would hold it is on its way: it would wait for ever beside coils that are too short. */
    private boolean isStuck(int size) {
        if (waitingCount == 0) {
            return false;
        }
        int longest = Arrays.stream(waiting, 0, waitingCount).max().orElse(0);
        for (int other = 0; other < full.length; other++) {
            if (onTheWay[other] + full[other] > 0 && longest <= usable[other]) {
                return false;
            }
        }
        return longest <= usable[size] && !start.holdsLater(week, longest);
    }

    private long worth() {
        long worth = curves.all(coils, coilCount);
        for (int size = 0; size < full.length; size++) {
            worth += full[size] * paid[size];
        }
        return worth;
    }

    /** What it all came to since it was measured. */
    Lived outcome() {
        int weeks = Math.max(1, measured);
        long interest = keeping.interest().equals(Ratio.ZERO)
                ? 0
                : keeping.interest().timesRoundedUp(worthWeeks / PastWeeks.PLACES);
        long cost = spent + interest + placeWeeks * keeping.room().millis() - (worth() - worthAtFirst);
        return new Lived(
                new Cost(cost),
                new Length(used),
                pieces,
                late,
                new Length(stockWeeks / weeks),
                new Cost(worthWeeks / weeks),
                reels,
                new Length(stockAtFirst + bought - used - stock(0)),
                coilCount);
    }

    private Way.Rule rule(int size) {
        return way.rules().get(size);
    }
}
