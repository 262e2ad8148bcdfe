package bitterend.report;

import bitterend.buying.steady.SteadyStudy;
import bitterend.buying.steady.SteadyVerdict;
import java.util.IntSummaryStatistics;
import java.util.List;

/** What the figures of a study rest on. */
final class StudyAssumed {
    static final String NOT_LOOKED_AT =
            "Matched sets, certificates, substitutes; orders that bundle several ropes of one"
                    + " supplier, and the least that he sends; a piece wanted sooner or later than the week of its order; a reorder"
                    + " point of its own for each season; prices that change; customers who come or stay away; a lump larger than"
                    + " any recorded.";

    private final Figures figures;
    private final List<SteadyVerdict> verdicts;
    private final SteadyStudy study;

    /** There must be a verdict; the ropes of one study are asked the same. */
    StudyAssumed(Figures figures, List<SteadyVerdict> verdicts) {
        this.figures = figures;
        this.verdicts = verdicts;
        study = verdicts.get(0).study();
    }

    String when() {
        return "For " + study.day() + (study.start().today() ? ", from the rack there is" : "")
                + ". What is kept on the rack is to have rope for "
                + figures.percent(
                                study.goal().service().numerator(),
                                study.goal().service().denominator(),
                                1)
                        .replaceFirst("[.]0$", "")
                + " pieces of 100 in the week of their order, and no order is to last more than "
                + study.goal().mostWeeks() + " weeks.";
    }

    String reading() {
        return "Below each figure is from where to where it may be, nineteen times in twenty: chance and the few weeks"
                + " recorded together. \"Not seen\" is a difference that these weeks cannot show. The ends of \"order below\" are the lengths that would cover as many"
                + " of the weeks to come, had other weeks been recorded. \"Cost\" is by the length"
                + " that is used: reels with freight, opening and changing, interest and room, less what the rack gains.";
    }

    /** The weeks of the ropes, from the fewest to the most. */
    private String warmUp() {
        if (study.start().today()) {
            return "";
        }
        IntSummaryStatistics weeks =
                verdicts.stream().mapToInt(verdict -> verdict.study().warmUp()).summaryStatistics();
        return (weeks.getMin() == weeks.getMax() ? "" : weeks.getMin() + " to ") + weeks.getMax()
                + " weeks to warm up (half a year, and no less than twice the longest lead of the rope) and ";
    }

    private String start() {
        return study.start().today()
                ? "They start from what may be cut on " + study.day()
                        + ", what is on order and what is ordered and not cut;"
                        + " pieces that wait then are none of the late ones. What is there by chance favours the size that goes"
                        + " with it: the figures are of the weeks to come, and not of a shop in steady state."
                : "A rack that has warmed up is compared, not the rack of today, so that what is there by chance favours no"
                        + " size.";
    }

    List<String> plan() {
        SteadyVerdict first = verdicts.get(0);
        return List.of(
                first.scenarios() + " of " + study.size().scenarios() + " scenarios of "
                        + warmUp() + study.size().weeks() + " weeks that count, seed "
                        + study.size().seed() + "; the same orders for every choice. "
                        + (first.scenarios() - first.reporting()) + " of them chose, the other " + first.reporting()
                        + " report. " + start(),
                "Weeks of the past are taken whole. Where a season is seen, a week comes from about the same time of a year;"
                        + " where one year is above or below the last, older weeks are brought to the level of today, and no"
                        + " further.",
                "Orders go out at the end of a week, as many reels as it takes to be at the reorder point again, and are"
                        + " there after the lead of the offer, its spread, or what its supplier is usually late where that is more, counted in begun weeks;"
                        + " freight by order is counted as though one rope were ordered alone. A piece with no rope in the"
                        + " week of its order is late and waits.",
                "Pieces are cut where they cost least by the coil curve of the week. The quick division of a week costs about"
                        + " 0.3 % of its rope more than the engine of the day does, for every choice alike.");
    }
}
