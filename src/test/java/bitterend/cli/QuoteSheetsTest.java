package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A long quote on paper: what its sheets carry, and how many drawings it takes. */
final class QuoteSheetsTest {
    private static final int LINES = 16;

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void copyDemo() throws IOException {
        shop = DemoShop.copy("gannet-loft", folder);
    }

    private Path request() throws IOException {
        StringBuilder rows =
                new StringBuilder("order,line,customer,rope,measured,length,end a,end b,legs,quantity,minutes,note\n");
        for (int line = 1; line <= LINES; line++) {
            rows.append("H-40,").append(line).append(",museum harbour,DB12,,").append(line % 4 + 3);
            rows.append(" m,double-braid-eye thimble T12,sealed,,1,25 min,spring\n");
        }
        rows.append("H-40,17,museum harbour,W-HALF,over all,3.2 m,wire-tucked-eye thimble TW13 with IL13 + ML16,")
                .append("wire-tucked-eye thimble TW13 with HK13,3,1,45 min,three-leg sling\n");
        return Files.writeString(folder.resolve("long.csv"), rows);
    }

    private void run(String... more) throws IOException {
        String[] args = new String[more.length + 6];
        System.arraycopy(
                new String[] {"quote", shop.toString(), request().toString(), "--customer", "--time", "100ms"},
                0,
                args,
                0,
                6);
        System.arraycopy(more, 0, args, 6, more.length);
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.err());
    }

    @Test
    void everySheet_carriesTheQuoteAndItsNumber_andTheFirstBeginsItsLines() throws IOException {
        Path pdf = folder.resolve("long.pdf");
        run("--pdf", pdf.toString(), "--paper", "Letter");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            int sheets = document.getNumberOfPages();
            assertTrue(sheets > 2 && sheets < 6, sheets + " sheets");
            for (int sheet = 1; sheet <= sheets; sheet++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(sheet);
                stripper.setEndPage(sheet);
                String words = stripper.getText(document).replaceAll("\\s+", " ");
                assertTrue(words.contains("Quote H-40, revision 1, Gannet Loft"), words);
                assertTrue(words.contains("page " + sheet + " of " + sheets), words);
                assertEquals(sheet == 1, words.contains("spring") && !words.contains("brought forward"), words);
            }
        }
    }

    /** Sixteen springs of four lengths are one drawing; a sling of three legs has three eyes below one master link. */
    @Test
    void drawings_areOneForEachKind_andHaveTheLegs() throws IOException {
        Path html = folder.resolve("long.html");
        run("--html", html.toString());
        String page = Files.readString(html);
        assertEquals(
                2,
                Pattern.compile("<title>how the length is measured")
                        .matcher(page)
                        .results()
                        .count());
        assertTrue(page.contains("Lines 1, 5, 9, 13: L is 4") && page.contains("lines 4, 8, 12, 16: L is 3"), page);
        String sling = page.substring(page.lastIndexOf("<svg"));
        assertTrue(sling.contains("3 legs") && sling.contains("3.2 m each leg"), sling);
        assertEquals(5, Pattern.compile("<ellipse").matcher(sling).results().count(), "two links and three hooks");
    }
}
