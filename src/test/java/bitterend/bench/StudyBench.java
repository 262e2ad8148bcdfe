package bitterend.bench;

import bitterend.buying.RackWorth;
import bitterend.buying.Share;
import bitterend.buying.Study;
import bitterend.buying.steady.Keeping;
import bitterend.buying.steady.LeadTime;
import bitterend.buying.steady.PastWeeks;
import bitterend.buying.steady.SteadySimulation;
import bitterend.buying.steady.SteadyStudy;
import bitterend.buying.steady.SteadyVerdict;
import bitterend.buying.steady.Way;
import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.ReelPrice;
import bitterend.measure.Length;
import bitterend.measure.Money;
import bitterend.measure.Ratio;
import bitterend.stock.worth.CoilTerms;
import bitterend.stock.worth.CoilValue;
import bitterend.stock.worth.PastCuts;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * A whole study of a shop in steady state, twelve ropes with two years of history and four sizes each: what it takes, and what a
 * week of one rope with one way to buy takes, the race for reorder points in it.
 */
@Command(name = "study")
final class StudyBench implements Callable<Integer> {
    private static final int PAST = 104;
    private static final int WEEKS = 52;
    private static final Length LOSS = new Length(10);
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final double NANOS = 1e9;

    /** Metres, per cent of the price by the metre of the usual reel, lead in days. */
    private static final int[][] SIZES = {{60, 108, 3}, {110, 104, 3}, {220, 100, 10}, {500, 95, 30}};

    @Parameters(index = "0", arity = "0..1", paramLabel = "SCENARIOS")
    private int scenarios = 200;

    @Parameters(index = "1", arity = "0..1", paramLabel = "THREADS")
    private int threads = 2;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Override
    public Integer call() {
        Benchmarks.positive(spec, "SCENARIOS", scenarios);
        Benchmarks.positive(spec, "THREADS", threads);
        PrintWriter out = spec.commandLine().getOut();
        out.println(
                "rope, past pieces a week; sizes and stopgaps compared, ways tried; seconds by the clock and of the"
                        + " processor; of these, milliseconds for each week and option; kept, below which metres, how many at a time");
        double clock = 0;
        double processor = 0;
        long weeks = 0;
        for (SteadyRope rope : SteadyRope.all()) {
            long startClock = System.nanoTime();
            double startProcessor = processorSeconds();
            SteadyStudy study = study(rope);
            SteadySimulation simulation = new SteadySimulation(study, threads, () -> false, (done, all) -> {});
            List<Way> ways = simulation.ways();
            SteadyVerdict verdict = SteadyVerdict.of(study, ways, simulation.scenarios(ways, Share.ALL));
            double byClock = (System.nanoTime() - startClock) / NANOS;
            double byProcessor = processorSeconds() - startProcessor;
            long worked = (long) verdict.found().size() * scenarios * WEEKS;
            Way.Rule usual = verdict.advised().way().usual();
            out.println(String.format(
                    Locale.ROOT,
                    "%-11s %5.1f; %d, %d; %.1f, %.1f; %.4f; %s, %.0f, %d",
                    rope.name(),
                    study.demand().past().cuts().stream().mapToInt(List::size).sum() / (double) PAST,
                    verdict.found().size(),
                    ways.size(),
                    byClock,
                    byProcessor,
                    1_000 * byProcessor / worked,
                    String.join(" and ", verdict.advised().way().offers()),
                    usual.point().mm() / 1_000.0,
                    usual.reels()));
            clock += byClock;
            processor += byProcessor;
            weeks += worked;
        }
        out.println(String.format(
                Locale.ROOT,
                "all %.0f s by the clock, %.0f s of the processor, %.4f ms for each week and option",
                clock,
                processor,
                1_000 * processor / weeks));
        return 0;
    }

    private static double processorSeconds() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                        .getProcessCpuTime()
                / NANOS;
    }

    private SteadyStudy study(SteadyRope rope) {
        List<List<Length>> past = rope.weeks(1_000, PAST);
        List<Offer> offers = new ArrayList<>();
        for (int[] size : SIZES) {
            long price = rope.price().of(Length.ofMetres(size[0])).rounded().minor() * size[1] / 100;
            Offer.Terms terms = new Offer.Terms(
                    ReelPrice.of(new Money(price)),
                    Money.ZERO,
                    Offer.Terms.UNLIMITED,
                    1,
                    new Offer.Lead(size[2], 0),
                    LocalDate.MAX);
            offers.add(new Offer("" + size[0], "", SteadyRope.ID, Offer.Made.plain(Length.ofMetres(size[0])), terms));
        }
        Ratio interest = Ratio.percent(SteadyRack.INTEREST_PERCENT);
        CoilTerms.Holding holding = new CoilTerms.Holding(interest, SteadyRack.ROOM, Length.ZERO);
        PastCuts cuts = PastCuts.of(past.stream().flatMap(List::stream).toList(), LOSS, PAST, PastCuts.Source.HISTORY);
        return SteadyStudy.of(
                rope.rope(),
                new PastWeeks(
                        LocalDate.of(2024, 3, 4),
                        past.stream()
                                .map(week -> week.stream().map(List::of).toList())
                                .toList()),
                new SteadyStudy.Terms(
                        offer -> RackWorth.of(CoilValue.of(
                                cuts,
                                CoilTerms.of(offer.byMetre(), offer.usable(), offer.usable(), holding),
                                Length.ZERO)),
                        offer -> new LeadTime(offer.terms().lead().days(), 0, 3),
                        new Market(DAY, offers, List.of(), Map.of()),
                        new Keeping(
                                (int) LOSS.mm(), SteadyRack.OPENING, SteadyRack.CHANGING, interest, SteadyRack.ROOM),
                        SteadyStudy.Goal.USUAL,
                        new Study.Size(0, scenarios, WEEKS),
                        DAY));
    }
}
