package bitterend.work.quotes;

import bitterend.exchange.quotes.KeptQuote;
import bitterend.finding.Findings;
import bitterend.quoting.life.QuoteEvent;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.quoting.life.QuoteEvent.What;
import bitterend.quoting.life.QuoteName;
import bitterend.quoting.life.QuoteStanding;
import bitterend.quoting.life.QuoteState;
import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import bitterend.work.Booking;
import bitterend.work.ShopNow;
import bitterend.work.orders.AcceptedRows;
import bitterend.work.orders.AcceptedRows.Accepted;
import bitterend.work.rack.TakeBack;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * What happens to a kept quote: it is sent, accepted with its lines written into the order book, or declined; and the last of
 * these taken back. Each is an event of the ledger, or a file beside the quotes of a shop without one.
 */
public final class AnswerQuote {
    private final ShopNow now;
    private final QuoteBook book;
    private final QuoteLog log;
    private final UnaryOperator<Event.Act> caller;
    private final String note;

    /**
     * @param now the shop
     * @param caller puts into an act who does it, and under which id
     * @param note why, in the words of who does it; may be empty
     */
    public AnswerQuote(ShopNow now, UnaryOperator<Event.Act> caller, String note) {
        this.now = now;
        this.caller = caller;
        this.note = note;
        Findings findings = new Findings();
        book = new QuoteBook(now.at(), now.shop().settings().money(), findings);
        log = new QuoteLog(now.at(), findings);
    }

    /** What became of it. */
    public sealed interface Result {
        /**
         * It is written down.
         *
         * @param quote how the quote stands now
         * @param event number of the event of the ledger; 0 in a shop without one
         * @param told what follows from it, in sentences
         */
        record Done(QuoteStanding quote, long event, List<String> told) implements Result {
            public Done {
                told = List.copyOf(told);
            }
        }

        /** Nothing was changed. */
        record Refused(String why) implements Result {}
    }

    /** It went out to the customer on a day. */
    public Result sent(String number, LocalDate day) {
        return said(number, day, What.SENT, new Accepting("", Map.of()));
    }

    /** The customer does not want it. */
    public Result declined(String number, LocalDate day) {
        return said(number, day, What.DECLINED, new Accepting("", Map.of()));
    }

    /**
     * What an acceptance adds.
     *
     * @param order number of the order; empty for the number of the quote
     * @param stated cells of every line by column, such as the day it is due; they come before those of the request
     */
    public record Accepting(String order, Map<String, String> stated) {
        public Accepting {
            stated = Map.copyOf(stated);
        }
    }

    /**
     * The customer orders it: the revision that was sent to him last, where that still holds, else the last one. Its lines are
     * in the order book from now on, each with the line of the quote it came of.
     */
    public Result accepted(String number, LocalDate day, Accepting accepting) {
        return said(number, day, What.ACCEPTED, accepting);
    }

    private Result said(String number, LocalDate day, What what, Accepting accepting) {
        Optional<QuoteStanding> standing = book.standing(number, day);
        if (what == What.ACCEPTED
                && standing.isPresent()
                && !standing.get().state().isAnswered()) {
            standing = book.held(number, day).or(() -> book.standing(number, day));
        }
        Optional<KeptQuote> kept =
                standing.flatMap(each -> book.read(number, each.head().name().revision()));
        if (kept.isEmpty() || standing.isEmpty()) {
            return new Result.Refused(none(number));
        }
        Optional<String> bar = bar(standing.get(), what)
                .or(() -> what == What.DECLINED ? Optional.empty() : kept.get().barOfCustomer());
        return bar.<Result>map(Result.Refused::new)
                .orElseGet(() -> orRefused(() -> written(kept.get(), day, what, accepting)));
    }

    private String none(String number) {
        return "there is no kept quote " + number + "; quote list shows those there are";
    }

    private static Optional<String> bar(QuoteStanding standing, What what) {
        String name = "quote " + standing.head().name().words();
        return switch (standing.state()) {
            case ACCEPTED, DECLINED -> Optional.of(
                    name + " is " + standing.state().word() + " already; quote back takes that back");
            case LAPSED -> what == What.DECLINED
                    ? Optional.empty()
                    : Optional.of(
                            name + " held until " + standing.head().validUntil() + "; quote revise draws it up anew");
            case SENT -> what == What.SENT ? Optional.of(name + " is sent already") : Optional.empty();
            case DRAWN_UP -> Optional.empty();
        };
    }

    private Result written(KeptQuote kept, LocalDate day, What what, Accepting accepting) {
        QuoteName name = kept.head().name();
        String order = accepting.order().isEmpty() ? name.number() : accepting.order();
        OrderedLines lines = new OrderedLines(kept, day, accepting.stated());
        Optional<String> early = accepting.stated().isEmpty() ? Optional.empty() : lines.tooEarly();
        if (early.isPresent()) {
            return new Result.Refused(early.get());
        }
        Accepted rows = new Accepted(name.toString(), order, lines.rows());
        boolean accepts = what == What.ACCEPTED;
        List<String> told = new ArrayList<>();
        book.read(name.number(), 0)
                .filter(last -> accepts && !last.head().name().equals(name))
                .ifPresent(last -> told.add("it is revision " + name.revision() + ", which was sent; revision "
                        + last.head().name().revision() + " never went out"));
        if (accepts) {
            told.add("order " + order + " is in orders.csv, "
                    + (rows.rows().size() == 1 ? "one line" : rows.rows().size() + " lines"));
            told.addAll(lines.told());
        }
        Event.Act act = caller.apply(QuoteLog.act(what, name, day, note));
        long number = now.at().keepsLedger()
                ? ofLedger(accepts ? act.with(AcceptedRows.ORDER, order) : act, accepts, rows)
                : ofFiles(act, what, name, day, accepts, rows);
        return new Result.Done(book.standing(name.number(), day).orElseThrow(), number, told);
    }

    /** The rows are written inside the event: where it is not booked they are taken out again. */
    private long ofLedger(Event.Act act, boolean accepts, Accepted rows) {
        AcceptedRows orders = new AcceptedRows(now.at());
        List<String> digest = new ArrayList<>();
        try {
            return now.at()
                    .writing(ledger -> ledger.change(act, books -> {
                        if (accepts) {
                            digest.add(orders.write(rows, act.who()));
                            books.fact(AcceptedRows.BOOK, digest.get(0));
                        }
                    }))
                    .map(Event::number)
                    .orElse(0L);
        } catch (RuntimeException fault) {
            if (!digest.isEmpty()) {
                orders.takeOut(rows, digest.get(0), act.who());
            }
            throw fault;
        }
    }

    private long ofFiles(Event.Act act, What what, QuoteName name, LocalDate day, boolean accepts, Accepted rows) {
        AcceptedRows orders = new AcceptedRows(now.at());
        String digest = accepts ? orders.write(rows, act.who()) : "";
        try {
            log.files()
                    .add(new QuoteEvent(
                            new QuoteEvent.Place(false, 0),
                            now.at().clock().instant(),
                            said(act),
                            what,
                            name,
                            day,
                            accepts ? rows.order() : ""));
        } catch (RuntimeException fault) {
            if (accepts) {
                orders.takeOut(rows, digest, act.who());
            }
            throw fault;
        }
        return 0;
    }

    private Said said(Event.Act act) {
        return new Said(act.who(), note, act.id());
    }

    /** Takes the last thing back that happened to a quote; with an acceptance its lines of the order book, too. */
    public Result back(String number, LocalDate day) {
        Optional<QuoteStanding> standing = book.standing(number, day);
        if (standing.isEmpty()) {
            return new Result.Refused(none(number));
        }
        Optional<QuoteEvent> last = standing.get().last();
        return last.<Result>map(event -> orRefused(() -> takenBack(event, day)))
                .orElse(new Result.Refused("nothing has happened to quote " + number + " that could be taken back"));
    }

    private Result takenBack(QuoteEvent event, LocalDate day) {
        Event.Act act = caller.apply(Event.Act.of(Event.Kind.UNDONE, "", note));
        List<String> told = new ArrayList<>();
        long number = 0;
        if (event.place().ledger()) {
            Booking booking = new TakeBack(now.at(), act).event(event.place().number());
            if (booking instanceof Booking.Refused refused) {
                return new Result.Refused(refused.why());
            }
            told.addAll(((Booking.Booked) booking).told());
            number = ((Booking.Booked) booking).event().number();
        } else {
            told.add("quote " + event.quote().words() + " is no longer "
                    + event.what().state().word());
            if (event.what() == What.ACCEPTED) {
                Accepted rows = new Accepted(event.quote().toString(), event.order(), List.of());
                told.addAll(new AcceptedRows(now.at()).takeOut(rows, "", act.who()));
            }
            log.files().takeBack(event, now.at().clock().instant(), said(act));
        }
        return new Result.Done(book.standing(event.quote().number(), day).orElseThrow(), number, told);
    }

    private static Result orRefused(Supplier<Result> deed) {
        try {
            return deed.get();
        } catch (LedgerException.Refused refused) {
            return new Result.Refused(refused.sentence());
        }
    }

    /** Whether a quote may get another revision: not once it is accepted. */
    public Optional<String> barOfRevision(String number, LocalDate day) {
        Optional<QuoteStanding> standing = book.standing(number, day);
        if (standing.isEmpty()) {
            return Optional.of(none(number));
        }
        return standing.get().state() == QuoteState.ACCEPTED
                ? Optional.of("quote " + standing.get().head().name().words()
                        + " is accepted; quote back takes that back first")
                : Optional.empty();
    }
}
