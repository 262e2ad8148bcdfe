package bitterend.demand.calibration;

import bitterend.catalogue.EyeSpec;
import bitterend.demand.EndSpec;
import bitterend.demand.Measuring;
import bitterend.demand.TakeUp;
import java.util.ArrayList;
import java.util.List;

/** One assembly and the take-up it shows. */
record Shown(MeasuredAssembly measured, TakeUp takeUp) {

    /** How an assembly was measured; only like is averaged with like. */
    record Conditions(Measuring measuring, boolean beddedIn) {}

    /**
     * What tells ends of one termination apart that need not take up alike.
     *
     * @param ends how many ends an assembly shows together
     * @param lined whether the eye is made round a thimble
     * @param options tucks, taper and tail beyond the usual
     */
    record Make(int ends, boolean lined, EndSpec.Options options) {
        /** {@code soft, 5 tucks, two ends seen together}. */
        String words() {
            List<String> words = new ArrayList<>(List.of(lined ? "thimbled" : "soft"));
            if (options.tucks() > 0) {
                words.add(options.tucks() + " tucks");
            }
            if (options.tapered()) {
                words.add("tapered");
            }
            if (!options.tail().isNothing()) {
                words.add("tail of " + options.tail().text());
            }
            words.add(ends == 2 ? "two ends seen together" : "one end");
            return String.join(", ", words);
        }
    }

    Conditions conditions() {
        return new Conditions(measured.assembly().make().measuring(), measured.beddedIn());
    }

    Make make() {
        EndSpec end = takeUp.end();
        EndSpec.Options asked = end.options();
        return new Make(
                takeUp.ends(),
                end.eye() instanceof EyeSpec.OnThimble,
                new EndSpec.Options(asked.tucks(), asked.tapered(), "", "", asked.tail()));
    }

    long units() {
        return takeUp.together().units();
    }

    String splicer() {
        return measured.splicer();
    }

    String id() {
        return measured.id();
    }
}
