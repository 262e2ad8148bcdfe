package bitterend.bench;

import bitterend.bench.peers.Outcome;
import bitterend.measure.Cost;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/** The lines of {@code .ci/bench peers}: one for each kind of day and way. */
final class PeersTable {
    private static final List<String> HEAD = List.of(
            "pieces",
            "way",
            "days",
            "plans",
            "refused",
            "differs",
            "gap_median_%",
            "gap_max_%",
            "proven_best_%",
            "best_bound",
            "s_to_1_%",
            "s_to_0.1_%",
            "s_to_0.01_%");
    private static final List<Double> GAPS = List.of(1.0, 0.1, 0.01);
    /** No smaller difference can be paid. */
    private static final long COIN = Cost.MILLIS_PER_MINOR;

    private final PrintWriter out;

    PeersTable(PrintWriter out) {
        this.out = out;
    }

    /**
     * A way on one day, against the best bound that any way proved.
     *
     * @param planned whether it came to a plan
     * @param refused by the checker
     * @param differs its model made the plan cheaper than it is
     * @param gap cost less bound in per cent of the rope in the pieces; infinite without a plan
     * @param proven the gap is less than the smallest coin
     * @param bounds whether no way proved a higher bound
     * @param seconds to each of the gaps printed; infinite where it was not reached
     */
    record Line(
            boolean planned,
            boolean refused,
            boolean differs,
            double gap,
            boolean proven,
            boolean bounds,
            List<Double> seconds) {
        /** The better plan, whichever bound and time is best: what someone gets who knows which to ask. */
        Line orBetter(Line other) {
            List<Double> soonest = new ArrayList<>();
            for (int i = 0; i < seconds.size(); i++) {
                soonest.add(Math.min(seconds.get(i), other.seconds.get(i)));
            }
            return new Line(
                    planned || other.planned,
                    refused || other.refused,
                    differs || other.differs,
                    Math.min(gap, other.gap),
                    proven || other.proven,
                    bounds || other.bounds,
                    soonest);
        }
    }

    void head() {
        out.println(String.join("\t", HEAD));
        out.flush();
    }

    /** All ways on one day. */
    static Map<String, Line> lines(Map<String, PeerTrial.Tried> tried, Cost inPieces) {
        long best = tried.values().stream()
                .filter(PeerTrial.Tried::planned)
                .mapToLong(way -> way.cost().millis())
                .min()
                .orElse(0);
        long highest = tried.values().stream()
                .mapToLong(way -> way.bound().millis())
                .max()
                .orElse(0);
        // A bound may be above a plan by as much as a solver's floating point.
        long bound = Math.min(best, highest);
        Map<String, Line> lines = new LinkedHashMap<>();
        tried.forEach((title, way) -> lines.put(title, line(way, bound, inPieces.millis())));
        return lines;
    }

    private static Line line(PeerTrial.Tried way, long bound, long inPieces) {
        long avoidable = way.cost().millis() - bound;
        List<Double> seconds = GAPS.stream()
                .map(gap -> way.steps().stream()
                        .filter(step -> 100.0 * (step.cost() - bound) / inPieces <= gap)
                        .mapToDouble(Outcome.Step::seconds)
                        .min()
                        .orElse(Double.POSITIVE_INFINITY))
                .toList();
        return new Line(
                way.planned(),
                way.refused(),
                way.differs(),
                way.planned() ? 100.0 * Math.max(0, avoidable) / inPieces : Double.POSITIVE_INFINITY,
                way.planned() && avoidable < COIN,
                bound > 0 && way.bound().millis() > bound - COIN,
                seconds);
    }

    /** One line for each way, over all days. */
    void print(String pieces, List<Map<String, Line>> days) {
        for (String title : days.get(0).keySet()) {
            List<Line> ofWay = days.stream()
                    .map(day -> Objects.requireNonNull(day.get(title)))
                    .toList();
            out.println(pieces + "\t" + title + "\t" + figures(ofWay));
        }
        out.flush();
    }

    private static String figures(List<Line> lines) {
        Percentiles gap = all(lines, Line::gap);
        List<String> cells = new ArrayList<>(List.of(
                "" + lines.size(),
                "" + lines.stream().filter(Line::planned).count(),
                "" + lines.stream().filter(Line::refused).count(),
                "" + lines.stream().filter(Line::differs).count(),
                figure("%.4f", gap.median()),
                figure("%.4f", gap.most()),
                figure("%.0f", 100.0 * lines.stream().filter(Line::proven).count() / lines.size()),
                "" + lines.stream().filter(Line::bounds).count()));
        for (int i = 0; i < GAPS.size(); i++) {
            int at = i;
            cells.add(figure("%.2f", all(lines, line -> line.seconds().get(at)).median()));
        }
        return String.join("\t", cells);
    }

    private static Percentiles all(List<Line> lines, ToDoubleFunction<Line> figure) {
        return new Percentiles(
                lines.stream().map(line -> figure.applyAsDouble(line)).toList());
    }

    private static String figure(String format, double figure) {
        return Double.isFinite(figure) ? String.format(Locale.ROOT, format, figure) : "-";
    }

    /** What a way came to on one day. */
    void tell(long seed, int pieces, String title, PeerTrial.Tried way, Line line) {
        String steps = way.steps().stream()
                .sorted(Comparator.comparingDouble(Outcome.Step::seconds))
                .map(step ->
                        String.format(Locale.ROOT, "%.2f@%.2f", DaysTable.money(new Cost(step.cost())), step.seconds()))
                .reduce((a, b) -> b)
                .orElse("no plan");
        out.printf(
                Locale.ROOT,
                "  %d pieces, seed %d\t%s\tcost %.2f\tbound %.2f\tgap %s %%\tlast %s%s%s%n",
                pieces,
                seed,
                title,
                DaysTable.money(way.cost()),
                DaysTable.money(way.bound()),
                figure("%.4f", line.gap()),
                steps,
                way.refused() ? "\tREFUSED" : "",
                way.differs() ? "\tMODEL DIFFERS" : "");
        out.flush();
    }
}
