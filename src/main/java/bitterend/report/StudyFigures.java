package bitterend.report;

import bitterend.buying.steady.Figure;
import bitterend.buying.steady.LeadTime;
import bitterend.buying.steady.SteadyVerdict;
import bitterend.buying.steady.WayFound;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.LongFunction;
import java.util.stream.Collectors;

/** The figures of one rope's study as they are printed: a value, and below it from where to where it may be. */
final class StudyFigures {
    private static final int DIGITS_OF_LATE = 2;

    private final Figures figures;
    private final SteadyVerdict verdict;
    private final BuyWords words;

    StudyFigures(Figures figures, SteadyVerdict verdict) {
        this.figures = figures;
        this.verdict = verdict;
        words = new BuyWords(figures, verdict.study().offers());
    }

    BuyWords words() {
        return words;
    }

    /** {@code 200 m}; {@code 200 m, stopgap 100 m}. */
    String sizes(WayFound found) {
        return found.way().rules().stream()
                .map(rule -> words.size(rule.size().offer()))
                .collect(Collectors.joining(", stopgap "));
    }

    /** The lengths below which its sizes are ordered, each with its ends, one below the other. */
    String points(WayFound found) {
        return found.points().stream()
                .map(point -> whole(point.value(), RoundingMode.CEILING)
                        + "\n" + whole(point.low(), RoundingMode.FLOOR)
                        + "\n- " + whole(point.high(), RoundingMode.CEILING))
                .collect(Collectors.joining("\n"));
    }

    private String whole(long mm, RoundingMode rounding) {
        return figures.bareWhole(new Length(mm), rounding);
    }

    /** How many reels at a time, each beside its length. */
    String numbers(WayFound found) {
        return found.way().rules().stream()
                .map(rule -> Integer.toString(rule.reels()))
                .collect(Collectors.joining("\n\n\n"));
    }

    /** How long each size is on its way: {@code 200 m 14 to 19 days; 500 m 21 days, and usually 3 more}. */
    String leads() {
        return verdict.study().sizes().stream()
                .map(size -> words.size(size.offer()) + " " + lead(size.lead()))
                .collect(Collectors.joining("; "));
    }

    private static String lead(LeadTime lead) {
        int most = lead.days() + lead.spread();
        return (lead.spread() > 0 ? lead.days() + " to " : "")
                + FindingsPage.count(most, "day")
                + (lead.late() > 0 ? ", and usually " + lead.late() + " more" : "");
    }

    String weeks(Figure mm) {
        return withEnds(mm, each -> words.tenths(verdict.weekTenths(each)));
    }

    String tied(WayFound found) {
        return withEnds(found.tied(), millis -> words.bare(new Cost(millis)));
    }

    /** Late pieces of a hundred. */
    String late(WayFound found) {
        Figure late = found.late();
        if (late.value() == 0) {
            return late.known() ? "none,\nbelow " + perHundred(late.high()) : "none\n?";
        }
        return withEnds(late, StudyFigures::perHundred);
    }

    static String perHundred(long perTenThousand) {
        BigDecimal share = BigDecimal.valueOf(perTenThousand, DIGITS_OF_LATE);
        return share.setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    String cost(WayFound found) {
        return withEnds(found.byMetre(), this::byLength);
    }

    /** What it costs more by the metre or foot than the chosen one. */
    String more(WayFound found) {
        Figure more = found.more();
        if (found.standing() == WayFound.Standing.CHOSEN) {
            return "-";
        }
        if (!more.known()) {
            return byLength(more.value()) + "\n?";
        }
        return more.mayBeNothing()
                ? "not seen,\nbelow " + byLength(Math.max(-more.low(), more.high()))
                : withEnds(more, this::byLength);
    }

    String byLength(long millisByMetre) {
        return words.perLength(new Cost(millisByMetre));
    }

    /** What choosing it costs more in a year. */
    String aYear(WayFound found) {
        long metres = found.year().used().mm() / 1_000;
        return withEnds(found.more(), millis -> words.bare(new Cost(millis * metres)));
    }

    /** Ends below nothing are set off by words, since a dash before a minus cannot be read. */
    static String withEnds(Figure figure, LongFunction<String> text) {
        String low = text.apply(figure.low());
        String high = text.apply(figure.high());
        String ends = figure.low() < 0 ? "\nfrom " + low + "\nto " + high : "\n" + low + "\n- " + high;
        return text.apply(figure.value()) + (figure.known() ? ends : "\n?");
    }
}
