package bitterend.work;

import bitterend.exchange.PlanFacts;
import bitterend.exchange.PlanFolder;
import bitterend.packing.check.PlanChecker;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the checker made of plan files that this process looked at, by the SHA-256 of the file: a file that says all that its plan
 * was made from is the same question each time, and at the bench it is asked at every cut. What the shop is like now is no
 * part of it.
 */
final class CheckedPlans {
    private static final int MOST = 8;

    private static final Map<String, PlanChecker.Verdict> CHECKED = new LinkedHashMap<>(MOST, 1, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, PlanChecker.Verdict> eldest) {
            return size() > MOST;
        }
    };

    private CheckedPlans() {}

    static PlanChecker.Verdict verdict(PlanFolder.Kept kept, PlanFacts.Whole facts) {
        synchronized (CHECKED) {
            PlanChecker.Verdict known = CHECKED.get(kept.digest());
            if (known != null) {
                return known;
            }
        }
        PlanChecker.Verdict made =
                PlanChecker.verdict(facts.problem(), kept.document().plan());
        synchronized (CHECKED) {
            CHECKED.put(kept.digest(), made);
        }
        return made;
    }
}
