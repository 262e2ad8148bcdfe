package bitterend.buying.steady;

import bitterend.buying.Share;
import bitterend.buying.Simulation;
import bitterend.threads.SideBySide;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Works out the futures of a study, side by side. Each depends on the seed and its number alone, so that the answer is the same
 * for any number of threads, and however futures are shared out.
 */
public final class SteadySimulation {
    /** Four that choose share one past, and four that report another. */
    private static final int OF_A_PAST = 8;

    private static final long LEADS = 0x2545F4914F6CDD1DL;
    private static final long PILOT = 0x1B873593CC9E2D51L;

    private final SteadyStudy study;
    private final int threads;
    private final BooleanSupplier cancelled;
    private final Simulation.Listener listener;
    private final Map<String, CoilTable.OfRacks> curves = new HashMap<>();

    /** {@code cancelled} is asked often; once true, the futures worked out so far are returned. */
    public SteadySimulation(SteadyStudy study, int threads, BooleanSupplier cancelled, Simulation.Listener listener) {
        this.study = study;
        this.threads = threads;
        this.cancelled = cancelled;
        this.listener = listener;
        int longest = study.sizes().stream().mapToInt(SizeOnOffer::usable).max().orElse(1);
        study.worth().forEach((offer, worth) -> curves.put(offer, new CoilTable.OfRacks(worth, longest)));
    }

    /** The ways to buy that are worth a closer look; empty when cancelled. Every share of a study finds the same. */
    public List<Way> ways() {
        return new Race(study, this::tried).shortlist();
    }

    /** The futures of a share, by number; fewer when cancelled. */
    public List<SteadyScenario> scenarios(List<Way> ways, Share share) {
        int[] numbers = IntStream.range(0, study.size().scenarios())
                .filter(share::holds)
                .toArray();
        AtomicInteger done = new AtomicInteger();
        List<Callable<Optional<SteadyScenario>>> tasks = new ArrayList<>();
        for (int number : numbers) {
            tasks.add(() -> {
                Optional<List<Lived>> lived = lived(ways, study.size().seed(), number, groupOf(number));
                listener.worked(done.incrementAndGet(), numbers.length);
                return lived.map(each -> new SteadyScenario(number, each));
            });
        }
        return SideBySide.all(tasks, threads).stream()
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingInt(SteadyScenario::number))
                .toList();
    }

    /** Futures of one group share one past; those that choose and those that report never do. */
    static int groupOf(int scenario) {
        return scenario / OF_A_PAST * 2 + scenario % 2;
    }

    /** The first futures of the race, each way on each; fewer when cancelled. */
    private List<List<Lived>> tried(List<Way> ways, int from, int to) {
        List<Callable<Optional<List<Lived>>>> tasks = new ArrayList<>();
        for (int number = from; number < to; number++) {
            int future = number;
            tasks.add(() -> lived(ways, study.size().seed() ^ PILOT, future, future));
        }
        return SideBySide.all(tasks, threads).stream().flatMap(Optional::stream).toList();
    }

    private Optional<List<Lived>> lived(List<Way> ways, long seed, int number, int group) {
        int warmUp = study.warmUp();
        int from = Math.floorMod(PastWeeks.placeOf(study.day()) + 1 - warmUp, PastWeeks.PLACES);
        int[][] weeks = study.demand()
                .drawn(seed, group)
                .weeks(Demand.dice(seed, number), from, warmUp + study.size().weeks());
        List<Lived> lived = new ArrayList<>();
        for (Way way : ways) {
            if (cancelled.getAsBoolean()) {
                return Optional.empty();
            }
            lived.add(lived(way, weeks, seed, number));
        }
        return Optional.of(lived);
    }

    private Lived lived(Way way, int[][] weeks, long seed, int number) {
        CoilTable.OfRacks worth =
                Objects.requireNonNull(curves.get(way.usual().size().offer().id()));
        LivedRack rack = new LivedRack(study.keeping(), way, worth, Demand.dice(seed ^ LEADS, number));
        if (study.start().today()) {
            rack.begin(study.start());
        } else {
            rack.stock();
        }
        int warmUp = study.warmUp();
        for (int week = 0; week < weeks.length; week++) {
            if (week == warmUp) {
                rack.measure();
            }
            rack.live(weeks[week]);
        }
        return rack.outcome();
    }
}
