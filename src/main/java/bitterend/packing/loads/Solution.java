package bitterend.packing.loads;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Values of the linear program. */
final class Solution {
    private static final double SMALL = 1e-6;

    private final double[] values;
    private final List<Share> shares = new ArrayList<>();

    /** A draw and how much of its reel is cut by it. */
    record Share(Pattern pattern, double value) {}

    Solution(Program program, double[] values) {
        this.values = values;
        for (int p = 0; p < program.patterns().size(); p++) {
            double value = values[program.column(p)];
            if (value > SMALL) {
                shares.add(new Share(program.patterns().get(p), value));
            }
        }
    }

    /** Draws with their values, those of zero left out. */
    List<Share> shares() {
        return shares;
    }

    /** The draws that the values come to where copies and loads are whole, though draws may be cut in part. */
    List<Pattern> means(LoadModel model) {
        Map<Integer, Map<List<Integer>, Double>> means = new TreeMap<>();
        for (Share share : shares) {
            Pattern pattern = share.pattern();
            Map<List<Integer>, Double> ofReel = means.computeIfAbsent(pattern.reel, reel -> new LinkedHashMap<>());
            for (int t = 0; t < pattern.item.length; t++) {
                ofReel.merge(List.of(pattern.run[t], pattern.item[t]), share.value() * pattern.count[t], Double::sum);
            }
        }
        List<Pattern> draws = new ArrayList<>();
        means.forEach((reel, takes) -> {
            Map<List<Integer>, Integer> whole = new LinkedHashMap<>();
            takes.forEach((at, mean) -> {
                if (mean > 0.5) {
                    whole.put(at, (int) Math.round(mean));
                }
            });
            if (fits(model, model.reels[reel], whole)) {
                draws.add(DrawsToPacking.draw(model, model.reels[reel], whole));
            }
        });
        return draws;
    }

    /** Where the program broke rows rather than keep them, more may be cut than there is. */
    private static boolean fits(LoadModel model, ReelOfRuns reel, Map<List<Integer>, Integer> takes) {
        int[] loads = new int[reel.runs.length];
        takes.forEach((at, count) -> loads[at.get(0)] += model.items[at.get(1)].cells[reel.index] * count);
        for (int j = 0; j < loads.length; j++) {
            if (loads[j] > reel.runs[j].room) {
                return false;
            }
        }
        return true;
    }

    double value(int column) {
        return values[column];
    }
}
