package bitterend.packing.loads;

/** A statement that every plan keeps or breaks: where the tree branches. */
sealed interface Decision {
    /** Leaves only the plans of a domain that keep it, or that break it. */
    void narrow(Domain domain, boolean holds, LoadModel model);

    /** The load of a run is so many cells at most; at most none: the run is not touched. */
    record LoadAtMost(int run, int cells) implements Decision {
        @Override
        public void narrow(Domain domain, boolean holds, LoadModel model) {
            if (holds) {
                domain.most[run] = Math.min(domain.most[run], cells);
            } else {
                domain.least[run] = Math.max(domain.least[run], cells + 1);
            }
        }
    }

    /** A set takes a holder. */
    record SetOn(int set, int holder) implements Decision {
        @Override
        public void narrow(Domain domain, boolean holds, LoadModel model) {
            if (holds) {
                domain.holders[set] &= 1L << holder;
                model.sets[set].items.forEach(item -> domain.mostUndone[item.index] = 0);
            } else {
                domain.holders[set] &= ~(1L << holder);
            }
        }
    }

    /** An order takes a lot. */
    record OrderTakes(int order, int lot) implements Decision {
        @Override
        public void narrow(Domain domain, boolean holds, LoadModel model) {
            if (holds) {
                domain.mustLots[order] |= 1 << lot;
            } else {
                domain.mayLots[order] &= ~(1 << lot);
            }
        }
    }

    /** So many of an item at most stay undone. */
    record UndoneAtMost(int item, int count) implements Decision {
        @Override
        public void narrow(Domain domain, boolean holds, LoadModel model) {
            if (holds) {
                domain.mostUndone[item] = Math.min(domain.mostUndone[item], count);
            } else {
                domain.leastUndone[item] = Math.max(domain.leastUndone[item], count + 1);
            }
        }
    }

    /** So many of an item at most are cut from a run. */
    record CopiesAtMost(int item, int run, int count) implements Decision {
        @Override
        public void narrow(Domain domain, boolean holds, LoadModel model) {
            Item cut = model.items[item];
            int least = domain.leastCopies(run, cut);
            int most = domain.mostCopies(run, cut);
            domain.limitCopies(
                    run, item, holds ? least : Math.max(least, count + 1), holds ? Math.min(most, count) : most);
        }
    }
}
