package bitterend.work.trade;

import bitterend.buying.reorder.Waiting;
import bitterend.market.Bill;
import bitterend.packing.Arrival;
import bitterend.packing.PackingProblem;
import bitterend.quoting.RopeQuote;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Stream;

/** From which day on the rope of a request is there beside the booked work: on the rack, on order, or by the offers priced. */
final class RopeThere {
    private final PackingProblem book;

    /** @param book the booked work on the rack, with the reels on order */
    RopeThere(PackingProblem book) {
        this.book = book;
    }

    /**
     * The day; {@link LocalDate#MIN} where the rack holds it, nothing where neither rack nor orders do and nobody offers it.
     *
     * @param bill of the reels that the request is priced on
     */
    Optional<LocalDate> day(RopeQuote rope, Bill bill) {
        List<Reel> reels = book.reels().stream()
                .filter(reel ->
                        reel.rope().equals(rope.rope()) && !reel.custody().isCustomersOwn())
                .toList();
        List<Waiting.Wanted> pieces = pieces(rope);
        Optional<LocalDate> ours = new TreeSet<>(reels.stream().map(this::from).toList())
                .stream()
                        .filter(day -> holds(
                                reels.stream()
                                        .filter(reel -> !from(reel).isAfter(day))
                                        .toList(),
                                pieces))
                        .findFirst();
        OptionalInt lead = lead(bill, rope.rope());
        Optional<LocalDate> offered =
                lead.isEmpty() ? Optional.empty() : Optional.of(book.day().plusDays(lead.getAsInt()));
        return ours.isPresent() && offered.isPresent() && offered.get().isBefore(ours.get())
                ? offered
                : ours.or(() -> offered);
    }

    private LocalDate from(Reel reel) {
        Arrival arrival = book.arrivals().get(reel.id());
        return arrival == null ? LocalDate.MIN : arrival.from();
    }

    /** What is to be cut from it: booked, and asked for. */
    private List<Waiting.Wanted> pieces(RopeQuote rope) {
        return Stream.concat(
                        book.pieces().stream()
                                .filter(piece -> !piece.ownRope()
                                        && piece.choices().get(0).rope().equals(rope.rope())),
                        rope.shares().problem().pieces().stream())
                .map(piece -> new Waiting.Wanted(LocalDate.MAX, piece.cut()))
                .toList();
    }

    /** Whether every piece finds a place, the longest first where least is left; lots and papers are left to the plan. */
    private boolean holds(List<Reel> reels, List<Waiting.Wanted> pieces) {
        return new Waiting(
                        reels.stream()
                                .flatMap(reel -> reel.runs().stream())
                                .map(run -> new Waiting.Stretch(LocalDate.MIN, run.length()))
                                .toList(),
                        pieces,
                        book.ropeOn(reels.get(0)).cutting().loss())
                .isHeld();
    }

    private static OptionalInt lead(Bill bill, String rope) {
        return bill.lines().stream()
                .filter(line -> line.offer().rope().equals(rope))
                .mapToInt(line -> line.offer().terms().lead().countedOn())
                .max();
    }
}
