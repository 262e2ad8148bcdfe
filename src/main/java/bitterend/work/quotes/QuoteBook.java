package bitterend.work.quotes;

import bitterend.exchange.quotes.KeptQuote;
import bitterend.exchange.quotes.QuoteFolder;
import bitterend.finding.Findings;
import bitterend.measure.MoneyText;
import bitterend.quoting.life.QuoteEvent;
import bitterend.quoting.life.QuoteName;
import bitterend.quoting.life.QuoteStanding;
import bitterend.quoting.life.QuoteState;
import bitterend.work.ShopAccess;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The kept quotes of a shop and how they stand: questions that write nothing. */
public final class QuoteBook {
    private final QuoteFolder folder;
    private final QuoteLog log;
    private final Findings findings;

    /**
     * @param at the way to the shop
     * @param money the money of the shop
     * @param findings where files that cannot be read are told
     */
    public QuoteBook(ShopAccess at, MoneyText money, Findings findings) {
        folder = new QuoteFolder(at.folder(), money);
        log = new QuoteLog(at, findings);
        this.findings = findings;
    }

    /** How every quote stands on a day, in the order of their numbers; an accepted revision counts before any later one. */
    public List<QuoteStanding> standing(LocalDate day) {
        List<QuoteEvent> events = log.events();
        List<QuoteStanding> standing = new ArrayList<>();
        for (QuoteName name : folder.last()) {
            folder.read(counting(name, events), findings)
                    .ifPresent(kept -> standing.add(QuoteStanding.of(kept.head(), events, day)));
        }
        return standing;
    }

    /** How one quote stands on a day. */
    public Optional<QuoteStanding> standing(String number, LocalDate day) {
        List<QuoteEvent> events = log.events();
        return folder.last(number)
                .flatMap(name -> folder.read(counting(name, events), findings))
                .map(kept -> QuoteStanding.of(kept.head(), events, day));
    }

    /** The revision by which a quote stands: the accepted one, else the last. */
    private static QuoteName counting(QuoteName last, List<QuoteEvent> events) {
        return events.stream()
                .filter(event -> event.what() == QuoteEvent.What.ACCEPTED
                        && event.quote().number().equals(last.number()))
                .reduce((earlier, later) -> later)
                .map(QuoteEvent::quote)
                .orElse(last);
    }

    /** What the customer holds on a day: the last revision that was sent and still holds; nothing where there is none. */
    public Optional<QuoteStanding> held(String number, LocalDate day) {
        List<QuoteEvent> events = log.events();
        return folder.names().stream()
                .filter(name -> name.number().equals(number))
                .flatMap(name -> folder.read(name, findings).stream())
                .map(kept -> QuoteStanding.of(kept.head(), events, day))
                .filter(standing -> standing.state() == QuoteState.SENT)
                .reduce((earlier, later) -> later);
    }

    /** A kept quote: its last revision where none is named; nothing where there is none or its file cannot be read. */
    public Optional<KeptQuote> read(String number, int revision) {
        Optional<QuoteName> name = revision == 0
                ? folder.last(number)
                : folder.names().stream()
                        .filter(known -> known.number().equals(number) && known.revision() == revision)
                        .findFirst();
        return name.flatMap(known -> folder.read(known, findings));
    }

    /** Every revision of a quote that can be read, the first first. */
    public List<KeptQuote> revisions(String number) {
        return folder.names().stream()
                .filter(name -> name.number().equals(number))
                .flatMap(name -> folder.read(name, findings).stream())
                .toList();
    }

    /** Every quote and revision there is. */
    public List<QuoteName> names() {
        return folder.names();
    }

    /** A kept quote for programs: all of its file, or what the customer may see. */
    public String json(QuoteName name, boolean customer) {
        return folder.json(name, customer);
    }
}
