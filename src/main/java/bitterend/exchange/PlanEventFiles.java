package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Members;
import bitterend.finding.Findings;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What happened to the plans of a shop without a ledger: one file for each event, written once, beside the plans. */
public final class PlanEventFiles {
    private static final String FORMAT = "bitterend/plan-event/1";

    private final NumberedFiles files;

    public PlanEventFiles(Path shop) {
        files = new NumberedFiles(shop.resolve(PlanFolder.NAME).resolve("events"));
    }

    /** All events, oldest first; a file that cannot be read is told to the findings. */
    public List<PlanEvent> events(Findings findings) {
        List<PlanEvent> events = new ArrayList<>();
        for (int number : files.numbers()) {
            InputFile.find(files.folder(), number + ".json", findings)
                    .flatMap(file -> JsonDocument.read(file, FORMAT, findings, PlanEventFiles::read))
                    .flatMap(event -> event)
                    .ifPresent(events::add);
        }
        return events;
    }

    private static PlanEvent event(Members<PlanEvent> event) {
        event.follow(any -> new JsonTree().with("format", FORMAT), "format");
        return new PlanEvent(
                event.is("at", PlanEvent::at, Codec.MOMENT),
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

    /** Adds an event; whoever else does so at once gets the next number. */
    public void add(PlanEvent event) {
        files.add(Members.tree(PlanEventFiles::event, event).text().getBytes(StandardCharsets.UTF_8));
    }
}
