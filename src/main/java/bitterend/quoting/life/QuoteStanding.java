package bitterend.quoting.life;

import bitterend.measure.Money;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a quote stands on a day: its last revision, and what was answered.
 *
 * @param head its last revision
 * @param state how far it has come
 * @param events what happened to any of its revisions and still holds, the oldest first
 */
public record QuoteStanding(Head head, QuoteState state, List<QuoteEvent> events) {
    public QuoteStanding {
        events = List.copyOf(events);
    }

    /**
     * What a kept quote says in its list.
     *
     * @param name number and revision
     * @param customer who asked; empty where not stated
     * @param day the day it was drawn up
     * @param validUntil the last day it holds
     * @param total its price before tax
     * @param from the quote it was drawn up from; empty for none
     */
    public record Head(
            QuoteName name, String customer, LocalDate day, LocalDate validUntil, Money total, String from) {}

    /** How a quote stands; an answer to an earlier revision no longer counts once there is a later one. */
    public static QuoteStanding of(Head last, List<QuoteEvent> all, LocalDate today) {
        List<QuoteEvent> ours = all.stream()
                .filter(event -> event.quote().number().equals(last.name().number()))
                .toList();
        Optional<QuoteState> said = ours.stream()
                .filter(event -> event.quote().equals(last.name()))
                .reduce((earlier, later) -> later)
                .map(event -> event.what().state());
        QuoteState state = said.orElse(QuoteState.DRAWN_UP);
        boolean late = !state.isAnswered() && today.isAfter(last.validUntil());
        return new QuoteStanding(last, late ? QuoteState.LAPSED : state, ours);
    }

    /** The last thing that happened to the quote and still holds. */
    public Optional<QuoteEvent> last() {
        return events.isEmpty() ? Optional.empty() : Optional.of(events.get(events.size() - 1));
    }

    /** What made it what it is: nothing for one that is only drawn up. */
    public Optional<QuoteEvent> because() {
        return events.stream()
                .filter(event -> event.quote().equals(head.name()))
                .max(Comparator.comparingInt(events::indexOf));
    }
}
