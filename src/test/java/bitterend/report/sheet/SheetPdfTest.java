package bitterend.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** The type of a page on paper. */
final class SheetPdfTest {
    private static final String LABEL = "throat mark 1615 mm";

    /** A label of a drawing is as wide as the page's own type makes it; other type is a third wider, and labels overlap. */
    @Test
    void drawing_isLabelledInTheTypeOfTheText() throws Exception {
        String page = "<html><head><style>" + SheetPdf.pageStyle(Paper.A4) + "</style></head><body>"
                + "<svg width=\"600\" height=\"80\" viewBox=\"0 0 600 80\" xmlns=\"http://www.w3.org/2000/svg\">"
                + "<text x=\"0\" y=\"60\" font-family=\"Sheet\" font-size=\"40\">" + LABEL
                + "</text></svg></body></html>";
        try (PDDocument pdf = Loader.loadPDF(SheetPdf.pdf(page))) {
            // a CSS pixel is 1/96 in
            double printed = width(new PDFRenderer(pdf).renderImageWithDPI(0, 96));
            Font type = Font.createFont(
                            Font.TRUETYPE_FONT, new ByteArrayInputStream(SheetPage.bytes("fonts/sheet-regular.ttf")))
                    .deriveFont(40f);
            double drawn = type.createGlyphVector(new FontRenderContext(new AffineTransform(), true, true), LABEL)
                    .getVisualBounds()
                    .getWidth();
            assertEquals(drawn, printed, 3.0);
        }
    }

    /** From the first dark column to the last, in the upper part of the page, which its number is below. */
    private static double width(BufferedImage page) {
        int first = page.getWidth();
        int last = 0;
        for (int x = 0; x < page.getWidth(); x++) {
            for (int y = 0; y < page.getHeight() / 2; y++) {
                if ((page.getRGB(x, y) & 0xff) < 128) {
                    first = Math.min(first, x);
                    last = x;
                }
            }
        }
        return last - first + 1;
    }
}
