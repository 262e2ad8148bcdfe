package bitterend.demand;

import bitterend.catalogue.Clips;
import bitterend.catalogue.Rope;
import bitterend.catalogue.Tucking;
import java.util.ArrayList;
import java.util.List;

/** What is counted on the bench instead of measured: tucks, clips, and what the row says besides. */
final class BenchCounts {
    /** What a count begins with that is done before the first tuck. */
    private static final String FIRST = "unlay ";

    private BenchCounts() {}

    static List<String> of(MadeEnd end, Rope rope) {
        List<String> further = end.termination().layout().counts();
        List<String> counts =
                new ArrayList<>(further.stream().filter(BenchCounts::isFirst).toList());
        if (!end.termination().tucking().isNone()) {
            counts.add(tucks(end, rope));
        }
        if (EndSafety.isBelowAdvised(end, rope)) {
            counts.add("advised: " + end.termination().tucking().advised().words());
        }
        if (end.yardsticks().counted().clips() > 0) {
            counts.addAll(clips(end, rope));
        }
        further.stream().filter(count -> !isFirst(count)).forEach(counts::add);
        return counts;
    }

    private static boolean isFirst(String count) {
        return count.startsWith(FIRST);
    }

    /** In a join each strand makes half of the number on its side. */
    private static String tucks(MadeEnd end, Rope rope) {
        Tucking.Form form = end.termination().tucking().form();
        int full = Tail.fullOnASide(end.termination(), end.spec().options(), rope);
        String words = full + " full tucks with each strand" + (form.sides() == 2 ? " on its side of the join" : "");
        if (form.half() > 0) {
            words += ", then " + form.half() + " with half of each strand";
        }
        return end.spec().options().tapered()
                ? words + ", then " + form.taper() / form.sides() + " tapered away"
                : words;
    }

    private static List<String> clips(MadeEnd end, Rope rope) {
        Clips clips = end.termination().layout().clips();
        String torque = clips.torque(rope.diameter())
                .map(step -> step.torque()
                        + (step.provenance().source().isEmpty()
                                ? ""
                                : " (" + step.provenance().source() + ")"))
                .orElse("as the clip maker states");
        return List.of(
                end.yardsticks().counted().clips() + " clips, saddles on the live part",
                "torque of the nuts: " + torque,
                "tighten again after the first load");
    }
}
