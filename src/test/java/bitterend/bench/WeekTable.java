package bitterend.bench;

import bitterend.bench.WeekRack.Count;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** What each policy came to against the first of them, by rope and over all ropes, with standard errors. */
final class WeekTable {
    private final PrintWriter out;
    private final List<WeekPolicy> policies;
    private final List<List<Row>> rows = new ArrayList<>();

    WeekTable(PrintWriter out, List<WeekPolicy> policies) {
        this.out = out;
        this.policies = policies;
        policies.forEach(policy -> rows.add(new ArrayList<>()));
        out.println(
                "rope\tpolicy\tpieces a day\tcost %\t+-\tcash %\tscrap m\tof metres %\tscrap %\tleast %\tfetches a day\tfetches %"
                        + "\tcoils\tlate %\tfirst class late %\tspliced late %");
    }

    /**
     * What one policy came to on one draw.
     *
     * @param money paid until the last day of the run-out, less the worth of the coils then
     * @param count of the days of the policy
     * @param pieces that had to be cut on those days
     * @param first how many of them were rush
     * @param metres of them, in mm
     */
    record Came(long money, Count count, long pieces, long first, long metres) {}

    /** One policy on one rope: means over its draws; differences against the first policy. */
    private record Row(
            double cost,
            double error,
            double cash,
            double scrap,
            double least,
            double fetches,
            double metres,
            double days,
            double coils,
            double late,
            double lateFirst,
            double spliceLate,
            double pieces,
            double first) {
        /** Scrap that another way of planning could have avoided. */
        double beyond() {
            return scrap - least;
        }

        boolean isBetter() {
            return error > 0 && cost < -2 * error;
        }

        boolean isWorse() {
            return error > 0 && cost > 2 * error;
        }
    }

    /** @param draws for each draw what each policy came to */
    void rope(WeekRope rope, List<List<Came>> draws) {
        Row reference = row(rope, draws, 0);
        for (int policy = 0; policy < policies.size(); policy++) {
            Row row = row(rope, draws, policy);
            rows.get(policy).add(row);
            print(rope.name(), policy, row, reference);
        }
        out.flush();
    }

    private static Row row(WeekRope rope, List<List<Came>> draws, int policy) {
        List<Double> costs = new ArrayList<>();
        List<Double> cash = new ArrayList<>();
        for (List<Came> draw : draws) {
            Came came = draw.get(policy);
            Came first = draw.get(0);
            double bare = rope.price().millisPerMetre() * (came.metres() / 1000.0) / 100;
            costs.add((came.money() - first.money()) / bare);
            cash.add((came.count().cash - first.count().cash) / bare);
        }
        double metres = sum(draws, policy, came -> came.metres() / 1000.0);
        return new Row(
                mean(costs),
                error(costs),
                mean(cash),
                sum(draws, policy, came -> came.count().scrap / 1000.0),
                LeastScrap.percent(rope) / 100 * metres,
                sum(draws, policy, came -> came.count().fetches),
                metres,
                sum(draws, policy, came -> came.count().days),
                sum(draws, policy, came -> came.count().coilDays),
                sum(draws, policy, came -> came.count().late),
                sum(draws, policy, came -> came.count().lateFirst),
                sum(draws, policy, came -> came.count().spliceLate),
                sum(draws, policy, Came::pieces),
                sum(draws, policy, Came::first));
    }

    private static double sum(List<List<Came>> draws, int policy, ToDoubleFunction<Came> of) {
        return draws.stream()
                .mapToDouble(draw -> of.applyAsDouble(draw.get(policy)))
                .sum();
    }

    private void print(String rope, int policy, Row row, Row reference) {
        out.println(String.format(
                Locale.ROOT,
                "%s\t%s\t%.2f\t%.2f\t%.2f\t%.2f\t%.1f\t%.2f\t%.0f\t%.2f\t%.3f\t%.0f\t%.1f\t%.3f\t%.3f\t%.2f",
                rope,
                policies.get(policy).name(),
                row.pieces() / row.days(),
                row.cost(),
                row.error(),
                row.cash(),
                row.scrap(),
                percent(row.scrap(), row.metres()),
                percent(row.scrap() - reference.scrap(), reference.scrap()),
                percent(row.least(), row.metres()),
                row.fetches() / row.days(),
                percent(row.fetches() - reference.fetches(), reference.fetches()),
                row.coils() / row.days(),
                percent(row.late(), row.pieces()),
                percent(row.lateFirst(), row.first()),
                percent(row.spliceLate(), row.pieces())));
    }

    /** Costs are means of ropes, their error by what ropes differ; metres, fetches and pieces are summed over all. */
    void total() {
        for (int policy = 0; policy < policies.size(); policy++) {
            print("all", policy, together(rows.get(policy)), together(rows.get(0)));
        }
        for (int policy = 1; policy < policies.size(); policy++) {
            List<Row> each = rows.get(policy);
            List<Row> first = rows.get(0);
            List<Double> fetches = new ArrayList<>();
            List<Double> scrap = new ArrayList<>();
            for (int i = 0; i < each.size(); i++) {
                fetches.add(percent(
                        each.get(i).fetches() - first.get(i).fetches(),
                        first.get(i).fetches()));
                scrap.add(percent(
                        each.get(i).scrap() - first.get(i).scrap(), first.get(i).scrap()));
            }
            out.println(String.format(
                    Locale.ROOT,
                    "%s: cheaper beyond two standard errors on %d of %d ropes, dearer on %d; error of the mean within draws"
                            + " %.2f; means of ropes: fetches %.0f +- %.0f %%, scrap %.0f +- %.0f %%; scrap in all beyond the"
                            + " least %.0f %%",
                    policies.get(policy).name(),
                    each.stream().filter(Row::isBetter).count(),
                    each.size(),
                    each.stream().filter(Row::isWorse).count(),
                    Math.sqrt(each.stream()
                                    .mapToDouble(row -> row.error() * row.error())
                                    .sum())
                            / each.size(),
                    mean(fetches),
                    error(fetches),
                    mean(scrap),
                    error(scrap),
                    percent(sum(each, Row::scrap) - sum(first, Row::scrap), sum(first, Row::beyond))));
        }
    }

    private static Row together(List<Row> each) {
        List<Double> costs = each.stream().map(Row::cost).toList();
        return new Row(
                mean(costs),
                error(costs),
                mean(each.stream().map(Row::cash).toList()),
                sum(each, Row::scrap),
                sum(each, Row::least),
                sum(each, Row::fetches),
                sum(each, Row::metres),
                sum(each, Row::days),
                sum(each, Row::coils),
                sum(each, Row::late),
                sum(each, Row::lateFirst),
                sum(each, Row::spliceLate),
                sum(each, Row::pieces),
                sum(each, Row::first));
    }

    private static double sum(List<Row> each, ToDoubleFunction<Row> of) {
        return each.stream().mapToDouble(of).sum();
    }

    private static double percent(double part, double whole) {
        return whole == 0 ? 0 : 100 * part / whole;
    }

    private static double mean(List<Double> each) {
        return each.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    private static double error(List<Double> each) {
        double mean = mean(each);
        double squares =
                each.stream().mapToDouble(one -> (one - mean) * (one - mean)).sum();
        return each.size() < 2 ? 0 : Math.sqrt(squares / (each.size() - 1) / each.size());
    }
}
