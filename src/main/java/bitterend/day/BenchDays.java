package bitterend.day;

import bitterend.day.BenchDay.Earlier;
import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.WorkingDays;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The work of a plan against the hours of the bench, day by day. Reels are fetched and pieces cut on the day of their reel.
 * What is left of the day goes to splicing: of all pieces that are cut, those of the earliest due day come first. If any
 * order of splicing is in time, this one is (the earliest due date rule: Horn, W. A., Some simple scheduling algorithms,
 * up again.
 */
public final class BenchDays {
    /** So many working days are looked at. */
    private static final int MOST_DAYS = 60;

    private final BenchHours hours;
    private final WorkingDays working;
    private final CutDays days;
    private final LocalDate today;
    private final Map<LocalDate, List<ReelDraw>> draws = new TreeMap<>();
    private final PriorityQueue<Work> waiting =
            new PriorityQueue<>(Comparator.comparing(Work::due).thenComparing(Work::line, NaturalOrder.IDS));
    private final Map<String, Piece> pieces = new HashMap<>();

    /** Splicing to be done, shrinking as it is. */
    private static final class Work {
        private final String line;
        private final LocalDate due;
        private final LocalDate lastDay;
        private int minutes;
        private boolean late;

        Work(Piece piece, WorkingDays working) {
            line = piece.source().lineId();
            due = piece.source().due();
            lastDay = due.equals(LocalDate.MAX) ? due : working.lastUpTo(due);
            minutes = piece.source().minutes();
        }

        String line() {
            return line;
        }

        LocalDate due() {
            return due;
        }
    }

    /**
     * A plan's days.
     *
     * @param cut pieces that are cut and wait for their ends
     */
    public BenchDays(BenchHours hours, PackingProblem problem, List<ReelDraw> plan, List<Piece> cut) {
        this.hours = hours;
        working = new WorkingDays(problem.calendar());
        days = new CutDays(problem);
        today = problem.day();
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
        plan.forEach(draw ->
                draws.computeIfAbsent(days.of(draw), day -> new ArrayList<>()).add(draw));
        cut.forEach(this::wait);
    }

    /** Today and every working day until all is done; none where the shop states no hours. */
    public List<BenchDay> days() {
        List<BenchDay> answer = new ArrayList<>();
        LocalDate day = working.isWorking(today) ? today : working.after(today, 1);
        LocalDate before = LocalDate.MIN;
        while (hours.areStated() && answer.size() < MOST_DAYS && (answer.isEmpty() || isWorkLeft(before))) {
            answer.add(day(before, day));
            before = day;
            day = working.after(day, 1);
        }
        for (int i = 0; i < answer.size(); i++) {
            BenchDay full = answer.get(i);
            answer.set(i, full.helpedBy(earlier(full, answer.subList(0, i))));
        }
        return answer;
    }

    /** Reels that hold what is late on a day, if they may be cut on a day before it that has room. */
    private Earlier earlier(BenchDay full, List<BenchDay> before) {
        Optional<BenchDay> roomy = before.stream().filter(day -> day.room() > 0).findFirst();
        if (full.late().isEmpty() || roomy.isEmpty()) {
            return Earlier.NONE;
        }
        List<String> reels = new ArrayList<>();
        long room = roomy.get().room();
        for (Map.Entry<LocalDate, List<ReelDraw>> each : draws.entrySet()) {
            boolean between =
                    each.getKey().isAfter(roomy.get().day()) && !each.getKey().isAfter(full.day());
            for (ReelDraw draw : between ? each.getValue() : List.<ReelDraw>of()) {
                if (room > 0 && holds(draw, full.late())) {
                    reels.add(draw.reel());
                    room -= labour(draw);
                }
            }
        }
        return reels.isEmpty() ? Earlier.NONE : new Earlier(roomy.get().day(), reels);
    }

    private boolean holds(ReelDraw draw, List<String> lines) {
        return draw.cuts().stream()
                .anyMatch(cut -> lines.contains(piece(cut).source().lineId()));
    }

    private long labour(ReelDraw draw) {
        long ends = draw.cuts().stream()
                .mapToLong(cut -> piece(cut).source().minutes())
                .sum();
        return hours.fetch() + (long) draw.cuts().size() * hours.cut() + ends;
    }

    private Piece piece(Cut cut) {
        return Objects.requireNonNull(pieces.get(cut.piece()), cut.piece());
    }

    private boolean isWorkLeft(LocalDate after) {
        return !waiting.isEmpty() || draws.keySet().stream().anyMatch(day -> day.isAfter(after));
    }

    /** What was planned for a day on which the shop is closed is cut on the next. */
    private BenchDay day(LocalDate before, LocalDate day) {
        List<Cut> cuts = new ArrayList<>();
        int reels = 0;
        for (Map.Entry<LocalDate, List<ReelDraw>> each : draws.entrySet()) {
            if (each.getKey().isAfter(before) && !each.getKey().isAfter(day)) {
                reels += each.getValue().size();
                each.getValue().forEach(draw -> cuts.addAll(draw.cuts()));
            }
        }
        cuts.forEach(cut -> wait(piece(cut)));
        int there = hours.on(day);
        int fetching = reels * hours.fetch();
        int cutting = cuts.size() * hours.cut();
        int room = there - fetching - cutting;
        int splicing = splice(Math.max(0, room));
        TreeSet<String> late = new TreeSet<>(NaturalOrder.IDS);
        int over = Math.max(0, -room) + late(day, late);
        return new BenchDay(
                day, there, fetching, cutting, splicing, over, leave(cuts, day, over), List.copyOf(late), Earlier.NONE);
    }

    private void wait(Piece piece) {
        if (piece.source().minutes() > 0) {
            waiting.add(new Work(piece, working));
        }
    }

    private int splice(int room) {
        int left = room;
        while (left > 0 && !waiting.isEmpty()) {
            Work first = waiting.element();
            int now = Math.min(left, first.minutes);
            first.minutes -= now;
            left -= now;
            if (first.minutes == 0) {
                waiting.remove();
            }
        }
        return room - left;
    }

    /**
     * Minutes that are due by the last working day up to their due day and not done, each counted once: on its day or, where
     * that has passed, on the first.
     */
    private int late(LocalDate day, Set<String> lines) {
        int minutes = 0;
        for (Work work : waiting) {
            if (!work.late && !work.lastDay.isAfter(day)) {
                work.late = true;
                minutes += work.minutes;
                lines.add(work.line);
            }
        }
        return minutes;
    }

    private List<String> leave(List<Cut> cuts, LocalDate day, int over) {
        return cuts.stream()
                .filter(cut -> days.lastFor(cut).isAfter(day))
                .sorted(Comparator.<Cut, LocalDate>comparing(days::lastFor, Comparator.reverseOrder())
                        .thenComparing(Cut::piece, NaturalOrder.IDS))
                .limit(-Math.floorDiv(-over, Math.max(1, hours.cut())))
                .map(Cut::piece)
                .toList();
    }
}
