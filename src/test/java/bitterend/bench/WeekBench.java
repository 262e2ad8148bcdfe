package bitterend.bench;

import bitterend.day.BenchHours;
import bitterend.day.BroughtForward;
import bitterend.demand.Piece;
import bitterend.packing.CutPlan;
import bitterend.packing.Horizon;
import bitterend.packing.PackingProblem;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The people at the bench from day to day: they fetch and cut first, then splice what is due first. */
final class WeekBench {
    /** Splicing of one piece. */
    static final int SPLICING = 20;

    private final BenchHours hours;
    private final List<Work> waiting = new ArrayList<>();
    private int over;

    /** A cut piece with what is left to do. */
    private static final class Work {
        private final Piece piece;
        private int minutes = SPLICING;
        private boolean late;

        Work(Piece piece) {
            this.piece = piece;
        }

        LocalDate due() {
            return piece.source().due();
        }
    }

    /** @param minutes a day; 0 for a bench that is never full */
    WeekBench(int minutes) {
        Map<DayOfWeek, Integer> days = new EnumMap<>(DayOfWeek.class);
        for (int day = DayOfWeek.MONDAY.getValue(); day <= DayOfWeek.FRIDAY.getValue(); day++) {
            days.put(DayOfWeek.of(day), minutes);
        }
        hours = new BenchHours(days, BenchHours.USUAL_CUT, BenchHours.USUAL_FETCH);
    }

    /** Minutes a day, so that so many pieces a day, each second one with a reel to fetch, are a share of them in percent. */
    static int minutes(double piecesADay, int load) {
        double labour = piecesADay * (SPLICING + BenchHours.USUAL_CUT + BenchHours.USUAL_FETCH / 2.0);
        return load == 0 ? 0 : (int) Math.ceil(labour * 100 / load);
    }

    /** The plan with reels brought forward where days are too full. */
    CutPlan spread(PackingProblem problem, Horizon brake, CutPlan plan) {
        return hours.areStated()
                ? new BroughtForward(
                                hours,
                                problem,
                                brake,
                                waiting.stream().map(WeekBench::left).toList())
                        .of(plan)
                : plan;
    }

    private static Piece left(Work work) {
        return timed(work.piece, work.minutes);
    }

    /** A piece that asks the bench for so much. */
    static Piece timed(Piece piece, int minutes) {
        return new Piece(
                piece.id(),
                piece.source().timed(0, minutes),
                piece.choices(),
                piece.matching(),
                piece.certificate(),
                piece.ownRope(),
                piece.cut(),
                "");
    }

    /** One day; how many pieces were due on it or before and are not done for the first time. */
    int day(LocalDate day, int reels, List<Piece> cut) {
        if (!hours.areStated()) {
            return 0;
        }
        cut.forEach(piece -> waiting.add(new Work(piece)));
        waiting.sort(Comparator.comparing(Work::due));
        int left = hours.on(day) - over - reels * hours.fetch() - cut.size() * hours.cut();
        over = Math.max(0, -left);
        for (Work work : waiting) {
            int now = Math.max(0, Math.min(left, work.minutes));
            work.minutes -= now;
            left -= now;
        }
        waiting.removeIf(work -> work.minutes == 0);
        int late = 0;
        for (Work work : waiting) {
            if (!work.late && !work.due().isAfter(day)) {
                work.late = true;
                late++;
            }
        }
        return late;
    }
}
