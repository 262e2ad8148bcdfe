package bitterend.report.sheet;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** The same sheets as PDF: text that can be selected, no row split between pages, page numbers. */
public final class SheetPdf {
    private final SheetPage page;

    public SheetPdf(SheetPage page) {
        this.page = page;
    }

    public byte[] pdf(Sheet sheet, Paper paper) {
        return pdf(page.printed(sheet, pageStyle(paper) + markStyle(sheet.mark())));
    }

    /** Any page of ours. */
    static byte[] pdf(String html) {
        XRLog.setLoggingEnabled(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BatikSVGDrawer drawings = new BatikSVGDrawer()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useFastMode();
            builder.withW3cDocument(Bookmarks.added(html), null);
            builder.useSVGDrawer(drawings);
            builder.withProducer("Bitter End");
            save(builder, out);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        return out.toByteArray();
    }

    /** Without the time of day, which a document keeps twice unless told: the same page gives the same bytes. */
    private static void save(PdfRendererBuilder builder, OutputStream out) throws IOException {
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            document.setDocumentId(0L);
            document.getDocumentCatalog().setLanguage("en");
            document.getDocumentCatalog().setViewerPreferences(showingTitle());
            document.getDocumentInformation().getCOSObject().removeItem(COSName.CREATION_DATE);
            document.save(out);
        }
    }

    /** A reader's window is called by the title of the page, not by the name of the file. */
    private static PDViewerPreferences showingTitle() {
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        return preferences;
    }

    /** The mark stands at the top of every page; the first shows it in its text as well, where screens do. */
    static String markStyle(String mark) {
        return mark.isEmpty()
                ? ""
                : ".plan { display: none; }\n@page { @top-right { content: \"" + mark
                        + "\"; font-family: \"Sheet\"; font-weight: bold; font-size: 20px; } }\n";
    }

    /** What the page is about, at the foot of every sheet of it. */
    static String nameStyle(String name) {
        return "@page { @bottom-left { content: \"" + name.replaceAll("[\\\\\"<>&\\p{Cntrl}]", " ")
                + "\"; font-family: \"Sheet\"; font-size: 11px; white-space: nowrap; } }\n";
    }

    /** The paper, and the type of text and drawings: a drawing knows only what the style names. */
    static String pageStyle(Paper paper) {
        return SheetPage.fonts() + "@page { size: " + paper.css()
                + "; @bottom-right { content: \"page \" counter(page) \" of \" counter(pages); font-family: \"Sheet\";"
                + " font-size: 11px; } }\n";
    }
}
