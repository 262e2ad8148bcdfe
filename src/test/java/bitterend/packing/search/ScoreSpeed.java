package bitterend.packing.search;

import bitterend.bench.RealDay;
import bitterend.packing.PackingProblem;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.model.Bench;
import bitterend.packing.model.BenchLayout;
import java.util.Iterator;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.impl.score.director.InnerScoreDirector;
import org.optaplanner.core.impl.solver.DefaultSolverFactory;

/** One step of the search: a move is drawn, carried out, scored under all rules, and undone. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@SuppressWarnings("NullAway.Init")
public class ScoreSpeed {
    /** Pieces of the day. */
    @Param({"30", "100", "1000"})
    public int pieces;

    private InnerScoreDirector<Bench, BendableLongScore> director;
    private Iterator<PlaceMove> moves;

    /** Lays a day out as the greedy start packs it. */
    @Setup
    public void layOut() {
        PackingProblem day = RealDay.of(1, pieces);
        Profile profile = Profile.quick();
        DefaultSolverFactory<Bench> factory =
                (DefaultSolverFactory<Bench>) SolverFactory.<Bench>create(Search.onTheBench(profile.config()));
        director = factory.<BendableLongScore>getScoreDirectorFactory().buildScoreDirector(false, false);
        director.setWorkingSolution(
                new BenchLayout(day, profile.shapingPercent()).with(new GreedyPacker(day).bestFit()));
        director.calculateScore();
        BenchMoves draws = new BenchMoves();
        draws.phaseStarted(director);
        moves = draws.createRandomMoveIterator(director, new Random(1));
    }

    /** The score after the move. */
    @Benchmark
    public BendableLongScore moveAndScore() {
        return director.doAndProcessMove(moves.next(), false);
    }

    /** Drawing alone, to be taken off. */
    @Benchmark
    public Object draw() {
        return moves.next();
    }

    @TearDown
    public void clear() {
        director.close();
    }
}
