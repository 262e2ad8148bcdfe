package bitterend.packing;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The hard rules that concern one piece on one run, whatever else is cut there. */
public final class Eligibility {
    private final PackingProblem problem;
    private final Map<String, Pin> pins = new HashMap<>();
    private final Map<String, Integer> issued = new HashMap<>();
    private final Set<String> ordersWithReels = new HashSet<>();
    private final CutDays days;
    private final List<BiFunction<Piece, Reel, Optional<Reason>>> reelRules = List.of(
            this::sameRope,
            this::onHold,
            this::reserved,
            this::ownRope,
            this::certificate,
            this::useBy,
            this::begunSet,
            this::pinned,
            this::issued,
            this::comesInTime);

    public Eligibility(PackingProblem problem) {
        this.problem = problem;
        days = new CutDays(problem);
        for (Pin pin : problem.pins()) {
            pins.put(pin.piece(), pin);
            if (pin.isIssued()) {
                issued.put(pin.reel(), pin.issued());
            }
        }
        problem.reels().forEach(reel -> ordersWithReels.add(reel.custody().order()));
    }

    /** All that decides which reels a piece may come off; an order does only when a reel is kept for it. */
    public PieceKind kindOf(Piece piece) {
        Pin pin = pins.get(piece.id());
        return new PieceKind(
                piece.choices(),
                piece.certificate(),
                piece.ownRope(),
                ordersWithReels.contains(piece.order()) ? piece.order() : "",
                piece.matching().begun(),
                pin == null ? "" : pin.reel(),
                lastArrival(piece));
    }

    /** The latest of the days on which rope comes that the piece can wait for; {@link LocalDate#MIN} for none. */
    private LocalDate lastArrival(Piece piece) {
        LocalDate last = problem.arrivals().isEmpty() ? LocalDate.MIN : days.lastFor(piece);
        return problem.arrivals().values().stream()
                .map(Arrival::from)
                .filter(from -> !from.isAfter(last))
                .max(LocalDate::compareTo)
                .orElse(LocalDate.MIN);
    }

    /** Whether no hard rule keeps a piece off a reel, lengths apart; the engines ask this for every pair. */
    public boolean allows(Piece piece, Reel reel) {
        return piece.isAllowedOn(reel.rope())
                && !reel.custody().isOnHold()
                && !isKeptForAnother(piece, reel)
                && isOfTheRightOwner(piece, reel)
                && carriesPapers(piece, reel)
                && !isOutOfDate(reel)
                && mateElsewhere(piece, reel).isEmpty()
                && (pins.isEmpty() || (!isPinnedElsewhere(piece, reel) && !isClosedTo(piece, reel)))
                && !comesTooLate(piece, reel);
    }

    /** The first hard rule that keeps a piece off a reel, lengths apart. */
    public Optional<Reason> against(Piece piece, Reel reel) {
        if (allows(piece, reel)) {
            return Optional.empty();
        }
        return reasons(piece, reel).findFirst();
    }

    /** Every hard rule that keeps a piece off a reel, lengths apart; {@link #allows} says the same in fewer steps. */
    public List<Reason> all(Piece piece, Reel reel) {
        return reasons(piece, reel).toList();
    }

    private Stream<Reason> reasons(Piece piece, Reel reel) {
        return reelRules.stream().flatMap(rule -> rule.apply(piece, reel).stream());
    }

    /** The first hard rule that keeps a piece off a run that is otherwise untouched. */
    public Optional<Reason> against(Piece piece, Reel reel, Run run) {
        return against(piece, reel).or(() -> fits(piece, reel, run));
    }

    public Optional<Reason> sameRope(Piece piece, Reel reel) {
        return unless(
                piece.isAllowedOn(reel.rope()),
                Rule.SAME_ROPE,
                () -> Sentence.of(reel.id() + " holds " + reel.rope() + "; " + piece.id() + " is ordered in "
                        + piece.orderedRope()));
    }

    public Optional<Reason> onHold(Piece piece, Reel reel) {
        return unless(!reel.custody().isOnHold(), Rule.ON_HOLD, () -> Sentence.of(reel.id() + " is on hold"));
    }

    public Optional<Reason> reserved(Piece piece, Reel reel) {
        return unless(
                !isKeptForAnother(piece, reel),
                Rule.RESERVED,
                () -> Sentence.of(
                        reel.id() + " is kept for order " + reel.custody().order()));
    }

    public Optional<Reason> ownRope(Piece piece, Reel reel) {
        boolean owned = reel.custody().isCustomersOwn();
        return unless(
                isOfTheRightOwner(piece, reel),
                Rule.OWN_ROPE,
                () -> Sentence.of(
                        owned
                                ? reel.id() + " belongs to " + reel.custody().owner() + " and serves order "
                                        + reel.custody().order() + " alone"
                                : piece.id() + " is to be cut from the customer's own rope; " + reel.id()
                                        + " is ours"));
    }

    public Optional<Reason> certificate(Piece piece, Reel reel) {
        String has = reel.papers().certificate();
        return unless(
                carriesPapers(piece, reel),
                Rule.CERTIFICATE,
                () -> Sentence.of(piece.id() + " needs " + Words.certificate(piece.certificate()) + "; " + reel.id()
                        + " carries " + (has.isEmpty() ? "none" : has)));
    }

    public Optional<Reason> useBy(Piece piece, Reel reel) {
        return unless(
                !isOutOfDate(reel),
                Rule.USE_BY,
                () -> Sentence.of(
                        reel.id() + " was to be used by " + reel.papers().useBy()));
    }

    /** The first cut piece of its set that the piece would not match, on a rope that would do. */
    public Optional<Reason> begunSet(Piece piece, Reel reel) {
        boolean toTheReel = piece.matching().bond() == Piece.Bond.ONE_REEL;
        return mateElsewhere(piece, reel)
                .filter(mate -> piece.isAllowedOn(reel.rope()))
                .map(mate -> new Reason(
                        Rule.BEGUN_SET,
                        "set " + piece.matching().set() + " is begun: " + mate.piece() + " is cut off "
                                + mate.origin(toTheReel)
                                + "; " + reel.id() + " is not of "
                                + (toTheReel ? "that reel" : "that lot")));
    }

    public Optional<Reason> pinned(Piece piece, Reel reel) {
        return unless(
                !isPinnedElsewhere(piece, reel), Rule.PINNED, () -> Sentence.of(piece.id() + pinnedTo(pinOf(piece))));
    }

    /** A sheet on the bench stays as it is: its reel takes what is pinned to it and nothing else. */
    public Optional<Reason> issued(Piece piece, Reel reel) {
        return unless(
                !isClosedTo(piece, reel),
                Rule.ISSUED,
                () -> Sentence.of("reel " + reel.id() + " is issued on plan " + issued.get(reel.id())
                        + " and takes nothing more"));
    }

    /** A reel that is on order serves what need not be cut before it is here. */
    public Optional<Reason> comesInTime(Piece piece, Reel reel) {
        return unless(!comesTooLate(piece, reel), Rule.COMES_IN_TIME, () -> {
            LocalDate last = days.lastFor(piece);
            Arrival arrival = Objects.requireNonNull(problem.arrivals().get(reel.id()));
            return Sentence.of(piece.id() + " must be cut "
                    + (last.equals(problem.day()) ? "today" : "by " + last)
                    + "; rope on order " + arrival.order() + " is counted on from " + arrival.from());
        });
    }

    /** Whether the run would hold the piece if nothing else were cut from it. */
    public Optional<Reason> fits(Piece piece, Reel reel, Run run) {
        Length cut = piece.lengthOn(reel.rope()).orElse(piece.cut());
        return unless(!cut.isLongerThan(run.length()), Rule.FITS_THE_RUN, () -> Sentence.of(piece.id() + " takes ")
                .and(cut)
                .and("; " + reel.id() + " has ")
                .and(run.length())
                .and(" in one run")
                .and(reel.contents().held().isPositive() ? ", beside " : "")
                .and(reel.contents().held().isPositive() ? HeldWords.of(reel, problem.day()) : Sentence.NONE));
    }

    private static boolean isKeptForAnother(Piece piece, Reel reel) {
        return reel.custody().isReserved() && !reel.custody().order().equals(piece.order());
    }

    private static boolean isOfTheRightOwner(Piece piece, Reel reel) {
        return reel.custody().isCustomersOwn()
                ? piece.ownRope() && reel.custody().order().equals(piece.order())
                : !piece.ownRope();
    }

    private static boolean carriesPapers(Piece piece, Reel reel) {
        return piece.certificate().isEmpty()
                || piece.certificate().equals(reel.papers().certificate());
    }

    private boolean isOutOfDate(Reel reel) {
        return problem.day().isAfter(reel.papers().useBy());
    }

    /** A cut piece of its set that is of other rope. */
    private static Optional<CutMate> mateElsewhere(Piece piece, Reel reel) {
        boolean toTheReel = piece.matching().bond() == Piece.Bond.ONE_REEL;
        for (CutMate mate : piece.matching().begun()) {
            if (toTheReel ? !mate.reels().contains(reel.id()) : !mate.isOfItsLot(reel.rope(), reel.lot(), reel.id())) {
                return Optional.of(mate);
            }
        }
        return Optional.empty();
    }

    private static String pinnedTo(Pin pin) {
        if (pin.isOfHeldRope() && !pin.isIssued()) {
            return " comes off rope of reel " + pin.reel() + " that is held for " + pin.heldFor();
        }
        return pin.isIssued()
                ? " is issued on plan " + pin.issued() + ", off reel " + pin.reel()
                : " is pinned to " + pin.reel();
    }

    private Pin pinOf(Piece piece) {
        return Optional.ofNullable(pins.get(piece.id())).orElseThrow();
    }

    private boolean isPinnedElsewhere(Piece piece, Reel reel) {
        Pin pin = pins.get(piece.id());
        return pin != null && !pin.reel().equals(reel.id());
    }

    /** Whether the sheet of the reel is out without the piece. */
    private boolean isClosedTo(Piece piece, Reel reel) {
        Pin pin = pins.get(piece.id());
        return issued.containsKey(reel.id()) && (pin == null || !pin.reel().equals(reel.id()));
    }

    private boolean comesTooLate(Piece piece, Reel reel) {
        Arrival arrival = problem.arrivals().get(reel.id());
        return arrival != null && days.lastFor(piece).isBefore(arrival.from());
    }

    private static Optional<Reason> unless(boolean kept, Rule rule, Supplier<Sentence> sentence) {
        return kept ? Optional.empty() : Optional.of(new Reason(rule, sentence.get()));
    }
}
