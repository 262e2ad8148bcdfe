package bitterend.bench;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** The coils of one rope, and what living from them has cost: reels, opening, changing, interest and room. */
final class SteadyRack {
    static final Cost OPENING = new Cost(225_000);
    static final Cost CHANGING = new Cost(150_000);
    static final Cost ROOM = new Cost(10_000);
    static final int INTEREST_PERCENT = 12;

    private final SteadyRope rope;
    private List<Length> coils = new ArrayList<>();
    private long spent;
    private long touched;

    SteadyRack(SteadyRope rope) {
        this.rope = rope;
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
    }
}
