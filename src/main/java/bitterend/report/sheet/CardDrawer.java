package bitterend.report.sheet;

import bitterend.catalogue.Termination.Kind;
import bitterend.demand.SpliceCard;
import bitterend.measure.FineLength;
import bitterend.report.BenchMarks;
import bitterend.report.Figures;
import bitterend.report.sheet.CardDrawing.Shape;
import bitterend.report.sheet.CardDrawing.Stretch;
import bitterend.report.sheet.CardDrawing.Strip;
import bitterend.report.sheet.CardDrawing.Tick;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws a splice card from the kind of its ends and their marks: a new row of splices draws itself. */
final class CardDrawer {
    private static final int LEFT = 12;
    private static final int RIGHT = CardDrawing.WIDTH - LEFT;
    /** The most that one end takes of the width. */
    private static final int END_ROOM = 240;

    /** How much further in a mark is drawn that lies beyond what is shown. */
    private static final int BEYOND = 22;

    /** A fitting alone is not blown up to the width of an eye. */
    private static final FineLength LEAST_SHOWN = FineLength.ofMillimetres(400);

    private static final int LABEL_STEP = 14;
    private static final int BAND = 16;
    /** Between a strip and the labels of another above it. */
    private static final int CLEAR = 10;

    private static final int LARGEST_SPREAD = 26;

    private final SpliceCard card;
    private final List<BenchMarks> marks;
    private final Figures figures;
    private final String finished;
    /** Rope that {@link #END_ROOM} shows. */
    private final long shown;

    /** {@code finished} is the finished length as it is printed. */
    CardDrawer(SpliceCard card, List<BenchMarks> marks, Figures figures, String finished) {
        this.finished = finished;
        this.card = card;
        this.marks = marks;
        this.figures = figures;
        long most = LEAST_SHOWN.units();
        for (SpliceCard.End end : card.ends()) {
            most = Math.max(most, reach(end));
        }
        this.shown = most;
    }

    /** How much rope from its cut end an end needs to be shown; a mark far from all others may lie beyond the break. */
    private long reach(SpliceCard.End end) {
        long reach = end.tail().plus(end.eye().round()).plus(end.tail()).units();
        long most = 2 * reach;
        for (BenchMarks.Line line : lines(end)) {
            long place = line.mark().findFromCutEnd().map(FineLength::units).orElse(0L);
            reach = place <= most ? Math.max(reach, place) : reach;
        }
        return Math.max(reach, end.eye().flat().plus(end.tail()).units());
    }

    private List<BenchMarks.Line> lines(SpliceCard.End end) {
        return marks.stream()
                .filter(each -> each.end().equals(end.name()))
                .flatMap(each -> each.lines().stream())
                .toList();
    }

    CardDrawing drawing() {
        List<Tick> placed = placed();
        int rows = placed.stream().mapToInt(Tick::y).max().orElse(-1) + 1;
        int bandAt = rows * LABEL_STEP + 8;
        List<Tick> ticks = placed.stream()
                .map(tick -> new Tick(tick.x(), bandAt - 6 - tick.y() * LABEL_STEP, tick.label(), tick.anchor()))
                .toList();
        List<Strip> strips = strips(bandAt + BAND + 12);
        int below = strips.stream()
                .flatMap(strip -> strip.ticks().stream())
                .mapToInt(Tick::y)
                .max()
                .orElse(bandAt + BAND);
        int shapeAt = below + 36;
        return new CardDrawing(shapeAt + 46, bandAt, stretches(), ticks, breaks(), strips, shapeAt, shapes(), finished);
    }

    private int pixels(FineLength length) {
        return (int) (length.units() * END_ROOM / shown);
    }

    private boolean isLeft(SpliceCard.End end) {
        return end.equals(card.ends().get(0));
    }

    /** A place so far from the cut end of an end. */
    private int x(SpliceCard.End end, FineLength fromCutEnd) {
        int along = Math.min(END_ROOM + BEYOND, pixels(fromCutEnd));
        return isLeft(end) ? LEFT + along : RIGHT - along;
    }

    private List<Stretch> stretches() {
        List<Stretch> stretches = new ArrayList<>(List.of(new Stretch(LEFT, RIGHT - LEFT, "rope")));
        for (SpliceCard.End end : card.ends()) {
            if (end.kind() == Kind.GROMMET) {
                continue;
            }
            add(stretches, end, FineLength.ZERO, end.tail(), "tail");
            add(stretches, end, end.tail(), end.tail().plus(end.eye().round()), "eye");
        }
        return stretches;
    }

    private void add(List<Stretch> stretches, SpliceCard.End end, FineLength from, FineLength to, String style) {
        int a = x(end, from);
        int b = x(end, to);
        if (a != b) {
            stretches.add(new Stretch(Math.min(a, b), Math.abs(b - a), style));
        }
    }

    /** Marks with the row of their label in place of its height: innermost lowest, so that no leader crosses a label. */
    private List<Tick> placed() {
        List<Tick> placed = new ArrayList<>();
        for (SpliceCard.End end : card.ends()) {
            List<Tick> own = new ArrayList<>();
            lines(end).stream()
                    .filter(BenchMarks.Line::isFromCutEnd)
                    .sorted(Comparator.comparingLong(BenchMarks.Line::place).reversed())
                    .forEach(line -> own.add(free(placed, row(own, tick(end, line)))));
            placed.addAll(own);
        }
        return placed;
    }

    /** Where rope is left out before a mark that lies further in than the drawing is to scale. */
    private List<Integer> breaks() {
        return card.ends().stream()
                .filter(end -> lines(end).stream().anyMatch(this::isFurtherIn))
                .map(end -> isLeft(end) ? LEFT + END_ROOM + BEYOND / 2 : RIGHT - END_ROOM - BEYOND / 2)
                .toList();
    }

    private boolean isFurtherIn(BenchMarks.Line line) {
        return line.isFromCutEnd()
                && line.mark().findFromCutEnd().orElse(FineLength.ZERO).units() > shown;
    }

    private Tick tick(SpliceCard.End end, BenchMarks.Line line) {
        FineLength place = line.mark().findFromCutEnd().orElse(FineLength.ZERO);
        String label = line.mark().name() + " " + figures.tape(line.place());
        return new Tick(x(end, place), 0, label, isLeft(end) ? "start" : "end");
    }

    /** Above every label whose mark its own words would run across. */
    private static Tick row(List<Tick> inner, Tick tick) {
        int row = 0;
        for (Tick other : inner) {
            if (Math.abs(other.x() - tick.x()) < tick.width()) {
                row = Math.max(row, other.y() + 1);
            }
        }
        return new Tick(tick.x(), row, tick.label(), tick.anchor());
    }

    /** The first row from its own up in which no label of the other end is in the way. */
    private static Tick free(List<Tick> others, Tick tick) {
        boolean taken = others.stream()
                .anyMatch(other -> other.y() == tick.y() && other.x() + other.width() > tick.x() - tick.width());
        return taken ? free(others, new Tick(tick.x(), tick.y() + 1, tick.label(), tick.anchor())) : tick;
    }

    /** Each drawn core on a strip of its own, from the mark where it comes out. */
    private List<Strip> strips(int top) {
        List<Strip> strips = new ArrayList<>();
        for (SpliceCard.End end : card.ends()) {
            List<BenchMarks.Line> core = lines(end).stream()
                    .filter(line -> !line.isFromCutEnd() && line.mark().on().equals("core"))
                    .toList();
            if (!core.isEmpty()) {
                Strip strip = strip(end, core, top);
                boolean meet = strips.stream().anyMatch(other -> other.right() > strip.left());
                strips.add(meet ? strip(end, core, strips.get(0).bottom() + CLEAR) : strip);
            }
        }
        return strips;
    }

    private Strip strip(SpliceCard.End end, List<BenchMarks.Line> core, int top) {
        int from = x(end, end.tail().plus(end.eye().round()));
        List<Tick> ticks = new ArrayList<>();
        int far = from;
        for (int i = core.size() - 1; i >= 0; i--) {
            BenchMarks.Line line = core.get(i);
            int along = (int) (line.place() * figures.stepUnits() * END_ROOM / shown);
            int x = isLeft(end) ? from + along : from - along;
            far = Math.abs(x - from) > Math.abs(far - from) ? x : far;
            Tick bare = new Tick(
                    x, 0, onCore(line.mark().name()) + " " + figures.tape(line.place()), isLeft(end) ? "start" : "end");
            ticks.add(row(ticks, bare));
        }
        List<Tick> below = ticks.stream()
                .map(tick -> new Tick(tick.x(), top + 22 + tick.y() * LABEL_STEP, tick.label(), tick.anchor()))
                .toList();
        return new Strip(Math.min(from, far), top, Math.abs(far - from), below);
    }

    private static String onCore(String name) {
        return name.contains("core") ? name : name + ", core";
    }

    private List<Shape> shapes() {
        return card.ends().stream().map(this::shape).toList();
    }

    private Shape shape(SpliceCard.End end) {
        boolean left = isLeft(end);
        int crown = left ? LEFT + 8 : RIGHT - 8;
        int length =
                end.eye().flat().isPositive() ? Math.max(10, pixels(end.eye().flat())) : 0;
        int spread = Math.min(LARGEST_SPREAD, Math.max(5, length / 4));
        return new Shape(
                left,
                kind(end),
                end.hasEye() && !end.eye().lining().isEmpty(),
                crown,
                left ? crown + length : crown - length,
                spread,
                pixels(end.tail()),
                label(end));
    }

    private static String kind(SpliceCard.End end) {
        return switch (end.kind()) {
            case EYE, LOOP, LOOP_ALONG -> "eye";
            case GROMMET -> "ring";
            case FITTING -> "fitting";
            case JOIN -> "join";
            case BARE, KNOT_ALONG -> "bare";
        };
    }

    private String label(SpliceCard.End end) {
        String size = end.eye().flat().isPositive() ? figures.tape(end.eye().flat()) : "";
        String what =
                switch (end.kind()) {
                    case EYE, LOOP, LOOP_ALONG -> end.eye().lining().isEmpty()
                            ? "eye " + size
                            : "thimble " + end.eye().lining();
                    case FITTING -> "fitting " + end.eye().lining();
                    case JOIN -> "join";
                    case GROMMET -> "ring";
                    case BARE, KNOT_ALONG -> end.made();
                };
        return end.kind() == Kind.GROMMET ? what : end.name() + ": " + what.strip();
    }
}
