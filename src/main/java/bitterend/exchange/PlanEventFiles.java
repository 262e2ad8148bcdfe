package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Members;
import bitterend.finding.Findings;
import bitterend.measure.Parsed;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What happened to the plans of a shop without a ledger: one file for each event, written once, beside the plans. */
public final class PlanEventFiles {
    private static final String FORMAT = "bitterend/plan-event/1";

    private static final Codec<Instant> MOMENT = new Codec<>(Instant::toString, PlanEventFiles::instant, Instant.EPOCH);

    private final Path folder;

    public PlanEventFiles(Path shop) {
        folder = shop.resolve(PlanFolder.NAME).resolve("events");
    }

    /** All events, oldest first; a file that cannot be read is told to the findings. */
    public List<PlanEvent> events(Findings findings) {
        List<PlanEvent> events = new ArrayList<>();
        for (int number : PlanFolder.numbered(folder)) {
            InputFile.find(folder, number + ".json", findings)
                    .flatMap(file -> JsonDocument.read(file, FORMAT, findings, PlanEventFiles::read))
                    .flatMap(event -> event)
                    .ifPresent(events::add);
        }
        return events;
    }

    private static PlanEvent event(Members<PlanEvent> event) {
        event.follow(any -> new JsonTree().with("format", FORMAT), "format");
        return new PlanEvent(
                event.is("at", PlanEvent::at, MOMENT),
                event.is("who", PlanEvent::who, Codec.TEXT),
                event.is(
                        "what",
                        PlanEvent::what,
                        Codec.word(PlanEvent.What.values()).orElse(PlanEvent.What.IN_FORCE)),
                event.is("plan", PlanEvent::plan, Codec.whole(1, 999_999_999)),
                event.written("digest", PlanEvent::digest, Codec.TEXT, ""),
                event.texts("reels", PlanEvent::reels));
    }

    private static Optional<PlanEvent> read(JsonObject object) {
        PlanEvent event = Members.read(PlanEventFiles::event, object);
        return object.fields().sound() ? Optional.of(event) : Optional.empty();
    }

    private static Parsed<Instant> instant(String text) {
        try {
            return Parsed.of(Instant.parse(text));
        } catch (DateTimeParseException notAnInstant) {
            return Parsed.refused("a moment such as 2026-03-02T09:12:00Z");
        }
    }

    /** Adds an event; whoever else does so at once gets the next number. */
    public void add(PlanEvent event) {
        byte[] bytes = Members.tree(PlanEventFiles::event, event).text().getBytes(StandardCharsets.UTF_8);
        try {
            Files.createDirectories(folder);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        int number = PlanFolder.next(PlanFolder.numbered(folder));
        while (!WholeFile.create(folder.resolve(number + ".json"), bytes)) {
            number++;
        }
    }
}
