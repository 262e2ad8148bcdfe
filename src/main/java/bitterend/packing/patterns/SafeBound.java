package bitterend.packing.patterns;

import java.util.Optional;

/** Adds up what prices prove, exactly; nothing is claimed where the numbers would not fit. */
final class SafeBound {
    private final Task task;
    private final Leaving leaving;

    SafeBound(Task task, Leaving leaving) {
        this.task = task;
        this.leaving = leaving;
    }

    /**
     * @param scale units of price in one unit of cost
     * @param price of each item
     * @param mu price of one unit of weight left out, used with a limit only
     * @param net for every kind, at least the best worth less scaled cost over all ways to draw from it
     * @param demand what is to be planned
     * @param least reels of each kind that are used at least
     * @param most reels of each kind that are used at most
     */
    Optional<Bound> of(long scale, long[] price, long mu, long[] net, int[] demand, int[] least, int[] most) {
        try {
            if (task.classical()) {
                return Optional.of(farley(scale, price, net[0], demand));
            }
            long sum = pieces(scale, price, mu, demand);
            for (int k = 0; k < net.length; k++) {
                sum = Math.subtractExact(sum, Math.multiplyExact(net[k], net[k] > 0 ? most[k] : least[k]));
            }
            return Optional.of(new Bound(scale, price, mu, sum));
        } catch (ArithmeticException tooLarge) {
            return Optional.empty();
        }
    }

    private long pieces(long scale, long[] price, long mu, int[] demand) {
        long sum = 0;
        for (int i = 0; i < price.length; i++) {
            sum = Math.addExact(sum, Math.multiplyExact(Math.min(price[i], ceiling(i, scale, mu)), demand[i]));
        }
        return Math.subtractExact(sum, Math.multiplyExact(mu, leaving.weight()));
    }

    private long ceiling(int i, long scale, long mu) {
        return switch (leaving.mode()) {
            case NEVER -> Long.MAX_VALUE;
            case PRICED -> Math.multiplyExact(scale, task.weight[i]);
            case LIMITED -> Math.multiplyExact(mu, task.weight[i]);
        };
    }

    /** With one kind without limit the scale is chosen so that no way to draw is worth more than its cost. */
    private Bound farley(long scale, long[] price, long net, int[] demand) {
        long opening = task.kinds[0].opening;
        long own = scale;
        if (net > 0) {
            own = Math.addExact(scale, (net + opening - 1) / opening);
        }
        return new Bound(own, price, 0, pieces(own, price, 0, demand));
    }
}
