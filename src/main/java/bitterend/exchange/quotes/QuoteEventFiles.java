package bitterend.exchange.quotes;

import bitterend.exchange.NumberedFiles;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Members;
import bitterend.finding.Findings;
import bitterend.measure.Parsed;
import bitterend.quoting.life.QuoteEvent;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.quoting.life.QuoteEvent.What;
import bitterend.quoting.life.QuoteName;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What happened to the quotes of a shop without a ledger: one file for each event, written once, beside the quotes. */
public final class QuoteEventFiles {
    private static final String FORMAT = "bitterend/quote-event/1";
    private static final Codec<QuoteName> NAME = new Codec<>(
            QuoteName::toString,
            text -> QuoteName.find(text)
                    .map(Parsed::of)
                    .orElse(Parsed.refused("a quote and its revision such as Q-2601/1")),
            new QuoteName("?", 1));

    private final NumberedFiles files;

    public QuoteEventFiles(Path shop) {
        files = new NumberedFiles(shop.resolve(QuoteFolder.NAME).resolve("events"));
    }

    /**
     * One file: an event, or that another is taken back.
     *
     * @param takesBack number of the event that it takes back; 0 for none
     */
    private record Written(
            Instant at, Said said, What what, QuoteName quote, LocalDate day, String order, int takesBack) {}

    /** All events that still hold, the oldest first; a file that cannot be read is told to the findings. */
    public List<QuoteEvent> events(Findings findings) {
        List<QuoteEvent> events = new ArrayList<>();
        Set<Long> back = new HashSet<>();
        for (int number : files.numbers()) {
            Optional<Written> read = InputFile.find(files.folder(), number + ".json", findings)
                    .flatMap(file -> JsonDocument.read(file, FORMAT, findings, QuoteEventFiles::read))
                    .flatMap(event -> event);
            if (read.isPresent() && read.get().takesBack() > 0) {
                back.add((long) read.get().takesBack());
            } else {
                read.map(event -> told(number, event)).ifPresent(events::add);
            }
        }
        events.removeIf(event -> back.contains(event.place().number()));
        return events;
    }

    private static QuoteEvent told(int number, Written event) {
        return new QuoteEvent(
                new QuoteEvent.Place(false, number),
                event.at(),
                event.said(),
                event.what(),
                event.quote(),
                event.day(),
                event.order());
    }

    private static Written event(Members<Written> event) {
        event.follow(any -> new JsonTree().with("format", FORMAT), "format");
        return new Written(
                event.is("at", Written::at, Codec.MOMENT),
                event.among(Written::said, QuoteEventFiles::said),
                event.is("what", Written::what, Codec.word(What.values())),
                event.is("quote", Written::quote, NAME),
                event.is("day", Written::day, Codec.DAY),
                event.mayBe("order", Written::order, Codec.TEXT, ""),
                event.mayBe("takesBack", Written::takesBack, Codec.whole(1, 999_999_999), 0));
    }

    private static Said said(Members<Said> said) {
        return new Said(
                said.is("who", Said::who, Codec.TEXT),
                said.mayBe("note", Said::note, Codec.TEXT, ""),
                said.mayBe("once", Said::id, Codec.TEXT, ""));
    }

    private static Optional<Written> read(JsonObject object) {
        Written event = Members.read(QuoteEventFiles::event, object);
        return object.fields().sound() ? Optional.of(event) : Optional.empty();
    }

    /** Adds an event; whoever else does so at once gets the next number. */
    public void add(QuoteEvent event) {
        write(new Written(event.at(), event.said(), event.what(), event.quote(), event.day(), event.order(), 0));
    }

    /** Takes one back: that is another event. */
    public void takeBack(QuoteEvent event, Instant at, Said said) {
        write(new Written(
                at,
                said,
                event.what(),
                event.quote(),
                event.day(),
                event.order(),
                Math.toIntExact(event.place().number())));
    }

    private void write(Written event) {
        files.add(Members.tree(QuoteEventFiles::event, event).text().getBytes(StandardCharsets.UTF_8));
    }
}
