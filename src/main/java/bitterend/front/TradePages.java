package bitterend.front;

import bitterend.buying.reorder.Proposal;
import bitterend.exchange.BuyAdviceJson;
import bitterend.exchange.BuyJson;
import bitterend.exchange.Shop;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.quoting.Quote;
import bitterend.report.BuyAdvicePage;
import bitterend.report.BuyStudyPage;
import bitterend.report.Figures;
import bitterend.report.FindingsPage;
import bitterend.report.QuoteFilePage;
import bitterend.report.QuotePage;
import bitterend.report.ReorderPage;
import bitterend.report.StudyTable;
import bitterend.report.page.Document;
import bitterend.report.page.Ink;
import bitterend.report.page.Writing;
import bitterend.report.table.DataTable;
import bitterend.work.ComingReels;
import bitterend.work.trade.AdviseReels.Result.Advised;
import bitterend.work.trade.StudyReels;
import java.util.List;
import java.util.stream.Stream;

/** What is bought and quoted, as both fronts show it. */
public final class TradePages {
    /** Why there is nothing to advise. */
    public static final String NO_OFFER = "there is nothing to choose from; offers.csv names no offer";

    /** Why there is nothing to study. */
    public static final String NOTHING_TO_STUDY =
            "no rope to study has both an offer in offers.csv and a past in history.csv";

    private TradePages() {}

    /** The ropes that were asked for and cannot be studied, each with the reason and those that can. */
    public static List<String> unstudied(StudyReels study) {
        List<String> can = study.studiable();
        String others = can.isEmpty()
                ? "; " + NOTHING_TO_STUDY
                : "; expected a rope with both an offer and a past: " + String.join(", ", can);
        return study.unstudied().stream()
                .map(each -> "found \"" + each.rope() + "\", " + lacking(each) + others)
                .toList();
    }

    private static String lacking(StudyReels.Unstudied rope) {
        if (!rope.known()) {
            return "which ropes.json does not name";
        }
        return rope.offered() ? "which has no past in history.csv" : "which has no offer in offers.csv";
    }

    /** Which reels to buy for the orders in hand, and on which of the days ahead rope is short. */
    public static Document of(Shop shop, Advised advised, Figures figures) {
        return new BuyAdvicePage(figures)
                .of(
                        shop.settings().name(),
                        advised.orders(),
                        advised.advice(),
                        advised.assumed(),
                        advised.forecast().horizon().until(),
                        advised.forecast().ropes());
    }

    /** Which reels to keep on the rack, what was not studied, and where it says what to order now. */
    public static Document of(Shop shop, StudyReels.Found found, Figures figures) {
        Writing unsaid = new Writing();
        unsaid(found, figures).forEach(unsaid::paragraph);
        unsaid.heading("What to order now");
        unsaid.paragraph("By what is there, booked and on order: bitterend reorder SHOP.");
        return BuyStudyPage.of(shop.settings().name(), found.verdicts(), figures)
                .with(unsaid.document());
    }

    /** The ropes of which nothing can be said, a sentence each. */
    public static List<String> unsaid(StudyReels.Found found, Figures figures) {
        return Stream.concat(
                        found.tooFew().entrySet().stream()
                                .map(each -> each.getKey() + ": " + each.getValue()
                                        + " scenarios are too few to say anything"),
                        BuyStudyPage.unsupplied(found.unsupplied(), figures).stream())
                .toList();
    }

    /** What a study found, for programs. */
    public static String json(Shop shop, StudyReels.Found found) {
        return new BuyJson(shop.settings().money()).study(found.verdicts());
    }

    /** The same for a spreadsheet. */
    public static List<DataTable> tables(StudyReels.Found found, Figures figures) {
        return List.of(new StudyTable(figures).of(found.verdicts()));
    }

    /** A quote as the customer gets it: no figure of the shop's own. */
    public static Document forCustomer(Shop shop, Quote quote, Figures figures) {
        return forCustomer(shop, quote, figures, false);
    }

    /**
     * The same.
     *
     * @param apart whether it says what each line costs by itself
     */
    public static Document forCustomer(Shop shop, Quote quote, Figures figures, boolean apart) {
        return quote.isUnfinished()
                ? unfinished(shop, quote)
                : new QuotePage(figures).of(shop.settings().name(), shop.catalogue(), quote, apart);
    }

    /** In place of the customer's page, while its prices leave something out that nobody accepts. */
    private static Document unfinished(Shop shop, Quote quote) {
        Writing page = new Writing();
        page.title(KeptQuote.Pages.NONE_YET, quote.name(), shop.settings().name());
        page.paragraph(KeptQuote.Pages.STATE_IT);
        FindingsPage.text(quote.gaps(), Ink.PLAIN).lines().forEach(page::paragraph);
        return page.document();
    }

    /** The same for the file, with every inside figure. */
    public static Document forFile(Shop shop, Quote quote, Figures figures) {
        return new QuoteFilePage(figures).of(shop.settings().name(), shop.catalogue(), quote);
    }

    /** What to order again now. */
    public static Document of(Shop shop, Proposal proposal, Figures figures) {
        return new ReorderPage(figures).of(shop.settings().name(), proposal, ComingReels.lateness(shop));
    }

    /** The advice for programs. */
    public static String json(Shop shop, Advised advised) {
        return new BuyAdviceJson(shop.settings().money())
                .advice(
                        advised.orders(),
                        advised.advice(),
                        advised.assumed(),
                        advised.forecast().day(),
                        advised.forecast().horizon().until(),
                        advised.forecast().ropes());
    }
}
