package bitterend.serve;

import bitterend.exchange.QuoteRequestReading;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.finding.Finding;
import bitterend.front.QuotePapers;
import bitterend.front.QuoteUnits;
import bitterend.measure.Moments;
import bitterend.quoting.QuoteRequest;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.page.Document;
import bitterend.report.page.Ink;
import bitterend.report.page.Writing;
import bitterend.serve.KeptPages.Kept;
import bitterend.work.ShopNow;
import bitterend.work.Watcher;
import bitterend.work.quotes.KeepQuote;
import bitterend.work.quotes.KeepQuote.Asked;
import bitterend.work.quotes.KeepQuote.Result;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A request that is priced and filed as a quote of its own, or as the next revision of one.
 *
 * @param now the shop
 * @param figures in which units its pages are, unless the customer's is in others
 * @param earlier the quote that it was drawn up from, or revises
 * @param numbered whether its number was typed; otherwise it gets the next of the shop's own
 * @param said who keeps it, and why
 */
record QuoteToKeep(ShopNow now, Figures figures, EarlierQuote earlier, boolean numbered, Said said) {
    /** Prices and files it. */
    Kept kept(QuoteRequest request, QuoteRequestReading reading, Duration time, Run.Ear ear) {
        KeepQuote verb = new KeepQuote(now, new QuotePapers(now.shop(), new QuoteUnits(figures, false), false));
        Asked asked = new Asked(
                request,
                numbered ? reading.rows() : unnumbered(reading.rows()),
                from(),
                new KeepQuote.Effort(time, Runtime.getRuntime().availableProcessors(), List.of()),
                said);
        Watcher watcher = ear.watcher(now.shop().settings().money());
        return shown(
                request.id(),
                earlier.revised() ? verb.revise(earlier.number(), asked, watcher) : verb.keep(asked, watcher));
    }

    private static List<Map<String, String>> unnumbered(List<Map<String, String>> rows) {
        List<Map<String, String>> without = new ArrayList<>();
        for (Map<String, String> row : rows) {
            Map<String, String> other = new HashMap<>(row);
            other.remove("order");
            without.add(other);
        }
        return without;
    }

    /** A revision was drawn up from what the quote was drawn up from. */
    private String from() {
        return earlier.revised()
                ? QuoteBookScreen.book(now)
                        .read(earlier.number(), 0)
                        .map(kept -> kept.head().from())
                        .orElse("")
                : earlier.number();
    }

    private Kept shown(String asked, Result result) {
        String at = Moments.text(now.at().clock().instant());
        Map<String, Document> pages = new LinkedHashMap<>();
        if (result instanceof Result.Kept filed) {
            KeptQuote quote = filed.quote();
            pages.put("customer", quote.pages().forCustomer());
            pages.put("file", quote.pages().forFile());
            String name = quote.head().name().words();
            Way way = new Way(
                    QuoteBookScreen.ONE + "?id=" + Sent.path(quote.head().name().number()), "Kept as quote " + name);
            return new Kept(Keys.random(), "Kept quote " + name, at, pages, List.of(way));
        }
        pages.put(
                "file",
                result instanceof Result.NotPriced not
                        ? told("Request " + asked + " cannot be priced", not.problems())
                        : told("Nothing was kept: " + ((Result.Refused) result).why(), List.of()));
        return new Kept(Keys.random(), "Request " + asked + ", not kept", at, pages);
    }

    /** A page that says why there is no quote. */
    static Document told(String what, List<Finding> problems) {
        Writing page = new Writing();
        page.heading(what);
        FindingsPage.text(problems, Ink.PLAIN).lines().forEach(page::paragraph);
        return page.document();
    }
}
