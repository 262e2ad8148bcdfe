package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Tucking;
import java.util.List;
import java.util.stream.Stream;

/** The tail of an end and its tucks, as the row asks for and the order changes. */
final class Tail {
    private Tail() {}

    /** The tail; tucks tapered away leave no projection. */
    static Allowance of(Termination termination, EndSpec.Options options) {
        Allowance tail = termination.allowance(What.TAIL);
        if (options.tapered() || termination.tucking().projection().isNothing()) {
            return tail;
        }
        List<Term> terms = Stream.concat(tail.terms().stream(), termination.tucking().projection().terms().stream())
                .toList();
        return new Allowance(terms, tail.provenance());
    }

    /** How many tucks are made: those ordered or the least for the fibre, and more to taper them away. */
    static int tucks(Termination termination, EndSpec.Options options, Rope rope) {
        Tucking tucking = termination.tucking();
        int full = options.tucks() == 0 ? tucking.least(rope.fibre()) : options.tucks();
        return options.tapered() ? full + tucking.taperTucks() : full;
    }
}
