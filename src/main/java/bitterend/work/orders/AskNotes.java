package bitterend.work.orders;

import bitterend.day.PackingNote;
import bitterend.exchange.PackingNoteForm;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.work.ShopAccess;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The packing notes of deliveries again, as they went out, whatever became of orders and reels since. */
public final class AskNotes {
    private final ShopAccess at;

    public AskNotes(ShopAccess at) {
        this.at = at;
    }

    /** What is found. */
    public sealed interface Result {
        /** The notes, first delivery first; at least one. */
        record Found(List<PackingNote> notes) implements Result {
            public Found {
                notes = List.copyOf(notes);
            }
        }

        /** There is none to print. */
        record None(String why) implements Result {}
    }

    /** The notes of all deliveries of an order. */
    public Result ofOrder(String order) {
        List<Event> events = read(stock -> stock.standing(Event.Kind.DELIVERED)).stream()
                .filter(event -> event.named("order").contains(order))
                .toList();
        return events.isEmpty() ? new Result.None("nothing of order " + order + " was delivered") : of(events);
    }

    /** The note of one delivery, by the number on it. */
    public Result ofDelivery(long number) {
        Optional<Event> event = read(stock -> stock.findEvent(number))
                .filter(found -> found.act().kind() == Event.Kind.DELIVERED);
        if (event.isEmpty()) {
            return new Result.None("event " + number + " is no delivery; stock history numbers the events");
        }
        boolean stands = read(stock -> stock.standing(Event.Kind.DELIVERED)).contains(event.get());
        return stands ? of(List.of(event.get())) : new Result.None("delivery " + number + " was taken back");
    }

    private <T> T read(Function<Ledger.Stock, T> question) {
        return at.reading(ledger -> ledger.read(question));
    }

    private static Result of(List<Event> events) {
        List<PackingNote> notes = new ArrayList<>();
        for (Event event : events) {
            Optional<PackingNote> note = PackingNoteForm.of(event);
            if (note.isEmpty()) {
                return new Result.None("delivery " + event.number() + " keeps no packing note");
            }
            notes.add(note.get());
        }
        return new Result.Found(notes);
    }
}
