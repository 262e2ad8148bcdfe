package bitterend.packing.check;

import bitterend.packing.check.ProofDay.Group;
import bitterend.packing.proof.Holder;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.PriceList.PiecePrice;
import bitterend.packing.proof.PriceList.Touch;
import bitterend.packing.proof.RunOfReel;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A price list of a proof, looked up by the numbers of the day. */
final class ReadPrices {
    private final ProofDay day;
    private final PriceList list;
    private final long[] onRack;
    private final Map<Long, Long> onReel = new HashMap<>();
    private final Map<Charged, Long> orders;
    private final Map<Charged, Long> sets;

    private record Charged(String whose, int reel, int run) {}

    ReadPrices(ProofDay day, PriceList list) {
        this.day = day;
        this.list = list;
        onRack = new long[day.lines().size()];
        list.pieces().stream()
                .sorted(Comparator.comparingInt(price -> narrowness(price.where())))
                .forEach(this::read);
        if (list.pieces().stream()
                        .map(price -> List.of(price.line(), price.where()))
                        .distinct()
                        .count()
                < list.pieces().size()) {
            throw new ProofRefused("a price is given twice");
        }
        orders = read(list.orders(), day.orders());
        sets = read(list.sets(), day.sets().keySet());
    }

    private static int narrowness(Holder where) {
        return where instanceof Holder.OneReel ? 2 : where instanceof Holder.Lot ? 1 : 0;
    }

    private void read(PiecePrice price) {
        int line = price.line();
        if (line < 0 || line >= onRack.length) {
            throw new ProofRefused("a price for line " + line + ", which the proof does not name");
        }
        if (price.where() instanceof Holder.Rack) {
            onRack[line] = price.price();
            return;
        }
        BitSet reels = day.reelsOf(price.where());
        reels.stream().forEach(reel -> onReel.put(key(line, reel), price.price()));
    }

    private Map<Charged, Long> read(List<Touch> touches, Set<String> known) {
        Map<Charged, Long> charges = new HashMap<>();
        for (Touch touch : touches) {
            RunOfReel run = touch.run();
            int reel = day.reel(run.reel());
            if (!known.contains(touch.whose()) || run.run() > day.runs(reel).size()) {
                throw new ProofRefused("a charge on " + touch.whose() + " at " + run + ", which is not there");
            }
            if (charges.put(new Charged(touch.whose(), reel, run.run() - 1), touch.price()) != null) {
                throw new ProofRefused("the charge on " + touch.whose() + " at " + run + " is given twice");
            }
        }
        return charges;
    }

    private long key(int line, int reel) {
        return (long) line * day.reels().size() + reel;
    }

    /** pi: what a piece of a line pays to a reel. */
    long piece(int line, int reel) {
        return onReel.isEmpty() ? onRack[line] : onReel.getOrDefault(key(line, reel), onRack[line]);
    }

    long cheapest(Group group, BitSet reels) {
        return reels.stream().mapToLong(reel -> piece(group.line(), reel)).min().orElseThrow();
    }

    boolean hasCharges() {
        return !orders.isEmpty() || !sets.isEmpty();
    }

    /** sigma: what a run pays back when an order touches it. */
    long order(String order, int reel, int run) {
        return orders.getOrDefault(new Charged(order, reel, run), 0L);
    }

    /** tau: the same for a set. */
    long set(String set, int reel, int run) {
        return sets.getOrDefault(new Charged(set, reel, run), 0L);
    }

    /** All sigma of an order on these reels. */
    long ofOrder(String order, BitSet reels) {
        return sum(orders, order, reels);
    }

    /** All tau of a set on these reels. */
    long ofSet(String set, BitSet reels) {
        return sum(sets, set, reels);
    }

    private static long sum(Map<Charged, Long> charges, String whose, BitSet reels) {
        return charges.entrySet().stream()
                .filter(entry -> entry.getKey().whose().equals(whose)
                        && reels.get(entry.getKey().reel()))
                .mapToLong(Map.Entry::getValue)
                .reduce(0, Math::addExact);
    }

    /** mu: the price of a unit of weight left undone, of a class from 1. */
    long undone(int urgency) {
        return urgency <= list.undone().size() ? list.undone().get(urgency - 1) : 0;
    }
}
