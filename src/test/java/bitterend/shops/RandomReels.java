package bitterend.shops;

import bitterend.catalogue.Rope;
import bitterend.measure.Length;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The reels of a random shop; a few have no sound rope at all. */
final class RandomReels {
    static final List<String> CERTIFICATES = List.of("works", "lot test");
    static final List<String> ORDERS = List.of("A1", "A2", "A3", "A4");

    private final Dice dice;
    private final ShopSize size;
    private final int flawed;
    private final int worn;
    private final int uncertain;
    private final int certified;
    private final int dated;
    private final int kept;
    private final int unknownLot;

    RandomReels(Dice dice, ShopSize size) {
        this.dice = dice;
        this.size = size;
        flawed = dice.mood();
        worn = dice.mood();
        uncertain = dice.mood();
        certified = dice.mood();
        dated = dice.mood();
        kept = dice.mood();
        unknownLot = dice.mood();
    }

    List<Reel> reels(List<Rope> ropes) {
        List<Reel> reels = new ArrayList<>();
        int count = dice.between(1, size.reels());
        for (int i = 1; i <= count; i++) {
            reels.add(reel(String.format("K%03d", i), dice.pick(ropes)));
        }
        return reels;
    }

    private Reel reel(String id, Rope rope) {
        Length length = dice.length(size.longestReelMm() / 20, size.longestReelMm());
        String lot = dice.chance(unknownLot) ? "" : "L" + dice.between(1, 3);
        return new Reel(
                id,
                rope.id(),
                lot,
                contents(length),
                flaws(length),
                papers(),
                custody(),
                dice.chance(40),
                Reel.Where.UNKNOWN);
    }

    private Reel.Contents contents(Length length) {
        return new Reel.Contents(
                length,
                dice.lengthOrNone(100 - uncertain, length.mm() / 20),
                dice.lengthOrNone(100 - worn, dice.chance(4) ? length.mm() : length.mm() / 15),
                dice.lengthOrNone(100 - worn, length.mm() / 15),
                Reel.Known.METERED);
    }

    /** Anywhere, over one another, in the lead trim and behind the end included. */
    private List<Flaw> flaws(Length reel) {
        List<Flaw> flaws = new ArrayList<>();
        while (flaws.size() < size.flaws() && dice.chance(flawed)) {
            Length from = dice.lengthOrNone(10, reel.mm());
            Length to = Length.min(reel, from.plus(dice.lengthOrNone(30, reel.mm() / 20)));
            flaws.add(new Flaw(Length.min(from, to), to, dice.lengthOrNone(50, reel.mm() / 50), "maker's join"));
        }
        return flaws;
    }

    private Reel.Papers papers() {
        String certificate = dice.chance(certified) ? dice.pick(CERTIFICATES) : "";
        LocalDate useBy = dice.chance(dated) ? RandomShop.DAY.plusDays(dice.between(-1, 2)) : LocalDate.MAX;
        LocalDate received = dice.chance(50) ? RandomShop.DAY.minusDays(dice.between(-5, 1500)) : LocalDate.MIN;
        return new Reel.Papers(certificate, certificate.isEmpty() ? "" : "C-1", useBy, received);
    }

    private Reel.Custody custody() {
        if (!dice.chance(kept)) {
            return Reel.Custody.FREE;
        }
        String order = dice.pick(ORDERS);
        return switch (dice.between(0, 3)) {
            case 0 -> new Reel.Custody("", Reel.State.ON_HOLD, "");
            case 1 -> new Reel.Custody("", Reel.State.RESERVED, order);
            default -> new Reel.Custody("Customer of " + order, Reel.State.FREE, order);
        };
    }
}
