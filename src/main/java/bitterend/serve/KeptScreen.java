package bitterend.serve;

import bitterend.report.page.Document;
import bitterend.report.sheet.DocumentPaper;
import bitterend.report.sheet.PagePart;
import bitterend.report.sheet.Paper;
import bitterend.serve.KeptPages.Kept;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Pages that are worked out behind a screen, one at a time: how far the one is, and those that are kept, to look at and to print. */
final class KeptScreen {
    private final Site site;
    private final Runs runs;
    private final KeptPages pages = new KeptPages();
    private final String path;
    private final RunPage page;
    private @Nullable Run<Kept> run;

    /**
     * @param runs begins what is worked out
     * @param path where the screen is that they are worked out for
     * @param title what is worked out
     * @param busy what is said while it is worked out
     * @param stop what the button says that stops it, and what becomes of it then
     */
    KeptScreen(Site site, Runs runs, String path, String title, String busy, String stop) {
        this.site = site;
        this.runs = runs;
        this.path = path;
        page = new RunPage(site, title, path + "/run", path, busy, stop);
    }

    void serve(JavalinConfig config) {
        config.routes.get(path + "/run", this::running);
        config.routes.post(path + "/run/stop", this::stop);
        config.routes.get(path + "/kept", this::show);
        config.routes.get(path + "/kept/print", this::print);
        config.routes.get(path + "/kept/pdf", this::pdf);
    }

    private synchronized Optional<Run<Kept>> run() {
        return Optional.ofNullable(run);
    }

    /** Whether one is being worked out. */
    boolean isBusy() {
        return run().filter(each -> !each.isOver()).isPresent();
    }

    /** Ways to those that are kept. */
    List<Way> ways() {
        return pages.ways(path + "/kept");
    }

    /** Begins to work one out, unless another is, and shows how far it is. */
    void begin(Context request, Run.Work<Kept> work) {
        synchronized (this) {
            if (run == null || run.isOver()) {
                run = runs.begin(path, ear -> kept(work.work(ear)));
            }
        }
        Back.to(request, path + "/run");
    }

    private Kept kept(Kept made) {
        pages.keep(made);
        return made;
    }

    private void running(Context request) {
        Run<Kept> now = run().orElse(null);
        if (now == null) {
            Back.to(request, path);
        } else {
            page.show(request, now, made -> part(request, made, ""));
        }
    }

    private void stop(Context request) {
        run().filter(each -> each.id().equals(Sent.text(request, "run"))).ifPresent(Run::stop);
        Back.to(request, path + "/run");
    }

    private Kept asked(Context request) {
        return pages.find(Sent.asked(request, "id"))
                .orElseThrow(() -> new NotFoundResponse(
                        "That page is no longer kept: the last of them are, until the program ends."));
    }

    private void show(Context request) {
        Kept kept = asked(request);
        site.show(
                request,
                kept.title(),
                "serve/kept.jte",
                Map.of("html", part(request, kept, Sent.asked(request, "page"))));
    }

    /** It as part of a page, with the ways to its other pages and to paper. */
    private String part(Context request, Kept kept, String word) {
        String shown = kept.pages().containsKey(word)
                ? word
                : kept.pages().keySet().iterator().next();
        String one = path + "/kept?id=" + kept.id() + "&page=";
        String asked = "?id=" + kept.id() + "&page=" + Sent.path(shown);
        List<Way> others = new ArrayList<>(kept.ways());
        kept.pages().keySet().stream()
                .filter(each -> !each.equals(shown))
                .forEach(each -> others.add(new Way(one + Sent.path(each), "For the " + each)));
        Map<String, Object> values = new HashMap<>();
        values.put("at", kept.at());
        values.put("ways", others);
        values.put("print", path + "/kept/print" + asked);
        values.put("pdf", path + "/kept/pdf" + asked);
        values.put("blocks", PagePart.blocks(kept.page(shown)));
        return site.part(request, "serve/keptpage.jte", values);
    }

    private void print(Context request) {
        Document page = asked(request).page(Sent.asked(request, "page"));
        PrintScreen.withItsOwnStyle(request).result(new DocumentPaper().html(page));
    }

    private void pdf(Context request) {
        Document page = asked(request).page(Sent.asked(request, "page"));
        request.contentType("application/pdf").result(new DocumentPaper().pdf(page, Paper.A4));
    }
}
