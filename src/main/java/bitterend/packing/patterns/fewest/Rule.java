package bitterend.packing.patterns.fewest;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Where to branch: no rule is the best for all, so that several race. */
enum Rule {
    /** The two longest pieces whose lying together is not settled. */
    LONGEST {
        @Override
        double score(double load, double broken) {
            return load;
        }
    },
    /** Long ones, better if that is open by much. */
    MIXED {
        @Override
        double score(double load, double broken) {
            return load * (0.2 + broken);
        }
    },
    /** Those of which that is open most. */
    BROKEN {
        @Override
        double score(double load, double broken) {
            return broken;
        }
    };

    /** Less than this is nothing. */
    private static final double TINY = 1e-6;
    /** No sum of reels is branched on that is so near a whole number: values may not be settled yet. */
    private static final double WHOLE = 1e-3;

    /**
     * @param load of the two pieces
     * @param broken how far the sum of reels is from a whole number
     */
    abstract double score(double load, double broken);

    /** The best decisions by this rule, the best first: of what is broken, where there is one leader of its length. */
    List<Decision> best(int most, ReelQuestion question, Program program, double[] shares) {
        Map<Decision, Double> sums = new TreeMap<>(Comparator.comparingInt(Decision::leader)
                .thenComparingInt(Decision::item)
                .thenComparingInt(Decision::copies));
        for (int c = 0; c < shares.length; c++) {
            if (shares[c] > TINY) {
                count(question, program.column(c), shares[c], sums);
            }
        }
        Map<Decision, Double> scores = new LinkedHashMap<>();
        sums.forEach((decision, sum) -> {
            double broken = Math.abs(sum - Math.rint(sum));
            double load = (double) (question.size[decision.leader()] + question.size[decision.item()]) / question.room;
            if (broken > WHOLE) {
                scores.put(decision, score(load, broken));
            }
        });
        return scores.entrySet().stream()
                .sorted(Map.Entry.<Decision, Double>comparingByValue().reversed())
                .limit(most)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static void count(ReelQuestion question, Column column, double share, Map<Decision, Double> sums) {
        if (question.count[column.leader()] > 1) {
            return;
        }
        for (int t = 1; t < column.item.length; t++) {
            for (int copies = 1; copies <= column.count[t]; copies++) {
                sums.merge(new Decision(column.leader(), column.item[t], copies), share, Double::sum);
            }
        }
    }
}
