package bitterend.serve;

import bitterend.exchange.FlawText;
import bitterend.exchange.StockText;
import bitterend.exchange.TypedText;
import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import bitterend.stock.Counted;
import bitterend.stock.Event;
import bitterend.stock.Held;
import bitterend.stock.Paid;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import bitterend.work.rack.ArriveReel;
import bitterend.work.rack.AskRack;
import bitterend.work.rack.CorrectReel;
import bitterend.work.rack.HoldRope;
import bitterend.work.rack.LookAlikes;
import bitterend.work.rack.RackDesk;
import bitterend.work.rack.RackWork;
import bitterend.work.rack.ReceiveReel;
import bitterend.work.rack.TakeBack;
import bitterend.work.rack.WorkReel;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** What the forms of the rack ask for, done by the work of the command line. */
final class ReelDeeds {
    private static final Written SOME = Written.worked(new Length(1));

    private final ShopNow now;
    private final Form form;
    private final TypedText typed;
    private final RackDesk desk;

    /** @param caller puts into an act who does it, and under which id */
    ReelDeeds(ShopNow now, Form form, UnaryOperator<Event.Act> caller) {
        this.now = now;
        this.form = form;
        typed = new TypedText(now.shop().settings());
        desk = new RackDesk(now.at(), caller, form.or("note", StockText::words, ""));
    }

    /**
     * What became of a form.
     *
     * @param booking what was booked or why not; nothing where a field must be looked at first
     * @param told what a person should know besides
     */
    record Done(Optional<Booking> booking, List<String> told) {
        static final Done NOTHING = new Done(Optional.empty(), List.of());

        static Done of(Booking booking) {
            return new Done(Optional.of(booking), booking instanceof Booking.Booked booked ? booked.told() : List.of());
        }

        Done telling(List<String> more) {
            return new Done(
                    booking,
                    java.util.stream.Stream.concat(more.stream(), told.stream()).toList());
        }
    }

    /** Does what is asked of a reel. */
    Done of(String reel) {
        return switch (form.text("what")) {
            case "hold" -> work(new RackWork.Hold(reel));
            case "release" -> work(new RackWork.Release(reel));
            case "rewind" -> work(new RackWork.Rewind(reel));
            case "letgo" -> work(new RackWork.ReleaseRope(reel, form.text("name")));
            case "move" -> work(new RackWork.Move(reel, form.must("place", StockText::words, "")));
            case "flaw" -> work(
                    new RackWork.AddFlaws(reel, form.must("flaw", typed.figures(FlawText::parse), List.of())));
            case "count" -> work(counted(reel));
            case "split" -> split(reel);
            case "reserve" -> reserved(reel);
            case "correct" -> corrected(reel);
            case "leave" -> left(reel);
            case "undo" -> undone();
            default -> Done.NOTHING;
        };
    }

    private Done work(RackWork work) {
        return form.sound() ? Done.of(new WorkReel(desk).book(work)) : Done.NOTHING;
    }

    private RackWork counted(String reel) {
        return new RackWork.Count(List.of(Counted.of(
                reel,
                form.must("length", typed.figures(StockText::asTyped), SOME),
                form.or("uncertainty", typed.figures(StockText::allowance), Length.ZERO),
                known(Reel.Known.COUNTED))));
    }

    private Reel.Known known(Reel.Known usual) {
        return Arrays.stream(Reel.Known.values())
                .filter(known -> known.name().equals(form.text("known")))
                .findFirst()
                .orElse(usual);
    }

    private Done split(String reel) {
        String to = form.must("to", StockText::reel, "");
        Done done = work(new RackWork.Split(reel, form.must("length", typed.figures(StockText::asTyped), SOME), to));
        return done.booking().isPresent()
                ? done.telling(new LookAlikes(now.at()).reel(to).stream().toList())
                : done;
    }

    /** All of the reel for an order, or so much of it for an order or a customer until a day. */
    private Done reserved(String reel) {
        String order = form.or("order", StockText::order, "");
        String customer = form.or("customer", StockText::words, "");
        Length length = form.may("length", typed.figures(StockText::length));
        LocalDate until = form.may("until", typed.day(StockText::day));
        if (order.isEmpty() == customer.isEmpty()) {
            form.wrong("order", "say whom it is kept for: an order or a customer, one of the two");
        }
        if (length == null) {
            if (!customer.isEmpty() || until != null) {
                form.wrong(
                        "length",
                        "say how much of it: all of a reel is kept for an order alone, and without a last day");
            }
            return work(new RackWork.Reserve(reel, order));
        }
        if (until == null) {
            form.wrong("until", "say the last day on which it is held");
            return Done.NOTHING;
        }
        Held.For kind = customer.isEmpty() ? Held.For.ORDER : Held.For.CUSTOMER;
        return form.sound()
                ? Done.of(new HoldRope(desk, now)
                        .hold(new HoldRope.Request(reel, length, kind, order + customer, until, Loft.day(now))))
                : Done.NOTHING;
    }

    /** What differs from what is written down is corrected; a reason belongs to it. */
    private Done corrected(String reel) {
        Reel old = now.shop().reels().stream()
                .filter(each -> each.id().equals(reel))
                .findFirst()
                .orElse(null);
        if (old == null) {
            return Done.of(new Booking.Refused("there is no reel " + reel + " on the rack"));
        }
        if (desk.note().isEmpty()) {
            form.wrong("note", "say why it is corrected");
        }
        String rope = changed("rope", old.rope(), StockText::reel);
        LocalDate useBy = form.text("useBy").isEmpty() ? LocalDate.MAX : form.may("useBy", typed.day(StockText::day));
        CorrectReel.Correction correction = new CorrectReel.Correction(
                rope == null || rope.isEmpty() ? null : new CorrectReel.RopeOf(rope, now.shop()),
                changed("lot", old.lot(), StockText::lot),
                new CorrectReel.Papers(
                        changed("certificate", old.papers().certificate(), StockText::words),
                        changed("number", old.papers().number(), StockText::words),
                        useBy,
                        form.may("received", typed.day(StockText::day))),
                changed("reelNote", old.where().note(), StockText::words),
                paid(new AskRack(now.at()).cameWith(reel).orElse(Length.ZERO)));
        if (!form.sound()) {
            return Done.NOTHING;
        }
        CorrectReel.Outcome outcome = new CorrectReel(desk).correct(reel, correction);
        return new Done(Optional.of(outcome.booking()), outcome.warnings());
    }

    private @Nullable String changed(
            String field, String old, java.util.function.Function<String, Parsed<String>> rule) {
        String is = form.or(field, rule, "");
        return !form.has(field) || is.equals(old) ? null : is;
    }

    private Done left(String reel) {
        return switch (form.text("how")) {
            case "return" -> work(new RackWork.GiveBack(reel));
            case "sell" -> work(new RackWork.Sell(reel, form.text("sure").equals("yes")));
            case "condemn" -> work(new RackWork.Condemn(reel));
            case "send" -> work(new RackWork.Send(reel, form.must("loft", StockText::words, "")));
            default -> {
                form.wrong("how", "say how it leaves the rack");
                yield Done.NOTHING;
            }
        };
    }

    private Done undone() {
        String event = form.text("event");
        if (!event.matches("[0-9]{1,18}")) {
            form.wrong("event", "say which event");
            return Done.NOTHING;
        }
        Event.Act act = desk.caller().apply(Event.Act.of(Event.Kind.UNDONE, "", desk.note()));
        return form.sound() ? Done.of(new TakeBack(now.at(), act).event(Long.parseLong(event))) : Done.NOTHING;
    }

    /** Books a reel in that came. */
    Done received() {
        Written length = form.may("length", typed.figures(StockText::asTyped));
        ReceiveReel.Request request = new ReceiveReel.Request(
                form.must("reel", StockText::reel, ""),
                form.must("rope", StockText::reel, ""),
                form.or("lot", StockText::lot, ""),
                amount(),
                form.or("flaw", typed.figures(FlawText::parse), List.of()),
                new ReceiveReel.Papers(
                        form.or("certificate", StockText::words, ""),
                        form.or("number", StockText::lot, ""),
                        form.may("useBy", typed.day(StockText::day)),
                        form.may("received", typed.day(StockText::day))),
                new ReceiveReel.Owner(form.or("owner", StockText::words, ""), form.or("order", StockText::order, "")),
                !form.text("part").equals("yes"),
                form.or("place", StockText::words, ""),
                form.or("reelNote", StockText::words, ""),
                form.text("onOrder"),
                paid(length == null ? Length.ZERO : length.roundedDown()));
        if (!form.sound()) {
            takenId(request.reel());
            return Done.NOTHING;
        }
        ReceiveReel.Result result = new ReceiveReel(desk, now.shop()).receive(request);
        Booking booking = result instanceof ReceiveReel.Result.Received received
                ? received.booked()
                : ((ReceiveReel.Result.NotReceived) result).why();
        return Done.of(booking).telling(result.warnings());
    }

    /** Beside other mistakes, so that they are mended together; alone it is the ledger that refuses. */
    private void takenId(String reel) {
        if (now.at().keepsLedger()) {
            new AskRack(now.at()).taken(reel).ifPresent(words -> form.wrong("reel", words));
        }
    }

    /** Books in, under its number here, a reel that another loft sent. */
    Done arrived(String sent) {
        String here = form.or("reel", StockText::reel, sent);
        return form.sound() ? Done.of(new ArriveReel(desk, now.shop()).book(sent, here)) : Done.NOTHING;
    }

    /** @param length of the reel as it came, for a price by length */
    private Paid paid(Length length) {
        MoneyText money = now.shop().settings().money();
        return new Paid(
                form.may("paid", typed.figures(text -> StockText.paid(text, length, money))),
                form.may("freight", typed.figures(text -> StockText.amount(text, money))));
    }

    private ReceiveReel.Amount amount() {
        return new ReceiveReel.Amount(
                form.must("length", typed.figures(StockText::asTyped), SOME),
                known(Reel.Known.NOMINAL),
                form.or("tolerance", typed.figures(StockText::tolerance), Ratio.ZERO),
                form.may("uncertainty", typed.figures(StockText::allowance)),
                form.or("leadTrim", typed.figures(StockText::allowance), Length.ZERO),
                form.or("innerWraps", typed.figures(StockText::allowance), Length.ZERO));
    }
}
