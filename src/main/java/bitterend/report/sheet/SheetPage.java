package bitterend.report.sheet;

import bitterend.finding.Unseen;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;

/** Sheets as HTML: one file that opens without a network and reads without a script. Everything printed is escaped. */
public final class SheetPage {
    private final TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);

    /** For a screen or a browser's printer: it carries its own type. */
    public String html(Sheet sheet) {
        return render(sheet, fonts() + style("sheet") + style("screen"));
    }

    /** For the PDF: the same page, its type given elsewhere. */
    String printed(Sheet sheet, String page) {
        return render(sheet, style("sheet") + page);
    }

    /** Sheets of labels. */
    String tags(List<TagPage.LabelSheet> sheets, TagPage.Label label, String size) {
        String style = fonts() + style("tags") + size;
        return render("tags.jte", Map.of("sheets", sheets, "label", label, "style", style));
    }

    private String render(Sheet sheet, String style) {
        return render("sheet.jte", Map.of("sheet", sheet, "style", style));
    }

    /** A page of another kind. */
    String render(String template, Map<String, Object> values) {
        StringOutput html = new StringOutput();
        templates.render(template, values, html);
        return Unseen.shownOnPage(html.toString());
    }

    /** The type that an HTML page carries with it. */
    static String fonts() {
        return font("regular", "normal") + font("bold", "bold");
    }

    private static String font(String file, String weight) {
        String data = Base64.getEncoder().encodeToString(bytes("fonts/sheet-" + file + ".ttf"));
        return "@font-face{font-family:\"Sheet\";font-weight:" + weight + ";src:url(data:font/ttf;base64," + data
                + ") format(\"truetype\");}\n";
    }

    static String style(String name) {
        return new String(bytes("sheet/" + name + ".css"), StandardCharsets.UTF_8);
    }

    static byte[] bytes(String resource) {
        try (InputStream in = SheetPage.class.getResourceAsStream("/bitterend/" + resource)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its resource " + resource);
            }
            return in.readAllBytes();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
