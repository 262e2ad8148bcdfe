package bitterend.work.rack;

import bitterend.catalogue.Rope;
import bitterend.exchange.Shop;
import bitterend.finding.Nearest;
import bitterend.market.OnOrder;
import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import bitterend.packing.Words;
import bitterend.stock.CameIn;
import bitterend.stock.Flaw;
import bitterend.stock.LedgerException;
import bitterend.stock.Paid;
import bitterend.stock.Promised;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Books a reel that came in. */
public final class ReceiveReel {
    private final RackDesk desk;
    private final Shop shop;

    public ReceiveReel(RackDesk desk, Shop shop) {
        this.desk = desk;
        this.shop = shop;
    }

    /**
     * What came in.
     *
     * @param reel its new id
     * @param rope id of its rope
     * @param lot production run; may be empty
     * @param amount how much rope it is
     * @param flaws from the working end
     * @param papers what came with it
     * @param owner whose it is
     * @param full whether nothing was cut from it before
     * @param place where it stands; may be empty
     * @param note what is to be known of it; may be empty
     * @param onOrder number of the order of reels that it is of; empty for none
     * @param paid what was paid for it, and for bringing it
     */
    public record Request(
            String reel,
            String rope,
            String lot,
            Amount amount,
            List<Flaw> flaws,
            Papers papers,
            Owner owner,
            boolean full,
            String place,
            String note,
            String onOrder,
            Paid paid) {
        public Request {
            flaws = List.copyOf(flaws);
        }
    }

    /**
     * How much rope it is.
     *
     * @param length what the label or the meter says
     * @param known how that is known
     * @param tolerance it may be so much short
     * @param uncertainty the same as a length; null where none is said
     * @param leadTrim worn outer end to cut off first
     * @param innerWraps innermost rope that cannot be used
     */
    public record Amount(
            Written length,
            Reel.Known known,
            Ratio tolerance,
            @Nullable Length uncertainty,
            Length leadTrim,
            Length innerWraps) {}

    /**
     * What came with it.
     *
     * @param certificate kind of certificate; may be empty
     * @param number its number; may be empty
     * @param useBy last day to cut it; null where it has none
     * @param received null for the day of the shop
     */
    public record Papers(String certificate, String number, @Nullable LocalDate useBy, @Nullable LocalDate received) {}

    /**
     * Whose own rope it is, and for which order; both empty for the shop's.
     */
    public record Owner(String customer, String order) {}

    /** What became of it. */
    public sealed interface Result {
        /** What the ids look like that are there, each in a sentence. */
        List<String> warnings();

        /** It is on the rack. */
        record Received(Booking.Booked booked, Reel reel, List<String> warnings) implements Result {
            public Received {
                warnings = List.copyOf(warnings);
            }
        }

        /** It is not; nothing was booked. */
        record NotReceived(Booking.Refused why, List<String> warnings) implements Result {
            public NotReceived {
                warnings = List.copyOf(warnings);
            }
        }
    }

    /** Books it, or says why not. */
    public Result receive(Request request) {
        Reel coming;
        try {
            coming = coming(request);
        } catch (LedgerException fault) {
            return new Result.NotReceived(Booking.Refused.of(fault), List.of());
        }
        LookAlikes looks = new LookAlikes(desk.at());
        List<String> warnings = Stream.of(
                        looks.reel(coming.id()), looks.lot(coming.rope(), coming.lot()), stillOnOrder(request))
                .flatMap(warning -> warning.stream())
                .toList();
        CameIn came = new CameIn(coming, promised(request.onOrder()), request.paid());
        if (request.paid().freight() != null && came.price().isEmpty()) {
            return new Result.NotReceived(new Booking.Refused(Paid.FREIGHT_ALONE), warnings);
        }
        Booking booking = desk.rack(rack -> rack.receive(List.of(came), desk.note()));
        return booking instanceof Booking.Booked booked
                ? new Result.Received(new Booking.Booked(booked.event(), told(came, request)), coming, warnings)
                : new Result.NotReceived((Booking.Refused) booking, warnings);
    }

    private List<String> told(CameIn came, Request request) {
        List<String> told = new ArrayList<>(PromiseTold.of(came));
        if (request.papers().received() == null) {
            told.add(0, PromiseTold.day(came));
        }
        told.addAll(PaidTold.of(came, shop.settings().money()));
        shop.supplies().onOrder().stream()
                .filter(order -> order.id().equals(came.order()) && order.quantity() > 1)
                .forEach(order -> told.add((order.quantity() - 1) + " more of order " + order.id() + " "
                        + (order.quantity() == 2 ? "is" : "are") + " still to come"));
        return told;
    }

    /**
     * The reel as it is booked.
     *
     * @throws LedgerException when it cannot be so
     */
    Reel coming(Request request) {
        if (shop.catalogue().findRope(request.rope()).isEmpty()) {
            throw new LedgerException.Refused("there is no rope " + request.rope() + " in ropes.json" + near(request));
        }
        refuseOtherOrder(request);
        Owner owner = request.owner();
        if (owner.customer().isEmpty() != owner.order().isEmpty()) {
            throw new LedgerException.Contradictory("a customer's own rope needs both --owner and --order");
        }
        if (!owner.customer().isEmpty() && !request.paid().equals(Paid.NOT_SAID)) {
            throw new LedgerException.Contradictory(Paid.CUSTOMERS_OWN);
        }
        Reel.Contents contents = contents(request.amount());
        if (request.flaws().stream().anyMatch(flaw -> flaw.to().isLongerThan(contents.length()))) {
            throw new LedgerException.Refused("a flaw lies behind the end of the reel");
        }
        return new Reel(
                request.reel(),
                request.rope(),
                request.lot(),
                contents,
                Flaw.merged(request.flaws()),
                papers(request.papers()),
                new Reel.Custody(owner.customer(), Reel.State.FREE, owner.order()),
                request.full(),
                new Reel.Where(request.place(), Mass.ZERO, Reel.Draw.OUTSIDE, request.note()));
    }

    private String near(Request request) {
        return Nearest.hint(
                request.rope(), shop.catalogue().ropes().stream().map(Rope::id).toList());
    }

    /** What was ordered under a number; nothing without one, or where nothing is to come of it. */
    Promised promised(String number) {
        return shop.supplies().onOrder().stream()
                .filter(each -> each.id().equals(number))
                .findFirst()
                .map(OnOrder::promised)
                .orElse(Promised.NOTHING);
    }

    private void refuseOtherOrder(Request request) {
        if (request.onOrder().isEmpty()) {
            return;
        }
        OnOrder order = shop.supplies().onOrder().stream()
                .filter(each -> each.id().equals(request.onOrder()))
                .findFirst()
                .orElseThrow(() -> new LedgerException.Refused("nothing is to come of an order of reels "
                        + request.onOrder() + "; on-order.csv has " + numbers()));
        if (!order.rope().equals(request.rope())) {
            throw new LedgerException.Refused(
                    "order " + order.id() + " is of " + order.rope() + ", not of " + request.rope());
        }
        if (!request.owner().customer().isEmpty()) {
            throw new LedgerException.Contradictory("what the shop has on order is no customer's own rope");
        }
    }

    private String numbers() {
        List<String> numbers =
                shop.supplies().onOrder().stream().map(OnOrder::id).toList();
        return numbers.isEmpty() ? "none" : String.join(", ", numbers);
    }

    /** Rope on order that this may be, where that was not said: plans would count on both. */
    Optional<OnOrder> stillToCome(Request request) {
        return shop.supplies().onOrder().stream()
                .filter(order -> request.onOrder().isEmpty()
                        && request.owner().customer().isEmpty()
                        && order.rope().equals(request.rope()))
                .findFirst();
    }

    private Optional<String> stillOnOrder(Request request) {
        return stillToCome(request)
                .map(order ->
                        "order " + order.id() + " of " + order.rope() + " is still to come, and plans count on it."
                                + " If this reel is of it, take the booking back and say --on-order "
                                + order.id());
    }

    private static Reel.Contents contents(Amount amount) {
        Reel.Contents contents = new Reel.Contents(
                amount.length(), uncertain(amount), amount.leadTrim(), amount.innerWraps(), amount.known());
        if (!contents.certainEnd().isLongerThan(amount.leadTrim())) {
            throw new LedgerException.Refused("uncertainty, lead trim and inner wraps together are no shorter than the "
                    + Words.of(contents.length()) + " of the reel: nothing of it could be used");
        }
        return contents;
    }

    private static Length uncertain(Amount amount) {
        Length said = amount.uncertainty();
        if (said != null && amount.tolerance().isPositive()) {
            throw new LedgerException.Contradictory("give a --tolerance or an --uncertainty");
        }
        return said != null
                ? said
                : new Length(amount.tolerance()
                        .timesRoundedUp(amount.length().roundedDown().mm()));
    }

    private Reel.Papers papers(Papers papers) {
        LocalDate useBy = papers.useBy();
        LocalDate received = papers.received();
        return new Reel.Papers(
                papers.certificate(),
                papers.number(),
                useBy == null ? LocalDate.MAX : useBy,
                received == null ? desk.shopDay() : received);
    }
}
