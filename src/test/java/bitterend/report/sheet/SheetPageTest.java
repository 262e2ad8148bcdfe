package bitterend.report.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import bitterend.measure.MoneyText;
import bitterend.measure.Units;
import bitterend.packing.Cut;
import bitterend.report.DayOnTheBench;
import bitterend.report.Figures;
import bitterend.report.PlanView;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

final class SheetPageTest {
    private static final Figures FIGURES = new Figures(Units.METRIC, new MoneyText("EUR", 2));

    private static Sheet sheet(PlanView view) {
        return new SheetMaker(view, FIGURES, List.of()).sheet("Planned by hand.");
    }

    private static String html(PlanView view) {
        return new SheetPage().html(sheet(view));
    }

    private static Document parsed(String html) throws ParserConfigurationException, IOException, SAXException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        return factory.newDocumentBuilder()
                .parse(new InputSource(new StringReader(html.replace("<!DOCTYPE html>", ""))));
    }

    private static String withoutStyle(String html) {
        return html.replaceAll("(?s)<style>.*?</style>", "<style/>");
    }

    @Test
    void sheet_readsAsTheGoldenFile() {
        Golden.check("sheet/day.html", withoutStyle(html(DayOnTheBench.view())));
    }

    @Test
    void sheet_isWellFormedAndNeedsNoNetworkAndNoScript() throws Exception {
        String html = html(DayOnTheBench.view());
        assertEquals("html", parsed(html).getDocumentElement().getTagName());
        assertFalse(html.contains("<script"));
        assertFalse(Pattern.compile("(src|href)=\"").matcher(html).find());
        assertFalse(withoutStyle(html).replace("http://www.w3.org/2000/svg", "").contains("http"));
    }

    @Test
    void hostileNames_areEscaped() throws Exception {
        String evil = "\"><script>alert('x')</script> & <b>";
        String html = html(DayOnTheBench.view(evil));
        assertFalse(html.contains("<script"));
        assertTrue(parsed(html).getDocumentElement().getTextContent().contains(evil));
    }

    @Test
    void everyPiece_standsInOneRow() {
        PlanView view = DayOnTheBench.view();
        String html = html(view);
        for (Cut cut : view.plan().draws().stream()
                .flatMap(draw -> draw.cuts().stream())
                .toList()) {
            assertEquals(1, html.split(Pattern.quote(">" + cut.piece() + "</b>"), -1).length - 1, cut.piece());
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void pdf_carriesEveryPieceAsText(Paper paper) throws IOException {
        PlanView view = DayOnTheBench.view();
        byte[] pdf = new SheetPdf(new SheetPage()).pdf(sheet(view), paper);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            view.plan().draws().forEach(draw -> draw.cuts()
                    .forEach(cut -> assertTrue(text.contains(cut.piece()), cut.piece())));
            assertTrue(text.contains("page 1 of " + document.getNumberOfPages()), text);
            assertEquals(
                    Math.round(paper.width() * 72 / 25.4f),
                    Math.round(document.getPage(0).getMediaBox().getWidth()),
                    2);
        }
    }

    /** PDF is stamped with days and random numbers by those who write it; ours says nothing of when it was printed. */
    @Test
    void pdf_isTheSameBytesAtEveryRun() throws IOException {
        byte[] pdf = new SheetPdf(new SheetPage()).pdf(sheet(DayOnTheBench.view()), Paper.A4);
        assertArrayEquals(pdf, new SheetPdf(new SheetPage()).pdf(sheet(DayOnTheBench.view()), Paper.A4));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertNull(document.getDocumentInformation().getCreationDate());
        }
    }

    @Test
    void csv_hasARowForEveryMark() {
        String csv = CutList.csv(DayOnTheBench.view());
        assertTrue(csv.endsWith("\r\n"), csv);
        Golden.check("sheet/day.csv", csv.replace("\r\n", "\n"));
    }

    @Test
    void csv_disarmsFormulas() {
        assertTrue(CutList.csv(DayOnTheBench.view("=cmd|'/c calc'!A0")).contains("'=cmd"));
    }
}
