package bitterend.bench;

/**
 * How a shop plans its days.
 *
 * @param name in the table
 * @param horizon working days that a plan looks ahead; 0 for day by day
 * @param known every piece is known so many days before it must be cut; -1 as orders come
 * @param fresh whether promises are forgotten and each day is planned anew
 */
record WeekPolicy(String name, int horizon, int known, boolean fresh) {
    static final WeekPolicy DAY_BY_DAY = new WeekPolicy("day-by-day", 0, -1, false);

    static WeekPolicy looking(int horizon) {
        return new WeekPolicy("horizon-" + horizon, horizon, -1, false);
    }

    WeekPolicy knowing(int days) {
        return new WeekPolicy(name + ", known " + days, horizon, days, fresh);
    }

    WeekPolicy anew() {
        return new WeekPolicy(name + ", anew", horizon, known, true);
    }
}
