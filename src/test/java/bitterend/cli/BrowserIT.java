package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sheets of both lofts in a real browser. Runs with {@code mvn verify -Pbrowser}; it wants Chromium. */
@EnabledIfSystemProperty(named = "browser", matches = ".+")
final class BrowserIT {
    private static final Pattern VERDICT = Pattern.compile(
            "width=(\\d+) scroll=(\\d+) uneven=(\\d+) clipped=(\\d+) overlap=(\\d+) pieces=([^\\s<]*)[^\n]*");

    private final Path folder;

    BrowserIT(@TempDir Path folder) {
        this.folder = folder;
    }

    @ParameterizedTest
    @ValueSource(strings = {"eider-shed", "gannet-loft"})
    void sheet_fitsPhoneTabletAndDesk(String loft) throws IOException, InterruptedException {
        Path shop = planned(loft, "metric");
        for (String units : List.of("metric", "imperial")) {
            assertEquals(
                    0,
                    Run.of("sheet", shop.toString(), "--all", "--units", units).code());
            Path harness = folder.resolve("measure.html");
            String page = Base64.getEncoder().encodeToString(Files.readAllBytes(shop.resolve("sheet.html")));
            Files.writeString(
                    harness,
                    Files.readString(Path.of("src/test/resources/browser/measure.html"))
                            .replace("PAGE", page));
            String dom = Chromium.run(
                    folder,
                    "--dump-dom",
                    "--virtual-time-budget=20000",
                    harness.toUri().toString());
            Matcher verdict = VERDICT.matcher(dom);
            int widths = 0;
            while (verdict.find()) {
                widths++;
                String where = loft + " " + units + " at " + verdict.group(1) + " px: " + verdict.group();
                assertEquals("0", verdict.group(2), "scrolls sideways, " + where);
                assertEquals("0", verdict.group(3), "rows off the tape, " + where);
                assertEquals("0", verdict.group(4), "clipped, " + where);
                assertEquals("0", verdict.group(5), "labels over one another, " + where);
                List<String> pieces =
                        Arrays.stream(verdict.group(6).split("\\|")).sorted().toList();
                assertEquals(cuts(shop), pieces, where);
            }
            assertEquals(3, widths, dom);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"eider-shed", "gannet-loft"})
    void printedSheet_carriesEveryPieceOnce(String loft) throws IOException, InterruptedException {
        Path shop = planned(loft, "metric");
        assertEquals(0, Run.of("sheet", shop.toString(), "--all").code());
        Path pdf = folder.resolve("printed.pdf");
        Chromium.run(
                folder,
                "--print-to-pdf=" + pdf,
                "--no-pdf-header-footer",
                shop.resolve("sheet.html").toUri().toString());
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(document);
            for (String piece : cuts(shop)) {
                assertTrue(text.contains(piece), piece);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"eider-shed", "gannet-loft"})
    void tags_areReadFromAPictureOfTheScreen(String loft) throws Exception {
        Path shop = planned(loft, "metric");
        assertEquals(0, Run.of("sheet", shop.toString(), "--all", "--tags").code());
        Path picture = folder.resolve("tags.png");
        Chromium.run(
                folder,
                "--hide-scrollbars",
                "--force-device-scale-factor=2",
                "--window-size=800,1130",
                "--screenshot=" + picture,
                shop.resolve("tags.html").toUri().toString());
        List<String> read = new TagPicture(picture, 2)
                .codes(3, 8).stream().filter(code -> code.startsWith("piece ")).toList();
        List<String> cuts = cuts(shop);
        assertEquals(Math.min(24, cuts.size()), read.size(), read.toString());
        for (String code : read) {
            assertTrue(cuts.contains(code.split(" ")[1]), code);
        }
    }

    private Path planned(String loft, String units) throws IOException {
        Path shop = Files.createDirectory(folder.resolve(loft));
        try (Stream<Path> files = Files.list(Path.of("demo-data", loft))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, shop.resolve(file.getFileName()));
            }
        }
        Run.of("plan", shop.toString(), "--time", "2s", "--units", units);
        return shop;
    }

    private static List<String> cuts(Path shop) throws IOException {
        assertEquals(0, Run.of("sheet", shop.toString(), "--all", "--csv").code());
        List<String[]> rows = Files.readString(shop.resolve("sheet.csv"))
                .lines()
                .map(line -> line.split(","))
                .toList();
        List<String> head = List.of(rows.get(0));
        return rows.stream()
                .filter(cells -> cells[head.indexOf("what")].equals("cut"))
                .map(cells -> cells[head.indexOf("piece")])
                .sorted()
                .toList();
    }
}
