package bitterend.buying;

import java.util.Comparator;
import java.util.List;

/**
 * What a study found.
 *
 * @param study the question
 * @param scenarios how many were worked out
 * @param reporting how many of them report; the others chose
 * @param results every way to buy, the chosen one first, then by cost
 * @param weeksToSettle weeks of history at which the closest rival would be told from the chosen one; 0 when it is told
 *     already, or is as cheap
 */
public record Verdict(Study study, int scenarios, int reporting, List<Result> results, long weeksToSettle) {
    /** Below half a year of weeks a history is thin; common practice, no source. */
    public static final int THIN_BELOW_WEEKS = 26;

    public Verdict {
        results = List.copyOf(results);
    }

    public Result chosen() {
        return results.get(0);
    }

    /** Ways to buy that cannot be told from the chosen one. */
    public List<Result> ties() {
        return results.stream().filter(Result::isTied).toList();
    }

    /** Of the chosen one and its ties the one with the fewest sizes, then the cheapest. */
    public Result simplest() {
        return results.stream()
                .filter(result -> result.standing() != Standing.DEARER)
                .min(Comparator.<Result>comparingInt(
                                result -> result.option().offers().size())
                        .thenComparing(Result::more))
                .orElseThrow();
    }

    /** The dearest single size: what the wrong choice costs. */
    public Result worst() {
        return results.stream().max(Comparator.comparing(Result::more)).orElseThrow();
    }

    public boolean isThin() {
        return study.weeks().size() < THIN_BELOW_WEEKS;
    }
}
