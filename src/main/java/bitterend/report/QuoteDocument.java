package bitterend.report;

import bitterend.report.QuoteBlock.Kind;
import java.util.ArrayList;
import java.util.List;

/**
 * A page about a quote, for the customer or for the file, before it is set as text, HTML or PDF.
 *
 * @param kind what the page is, in a few words
 * @param title what it is about
 * @param shop name of the shop
 * @param blocks what it says
 */
public record QuoteDocument(String kind, String title, String shop, List<QuoteBlock> blocks) {
    public QuoteDocument {
        blocks = List.copyOf(blocks);
    }

    /** The page while it is written. */
    static final class Writing {
        private final List<QuoteBlock> blocks = new ArrayList<>();

        void heading(String words) {
            blocks.add(QuoteBlock.of(Kind.HEADING, words));
        }

        void paragraph(String words) {
            blocks.add(QuoteBlock.of(Kind.PARAGRAPH, words));
        }

        void caution(String words) {
            blocks.add(QuoteBlock.of(Kind.CAUTION, words));
        }

        void table(QuoteTable table) {
            blocks.add(table.block());
        }

        QuoteDocument document(String kind, String title, String shop) {
            return new QuoteDocument(kind, title, shop, blocks);
        }
    }

    /** As text, 80 columns wide. */
    public String text(Ink ink) {
        Page page = new Page(ink);
        page.title(kind + " " + title + ", " + shop);
        boolean apart = false;
        for (QuoteBlock block : blocks) {
            if (!block.isHeading() && (block.isTable() || apart)) {
                page.blank();
            }
            apart = block.isTable();
            switch (block.kind()) {
                case HEADING -> page.heading(block.words());
                case PARAGRAPH -> page.paragraph(0, block.words());
                case CAUTION -> page.caution(block.words());
                case TABLE -> page.table(block.text());
            }
        }
        return page.toString();
    }
}
