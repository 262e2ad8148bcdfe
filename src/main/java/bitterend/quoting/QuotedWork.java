package bitterend.quoting;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import java.util.List;

/**
 * What a quote that was filed said about its rope and its labour.
 *
 * @param request number of the request
 * @param ropes each rope once
 * @param lines its lines
 */
public record QuotedWork(String request, List<Drawn> ropes, List<QuotedLine> lines) {
    public QuotedWork {
        ropes = List.copyOf(ropes);
        lines = List.copyOf(lines);
    }

    /** Labour for all of it, setting up apart; 0 when none was stated. */
    public long minutes() {
        return lines.stream().mapToLong(QuotedLine::allMinutes).sum();
    }

    /** Whether it says of every line how much freight is in its rope: older versions filed none. */
    public boolean tellsFreight() {
        return lines.stream().allMatch(line -> line.within().isPresent());
    }

    /**
     * Rope for an order.
     *
     * @param rope id of the rope
     * @param pieces how many pieces
     * @param taken the pieces and their cut losses
     * @param drawn all rope drawn, scrap included
     * @param worth what was charged for rope, waste and reel handling
     */
    public record Drawn(String rope, int pieces, Length taken, Length drawn, Cost worth) {}
}
