package bitterend.bench.peers;

import bitterend.packing.patterns.Draw;
import bitterend.packing.patterns.PatternProblem;
import bitterend.packing.patterns.ReelKind;
import bitterend.packing.patterns.Take;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How many pieces of each item come off each run: reel by reel, reels that are alike in the order of their loads. What a
 * run costs is one of several straight lines over its load. Starts from a plan.
 */
public final class AssignmentModel implements DayModel {
    private final PatternProblem problem;
    private final LinearModel model = new LinearModel();
    private final List<OneReel> reels = new ArrayList<>();
    private long[] start = new long[0];

    /** One reel. */
    private record OneReel(int kind, List<OneRun> runs, Opening opening) {}

    /** One run: a variable for each item, -1 for none, and the lines. */
    private record OneRun(List<Integer> counts, List<CostLines.Line> lines, List<Integer> chosen, List<Integer> along) {
        /** The variable that is 1 while nothing is drawn. */
        int untouched() {
            return chosen.get(0);
        }
    }

    /** The model of a problem with enough rope for everything. */
    public AssignmentModel(PatternProblem problem) {
        this.problem = problem;
        for (int kind = 0; kind < problem.reels().size(); kind++) {
            addKind(kind);
        }
        for (int item = 0; item < problem.items().size(); item++) {
            LinearModel.Row all = model.exactly(problem.items().get(item).demand());
            for (OneReel reel : reels) {
                for (OneRun run : reel.runs()) {
                    if (run.counts().get(item) >= 0) {
                        all.plus(1, run.counts().get(item));
                    }
                }
            }
        }
    }

    private void addKind(int number) {
        ReelKind kind = problem.reels().get(number);
        Slots slots = new Slots(problem, kind);
        if (slots.reels() == 0) {
            return;
        }
        List<List<CostLines.Line>> lines = new ArrayList<>();
        for (int run = 0; run < kind.runs().size(); run++) {
            lines.add(CostLines.of(slots.drop(run), slots.capacity(run)));
        }
        for (int copy = 0; copy < slots.reels(); copy++) {
            List<OneRun> runs = new ArrayList<>();
            for (int run = 0; run < kind.runs().size(); run++) {
                long opening = kind.runs().size() == 1 ? kind.opening() : 0;
                runs.add(run(slots, run, lines.get(run), opening));
            }
            OneReel reel = new OneReel(number, runs, runs.size() > 1 ? opening(kind, runs) : Opening.NONE);
            if (copy > 0) {
                inOrder(slots, reels.get(reels.size() - 1), reel);
            }
            reels.add(reel);
        }
    }

    private Opening opening(ReelKind kind, List<OneRun> runs) {
        return Opening.add(
                model,
                kind,
                runs.stream()
                        .map(run -> new Opening.Used(1, -1, run.untouched()))
                        .toList());
    }

    private OneRun run(Slots slots, int run, List<CostLines.Line> lines, long opening) {
        List<Integer> counts = new ArrayList<>();
        List<Integer> chosen = new ArrayList<>();
        List<Integer> along = new ArrayList<>();
        LinearModel.Row load = model.exactly(0);
        LinearModel.Row one = model.exactly(1);
        for (CostLines.Line line : lines) {
            int choice = model.variable(1, line.start() + (line.from() == 0 ? 0 : opening));
            one.plus(1, choice);
            chosen.add(choice);
            along.add(along(line, choice, load));
        }
        for (int item = 0; item < problem.items().size(); item++) {
            long most = slots.most(item, run);
            counts.add(most == 0 ? -1 : model.variable(most, 0));
            if (most > 0) {
                load.plus(slots.load(item), counts.get(item));
                model.atMost(most).plus(1, counts.get(item)).plus(most, chosen.get(0));
            }
        }
        return new OneRun(counts, lines, chosen, along);
    }

    /** How far along the line the load is where this is the chosen one, else 0; -1 where a line is one point. */
    private int along(CostLines.Line line, int choice, LinearModel.Row load) {
        if (line.from() > 0) {
            load.plus(-line.from(), choice);
        }
        if (line.from() == line.to()) {
            return -1;
        }
        long most = line.to() - line.from();
        int along = model.variable(most, line.slope());
        load.plus(-1, along);
        model.atMost(0).plus(1, along).plus(-most, choice);
        return along;
    }

    private void inOrder(Slots slots, OneReel before, OneReel after) {
        LinearModel.Row row = model.atLeast(0);
        for (int item = 0; item < problem.items().size(); item++) {
            int first = before.runs().get(0).counts().get(item);
            if (first >= 0) {
                row.plus(slots.load(item), first);
                row.plus(-slots.load(item), after.runs().get(0).counts().get(item));
            }
        }
    }

    @Override
    public LinearModel program() {
        return model;
    }

    @Override
    public List<Draw> draws(long[] values) {
        List<Draw> draws = new ArrayList<>();
        for (OneReel reel : reels) {
            List<Take> takes = new ArrayList<>();
            for (int run = 0; run < reel.runs().size(); run++) {
                List<Integer> counts = reel.runs().get(run).counts();
                for (int item = 0; item < counts.size(); item++) {
                    int count = counts.get(item) < 0 ? 0 : (int) values[counts.get(item)];
                    if (count > 0) {
                        takes.add(new Take(run, item, count));
                    }
                }
            }
            if (!takes.isEmpty()) {
                draws.add(new Draw(reel.kind(), 1, takes));
            }
        }
        return draws;
    }

    /** Starts from these reels, which hold every piece. */
    public AssignmentModel from(List<Draw> draws) {
        start = new long[model.variables().size()];
        for (int kind = 0; kind < problem.reels().size(); kind++) {
            int of = kind;
            Slots slots = new Slots(problem, problem.reels().get(kind));
            List<Draw> ofKind = draws.stream()
                    .filter(draw -> draw.type() == of)
                    .flatMap(draw -> Collections.nCopies(draw.reels(), draw).stream())
                    .sorted(Comparator.comparingLong((Draw draw) -> load(slots, draw, 0))
                            .reversed())
                    .toList();
            List<OneReel> reelsOfKind =
                    reels.stream().filter(reel -> reel.kind() == of).toList();
            for (int reel = 0; reel < reelsOfKind.size(); reel++) {
                begin(slots, reelsOfKind.get(reel), reel < ofKind.size() ? ofKind.get(reel) : null);
            }
        }
        return this;
    }

    private static long load(Slots slots, Draw draw, int run) {
        return draw.takes().stream()
                .filter(take -> take.run() == run)
                .mapToLong(take -> take.count() * slots.load(take.item()))
                .sum();
    }

    private void begin(Slots slots, OneReel reel, @Nullable Draw draw) {
        List<Boolean> drawn = new ArrayList<>();
        for (int number = 0; number < reel.runs().size(); number++) {
            OneRun run = reel.runs().get(number);
            long load = draw == null ? 0 : load(slots, draw, number);
            drawn.add(load > 0);
            int line = 0;
            while (run.lines().get(line).to() < load) {
                line++;
            }
            start[run.chosen().get(line)] = 1;
            if (run.along().get(line) >= 0) {
                start[run.along().get(line)] = load - run.lines().get(line).from();
            }
        }
        reel.opening().begin(start, drawn);
        if (draw != null) {
            for (Take take : draw.takes()) {
                start[reel.runs().get(take.run()).counts().get(take.item())] += take.count();
            }
        }
    }

    @Override
    public long[] start() {
        return start.clone();
    }
}
