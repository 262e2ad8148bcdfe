package bitterend.bench;

import bitterend.bench.peers.AssignmentModel;
import bitterend.bench.peers.ColumnModel;
import bitterend.bench.peers.DayModel;
import bitterend.bench.peers.GeneralSolver;
import bitterend.bench.peers.ReflectModel;
import bitterend.packing.PackingProblem;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.patterns.Effort;
import bitterend.packing.patterns.RootColumns;
import bitterend.packing.strategy.PeerDay;
import java.time.Duration;
import java.util.Optional;

/**
 * A general solver with one model of a day.
 *
 * @param solver the solver
 * @param shape the model
 */
record PeerWay(GeneralSolver solver, Shape shape) {
    /** More arcs than this are not built: the solvers come to no plan of half as many in ten seconds. */
    private static final int MOST_ARCS = 300_000;

    /** A model of a day. */
    enum Shape {
        /** Pieces to runs, from our best greedy plan. */
        ASSIGNMENT("assignment") {
            @Override
            Optional<DayModel> of(PackingProblem problem, PeerDay day, double seconds) {
                return Optional.of(
                        new AssignmentModel(day.patterns()).from(day.draws(new GreedyPacker(problem).best())));
            }
        },
        /** Flow through half of every reel. */
        ARCS("arc-flow") {
            @Override
            Optional<DayModel> of(PackingProblem problem, PeerDay day, double seconds) {
                return ReflectModel.of(day.patterns(), MOST_ARCS).map(model -> model);
            }
        },
        /** Our columns as a set partition; they may take half of the time. */
        COLUMNS("our columns") {
            @Override
            Optional<DayModel> of(PackingProblem problem, PeerDay day, double seconds) {
                Effort effort = Effort.ofTime(Duration.ofMillis(Math.round(500 * seconds)));
                return Optional.of(new ColumnModel(RootColumns.of(day.patterns(), effort)));
            }
        };

        private final String title;

        Shape(String title) {
            this.title = title;
        }

        /** The model of a day of which everything can be cut; none where it is too large. */
        abstract Optional<DayModel> of(PackingProblem problem, PeerDay day, double seconds);
    }

    /** As printed. */
    String title() {
        return solver.title() + ", " + shape.title;
    }
}
