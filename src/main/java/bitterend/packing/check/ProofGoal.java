package bitterend.packing.check;

import bitterend.measure.Cost;
import bitterend.packing.check.ProofDay.Line;
import java.util.List;

/**
 * What a proof is about.
 *
 * @param urgency the class of urgency whose least weight is proven; 0 for money
 * @param scale units of a price to 1/1000 minor unit, or to a unit of weight
 * @param undone weight that may be left undone of each class, the first class first; where the least weight of a class is
 *     proven, of the classes before it
 */
record ProofGoal(int urgency, long scale, List<Long> undone) {
    ProofGoal {
        undone = List.copyOf(undone);
    }

    boolean isMoney() {
        return urgency == 0;
    }

    /** An amount of money in units of a price; nothing where money is not what counts. */
    long scaled(Cost cost) {
        return isMoney() ? Math.multiplyExact(cost.millis(), scale) : 0;
    }

    /** What a piece of a line costs when it is left undone. */
    long ofUndone(Line line, ReadPrices prices) {
        return Math.multiplyExact(line.weight(), price(line.urgency(), prices));
    }

    private long price(int urgencyOfPiece, ReadPrices prices) {
        if (!isMoney() && urgencyOfPiece >= urgency) {
            return urgencyOfPiece == urgency ? scale : 0;
        }
        return prices.undone(urgencyOfPiece);
    }
}
