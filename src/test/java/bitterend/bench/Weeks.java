package bitterend.bench;

import bitterend.bench.WeekRope.Ordered;
import bitterend.exchange.Settings;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * Days planned one by one against days planned as a week, on the same orders: some days one by one, so many by the policy,
 * some one by one again, so that the rack at the end counts for what it saves.
 */
@Command(name = "week")
final class Weeks implements Callable<Integer> {
    private static final int PAST_WEEKS = 104;
    private static final int WEEK = 5;
    private static final int WARM_UP = 60;
    private static final int RUN_OUT = 100;
    private static final int OTHER_PAST = 1_000;

    @Option(names = "--ropes")
    private int ropes = 24;

    @Option(names = "--days")
    private int days = 240;

    @Option(names = "--draws")
    private int draws = 3;

    @Option(names = "--horizon", split = ",")
    private List<Integer> horizons = List.of(5);

    @Option(names = "--brake", split = ",")
    private List<Integer> brakes = List.of(Settings.USUAL_BRAKE);

    @Option(names = "--known", split = ",")
    private List<Integer> known = List.of();

    @Option(names = "--anew")
    private boolean anew;

    @Option(names = "--short")
    private int shortBy;

    @Option(names = "--lead")
    private int lead = WEEK;

    @Option(names = "--late")
    private int late;

    /** At how many per cent of its hours the bench works; 0 where nobody counts them. */
    @Option(names = "--load")
    private int load;

    /** Only ropes with so many pieces a day. */
    @Option(names = "--busy")
    private double busy;

    @Option(names = "--work")
    private long work = 30;

    @Option(names = "--check")
    private boolean checked;

    @Option(names = "--only")
    private String only = "";

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Override
    public Integer call() {
        Map<String, Number> numbers = new LinkedHashMap<>();
        numbers.put("--ropes", ropes);
        numbers.put("--days", days);
        numbers.put("--draws", draws);
        numbers.put("--lead", lead);
        numbers.put("--work", work);
        numbers.forEach((name, number) -> Benchmarks.positive(spec, name, number));
        List<WeekPolicy> policies = policies();
        WeekTable table = new WeekTable(out(), policies);
        for (WeekRope rope : WeekRope.some(ropes)) {
            if (rope.name().contains(only) && rope.piecesADay() >= busy) {
                table.rope(rope, draws(rope, policies));
            }
        }
        table.total();
        return 0;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private List<WeekPolicy> policies() {
        List<WeekPolicy> policies = new ArrayList<>(List.of(WeekPolicy.DAY_BY_DAY));
        for (int horizon : horizons) {
            brakes.forEach(brake -> policies.add(WeekPolicy.looking(horizon, brake)));
            WeekPolicy week = WeekPolicy.looking(horizon, brakes.get(0));
            if (load > 0) {
                policies.add(week.asAsked());
            }
            if (anew) {
                policies.add(week.anew());
            }
            known.forEach(ahead -> policies.add(week.knowing(ahead)));
        }
        return policies;
    }

    /** For each draw of the orders what each policy came to, in their order. */
    private List<List<WeekTable.Came>> draws(WeekRope rope, List<WeekPolicy> policies) {
        List<List<WeekTable.Came>> all = new ArrayList<>();
        for (int draw = 0; draw < draws; draw++) {
            List<Ordered> orders = rope.orders(draw, WARM_UP + days + RUN_OUT);
            List<WeekTable.Came> came = new ArrayList<>();
            for (WeekPolicy policy : policies) {
                came.add(live(rope, draw, orders, policy));
            }
            all.add(came);
        }
        return all;
    }

    private WeekTable.Came live(WeekRope rope, int draw, List<Ordered> orders, WeekPolicy policy) {
        List<Ordered> past = rope.orders(OTHER_PAST + draw, PAST_WEEKS * WEEK);
        WeekShop shop = new WeekShop(
                rope,
                past,
                PAST_WEEKS,
                new WeekRack(rope, supply(rope, past), draw),
                new WeekShop.Planning(work, checked, WeekBench.minutes(rope.piecesADay(), load)));
        Map<Integer, List<Ordered>> placed = new HashMap<>();
        for (Ordered each : orders) {
            Ordered order = policy.known() < 0 ? each : each.known(policy.known());
            placed.computeIfAbsent(Math.max(0, order.placed()), day -> new ArrayList<>())
                    .add(order);
        }
        live(shop, placed, 0, WARM_UP, WeekPolicy.DAY_BY_DAY);
        shop.rack().counted();
        live(shop, placed, WARM_UP, WARM_UP + days, policy);
        WeekRack.Count count = shop.rack().counted();
        live(shop, placed, WARM_UP + days, WARM_UP + days + RUN_OUT, WeekPolicy.DAY_BY_DAY);
        long money = count.money + shop.rack().count().money - shop.worthOfCoils();
        List<Ordered> during = orders.stream()
                .filter(each -> each.cutBy() >= WARM_UP && each.cutBy() < WARM_UP + days)
                .toList();
        long metres = during.stream().mapToLong(each -> each.cut().mm()).sum();
        return new WeekTable.Came(
                money,
                count,
                during.size(),
                during.stream().filter(Ordered::rush).count(),
                metres);
    }

    private static void live(WeekShop shop, Map<Integer, List<Ordered>> placed, int from, int to, WeekPolicy policy) {
        for (int day = from; day < to; day++) {
            shop.day(day, placed.getOrDefault(day, List.of()), policy);
        }
    }

    /** What the lead and a week more use, the largest line, and two more reels, less what rope is short by; at least one. */
    private WeekRack.Supply supply(WeekRope rope, List<Ordered> past) {
        long used = past.stream().mapToLong(each -> each.cut().mm()).sum();
        long line = rope.longest().times(rope.most()).mm();
        int level = (int) dividedUp(used * (lead + WEEK), rope.usual().mm() * PAST_WEEKS * WEEK)
                + (int) dividedUp(line, rope.usual().mm())
                + 2
                - shortBy;
        return new WeekRack.Supply(Math.max(1, level), lead, late);
    }

    private static long dividedUp(long amount, long by) {
        return -Math.floorDiv(-amount, by);
    }
}
