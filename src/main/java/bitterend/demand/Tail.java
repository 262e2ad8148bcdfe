package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Tucking;

/** The tail of an end and its tucks, as the row asks for and the order changes. */
final class Tail {
    private Tail() {}

    /** The tail; tucks tapered away leave no projection. */
    static Allowance of(Termination termination, EndSpec.Options options) {
        Allowance tail = termination.allowance(What.TAIL);
        if (options.tapered() || termination.tucking().projection().isNothing()) {
            return tail;
        }
        return tail.plus(termination.tucking().projection().terms());
    }

    /** How many tucks are made on all sides: those ordered or the least for the fibre, half tucks, and those that taper. */
    static int tucks(Termination termination, EndSpec.Options options, Rope rope) {
        Tucking tucking = termination.tucking();
        int full = full(termination, options, rope);
        return full
                + tucking.form().half()
                + (options.tapered() ? tucking.form().taper() : 0);
    }

    /** How many full tucks each strand makes on its side. */
    static int fullOnASide(Termination termination, EndSpec.Options options, Rope rope) {
        return full(termination, options, rope) / termination.tucking().form().sides();
    }

    /** How many full tucks are made on all sides. */
    static int full(Termination termination, EndSpec.Options options, Rope rope) {
        return options.tucks() == 0 ? termination.tucking().least(rope.fibre()) : options.tucks();
    }
}
