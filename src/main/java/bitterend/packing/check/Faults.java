package bitterend.packing.check;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Words;
import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong. */
final class Faults {
    private final List<Fault> all = new ArrayList<>();

    void add(Check check, String where, String sentence) {
        all.add(new Fault(check, where, sentence));
    }

    void unless(boolean kept, Check check, String where, String sentence) {
        if (!kept) {
            add(check, where, sentence);
        }
    }

    void compare(Check check, String where, String what, Length stated, Length derived) {
        unless(stated.equals(derived), check, where, says(what, Words.of(stated), Words.of(derived)));
    }

    void compare(Check check, String where, String what, Cost stated, Cost derived) {
        unless(
                stated.equals(derived),
                check,
                where,
                says(what, "" + stated.millis(), derived.millis() + " (1/1000 minor units)"));
    }

    static String says(String what, String stated, String derived) {
        return what + ": the plan says " + stated + ", it is " + derived;
    }

    List<Fault> all() {
        return List.copyOf(all);
    }
}
