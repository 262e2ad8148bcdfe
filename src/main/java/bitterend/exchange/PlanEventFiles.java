package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Readings;
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

    private final Path folder;

    public PlanEventFiles(Path shop) {
        folder = shop.resolve(PlanFolder.NAME).resolve("events");
    }

    /** All events, oldest first; a file that cannot be read is told to the findings. */
    public List<PlanEvent> events(Findings findings) {
        List<PlanEvent> events = new ArrayList<>();
        for (int number : PlanFolder.numbered(folder)) {
            InputFile.find(folder, number + ".json", findings)
                    .flatMap(file -> JsonDocument.read(file, FORMAT, findings, PlanEventFiles::event))
                    .flatMap(event -> event)
                    .ifPresent(events::add);
        }
        return events;
    }

    private static Optional<PlanEvent> event(JsonObject object) {
        Fields fields = object.fields();
        PlanEvent event = new PlanEvent(
                fields.require("at", PlanEventFiles::instant, Instant.EPOCH),
                fields.require("who", Readings::text, "?"),
                fields.require("what", Readings.word(PlanEvent.What.values(), Codec::word), PlanEvent.What.IN_FORCE),
                fields.require("plan", Readings.whole(1, 999_999_999), 1),
                fields.optional("digest", Readings::text, ""),
                object.texts("reels"));
        return fields.sound() ? Optional.of(event) : Optional.empty();
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
        byte[] bytes = new JsonTree()
                .with("format", FORMAT)
                .with("at", event.at().toString())
                .with("who", event.who())
                .with("what", Codec.word(event.what()))
                .with("plan", event.plan())
                .with("digest", event.digest())
                .with("reels", (Object) event.reels())
                .text()
                .getBytes(StandardCharsets.UTF_8);
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
