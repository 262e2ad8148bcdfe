package bitterend.report;

import bitterend.catalogue.Catalogue;
import bitterend.demand.Assembly;
import bitterend.quoting.Letter;
import bitterend.quoting.LineQuote;
import bitterend.quoting.Quote;
import bitterend.quoting.QuoteLine;
import bitterend.quoting.Recipient;
import bitterend.report.page.Block;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.PageMark;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Collectors;

/**
 * A quote as the customer gets it: who offers what to whom, at what price, on which terms, and where to sign. No figure of
 * the shop's own.
 */
public final class QuotePage {
    private static final String BLANK = "_".repeat(30);

    private final Figures figures;

    public QuotePage(Figures figures) {
        this.figures = figures;
    }

    /**
     * The page of a quote of this shop.
     *
     * @param apart whether it says what each line costs by itself
     */
    public Document of(String shop, Catalogue catalogue, Quote quote, boolean apart) {
        Writing page = new Writing();
        Letter letter = quote.policy().letter();
        page.title("Quote", named(quote), shop);
        revision(page, quote);
        say(page, String.join(", ", letter.address()));
        say(page, letter.contact());
        page.tableApart(facts(quote));
        say(page, letter.own().before());
        QuoteWords words = new QuoteWords(catalogue, figures);
        Writing behind = new Writing();
        behind(behind, quote, words, apart);
        new QuoteLineTable(figures, words).write(page, quote, SheetRoom.of(behind.document()));
        behind(page, quote, words, apart);
        return page.document();
    }

    /** All that is said below the total, to the place of the signature. */
    private void behind(Writing page, Quote quote, QuoteWords words, boolean apart) {
        quote.notPriced()
                .forEach(line -> page.caution(
                        line.asked().forCustomer() + " is not priced and not in the total: " + line.why() + "."));
        if (quote.isCutShort() && quote.request().given().draft()) {
            page.caution("prices of this draft are not worked out to the end and may still change a little.");
        }
        if (quote.holdsTogetherAlone()) {
            page.paragraph("Prices hold for the whole request: a line may be dearer when it is ordered by itself.");
        }
        say(page, quote.policy().letter().own().after());
        new QuoteChoices(figures, words).write(page, quote, apart);
        drawings(page, quote, words);
        notes(page, quote);
        acceptance(page, quote);
    }

    private static void say(Writing page, String words) {
        if (!words.isEmpty()) {
            page.paragraph(words);
        }
    }

    private static TableRows facts(Quote quote) {
        TableRows table = new TableRows(Column.words(""), Column.words(""));
        Recipient recipient = quote.request().recipient();
        List<String> whom = new ArrayList<>();
        whom.add(quote.request().customer());
        whom.addAll(recipient.address());
        whom.add(recipient.contact());
        whom.removeIf(String::isEmpty);
        fact(table, "for", String.join("\n", whom));
        fact(table, "your number with us", recipient.number());
        fact(table, "quote", named(quote) + (quote.request().given().draft() ? ", not numbered yet" : ""));
        fact(table, "date", quote.request().day().toString());
        fact(table, "valid until", quote.validUntil().toString());
        fact(table, "asked for by", asked(quote));
        fact(table, "delivery", quote.made());
        fact(table, "payment", recipient.payment(quote.policy().letter()));
        fact(table, "delivery terms", quote.policy().letter().terms().delivery());
        return table;
    }

    /** The days by which lines are asked for: {@code 2026-03-20}, or {@code 2026-03-20 for line 1, 2026-04-10 for line 2}. */
    static String asked(Quote quote) {
        SortedMap<LocalDate, List<String>> asked = quote.askedBy();
        if (asked.size() == 1
                && asked.values().iterator().next().size() == quote.lines().size()) {
            return asked.firstKey().toString();
        }
        return asked.entrySet().stream()
                .map(each -> each.getKey()
                        + (each.getValue().size() == 1 ? " for line " : " for lines ")
                        + String.join(", ", each.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** What each sheet of it is known by. */
    static String named(Quote quote) {
        return quote.request().given().draft() ? "draft" : quote.number() + ", revision " + quote.revision();
    }

    private static void fact(TableRows table, String what, String words) {
        if (!words.isEmpty()) {
            table.row(what, words);
        }
    }

    /**
     * A drawing of each different assembly, with the lines that it is of; where they differ in length alone it has a letter
     * for that.
     */
    private void drawings(Writing page, Quote quote, QuoteWords words) {
        Map<List<Object>, List<QuoteLine>> alike = new LinkedHashMap<>();
        for (LineQuote each : quote.lines()) {
            QuoteLine line = each.line();
            Assembly.Make make = line.assembly().make();
            QuoteDrawing.of(line, "L", words.made(line)).ifPresent(svg -> alike.computeIfAbsent(
                            List.of(svg, make.extras().along(), make.hang()), any -> new ArrayList<>())
                    .add(line));
        }
        if (!alike.isEmpty()) {
            page.heading("From where to where");
            page.paragraph("Lengths are measured between the points that each line names.");
        }
        alike.values().forEach(lines -> {
            QuoteLine first = lines.get(0);
            Map<String, List<String>> lengths = new LinkedHashMap<>();
            lines.forEach(line -> lengths.computeIfAbsent(length(line), any -> new ArrayList<>())
                    .add(line.name()));
            Map.Entry<String, List<String>> one = lengths.entrySet().iterator().next();
            boolean same = lengths.size() == 1;
            page.picture(new Block.Picture(
                    QuoteDrawing.of(first, same ? one.getKey() : "L", words.made(first))
                            .orElseThrow(),
                    same
                            ? capital(lines(one.getValue())) + ", not to scale"
                            : capital(lengths.entrySet().stream()
                                            .map(each -> lines(each.getValue()) + ": L is " + each.getKey())
                                            .collect(Collectors.joining("; ")))
                                    + "; not to scale"));
        });
    }

    private String length(QuoteLine line) {
        return figures.written(line.assembly().make().finished());
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String lines(List<String> names) {
        return (names.size() == 1 ? "line " : "lines ") + String.join(", ", names);
    }

    private static void notes(Writing page, Quote quote) {
        page.heading("Please note");
        page.paragraph("Assemblies are made to the rope maker's current instructions.");
        codes(quote).forEach(page::paragraph);
        page.paragraph(
                "This quote is for the making of the assemblies described. It states no strength and no safe load; for"
                        + " lifting and life safety a competent person and the local code decide.");
    }

    private void acceptance(Writing page, Quote quote) {
        String mark = PageMark.of(page.document());
        page.heading(PageMark.SIGNED_BELOW);
        page.paragraph(
                "Quote " + named(quote) + ", mark " + mark + ". The mark changes with anything that is said above.");
        page.paragraph(FindingsPage.count(quote.lines().size(), "line") + ", "
                + (quote.taxes().isEmpty()
                        ? "total before tax " + figures.currency().print(quote.total())
                        : "total with tax " + figures.currency().print(quote.totalWithTax()))
                + ".");
        TableRows table = new TableRows(Column.words(""), Column.words(""));
        table.row("place and date", BLANK);
        table.row("name", BLANK);
        table.row("signature", BLANK);
        page.tableApart(table);
    }

    /** The code that slings are made under; it stands on both pages. */
    static List<String> codes(Quote quote) {
        CodeWords codes = new CodeWords();
        quote.lines()
                .forEach(line ->
                        codes.add("line " + line.line().name(), line.line().demanded()));
        return codes.sentences();
    }

    /** Which revision a later one takes the place of; it is said on both pages. */
    static void revision(Writing page, Quote quote) {
        if (quote.revision() > 1) {
            page.paragraph("Revision " + quote.revision() + "; it takes the place of revision " + (quote.revision() - 1)
                    + ".");
        }
    }

    static void head(Writing page, Quote quote) {
        if (!quote.request().customer().isEmpty()) {
            page.paragraph("For " + quote.request().customer());
        }
        page.paragraph(quote.request().day() + ", valid until " + quote.validUntil());
    }
}
