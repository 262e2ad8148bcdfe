package bitterend.bench;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/** The coils of one rope, and what living from them has cost: reels, opening, changing, interest and room. */
final class SteadyRack {
    static final Cost OPENING = new Cost(225_000);
    static final Cost CHANGING = new Cost(150_000);
    static final Cost ROOM = new Cost(10_000);
    static final int INTEREST_PERCENT = 12;

    /**
     * How many full reels of a size are kept, those on order counted, and how many weeks they take to come.
     *
     * @param reels none for as many as are asked for, at once
     */
    record Shelf(int reels, int lead) {
        static final Shelf ENDLESS = new Shelf(0, 0);
    }

    private final SteadyRope rope;
    private Shelf shelf;
    private final int[] there;
    private final Deque<int[]> coming = new ArrayDeque<>();
    private List<Length> coils = new ArrayList<>();
    private long spent;
    private long touched;

    SteadyRack(SteadyRope rope, Shelf shelf) {
        this.rope = rope;
        this.shelf = shelf;
        there = new int[rope.reels().size()];
        Arrays.fill(there, shelf.reels());
    }

    /** Full reels of a size that can be opened this week. */
    int available(int size) {
        return shelf.reels() == 0 ? Integer.MAX_VALUE : there[size];
    }

    /** From now on as many as are asked for. */
    void endless() {
        shelf = Shelf.ENDLESS;
    }

    List<Length> coils() {
        return coils;
    }

    Length metres() {
        return coils.stream().reduce(Length.ZERO, Length::plus);
    }

    /** In 1/1000 minor unit. */
    long spent() {
        return spent;
    }

    long touched() {
        return touched;
    }

    void count(long none) {
        spent = none;
        touched = none;
    }

    /** What a week did: coils that stay, reels that were opened by size, how many coils and reels were fetched. */
    void after(List<Length> left, int[] opened, int fetched) {
        coils = new ArrayList<>(left);
        for (int size = 0; size < opened.length; size++) {
            spent += opened[size] * (rope.paid(size).millis() + OPENING.millis());
        }
        spent += fetched * CHANGING.millis() + coils.size() * ROOM.millis();
        spent += rope.price().of(metres()).millis() * INTEREST_PERCENT / 100 / 52;
        touched += fetched;
        order(opened);
    }

    /** What was opened is ordered again, and what was ordered so many weeks ago comes before the next week. */
    private void order(int[] opened) {
        coming.addLast(opened.clone());
        for (int size = 0; size < there.length; size++) {
            there[size] -= opened[size];
        }
        if (coming.size() > shelf.lead()) {
            int[] come = coming.removeFirst();
            for (int size = 0; size < there.length; size++) {
                there[size] += come[size];
            }
        }
    }
}
