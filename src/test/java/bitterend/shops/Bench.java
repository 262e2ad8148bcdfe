package bitterend.shops;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.RunId;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;

/** The hard rules of a shop, looked up plainly. */
final class Bench {
    private final PackingProblem problem;
    private final Map<String, Reel> reels = new TreeMap<>();
    private final Map<String, String> pinned = new HashMap<>();
    private final Set<String> issued = new HashSet<>();
    private final Map<RunId, Run> runs = new TreeMap<>();

    Bench(PackingProblem problem) {
        this.problem = problem;
        for (Reel reel : problem.reels()) {
            reels.put(reel.id(), reel);
            for (Run run : reel.runs()) {
                runs.put(new RunId(reel.id(), run.index()), run);
            }
        }
        for (Pin pin : problem.pins()) {
            pinned.put(pin.piece(), pin.reel());
            if (pin.issued() > 0) {
                issued.add(pin.reel());
            }
        }
    }

    private static boolean matches(CutMate mate, Reel reel, Bond bond) {
        boolean sameReel = mate.reels().contains(reel.id());
        boolean sameLot =
                bond == Bond.ONE_LOT && !mate.lot().isEmpty() && mate.lot().equals(reel.lot());
        return mate.rope().equals(reel.rope()) && (sameReel || sameLot);
    }

    List<RunId> runs() {
        return List.copyOf(runs.keySet());
    }

    Reel reel(String id) {
        Reel reel = reels.get(id);
        if (reel == null) {
            throw new IllegalArgumentException("no reel " + id);
        }
        return reel;
    }

    /** What a piece takes up on a run, its share of the cut losses included; see {@link #room}. */
    long need(Piece piece, RunId at) {
        Reel reel = reel(at.reel());
        return piece.lengthOn(reel.rope()).orElseThrow().mm()
                + problem.ropeOn(reel).cutting().loss().mm();
    }

    /** What the pieces of a run may take up together: the last one needs no cut loss. */
    long room(RunId at) {
        Run run = runs.get(at);
        if (run == null) {
            throw new IllegalArgumentException("no run " + at);
        }
        return run.length().mm()
                + problem.ropeOn(reel(at.reel())).cutting().loss().mm();
    }

    /** Random shops are closed at weekends alone, and ask for a few days of finishing. */
    private boolean isHereInTime(Piece piece, Reel reel) {
        LocalDate last = piece.source().due().equals(LocalDate.MAX)
                ? problem.day()
                : piece.source().due();
        for (int left = piece.source().finishing(); left > 0; left -= isWeekend(last) ? 0 : 1) {
            last = last.minusDays(1);
        }
        while (isWeekend(last)) {
            last = last.minusDays(1);
        }
        LocalDate cut = last.isBefore(problem.day()) ? problem.day() : last;
        return !problem.isComing(reel.id())
                || !Objects.requireNonNull(problem.arrivals().get(reel.id()))
                        .from()
                        .isAfter(cut);
    }

    private static boolean isWeekend(LocalDate date) {
        return date.getDayOfWeek().getValue() > 5;
    }

    /** Whether the rules that look at one piece and one reel let them meet. */
    boolean allows(Piece piece, Reel reel) {
        boolean own = reel.custody().isCustomersOwn();
        boolean kept = own || reel.custody().state() == Reel.State.RESERVED;
        return piece.lengthOn(reel.rope()).isPresent()
                && reel.custody().state() != Reel.State.ON_HOLD
                && own == piece.ownRope()
                && (!kept || reel.custody().order().equals(piece.order()))
                && (piece.certificate().isEmpty()
                        || piece.certificate().equals(reel.papers().certificate()))
                && !problem.day().isAfter(reel.papers().useBy())
                && isHereInTime(piece, reel)
                && piece.matching().begun().stream()
                        .allMatch(mate -> matches(mate, reel, piece.matching().bond()))
                && pinned.getOrDefault(piece.id(), issued.contains(reel.id()) ? "" : reel.id())
                        .equals(reel.id());
    }

    /** Whether every matched set is planned whole, off one lot or one reel, or not at all. */
    boolean keepsSets(Packing packing) {
        Map<String, Set<String>> sources = new HashMap<>();
        for (Piece piece : problem.pieces()) {
            if (piece.isMatched()) {
                String source = packing.placeOf(piece.id())
                        .map(at -> source(piece.matching().bond(), reel(at.reel())))
                        .orElse("");
                sources.computeIfAbsent(piece.matching().set(), set -> new HashSet<>())
                        .add(source);
            }
        }
        return sources.values().stream().allMatch(all -> all.size() == 1);
    }

    private static String source(Bond bond, Reel reel) {
        return bond == Bond.ONE_REEL ? reel.id() : reel.rope() + " " + lot(reel);
    }

    /** The lot of a reel; a reel whose lot is not known is a lot by itself. */
    static String lot(Reel reel) {
        return reel.lot().isEmpty() ? "of reel " + reel.id() : "lot " + reel.lot();
    }
}
