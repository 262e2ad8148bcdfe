package bitterend.exchange;

import bitterend.day.BenchHours;
import bitterend.demand.Assembly;
import bitterend.demand.Demanded;
import bitterend.demand.EndWork;
import bitterend.demand.Piece;

/** An order line whose pieces know what their ends ask of the bench. */
final class TimedLine {
    private TimedLine() {}

    /**
     * The line with the minutes of its ends. Where the shop states its hours, the days between cut and due day are at least
     * those that the minutes of the whole line fill, beside what the row states.
     */
    static OrderLine of(Assembly assembly, Demanded demanded, BenchHours hours) {
        int minutes = demanded.work().stream().mapToInt(EndWork::minutes).sum();
        if (minutes == 0) {
            return new OrderLine(assembly, demanded);
        }
        int stated = assembly.ordered().source().finishing();
        int filled = hours.finishing((long) minutes * demanded.pieces().size());
        int most = Piece.Source.MOST_DAYS;
        return new OrderLine(assembly, demanded.timed(Math.min(most, Math.max(stated, filled)), minutes));
    }
}
