package bitterend.serve;

import bitterend.finding.Unseen;
import bitterend.report.page.Document;
import bitterend.report.sheet.PagePart;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sets what a screen shows into the page: the same head, the same ways to the other screens, everything escaped. */
final class Site {
    private static final List<Way> WAYS = List.of(
            new Way("/", "Today"),
            new Way("/bench", "Bench"),
            new Way("/splicing", "Splicing"),
            new Way("/book", "Order book"),
            new Way("/orders", "Orders"),
            new Way("/rack", "Rack"),
            new Way("/week", "Week"),
            new Way("/buying", "Buying"),
            new Way("/quotes", "Quotes"));

    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);
    private final Guard guard;
    private final People people;
    private final String shop;
    private final String version;

    /** @param version of the files that a page asks for besides itself */
    Site(Guard guard, People people, String shop, String version) {
        this.version = version;
        this.guard = guard;
        this.people = people;
        this.shop = shop;
    }

    /** A whole page with one screen on it. */
    void show(Context request, String title, String template, Map<String, Object> values) {
        Map<String, Object> frame = new HashMap<>();
        frame.put("title", title);
        frame.put("shop", shop);
        frame.put("instance", guard.cookie("page"));
        frame.put("ways", WAYS);
        frame.put("here", request.path());
        frame.put("back", here(request));
        frame.put("version", version);
        frame.put("who", people.who(request));
        frame.put("token", guard.token(request));
        frame.put("body", part(request, template, values));
        request.html(Unseen.shownOnPage(render("serve/page.jte", frame)));
    }

    /** Where a browser comes back to: the page that it asked for; for what a form sent, the page of that form. */
    private static String here(Context request) {
        if (request.method().equals(HandlerType.GET)) {
            String asked = request.queryString();
            return request.path() + (asked == null ? "" : "?" + asked);
        }
        String referer = request.header("Referer");
        int path = referer == null ? -1 : referer.indexOf('/', referer.indexOf("://") + 3);
        return referer == null || path < 0 ? "/" : referer.substring(path);
    }

    /** A page that holds a document. */
    void show(Context request, Document document) {
        show(request, document.name(), "serve/document.jte", Map.of("blocks", PagePart.blocks(document)));
    }

    /** A page that says what went wrong. */
    void tell(Context request, String words) {
        tell(request, words, false);
    }

    /** @param mayBeSo whether it goes all the same once somebody says that it is so */
    void tell(Context request, String words, boolean mayBeSo) {
        show(request, "That did not go", "serve/told.jte", Map.of("words", words, "mayBeSo", mayBeSo));
    }

    /** Some part of a page; every part knows the token for its forms. */
    String part(Context request, String template, Map<String, Object> values) {
        Map<String, Object> all = new HashMap<>(values);
        all.put("token", guard.token(request));
        return Unseen.shownOnPage(render(template, all));
    }

    private String render(String template, Map<String, Object> values) {
        StringOutput html = new StringOutput();
        templates.render(template, values, html);
        return html.toString();
    }
}
