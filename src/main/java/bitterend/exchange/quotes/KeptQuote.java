package bitterend.exchange.quotes;

import bitterend.quoting.QuotedWork;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.quoting.life.QuoteStanding.Head;
import bitterend.report.page.Block;
import bitterend.report.page.Document;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A quote as it was filed: with its prices, its pages and the request it answers, so that nothing in it changes whatever
 * becomes of the catalogue, the prices or the program.
 *
 * @param head number, customer, days and sum
 * @param at when it was filed
 * @param said who filed it, and why
 * @param work what it says about its rope, labour and prices
 * @param rows the lines of the request: what is filled, by column of a request
 * @param pages its two pages, word for word
 * @param made the day by which it is made, as it says; nothing by arrangement
 */
public record KeptQuote(
        Head head,
        Instant at,
        Said said,
        QuotedWork work,
        List<Map<String, String>> rows,
        Pages pages,
        Optional<LocalDate> made) {
    public KeptQuote {
        rows = rows.stream().map(Map::copyOf).toList();
    }

    /**
     * Its pages.
     *
     * @param forFile with every inside figure
     * @param forCustomer what the customer got
     */
    public record Pages(Document forFile, Document forCustomer) {
        /** How the title of what is filed in place of a customer's page begins, while its prices leave something out. */
        public static final String NONE_YET = "No page for the customer yet: quote";

        /** The words above what is missing. */
        public static final String STATE_IT = "State what is missing, or say who accepts that.";

        /** What the prices leave out that nobody accepts; nothing where there is a page for the customer. */
        public Optional<String> missing() {
            boolean none = forCustomer.blocks().stream()
                    .anyMatch(block ->
                            block instanceof Block.Title title && title.kind().equals(NONE_YET));
            return none
                    ? Optional.of(forCustomer.blocks().stream()
                            .filter(Block.Paragraph.class::isInstance)
                            .map(block -> ((Block.Paragraph) block).words().strip())
                            .dropWhile(words -> !words.equals(STATE_IT))
                            .skip(1)
                            .collect(Collectors.joining(" "))
                            .replace(" error: ", "; ")
                            .replaceFirst("^error: ", ""))
                    : Optional.empty();
        }
    }

    /** Why it may not go to the customer, and what helps; nothing when it may. */
    public Optional<String> barOfCustomer() {
        return pages.missing()
                .map(missing -> "quote " + head.name().words() + " has no page for the customer, for its prices leave"
                        + " something out: " + missing + "; state that and draw it up anew with quote revise, or say"
                        + " who accepts it: quote revise with --accept NAME");
    }
}
