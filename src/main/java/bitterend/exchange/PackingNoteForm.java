package bitterend.exchange;

import static bitterend.exchange.form.Codec.ANY;

import bitterend.day.LookedOver;
import bitterend.day.PackingNote;
import bitterend.exchange.form.Codec;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.JsonDocument;
import bitterend.exchange.form.JsonTree;
import bitterend.exchange.form.Members;
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

    private static final Codec<Integer> COUNTED = Codec.whole(1, Integer.MAX_VALUE);
    private static final Codec<Long> EVENT =
            new Codec<>(event -> event, text -> COUNTED.in().read(text).map(Integer::longValue), 1L);
    private static final Codec<String> PRESENT =
            new Codec<>(text -> text, text -> Written.parsePresent(text).map(any -> text), "");

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
                                object -> Members.read(PackingNoteForm::note, object))
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
        return Members.tree(PackingNoteForm::note, note);
    }

    private static PackingNote note(Members<PackingNote> note) {
        note.follow(any -> new JsonTree().with("format", FORMAT), "format");
        String order = note.written("order", PackingNote::order, ANY, "");
        String customer = note.written("customer", PackingNote::customer, ANY, "");
        LocalDate day = note.is("day", PackingNote::day, Codec.DAY);
        long event = note.is("event", PackingNote::event, EVENT);
        String words = note.written("note", PackingNote::note, ANY, "");
        return new PackingNote(
                order,
                customer,
                day,
                event,
                note.list("lines", PackingNote::lines, PackingNoteForm::line),
                note.texts("toCome", PackingNote::toCome),
                words);
    }

    private static PackingNote.Line line(Members<PackingNote.Line> line) {
        return new PackingNote.Line(
                line.written("line", PackingNote.Line::line, ANY, ""),
                line.written("words", PackingNote.Line::words, ANY, ""),
                line.written("product", PackingNote.Line::product, ANY, ""),
                line.written("rope", PackingNote.Line::rope, ANY, ""),
                line.among(PackingNote.Line::finished, WrittenForm::written),
                line.written("ends", PackingNote.Line::ends, ANY, ""),
                line.mayBe("between", PackingNote.Line::between, ANY, ""),
                line.is("ordered", PackingNote.Line::ordered, COUNTED),
                line.list("pieces", PackingNote.Line::items, PackingNoteForm::item));
    }

    private static PackingNote.Item item(Members<PackingNote.Item> item) {
        String piece = item.written("piece", PackingNote.Item::piece, ANY, "");
        Written made = item.among(each -> each.found().made(), PackingNoteForm::made);
        String lot = item.written("lot", PackingNote.Item::lot, ANY, "");
        PackingNote.Certificate certificate = new PackingNote.Certificate(
                item.written("certificate", each -> each.certificate().kind(), ANY, ""),
                item.written("number", each -> each.certificate().number(), ANY, ""));
        item.follow(each -> new JsonTree().with("passed", each.found().isGood()), "passed");
        String verdict = item.written("lookedOver", each -> each.found().verdict(), ANY, "");
        return new PackingNote.Item(
                piece,
                lot,
                certificate,
                new LookedOver(made, verdict),
                item.written("released", PackingNote.Item::released, ANY, ""));
    }

    /** Nothing for a piece that nobody measured; notes of before hold no text. */
    private static Written made(Members<Written> made) {
        String exact = made.written(
                "measured", each -> each.equals(Written.NOTHING) ? "" : LengthText.exact(each.exact()), PRESENT, "");
        String typed = made.mayBe(WrittenForm.TEXT, Written::text, PRESENT, "");
        return Written.parsePresent(typed.isEmpty() ? exact : typed).value().orElse(Written.NOTHING);
    }
}
