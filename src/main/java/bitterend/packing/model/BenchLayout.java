package bitterend.packing.model;

import bitterend.demand.Piece;
import bitterend.packing.Eligibility;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceKind;
import bitterend.packing.RunId;
import bitterend.packing.Urgency;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Lays a packing problem out on the bench. */
public final class BenchLayout {
    private final PackingProblem problem;
    private final Eligibility eligibility;
    private final Urgency urgency;
    private final Map<String, RopeOnRack> ropes = new TreeMap<>();
    private final List<RunOfReel> runs = new ArrayList<>();
    private final Map<RunId, RunOfReel> runById = new HashMap<>();
    private final Map<String, MatchedSet> sets = new HashMap<>();
    private final Map<String, Long> orderSizes;
    private final Map<Alike, Integer> kinds = new HashMap<>();
    private final Map<PieceKind, Homes> homes = new HashMap<>();

    /** Pieces that may change places without anything being different. */
    private record Alike(
            PieceKind home, String order, String earlier, Piece.Matching matching, int urgency, long weight) {}

    /** @param shapingPercent strength of the shaping, in percent of the price of opening a reel; 0 for money alone */
    public BenchLayout(PackingProblem problem, int shapingPercent) {
        this.problem = problem;
        eligibility = new Eligibility(problem);
        urgency = new Urgency(problem);
        orderSizes = problem.pieces().stream().collect(Collectors.groupingBy(Piece::order, Collectors.counting()));
        problem.ropes()
                .values()
                .forEach(rope -> ropes.put(rope.id(), new RopeOnRack(problem, rope, ropes.size(), shapingPercent)));
        problem.reels().forEach(this::addRuns);
        problem.pieces().stream()
                .filter(Piece::isMatched)
                .collect(Collectors.groupingBy(piece -> piece.matching().set()))
                .forEach((name, mates) -> sets.put(
                        name, new MatchedSet(name, mates.get(0).matching().bond(), mates.size())));
    }

    private void addRuns(Reel reel) {
        ReelOnRack onRack = new ReelOnRack(problem, reel);
        RopeOnRack rope = rope(reel.rope());
        for (Run run : reel.runs()) {
            RunOfReel home = new RunOfReel(onRack, run, runs.size(), rope);
            runs.add(home);
            runById.put(home.id(), home);
        }
    }

    private RopeOnRack rope(String id) {
        RopeOnRack rope = ropes.get(id);
        if (rope == null) {
            throw new IllegalArgumentException("no rope " + id);
        }
        return rope;
    }

    /** A bench with every piece where a packing has it. */
    public Bench with(Packing packing) {
        List<PieceToCut> pieces = new ArrayList<>();
        for (Piece piece : problem.pieces()) {
            RunOfReel run = packing.placeOf(piece.id()).map(this::run).orElse(null);
            pieces.add(new PieceToCut(facts(piece), run));
        }
        return new Bench(pieces, List.copyOf(runs));
    }

    private RunOfReel run(RunId id) {
        RunOfReel run = runById.get(id);
        if (run == null) {
            throw new IllegalArgumentException("no run " + id);
        }
        return run;
    }

    private PieceFacts facts(Piece piece) {
        boolean mates = orderSizes.getOrDefault(piece.order(), 0L) > 1;
        String earlier = problem.earlier().getOrDefault(piece.id(), "");
        MatchedSet set = piece.isMatched() ? sets.get(piece.matching().set()) : null;
        int urgent = urgency.classOf(piece);
        long weight = urgency.weightOf(piece);
        PieceKind home = eligibility.kindOf(piece);
        Alike alike = new Alike(home, piece.order(), earlier, piece.matching(), urgent, weight);
        int kind = kinds.computeIfAbsent(alike, key -> kinds.size());
        Homes where = homes.computeIfAbsent(home, key -> homesOf(piece));
        return new PieceFacts(piece, kind, urgent, weight, where, eligibility, set, home.isPinned(), earlier, mates);
    }

    private Homes homesOf(Piece piece) {
        List<RunOfReel> open = new ArrayList<>();
        @Nullable ReelOnRack last = null;
        boolean barred = false;
        for (RunOfReel run : runs) {
            if (run.reel() != last) {
                last = run.reel();
                barred = eligibility.against(piece, last.reel()).isPresent();
            }
            if (!barred && eligibility.fits(piece, run.reel().reel(), run.run()).isEmpty()) {
                open.add(run);
            }
        }
        return new Homes(open, sizesOf(piece));
    }

    private long[] sizesOf(Piece piece) {
        long[] sizes = new long[ropes.size()];
        ropes.forEach((id, rope) ->
                sizes[rope.number()] = piece.lengthOn(id).orElse(piece.cut()).mm() + rope.loss());
        return sizes;
    }
}
