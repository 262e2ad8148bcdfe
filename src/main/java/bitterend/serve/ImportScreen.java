package bitterend.serve;

import bitterend.exchange.mapping.Column;
import bitterend.exchange.mapping.Question;
import bitterend.exchange.mapping.SheetPreview;
import bitterend.exchange.mapping.Table;
import bitterend.front.ImportPage;
import bitterend.report.FindingsPage;
import bitterend.report.page.Document;
import bitterend.report.sheet.PagePart;
import bitterend.work.imports.ImportSheets;
import bitterend.work.imports.ImportSheets.Result.Looked;
import bitterend.work.imports.ImportSheets.Result.Unreadable;
import bitterend.work.imports.TakeOver;
import bitterend.work.imports.TakeOver.Last;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A sheet of the shop's own, sent by a browser: what is understood of it, what is asked, what becomes of its rows. It is taken
 * over as it was looked at, and the last import is taken back whole.
 */
final class ImportScreen implements Screen {
    static final String PATH = "/import";
    private static final String SHEET = PATH + "/sheet";
    private static final String NONE = "";

    private final Loft loft;
    private final Site site;
    private final People people;
    private final KeptSheets sheets = new KeptSheets();
    private final Once done = new Once();

    ImportScreen(Loft loft, Site site, People people) {
        this.loft = loft;
        this.site = site;
        this.people = people;
    }

    @Override
    public void serve(JavalinConfig config) {
        config.routes.get(PATH, request -> begin(request, NONE));
        config.routes.post(PATH, this::bring);
        config.routes.get(SHEET, request -> show(request, asked(request, Sent.asked(request, "id")), NONE));
        config.routes.post(SHEET, this::sent);
        config.routes.post(PATH + "/back", this::takeBack);
    }

    private void begin(Context request, String told) {
        Optional<Last> last = new TakeOver(loft.access()).last();
        Map<String, Object> values = new HashMap<>();
        values.put("told", told);
        values.put("most", ImportSheets.MOST_SENT / 1_000_000);
        values.put("last", last.map(Last::name).orElse(""));
        values.put("files", last.map(each -> String.join(", ", each.files())).orElse(""));
        values.put("booking", Keys.random());
        site.show(request, "A sheet of your own", "serve/import.jte", values);
    }

    /** Keeps what a browser sent; nothing is written. */
    private void bring(Context request) {
        String called = SentSheet.called(request);
        Optional<String> name = KeptSheet.name(called);
        if (name.isEmpty()) {
            request.status(ReelScreen.NOT_BOOKED);
            begin(
                    request,
                    called.isEmpty()
                            ? "No file came: choose one."
                            : "Found \"" + called + "\", expected a workbook (.xlsx) or a table as text (.csv, .tsv).");
            return;
        }
        KeptSheet sheet = new KeptSheet(Guard.deviceOf(request), called, name.get(), SentSheet.bytes(request));
        sheets.keep(sheet);
        Back.to(request, SHEET + "?id=" + sheet.id());
    }

    private KeptSheet asked(Context request, String id) {
        return sheets.find(id, Guard.deviceOf(request))
                .orElseThrow(() -> new NotFoundResponse(
                        "That sheet is no longer kept: the last few are, until they are taken over or the program ends."
                                + " Choose it again."));
    }

    private ImportSheets.Result look(KeptSheet sheet) {
        return sheet.look(new ImportSheets(loft.access()));
    }

    private synchronized void show(Context request, KeptSheet sheet, String told) {
        show(request, sheet, look(sheet), told);
    }

    private void show(Context request, KeptSheet sheet, ImportSheets.Result result, String told) {
        Optional<Looked> looked = result instanceof Looked seen ? Optional.of(seen) : Optional.empty();
        Document page = looked.map(seen -> ImportPage.withoutQuestions(seen.sheets(), seen.skipped()))
                .orElseGet(() -> FindingsPage.of(((Unreadable) result).findings()));
        List<SheetPreview> previews = looked.map(Looked::sheets).orElse(List.of());
        List<SheetQuestion> questions =
                questions(previews).map(SheetQuestion::of).toList();
        Map<String, Object> values = new HashMap<>();
        values.put("called", sheet.called());
        values.put("name", sheet.name());
        values.put("id", sheet.id());
        values.put("told", told);
        values.put("blocks", PagePart.blocks(page));
        values.put("questions", questions);
        values.put("answered", !sheet.answers().isEmpty());
        values.put("columns", columns(previews));
        values.put("members", members(previews));
        values.put("seen", looked.map(Looked::mark).orElse(""));
        values.put("booking", Keys.random());
        values.put(
                "takes",
                looked.filter(seen -> seen.isAnswered() && !seen.changesNothing())
                        .isPresent());
        values.put(
                "same",
                looked.filter(seen -> seen.isAnswered() && seen.changesNothing() && !seen.hasWrong())
                        .isPresent());
        values.put("wrong", looked.filter(Looked::hasWrong).isPresent());
        site.show(request, "A sheet of your own", "serve/importsheet.jte", values);
    }

    /** What is asked of all sheets, each thing once. */
    private static Stream<Question> questions(List<SheetPreview> sheets) {
        Map<String, Question> byId = new LinkedHashMap<>();
        sheets.stream()
                .flatMap(sheet -> sheet.understood().questions().stream())
                .forEach(question -> byId.putIfAbsent(question.id(), question));
        return byId.values().stream();
    }

    private static List<FormField.Choice> columns(List<SheetPreview> sheets) {
        return sheets.stream()
                .flatMap(sheet -> sheet.understood().columns().stream())
                .map(Column::heading)
                .distinct()
                .map(heading -> new FormField.Choice(SheetQuestion.field(heading), heading))
                .toList();
    }

    private static List<String> members(List<SheetPreview> sheets) {
        return Stream.concat(
                        Stream.of(Question.LEFT_OUT),
                        sheets.stream()
                                .flatMap(sheet -> sheet.understood().about().stream())
                                .distinct()
                                .map(Table::members)
                                .flatMap(List::stream))
                .distinct()
                .toList();
    }

    private synchronized void sent(Context request) {
        String booking = Sent.id(request);
        boolean takes = Sent.text(request, "what").equals("take");
        if (takes && people.who(request).isEmpty()) {
            site.tell(request, People.FIRST);
            return;
        }
        if (takes && done.has(booking)) {
            Back.to(request, PATH);
            return;
        }
        KeptSheet sheet = asked(request, Sent.text(request, "id"));
        switch (Sent.text(request, "what")) {
            case "take" -> take(request, sheet, booking);
            case "answer" -> answer(request, sheet);
            case "anew" -> sheet.forget();
            case "drop" -> sheets.drop(sheet);
            default -> throw new NotFoundResponse();
        }
        if (!takes) {
            Back.to(request, Sent.text(request, "what").equals("drop") ? PATH : SHEET + "?id=" + sheet.id());
        }
    }

    private void answer(Context request, KeptSheet sheet) {
        if (!(look(sheet) instanceof Looked looked)) {
            return;
        }
        questions(looked.sheets()).forEach(question -> {
            String field = SheetQuestion.field(question.id());
            String typed = Sent.text(request, field + SheetQuestion.OTHER);
            String chosen = Sent.text(request, field);
            boolean isChoice = chosen.matches("[0-9]{1,6}")
                    && Integer.parseInt(chosen) < question.choices().size();
            if (!typed.isEmpty() || isChoice) {
                sheet.answer(question, typed.isEmpty() ? question.choices().get(Integer.parseInt(chosen)) : typed);
            }
        });
        String column = Sent.text(request, "column");
        columns(looked.sheets()).stream()
                .filter(choice -> choice.value().equals(column))
                .forEach(choice -> sheet.takeFor(looked, choice.words(), Sent.text(request, "member")));
    }

    /** Writes what was looked at, and only that: where it would be something else by now, it is shown again. */
    private void take(Context request, KeptSheet sheet, String booking) {
        ImportSheets.Result result = look(sheet);
        boolean isSame = result instanceof Looked looked && looked.mark().equals(Sent.text(request, "seen"));
        TakeOver.Result taken = isSame
                ? new TakeOver(loft.access()).take((Looked) result, people.who(request))
                : new TakeOver.Result.Changed(List.of());
        if (taken instanceof TakeOver.Result.Done || taken instanceof TakeOver.Result.Nothing) {
            done.note(booking);
            sheets.drop(sheet);
            Back.to(request, PATH);
            return;
        }
        request.status(409);
        show(
                request,
                sheet,
                result,
                taken instanceof TakeOver.Result.Asked
                        ? "There are questions to answer first. Nothing was written."
                        : "The files of the shop are others than they were when this was shown. Nothing was written: look again.");
    }

    private synchronized void takeBack(Context request) {
        String who = people.who(request);
        if (who.isEmpty()) {
            site.tell(request, People.FIRST);
            return;
        }
        String booking = Sent.id(request);
        if (done.has(booking)) {
            Back.to(request, PATH);
            return;
        }
        TakeOver verb = new TakeOver(loft.access());
        String last = verb.last().map(Last::name).orElse("");
        boolean isSeen = last.equals(Sent.oneLine(request.formParam("last")));
        TakeOver.Result taken = isSeen ? verb.back(who) : new TakeOver.Result.Changed(List.of());
        if (taken instanceof TakeOver.Result.Done) {
            done.note(booking);
            Back.to(request, PATH);
            return;
        }
        request.status(409);
        begin(request, notBack(taken));
    }

    private static String notBack(TakeOver.Result taken) {
        if (!(taken instanceof TakeOver.Result.Changed changed)) {
            return "There is no import to take back.";
        }
        return changed.files().isEmpty()
                ? "The last import is not the one that you looked at: look at it again. Nothing was taken back."
                : String.join(", ", changed.files()) + " changed since the last import. Nothing was taken back.";
    }
}
