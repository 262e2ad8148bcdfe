package bitterend.report.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

final class DocumentPaperTest {
    private static final DocumentPaper PAPER = new DocumentPaper();

    private static Document page() {
        Writing page = new Writing();
        page.title("Stock", "On the rack", "Eider <Shed>");
        page.heading("Flaws");
        page.paragraph("Two reels & a coil.");
        page.caution("E8 is chafed");
        TableRows rows = new TableRows(Column.words("reel"), Column.figure("length"), Column.drawing(""));
        rows.row("E7", "62.000", "═╤═\n │");
        page.table(rows);
        page.picture("<svg viewBox=\"0 0 1 1\"><path d=\"M0 0\"/></svg>");
        return page.document();
    }

    @Test
    void html_saysWhatTheTextSaysAndEscapesIt() {
        String html = PAPER.html(page());
        for (String part : new String[] {
            "<title>Stock On the rack, Eider &lt;Shed&gt;</title>",
            "<h1>On the rack <span class=\"shop\">Eider &lt;Shed&gt;</span></h1>",
            "<h2>Flaws</h2>",
            "Two reels &amp; a coil.",
            "<b>Caution:</b> E8 is chafed",
            "<th class=\"figure\" scope=\"col\">length</th>",
            "<td class=\"figure\">62.000</td>",
            "<td class=\"drawn\">═╤═\n │</td>",
            "<svg viewBox=\"0 0 1 1\">"
        }) {
            assertTrue(html.contains(part), part + " in " + html.substring(html.indexOf("<body>")));
        }
        assertFalse(html.contains("<link") || html.contains("src="), "nothing comes from elsewhere");
    }

    /** Two sections that fill a page and a half: the second begins with its table, on the second page. */
    @Test
    void pdf_keepsAHeadingWithItsTable() throws IOException {
        Writing page = new Writing();
        page.heading("First");
        table(page, 30);
        page.heading("Second");
        page.paragraph("What the second table is about.");
        table(page, 12);
        try (PDDocument document = Loader.loadPDF(PAPER.pdf(page.document(), Paper.A4))) {
            PDFTextStripper first = new PDFTextStripper();
            first.setEndPage(1);
            String text = first.getText(document);
            assertTrue(text.contains("First") && !text.contains("Second"), text);
            assertEquals(2, document.getNumberOfPages());
        }
    }

    /** A section longer than a page begins where it can, with its first rows, and says its columns again on each page. */
    @Test
    void pdf_breaksALongTableUnderItsHeadAgain() throws IOException {
        for (int before = 20; before <= 45; before++) {
            Writing page = new Writing();
            page.heading("First");
            table(page, before);
            page.heading("Second");
            page.paragraph("What the second table is about.");
            table(page, 90);
            try (PDDocument document = Loader.loadPDF(PAPER.pdf(page.document(), Paper.LETTER))) {
                for (int number = 1; number <= document.getNumberOfPages(); number++) {
                    List<String> lines = lines(document, number);
                    assertTrue(
                            lines.get(0).equals("First")
                                    || lines.get(0).equals("Second")
                                    || lines.get(0).equals("reel"),
                            before + ": " + lines);
                    int heading = lines.indexOf("Second");
                    assertTrue(heading < 0 || lines.size() >= heading + 4, before + ": " + lines);
                }
            }
        }
    }

    private static List<String> lines(PDDocument document, int number) throws IOException {
        PDFTextStripper page = new PDFTextStripper();
        page.setStartPage(number);
        page.setEndPage(number);
        return page.getText(document)
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.matches("(.* )?page \\d+ of \\d+"))
                .toList();
    }

    /** A reader's window, its list of contents and its voice know what the page is. */
    @Test
    void pdf_hasTitleLanguageAndBookmarks() throws IOException {
        for (Paper paper : Paper.values()) {
            try (PDDocument document = Loader.loadPDF(PAPER.pdf(page(), paper))) {
                PDDocumentCatalog catalog = document.getDocumentCatalog();
                assertEquals(
                        "Stock On the rack, Eider <Shed>",
                        document.getDocumentInformation().getTitle());
                assertTrue(catalog.getViewerPreferences().displayDocTitle());
                assertEquals("en", catalog.getLanguage());
                PDOutlineItem first = catalog.getDocumentOutline().getFirstChild();
                assertEquals("Flaws", first.getTitle());
                assertEquals(document.getPage(0), first.findDestinationPage(document));
                float width = document.getPage(0).getMediaBox().getWidth();
                assertEquals(paper == Paper.A4 ? 595 : 612, Math.round(width));
            }
        }
    }

    private static void table(Writing page, int many) {
        TableRows rows = new TableRows(Column.words("reel"));
        for (int row = 1; row <= many; row++) {
            rows.row("E" + row);
        }
        page.table(rows);
    }

    @Test
    void pdf_saysTheSameAndIsTheSameBytesAtEveryRun() throws IOException {
        byte[] pdf = PAPER.pdf(page(), Paper.A4);
        assertArrayEquals(pdf, PAPER.pdf(page(), Paper.A4));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            for (String part : new String[] {"On the rack", "Flaws", "Caution: E8 is chafed", "62.000"}) {
                assertTrue(text.contains(part), part + " in " + text);
            }
            assertFalse(text.contains("#") || text.contains("="), "lines that no type of ours has");
            assertEquals(1, document.getNumberOfPages());
        }
    }
}
