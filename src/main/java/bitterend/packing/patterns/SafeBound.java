package bitterend.packing.patterns;

import java.util.Optional;

/** Adds up what prices prove, exactly; nothing is claimed where the numbers would not fit. */
final class SafeBound {
    private final Instance instance;
    private final Rejection rejection;

    SafeBound(Instance instance, Rejection rejection) {
        this.instance = instance;
        this.rejection = rejection;
    }

    /**
     * @param scale units of price in one unit of cost
     * @param price of each item
     * @param mu price of one unit of weight left out, used with a limit only
     * @param reducedProfit for every kind, at least the best worth less scaled cost over all ways to draw from it
     * @param demand what is to be planned
     * @param least reels of each kind that are used at least
     * @param most reels of each kind that are used at most
     */
    Optional<Bound> of(long scale, long[] price, long mu, long[] reducedProfit, int[] demand, int[] least, int[] most) {
        try {
            if (instance.classical() && rejection.mode() == Rejection.Mode.NEVER) {
                return Optional.of(farley(scale, price, reducedProfit[0], demand));
            }
            long sum = pieces(scale, price, mu, demand);
            for (int k = 0; k < reducedProfit.length; k++) {
                sum = Math.subtractExact(
                        sum, Math.multiplyExact(reducedProfit[k], reducedProfit[k] > 0 ? most[k] : least[k]));
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
        return Math.subtractExact(sum, Math.multiplyExact(mu, rejection.weight()));
    }

    private long ceiling(int i, long scale, long mu) {
        return switch (rejection.mode()) {
            case NEVER -> Long.MAX_VALUE;
            case PRICED -> Math.multiplyExact(scale, instance.weight[i]);
            case LIMITED -> Math.multiplyExact(mu, instance.weight[i]);
        };
    }

    /** With one kind without limit and all pieces planned the scale is chosen so that no way to draw is worth more than its cost. */
    private Bound farley(long scale, long[] price, long reducedProfit, int[] demand) {
        long opening = instance.types[0].opening;
        long own = scale;
        if (reducedProfit > 0) {
            own = Math.addExact(scale, (reducedProfit + opening - 1) / opening);
        }
        return new Bound(own, price, 0, pieces(own, price, 0, demand));
    }
}
