package bitterend.packing.check;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Arrival;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import bitterend.packing.Words;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** The day's pieces, reels and pins by id, and which piece may come off which reel. */
final class Facts {
    private final PackingProblem problem;
    private final LastDay lastDay;
    private final Map<String, Piece> pieces = new HashMap<>();
    private final Map<String, Reel> reels = new HashMap<>();
    private final Map<String, String> pins = new HashMap<>();
    private final Map<String, Integer> sheetsOut = new HashMap<>();
    private final Map<String, Integer> steps = new HashMap<>();
    private final Map<String, SoundRope> sound = new HashMap<>();
    private final HeldBack held;

    Facts(PackingProblem problem) {
        this.problem = problem;
        lastDay = new LastDay(problem.calendar());
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
        problem.reels().forEach(reel -> reels.put(reel.id(), reel));
        for (Pin pin : problem.pins()) {
            pins.put(pin.piece(), pin.reel());
            sheetsOut.merge(pin.reel(), pin.issued(), Math::max);
            steps.put(pin.piece(), pin.issued() > 0 ? pin.step() : 0);
        }
        held = new HeldBack(problem);
    }

    PackingProblem problem() {
        return problem;
    }

    Optional<Piece> findPiece(String id) {
        return Optional.ofNullable(pieces.get(id));
    }

    Optional<Reel> findReel(String id) {
        return Optional.ofNullable(reels.get(id));
    }

    List<SoundRope.Stretch> runs(Reel reel) {
        return sound(reel).runs();
    }

    /** Where pieces may lie on a reel. */
    SoundRope sound(Reel reel) {
        return sound.computeIfAbsent(reel.id(), id -> new SoundRope(reel, held(reel)));
    }

    /** What of a reel is held for others. */
    Length held(Reel reel) {
        return held.on(reel);
    }

    /** What those pieces still take that rope of a reel is held for and that are not among these. */
    Length waitingFor(Reel reel, Set<String> cut) {
        return held.waitingFor(reel, cut);
    }

    /** The reel a piece is pinned to; empty for none. */
    String pin(Piece piece) {
        return pins.getOrDefault(piece.id(), "");
    }

    /** The place of a piece on the sheet of a reel that is out, from 1; 0 where it is on none or its place is not known. */
    int stepOnTheSheet(String piece, String reel) {
        return reel.equals(pins.get(piece)) ? steps.getOrDefault(piece, 0) : 0;
    }

    /** Every rule between one piece and one reel that the two break, each with a sentence. */
    Map<Check, String> broken(Piece piece, Reel reel) {
        Map<Check, String> broken = new LinkedHashMap<>();
        Reel.Custody custody = reel.custody();
        Supplier<String> both = () -> piece.id() + " on " + reel.id();
        if (piece.choices().stream().noneMatch(choice -> choice.rope().equals(reel.rope()))) {
            broken.put(
                    Check.SAME_ROPE,
                    both.get() + ": the reel holds " + reel.rope() + ", which the piece does not allow");
        }
        if (custody.state() == Reel.State.ON_HOLD) {
            broken.put(Check.ON_HOLD, reel.id() + " is on hold");
        }
        boolean kept = custody.state() == Reel.State.RESERVED
                || (custody.owner().isEmpty() && !custody.order().isEmpty());
        if (kept && !custody.order().equals(piece.order())) {
            broken.put(Check.RESERVED, both.get() + ": the reel is kept for " + custody.order());
        }
        if (breaksOwnership(piece, custody)) {
            broken.put(
                    Check.OWN_ROPE,
                    both.get() + ": the reel is " + owner(custody) + ", the piece wants "
                            + (piece.ownRope() ? "its customer's own rope" : "the shop's rope"));
        }
        if (!piece.certificate().isEmpty()
                && !piece.certificate().equals(reel.papers().certificate())) {
            broken.put(Check.CERTIFICATE, both.get() + ": the piece needs " + Words.certificate(piece.certificate()));
        }
        if (reel.papers().useBy().isBefore(problem.day())) {
            broken.put(
                    Check.USE_BY,
                    reel.id() + " was to be used by " + reel.papers().useBy());
        }
        tornFromCut(piece, reel).ifPresent(sentence -> broken.put(Check.BEGUN_SET, both.get() + ": " + sentence));
        String pin = pins.get(piece.id());
        if (pin != null && !pin.equals(reel.id())) {
            broken.put(Check.PINNED, both.get() + ": the piece is pinned to " + pin);
        }
        held.wronglyServed(piece).ifPresent(sentence -> broken.put(Check.RESERVED, both.get() + ": " + sentence));
        int sheet = sheetsOut.getOrDefault(reel.id(), 0);
        if (sheet > 0 && !reel.id().equals(pin)) {
            broken.put(Check.ISSUED, both.get() + ": the sheet of the reel is out on plan " + sheet + " without it");
        }
        firstDayTooLate(piece, reel)
                .ifPresent(first -> broken.put(
                        Check.COMES_IN_TIME,
                        both.get() + ": the reel comes, counted from its order, on " + first
                                + ", and the piece is cut before"));
        return broken;
    }

    /** The day from which a reel on order is counted on, where a piece cannot wait for it. */
    private Optional<LocalDate> firstDayTooLate(Piece piece, Reel reel) {
        return firstDay(reel.id()).filter(first -> !waitsUntil(piece, first));
    }

    private Optional<LocalDate> firstDay(String reel) {
        return Optional.ofNullable(problem.arrivals().get(reel)).map(Arrival::from);
    }

    /** Whether a piece need not be cut before a day. */
    private boolean waitsUntil(Piece piece, LocalDate first) {
        LocalDate last = lastDay.of(piece);
        if (last.equals(LocalDate.MAX)) {
            return !first.isAfter(problem.day());
        }
        return !first.isAfter(last.isBefore(problem.day()) ? problem.day() : last);
    }

    /** Whether a reel may be brought forward to a day: by own count a working day, when it is there and no piece asks for it yet. */
    boolean mayBeCutOn(LocalDate day, ReelDraw draw) {
        return lastDay.isWorking(day)
                && !day.isBefore(problem.day())
                && firstDay(draw.reel()).stream().noneMatch(day::isBefore)
                && !sheetsOut.containsKey(draw.reel())
                && findReel(draw.reel()).stream()
                        .noneMatch(reel -> reel.papers().useBy().isBefore(day))
                && draw.cuts().stream()
                        .flatMap(cut -> findPiece(cut.piece()).stream())
                        .allMatch(piece -> day.isBefore(lastDay.of(piece)));
    }

    /** Which reels on order a piece can wait for: pieces of one answer are alike in this. */
    List<String> waitsFor(Piece piece) {
        return problem.arrivals().entrySet().stream()
                .filter(coming -> waitsUntil(piece, coming.getValue().from()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Of a set to the reel every cut piece came off this reel; of any other, off this rope and lot. */
    private static Optional<String> tornFromCut(Piece piece, Reel reel) {
        for (CutMate mate : piece.matching().begun()) {
            boolean sameReel = mate.reels().contains(reel.id());
            boolean sameLot = !mate.lot().isEmpty() && mate.lot().equals(reel.lot());
            boolean matches = piece.matching().bond() == Piece.Bond.ONE_REEL ? sameReel : sameLot || sameReel;
            if (!matches || !mate.rope().equals(reel.rope())) {
                return Optional.of(mate.piece() + " of the set is cut off other rope");
            }
        }
        return Optional.empty();
    }

    private static boolean breaksOwnership(Piece piece, Reel.Custody custody) {
        if (custody.owner().isEmpty()) {
            return piece.ownRope();
        }
        return !piece.ownRope() || !piece.order().equals(custody.order());
    }

    private static String owner(Reel.Custody custody) {
        return custody.owner().isEmpty() ? "the shop's" : custody.owner() + "'s for order " + custody.order();
    }

    /** What tells one lot from another on ropes of one kind; a reel whose lot is not known is a lot by itself. */
    static String lot(Reel reel) {
        return reel.lot().isEmpty() ? "unknown lot of reel " + reel.id() : "lot " + reel.lot();
    }
}
