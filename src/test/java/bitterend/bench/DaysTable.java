package bitterend.bench;

import bitterend.measure.Cost;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/** The lines of {@code .ci/bench days}: one for each kind of day and way of packing. */
final class DaysTable {
    private static final List<String> HEAD = List.of(
            "pieces",
            "way",
            "days",
            "other_work",
            "refused",
            "mean_cost",
            "avoidable_median",
            "avoidable_p95",
            "split_median",
            "of_best_fit_median_%",
            "of_best_fit_p95_%",
            "gap_median_%",
            "gap_p95_%",
            "gap_max_%",
            "proven_best_%",
            "s_median",
            "s_max");

    private final PrintWriter out;
    private final boolean processor;

    DaysTable(PrintWriter out, boolean processor) {
        this.out = out;
        this.processor = processor;
    }

    void head() {
        out.println(String.join("\t", HEAD) + (processor ? "\tcpu_s_median\tcpu_s_max" : ""));
        out.flush();
    }

    /** One line for each way. */
    void lines(String pieces, List<Map<Way, DayTrial.Judged>> days) {
        for (Way way : Way.values()) {
            out.println(pieces + "\t" + way.title() + "\t" + figures(days, way));
        }
        out.flush();
    }

    /** The figures that a table of targets asks for, of the whole chain. */
    void targets(String kind, List<Map<Way, DayTrial.Judged>> days) {
        Percentiles gap = gaps(of(days, Way.BOTH));
        Percentiles share = shares(days, Way.BOTH);
        out.printf(
                Locale.ROOT,
                "targets, %s30-300 pieces, %d days, both: gap median %s %% (0.05), 95th %s %% (0.5);"
                        + " avoidable of best fit's median %s %% (5), 95th %s %% (30)%n",
                kind,
                days.size(),
                figure("%.4f", gap.median()),
                figure("%.4f", gap.at(0.95)),
                figure("%.2f", share.median()),
                figure("%.2f", share.at(0.95)));
        out.flush();
    }

    private String figures(List<Map<Way, DayTrial.Judged>> days, Way way) {
        List<DayTrial.Judged> plans = of(days, way);
        Percentiles cost = all(plans, plan -> money(plan.cost()));
        Percentiles avoidable = all(compared(plans), plan -> money(plan.avoidable()));
        Percentiles split = all(compared(plans), plan -> money(plan.acrossReels()));
        Percentiles share = shares(days, way);
        Percentiles gap = gaps(plans);
        long proven = plans.stream().filter(DayTrial.Judged::provenBest).count();
        List<String> cells = new ArrayList<>(List.of(
                "" + plans.size(),
                "" + (plans.size() - compared(plans).size()),
                "" + plans.stream().filter(DayTrial.Judged::refused).count(),
                figure("%.2f", cost.mean()),
                figure("%.2f", avoidable.median()),
                figure("%.2f", avoidable.at(0.95)),
                figure("%.2f", split.median()),
                figure("%.2f", share.median()),
                figure("%.2f", share.at(0.95)),
                figure("%.4f", gap.median()),
                figure("%.4f", gap.at(0.95)),
                figure("%.4f", gap.most()),
                figure("%.0f", 100.0 * proven / plans.size())));
        cells.addAll(seconds(all(plans, DayTrial.Judged::wall)));
        if (processor) {
            cells.addAll(seconds(all(plans, DayTrial.Judged::processor)));
        }
        return String.join("\t", cells);
    }

    private static List<String> seconds(Percentiles seconds) {
        return List.of(figure("%.3f", seconds.median()), figure("%.3f", seconds.most()));
    }

    private static List<DayTrial.Judged> of(List<Map<Way, DayTrial.Judged>> days, Way way) {
        return days.stream().map(day -> on(day, way)).toList();
    }

    /** Every way packs every day. */
    static DayTrial.Judged on(Map<Way, DayTrial.Judged> day, Way way) {
        return Objects.requireNonNull(day.get(way));
    }

    private static List<DayTrial.Judged> compared(List<DayTrial.Judged> plans) {
        return plans.stream().filter(DayTrial.Judged::compared).toList();
    }

    private static Percentiles gaps(List<DayTrial.Judged> plans) {
        return all(compared(plans), DayTrial.Judged::gap);
    }

    /** In per cent of what best fit could have avoided, on the days when it could have avoided anything. */
    private static Percentiles shares(List<Map<Way, DayTrial.Judged>> days, Way way) {
        List<Double> shares = new ArrayList<>();
        for (Map<Way, DayTrial.Judged> day : days) {
            DayTrial.Judged plan = on(day, way);
            DayTrial.Judged bestFit = on(day, Way.BEST_FIT);
            if (plan.compared() && bestFit.compared() && !bestFit.provenBest()) {
                shares.add(plan.percentOf(bestFit));
            }
        }
        return new Percentiles(shares);
    }

    private static Percentiles all(List<DayTrial.Judged> plans, ToDoubleFunction<DayTrial.Judged> figure) {
        return new Percentiles(
                plans.stream().map(plan -> figure.applyAsDouble(plan)).toList());
    }

    /** In the currency's major unit. */
    static double money(Cost cost) {
        return cost.millis() / (100.0 * Cost.MILLIS_PER_MINOR);
    }

    static String figure(String format, double figure) {
        return Double.isNaN(figure) ? "-" : String.format(Locale.ROOT, format, figure);
    }
}
