package bitterend.packing.loads;

/** What whole prices prove of a domain: what the work pays, less what the reels can earn. */
final class NodeBound {
    private NodeBound() {}

    /** The bound, in units; {@link WorkBound#IMPOSSIBLE} where no plan is left at all. */
    static long of(LoadModel model, Domain domain, Duals duals, ReelOffer[] offers, int stage) {
        long sum = new WorkBound(model, domain, duals, stage).paid();
        if (sum >= WorkBound.IMPOSSIBLE) {
            return sum;
        }
        for (ReelOffer offer : offers) {
            if (offer.worth() <= ReelOffer.IMPOSSIBLE) {
                return WorkBound.IMPOSSIBLE;
            }
            sum -= offer.worth();
        }
        return sum;
    }
}
