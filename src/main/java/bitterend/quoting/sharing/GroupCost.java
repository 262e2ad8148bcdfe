package bitterend.quoting.sharing;

/**
 * What a group would pay if it were alone, as far as it is known, in 1/1000 minor unit.
 *
 * @param proven no way of cutting costs less
 * @param found what the best known way costs
 */
record GroupCost(long proven, long found) {
    GroupCost {
        if (proven > found) {
            throw new IllegalArgumentException("proven " + proven + " above found " + found);
        }
    }

    boolean isExact() {
        return proven == found;
    }

    GroupCost plus(GroupCost other) {
        return new GroupCost(Math.addExact(proven, other.proven), Math.addExact(found, other.found));
    }
}
