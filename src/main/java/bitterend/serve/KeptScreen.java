package bitterend.serve;

import bitterend.report.page.Document;
import bitterend.report.sheet.DocumentPaper;
import bitterend.report.sheet.PagePart;
import bitterend.report.sheet.Paper;
import bitterend.serve.KeptPages.Kept;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What was worked out and kept, to look at and to print. */
final class KeptScreen {
    private final Site site;
    private final KeptPages pages;
    private final String path;

    /** @param path where the page of one of them is */
    KeptScreen(Site site, KeptPages pages, String path) {
        this.site = site;
        this.pages = pages;
        this.path = path;
    }

    void serve(JavalinConfig config) {
        config.routes.get(path, this::show);
        config.routes.get(path + "/print", this::print);
        config.routes.get(path + "/pdf", this::pdf);
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
    String part(Context request, Kept kept, String word) {
        String shown = kept.pages().containsKey(word)
                ? word
                : kept.pages().keySet().iterator().next();
        String asked = "?id=" + kept.id() + "&page=" + Sent.path(shown);
        List<Way> others = kept.pages().keySet().stream()
                .filter(each -> !each.equals(shown))
                .map(each -> new Way(path + "?id=" + kept.id() + "&page=" + Sent.path(each), "For the " + each))
                .toList();
        Map<String, Object> values = new HashMap<>();
        values.put("at", kept.at());
        values.put("ways", others);
        values.put("print", path + "/print" + asked);
        values.put("pdf", path + "/pdf" + asked);
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
