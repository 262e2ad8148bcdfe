package bitterend.demand;

import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Units;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a tape shows: printed marks held against exact ones.
 *
 * @param units millimetres, or inches and sixteenths
 */
record Tape(Units units) {
    /**
     * Places from the cut end to the nearest step, and from mark to mark what lies between those on paper.
     *
     * @param rows of each mark its name, how far, from what, and how far from the cut end
     */
    boolean isSame(List<String[]> rows, List<JsonNode> marks) {
        Map<String, Long> places = new HashMap<>();
        boolean same = rows.size() == marks.size();
        for (int i = 0; same && i < rows.size(); i++) {
            String[] row = rows.get(i);
            JsonNode mark = marks.get(i);
            same = row[0].equals(mark.get("mark").asText())
                    && row[2].equals(mark.get("from").asText());
            long distance = exact(row[1]).units();
            same &= Math.abs(distance - exact(mark.get("distance").asText()).units()) <= step();
            String held = mark.path("fromCutEnd").asText("");
            same &= held.isEmpty() == row[3].isEmpty();
            if (same && !held.isEmpty()) {
                long place = exact(row[3]).units();
                same = steps(place) == steps(exact(held).units())
                        && place - places.getOrDefault(row[2], 0L) == distance;
                places.put(row[0], place);
            }
        }
        return same;
    }

    /** One millimetre or a sixteenth of an inch, in 1/10,000 mm. */
    long step() {
        return units == Units.METRIC ? 10_000 : 15_875;
    }

    /** To the nearest step. */
    long steps(long fine) {
        long size = (2 * Math.abs(fine) + step()) / (2 * step());
        return fine < 0 ? -size : size;
    }

    static FineLength exact(String text) {
        return LengthText.parseFine(text).value().orElseThrow(() -> new AssertionError("no length: " + text));
    }
}
