package bitterend.exchange.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** A workbook part by part, as no program that means well would write it. */
public final class RawBook {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String DOCUMENT = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";

    private final Map<String, String> parts = new LinkedHashMap<>();
    private final StringBuilder sheets = new StringBuilder();
    private final StringBuilder relations = new StringBuilder();
    private String settings = "";
    private int count;

    /** A workbook of one sheet with these rows. */
    public static RawBook of(String sheet, String rows) {
        return new RawBook().sheet(sheet, "", "<sheetData>" + rows + "</sheetData>");
    }

    /** A further sheet: attributes of its tab, and what is inside its part. */
    public RawBook sheet(String name, String attributes, String inside) {
        count++;
        sheets.append(
                "<sheet name=\"" + name + "\" sheetId=\"" + count + "\" r:id=\"r" + count + "\" " + attributes + "/>");
        relate("r" + count, "worksheet", "worksheets/sheet" + count + ".xml");
        return part(
                "xl/worksheets/sheet" + count + ".xml", "<worksheet xmlns=\"" + MAIN + "\">" + inside + "</worksheet>");
    }

    /** Days are counted from 1904. */
    public RawBook from1904() {
        settings = "<workbookPr date1904=\"1\"/>";
        return this;
    }

    /** Texts that cells share, by what is inside each item. */
    public RawBook texts(String... items) {
        relate("texts", "sharedStrings", "sharedStrings.xml");
        return part(
                "xl/sharedStrings.xml",
                "<sst xmlns=\"" + MAIN + "\"><si>" + String.join("</si><si>", items) + "</si></sst>");
    }

    /** Styles 0, 1 ... that show numbers by these codes. */
    public RawBook formats(String... codes) {
        StringBuilder named = new StringBuilder();
        StringBuilder styles = new StringBuilder();
        for (int at = 0; at < codes.length; at++) {
            boolean builtIn = codes[at].matches("[0-9]+") && codes[at].length() < 3 && !codes[at].equals("0");
            if (!builtIn) {
                named.append("<numFmt numFmtId=\"" + (164 + at) + "\" formatCode=\"" + codes[at].replace("\"", "&quot;")
                        + "\"/>");
            }
            styles.append("<xf numFmtId=\"" + (builtIn ? codes[at] : "" + (164 + at)) + "\"/>");
        }
        relate("styles", "styles", "styles.xml");
        return part(
                "xl/styles.xml",
                "<styleSheet xmlns=\"" + MAIN + "\"><numFmts>" + named
                        + "</numFmts><cellStyleXfs><xf numFmtId=\"14\"/></cellStyleXfs><cellXfs>" + styles
                        + "</cellXfs></styleSheet>");
    }

    private void relate(String id, String kind, String target) {
        relations.append(
                "<Relationship Id=\"" + id + "\" Type=\"" + DOCUMENT + "/" + kind + "\" Target=\"" + target + "\"/>");
    }

    /** A part as it is. */
    public RawBook part(String name, String text) {
        parts.put(name, text);
        return this;
    }

    /** The same with some of the bytes of its parts, or of the whole, changed by chance. */
    byte[] changed(Random random) {
        byte[] bytes = bytes(part -> random.nextInt(4) == 0 ? changed(part, random) : part);
        return random.nextInt(6) == 0 ? changed(bytes, random) : bytes;
    }

    private static byte[] changed(byte[] bytes, Random random) {
        byte[] changed = bytes.clone();
        for (int times = 1 + random.nextInt(4); times > 0 && changed.length > 0; times--) {
            int at = random.nextInt(changed.length);
            switch (random.nextInt(4)) {
                case 0 -> changed[at] = (byte) random.nextInt(256);
                case 1 -> changed[at] = (byte) "<>/\"&;=0-9A!".charAt(random.nextInt(12));
                case 2 -> changed = Arrays.copyOf(changed, at);
                default -> {
                    int to = Math.min(changed.length, at + 1 + random.nextInt(20));
                    byte[] shorter = Arrays.copyOf(changed, changed.length - (to - at));
                    System.arraycopy(changed, to, shorter, at, changed.length - to);
                    changed = shorter;
                }
            }
        }
        return changed;
    }

    public byte[] bytes() {
        return bytes(part -> part);
    }

    /** Its parts in another charset. */
    byte[] bytes(Charset charset) {
        return bytes(part -> new String(part, StandardCharsets.UTF_8).getBytes(charset));
    }

    private byte[] bytes(UnaryOperator<byte[]> each) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(
                "_rels/.rels",
                "<Relationships xmlns=\"" + PACKAGE + "\"><Relationship Id=\"r1\" Type=\"" + DOCUMENT
                        + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
        all.put(
                "xl/workbook.xml",
                "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + DOCUMENT + "\">" + settings + "<sheets>" + sheets
                        + "</sheets></workbook>");
        all.put(
                "xl/_rels/workbook.xml.rels",
                "<Relationships xmlns=\"" + PACKAGE + "\">" + relations + "</Relationships>");
        all.putAll(parts);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> part : all.entrySet()) {
                if (!part.getValue().equals("none")) {
                    zip.putNextEntry(new ZipEntry(part.getKey()));
                    zip.write(each.apply(part.getValue().getBytes(StandardCharsets.UTF_8)));
                }
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    public Path write(Path file) throws IOException {
        return Files.write(file, bytes());
    }

    /** A row of texts and numbers. */
    public static String row(int number, String... cells) {
        StringBuilder row = new StringBuilder("<row r=\"" + number + "\">");
        for (int at = 0; at < cells.length; at++) {
            if (!cells[at].isEmpty()) {
                row.append("<c r=\"" + Sheet.letters(at + 1) + number + "\" t=\"inlineStr\"><is><t>" + cells[at]
                        + "</t></is></c>");
            }
        }
        return row + "</row>";
    }
}
