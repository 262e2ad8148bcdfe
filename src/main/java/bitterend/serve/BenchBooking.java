package bitterend.serve;

import bitterend.day.Found;
import bitterend.day.Part;
import bitterend.exchange.FlawText;
import bitterend.exchange.PlanFolder.Kept;
import bitterend.exchange.StockText;
import bitterend.finding.Findings;
import bitterend.measure.Length;
import bitterend.measure.Parsed;
import bitterend.report.Figures;
import bitterend.stock.Event;
import bitterend.stock.Flaw;
import bitterend.stock.Movement;
import bitterend.work.BookedBefore;
import bitterend.work.Booking;
import bitterend.work.NamedPlan;
import bitterend.work.Plans;
import bitterend.work.Remark;
import bitterend.work.ShopNow;
import bitterend.work.plans.PostPlan;
import bitterend.work.plans.PostedPieces;
import bitterend.work.rack.AskRack;
import bitterend.work.rack.RackDesk;
import bitterend.work.rack.RackWork;
import bitterend.work.rack.SpoilPiece;
import bitterend.work.rack.TakeBack;
import bitterend.work.rack.WorkReel;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is tapped at the bench is booked at once, each under the id that its page gave it: sent again it counts no more. It is
 * booked by the plan that the page showed, whichever is in force by then; the gate says whether that still goes.
 */
final class BenchBooking implements Screen {
    private static final String OTHERWISE =
            "Under the id of this page something else was booked before, which stays: look at the reel again. Nothing more was"
                    + " booked.";

    /** Nothing is wrong with the booking: it is sent again when what is in its way has passed. */
    static final int WAITS = 503;

    private final Loft loft;
    private final Site site;
    private final People people;

    BenchBooking(Loft loft, Site site, People people) {
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.post("/bench/reel", this::book);
    }

    /** Who sent it, and under which id. */
    private record Sender(Context request, String who, String booking, Loft loft) {
        Event.Act act(Event.Act act) {
            return Sent.by(act, who, booking, request);
        }

        /** Whether an event was asked for in the same words. */
        boolean isThat(Event event) {
            return event.fact(Event.ASKED).equals(act(event.act()).facts().get(Event.ASKED));
        }

        String reel() {
            return Sent.text(request, "reel");
        }

        String piece() {
            return Sent.text(request, "piece");
        }

        Parsed<Length> length() {
            return loft.length(StockText::allowance).apply(Sent.text(request, "length"));
        }

        /** Whether who sent it has said that it is so, far off though it is. */
        boolean isSure() {
            return Sent.text(request, "sure").equals("yes");
        }

        /** What is wrong with its length. */
        String noLength() {
            return unread("length", length().refusal().orElse("a length above nothing"));
        }

        String unread(String field, String expected) {
            return "That " + field + " could not be read: found \"" + Sent.text(request, field) + "\", expected "
                    + expected + ". Nothing was booked.";
        }
    }

    /**
     * Why something is not booked.
     *
     * @param mayBeSo whether it is booked all the same when who sent it says that it is so
     */
    private record Refusal(String why, boolean mayBeSo) {
        Refusal(String why) {
            this(why, false);
        }

        Refusal(Booking.Refused refused) {
            this(Wrong.sentence(refused), refused.kind() == Booking.Kind.CONTRADICTORY);
        }
    }

    private void book(Context request) {
        Sender sender = new Sender(request, people.who(request), Sent.id(request), loft);
        Optional<Event> before = BookedBefore.under(loft.access(), sender.booking());
        if (before.isPresent()) {
            answer(request, sender.isThat(before.get()) ? Optional.empty() : Optional.of(new Refusal(OTHERWISE)));
            return;
        }
        ShopNow now = loft.now().orElse(null);
        if (sender.who().isEmpty() || now == null) {
            request.status(WAITS);
            site.tell(request, sender.who().isEmpty() ? People.FIRST : Loft.BROKEN);
            return;
        }
        answer(
                request,
                switch (Sent.text(request, "what")) {
                    case "undo" -> undo(sender);
                    case "spoiled" -> spoiled(sender);
                    case "flaw" -> flaw(sender);
                    default -> posted(sender, now);
                });
    }

    private RackDesk desk(Sender sender) {
        return new RackDesk(loft.access(), sender::act, Sent.text(sender.request(), "note"));
    }

    /** No length is none that goes back; one that cannot be read is none at all. */
    private Optional<Refusal> spoiled(Sender sender) {
        boolean none = Sent.text(sender.request(), "length").isEmpty();
        Optional<Length> back =
                none ? Optional.of(Length.ZERO) : sender.length().value();
        return back.isEmpty()
                ? Optional.of(new Refusal(sender.noLength()))
                : booked(new SpoilPiece(desk(sender)).spoil(sender.piece(), back.get()));
    }

    private static Optional<Refusal> booked(Booking booking) {
        return booking instanceof Booking.Refused refused ? Optional.of(new Refusal(refused)) : Optional.empty();
    }

    private Optional<Refusal> flaw(Sender sender) {
        Parsed<List<Flaw>> flaws = loft.typed().figures(FlawText::parse).apply(Sent.text(sender.request(), "flaw"));
        return flaws.value()
                .map(read -> booked(new WorkReel(desk(sender)).book(new RackWork.AddFlaws(sender.reel(), read))))
                .orElseGet(() -> flaws.refusal().map(expected -> new Refusal(sender.unread("flaw", expected))));
    }

    /** The last that was booked of the reel. */
    private Optional<Refusal> undo(Sender sender) {
        List<Movement> movements =
                new AskRack(loft.access()).history(sender.reel()) instanceof AskRack.Found.History history
                        ? history.movements()
                        : List.of();
        long last =
                movements.isEmpty() ? 0 : movements.get(movements.size() - 1).event();
        if (last > 0 && !Sent.text(sender.request(), "event").equals(Long.toString(last))) {
            return Optional.of(
                    new Refusal("Something else of this reel was booked meanwhile, and that stays: look at it again."));
        }
        return movements.isEmpty()
                ? Optional.of(new Refusal("Nothing of this reel is booked."))
                : booked(new TakeBack(loft.access(), sender.act(Event.Act.of(Event.Kind.UNDONE, sender.who(), "")))
                        .event(movements.get(movements.size() - 1).event()));
    }

    private Optional<Refusal> posted(Sender sender, ShopNow now) {
        Plans plans = now.at().plans(new Findings());
        String after = Sent.text(sender.request(), "after");
        Optional<Kept> plan = new NamedPlan(plans).read(Sent.text(sender.request(), "plan"), new Findings());
        Optional<Part> part = part(sender);
        if (plan.isEmpty() || part.isEmpty()) {
            return Optional.of(
                    new Refusal(plan.isEmpty() ? "There is no such plan. Nothing was booked." : sender.noLength()));
        }
        if (!after.isEmpty() && !isCut(after, now, plans, plan.get())) {
            return Optional.of(new Refusal(
                    "The cut before it, " + after + ", is not booked: book that one first. Nothing was booked."));
        }
        return why(
                new PostPlan(now, plans).post(new PostPlan.Request(plan.get(), part.get(), sender::act)),
                loft.figures(now));
    }

    /** A cut is booked behind the one that its page showed before it: what was refused there is not booked along with it. */
    private static boolean isCut(String piece, ShopNow now, Plans plans, Kept plan) {
        return PostedPieces.of(now, plans, plan).contains(piece)
                || now.rack().filter(rack -> rack.cut().containsKey(piece)).isPresent();
    }

    private static Optional<Part> part(Sender sender) {
        List<String> upTo = List.of(sender.piece());
        return switch (Sent.text(sender.request(), "what")) {
            case "cut" -> Optional.of(new Part(List.of(), upTo, cameOut(sender, Map.of())));
            case "measured" -> sender.length()
                    .value()
                    .filter(Length::isPositive)
                    .map(length -> new Part(List.of(), upTo, cameOut(sender, Map.of(sender.piece(), length))));
            case "ends" -> Optional.of(new Part(List.of(), upTo, left(sender.reel(), Length.ZERO)));
            case "rest" -> sender.length()
                    .value()
                    .map(length -> new Part(List.of(sender.reel()), List.of(), left(sender.reel(), length)));
            default -> Optional.empty();
        };
    }

    private static Found cameOut(Sender sender, Map<String, Length> measured) {
        return new Found(
                measured, Map.of(), Found.Pieces.NONE, sender.isSure() ? Set.of(Found.Word.SURE) : Set.of(), "");
    }

    private static Found left(String reel, Length length) {
        return new Found(Map.of(), Map.of(reel, length), Found.Pieces.NONE, Set.of(Found.Word.SURE), "");
    }

    private static Optional<Refusal> why(PostPlan.Result result, Figures figures) {
        if (result instanceof PostPlan.Result.Barred barred) {
            return Optional.of(new Refusal(barred.bars().stream()
                            .map(Remark::sentence)
                            .map(figures::sentence)
                            .collect(Collectors.joining("; "))
                    + ". Nothing was booked."));
        }
        if (result instanceof PostPlan.Result.NotLetThrough not) {
            return Optional.of(new Refusal(String.join("; ", not.why().reasons()) + ". Nothing was booked."));
        }
        return result instanceof PostPlan.Result.NotBooked not ? Optional.of(new Refusal(not.why())) : Optional.empty();
    }

    /** The reel again; or not booked, in words. */
    private void answer(Context request, Optional<Refusal> refusal) {
        if (refusal.isPresent()) {
            request.status(409);
            site.tell(request, refusal.get().why(), refusal.get().mayBeSo());
        } else {
            Back.to(request, BenchScreen.PATH + Sent.path(Sent.text(request, "reel")));
        }
    }
}
