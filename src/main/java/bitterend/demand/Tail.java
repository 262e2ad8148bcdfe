package bitterend.demand;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.LayoutMark;
import bitterend.catalogue.Rope;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.Kind;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Tucking;
import bitterend.catalogue.Yardsticks;
import bitterend.measure.FineLength;
import java.util.List;

/** The tail of an end and its tucks, as the row asks for and the order changes. */
final class Tail {
    private Tail() {}

    /** The tail that the order states, else that of the row. */
    static Allowance of(Termination termination, EndSpec.Options options) {
        return options.tail().isNothing() ? usual(termination, options) : options.tail();
    }

    /** The tail of the row; tucks tapered away leave no projection. */
    static Allowance usual(Termination termination, EndSpec.Options options) {
        Allowance tail = termination.allowance(What.TAIL);
        if (options.tapered() || termination.tucking().projection().isNothing()) {
            return tail;
        }
        return tail.plus(termination.tucking().projection().terms());
    }

    /**
     * The margin of the row; none where the order states a tail that is longer by as much: the 24 diameters that a handbook
     * prints for a double braid need no 3 diameters on top.
     */
    static Allowance margin(Termination termination, EndSpec.Options options, Yardsticks yardsticks, boolean twin) {
        Allowance margin = termination.allowance(twin ? What.MARGIN_OF_TWO : What.MARGIN);
        FineLength with = usual(termination, options).length(yardsticks).plus(margin.length(yardsticks));
        return !options.tail().isNothing() && options.tail().length(yardsticks).compareTo(with) >= 0
                ? Allowance.NOTHING
                : margin;
    }

    /** Whether an order may state a longer tail: not where marks of the row are set without regard to it. */
    static boolean mayBeLonger(Termination termination) {
        List<LayoutMark> marks = termination.layout().marks();
        boolean marked = marks.isEmpty()
                || marks.stream()
                        .anyMatch(mark -> mark.name().equals(LayoutMaker.TAIL_MARK)
                                && mark.distance().text().equals("1 tail"));
        return marked
                && termination.kind() != Kind.JOIN
                && !termination.allowance(What.TAIL).isNothing();
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
