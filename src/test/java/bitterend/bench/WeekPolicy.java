package bitterend.bench;

/**
 * How a shop plans its days.
 *
 * @param horizon working days that a plan looks ahead; 0 for day by day
 * @param brake how many times the usual rush is kept while rope is short; 0 for no brake
 * @param known every piece is known so many days before it must be cut; -1 as orders come
 * @param fresh whether promises are forgotten and each day is planned anew
 * @param asked whether each reel is cut on the day that its pieces ask for, however full the bench is
 */
record WeekPolicy(int horizon, int brake, int known, boolean fresh, boolean asked) {
    static final WeekPolicy DAY_BY_DAY = new WeekPolicy(0, 0, -1, false, false);

    static WeekPolicy looking(int horizon, int brake) {
        return new WeekPolicy(horizon, brake, -1, false, false);
    }

    WeekPolicy knowing(int days) {
        return new WeekPolicy(horizon, brake, days, fresh, asked);
    }

    WeekPolicy anew() {
        return new WeekPolicy(horizon, brake, known, true, asked);
    }

    WeekPolicy asAsked() {
        return new WeekPolicy(horizon, brake, known, fresh, true);
    }

    /** In the table. */
    String name() {
        return horizon == 0
                ? "day-by-day"
                : "horizon-" + horizon + (brake > 0 ? " brake-" + brake : "") + (known < 0 ? "" : " known-" + known)
                        + (fresh ? " anew" : "") + (asked ? " as-asked" : "");
    }
}
