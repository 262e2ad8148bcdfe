package bitterend.bench.peers;

/** A solver of an open library that takes any linear program of whole numbers. */
public enum GeneralSolver {
    /** Constraint programming with clause learning. */
    CP_SAT("CP-SAT") {
        @Override
        public Outcome solve(DayModel model, Limits limits) {
            return CpSat.solve(model, limits);
        }
    },
    /** Branch and cut. */
    MIP("MIP") {
        @Override
        public Outcome solve(DayModel model, Limits limits) {
            return Scip.solve(model, limits);
        }
    };

    private final String title;

    GeneralSolver(String title) {
        this.title = title;
    }

    /** As printed. */
    public String title() {
        return title;
    }

    /** Works until proven or out of time. */
    public abstract Outcome solve(DayModel model, Limits limits);

    /**
     * What a solver may take.
     *
     * @param seconds by the clock
     * @param threads at a time
     */
    public record Limits(double seconds, int threads) {}
}
