package bitterend.exchange;

import bitterend.day.LookedOver;
import bitterend.day.PackingNote;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonObject;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.measure.LengthText;
import bitterend.measure.Written;
import bitterend.stock.Event;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Packing notes as JSON: for programs, and as the event of a delivery keeps its own. */
public final class PackingNoteForm {
    /** The fact of a delivery that holds its note. */
    public static final String FACT = "packing note";

    private static final String FORMAT = "bitterend/packing-note/1";

    private PackingNoteForm() {}

    /** The note of a delivery as it was kept; nothing where an event keeps none. */
    public static Optional<PackingNote> of(Event event) {
        Findings findings = new Findings();
        String text = event.fact(FACT);
        return text.isEmpty()
                ? Optional.empty()
                : JsonDocument.read(
                                new InputFile("event " + event.number(), text, ""),
                                FORMAT,
                                findings,
                                PackingNoteForm::note)
                        .filter(note -> !findings.hasErrors());
    }

    /** What goes with a delivery. */
    public static String text(PackingNote note) {
        return tree(note).text();
    }

    /** What went with several deliveries. */
    public static String text(List<PackingNote> notes) {
        return new JsonTree()
                .with("format", "bitterend/packing-notes/1")
                .with("notes", notes.stream().map(PackingNoteForm::tree).toList())
                .text();
    }

    private static JsonTree tree(PackingNote note) {
        return new JsonTree()
                .with("format", FORMAT)
                .with("order", note.order())
                .with("customer", note.customer())
                .with("day", note.day().toString())
                .with("event", note.event())
                .with("note", note.note())
                .with("lines", note.lines().stream().map(PackingNoteForm::tree).toList())
                .with("toCome", (Object) note.toCome());
    }

    private static JsonTree tree(PackingNote.Line line) {
        JsonTree tree = new JsonTree()
                .with("line", line.line())
                .with("words", line.words())
                .with("product", line.product())
                .with("rope", line.rope());
        return WrittenForm.with(tree, line.finished())
                .with("ends", line.ends())
                .with("ordered", line.ordered())
                .with("pieces", line.items().stream().map(PackingNoteForm::tree).toList());
    }

    private static JsonTree tree(PackingNote.Item item) {
        LookedOver found = item.found();
        JsonTree tree = new JsonTree()
                .with("piece", item.piece())
                .with(
                        "measured",
                        found.isMeasured() ? LengthText.exact(found.made().exact()) : "");
        return (found.made().text().isEmpty()
                        ? tree
                        : tree.with(WrittenForm.TEXT, found.made().text()))
                .with("lot", item.lot())
                .with("certificate", item.certificate().kind())
                .with("number", item.certificate().number())
                .with("passed", found.isGood())
                .with("lookedOver", found.verdict())
                .with("released", item.released());
    }

    private static PackingNote note(JsonObject object) {
        Fields fields = object.fields();
        return new PackingNote(
                words(fields, "order"),
                words(fields, "customer"),
                fields.require("day", Readings::day, LocalDate.MIN),
                fields.require("event", Readings.whole(1, Integer.MAX_VALUE), 1),
                object.objects("lines").stream().map(PackingNoteForm::line).toList(),
                object.texts("toCome"),
                words(fields, "note"));
    }

    private static PackingNote.Line line(JsonObject object) {
        Fields fields = object.fields();
        return new PackingNote.Line(
                words(fields, "line"),
                words(fields, "words"),
                words(fields, "product"),
                words(fields, "rope"),
                WrittenForm.read(fields),
                words(fields, "ends"),
                fields.require("ordered", Readings.whole(1, Integer.MAX_VALUE), 1),
                object.objects("pieces").stream().map(PackingNoteForm::item).toList());
    }

    private static PackingNote.Item item(JsonObject object) {
        Fields fields = object.fields();
        return new PackingNote.Item(
                words(fields, "piece"),
                words(fields, "lot"),
                new PackingNote.Certificate(words(fields, "certificate"), words(fields, "number")),
                new LookedOver(made(fields), words(fields, "lookedOver")),
                words(fields, "released"));
    }

    /** Notes of before hold no text. */
    private static Written made(Fields fields) {
        Written exact = fields.optional("measured", Written::parsePresent, Written.NOTHING);
        return fields.optional(WrittenForm.TEXT, Written::parsePresent, exact);
    }

    private static String words(Fields fields, String name) {
        return fields.text(name).orElse("");
    }
}
